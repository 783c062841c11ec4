import { appendFileSync, readFileSync } from "node:fs";
import { readDrawing } from "./svg/gate/sanitise.ts";
import { resolveDrawing } from "./svg/instance.ts";
import { renderScene } from "./analysis/drawing/scene.ts";
import { tellLost } from "./analysis/drawing/lostcheck.ts";
import { listCollection } from "../tests/collection/files.ts";
const [out, part] = process.argv.slice(2); let n = 0;
const files = listCollection().filter((_, i) => i % 2 === Number(part));
for (const { name, path } of files) {
  n++; const { value, problems } = readDrawing(name, readFileSync(path)); if (!value) { appendFileSync(out!, "refused " + name + JSON.stringify(problems.filter(p=>p.severity==="error").map(p=>p.rule)) + "\n"); continue; }
  const { lost } = await renderScene(resolveDrawing(value), { distance: 40 });
  for (const l of lost) appendFileSync(out!, name + " " + tellLost("", l).rule + " " + tellLost("", l).reason + " " + JSON.stringify(l) + "\n");
}
appendFileSync(out!, `done ${n} of ${files.length}\n`);
