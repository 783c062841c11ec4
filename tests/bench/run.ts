// npm run bench [-- --json] [-- --every N]: prints every figure of speed that the project claims, as ratios of one run.
import { parseArgs } from "node:util";
import { benchMeasure, type Ratio } from "./measure.ts";

const { values } = parseArgs({ options: { json: { type: "boolean" }, every: { type: "string" } } });
const measure = await benchMeasure(Number(values.every ?? 1));
if (values.json === true) console.log(JSON.stringify({ measure }, null, 2));
else {
  const row = (name: string, { median, p90 }: Ratio): string =>
    `  ${name.padEnd(28)}${median.toFixed(2).padStart(8)}${p90.toFixed(2).padStart(8)}`;
  console.log(
    `Measuring ÷ one bare rendering, ${measure.files} drawings, bare rendering ${measure.bareMilliseconds.toFixed(1)} ms in the median`,
  );
  console.log(`  ${"".padEnd(28)}${"median".padStart(8)}${"p90".padStart(8)}`);
  console.log(row("whole", measure.whole));
  for (const [part, ratio] of Object.entries(measure.parts)) console.log(row(`  ${part}`, ratio));
  console.log(row(`second rendering (${measure.secondRendering.files} files)`, measure.secondRendering));
}
