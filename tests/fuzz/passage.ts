// Takes a large file the way that it goes in the program, up to what is printed of it; and, as a process of its own,
// many of them, with a line on either side of each.
import { formatAnnotations } from "../../src/cli/text/annotation.ts";
import { formatMarkdown } from "../../src/cli/text/markdown.ts";
import { parseGallery } from "../../src/content/gallery/galleryfile.ts";
import { defaultPalette } from "../../src/content/gallery/palette.ts";
import { checkProse } from "../../src/content/study/prosecheck.ts";
import { parseStudy } from "../../src/content/study/studyfile.ts";
import type { Problem } from "../../src/problem/problem.ts";
import { plainProblem } from "../../src/problem/problemjson.ts";
import { formatProblems } from "../../src/problem/problemtext.ts";
import { limitProblems } from "../../src/problem/tally.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";
import { writeDrawing } from "../../src/svg/writesvg.ts";
import { renderProse } from "../../src/views/renderprose.ts";
import { origin } from "../analysis/fixture.ts";
import { type Large, listLarge } from "./large.ts";

/** Returns the size of all that is said of a file, in characters, and how many problems there are. */
export function pass({ kind, text }: Large): { readonly size: number; readonly problems: number } {
  const problems = limitProblems(kind === "drawing" ? passDrawing(text) : passText(kind, text));
  const printed = [
    formatProblems(problems),
    formatMarkdown(problems),
    formatAnnotations(problems, {}),
    JSON.stringify(problems.map(plainProblem)),
    // What a child process hands to its parent, and what is kept.
    JSON.stringify(problems),
  ];
  return { size: printed.reduce((sum, one) => sum + one.length, 0), problems: problems.length };
}

function passDrawing(text: string): readonly Problem[] {
  const { value, problems } = readDrawing("a.svg", Buffer.from(text));
  if (value !== undefined) {
    resolveDrawing(value);
    writeDrawing(value);
  }
  return problems;
}

function passText(kind: Large["kind"], text: string): readonly Problem[] {
  if (kind === "settings") return parseGallery("gallery.yaml", Buffer.from(text)).problems;
  const keys = 'title: a\noriginal: a.svg\nchange: { replace: "#7a1020", with: "#f4c430" }\n';
  const study = kind === "prose" ? `---\n${keys}---\n${text}` : `---\n${text}---\nProse.\n`;
  const { value, problems } = parseStudy(origin, Buffer.from(study), defaultPalette);
  if (value === undefined) return problems;
  renderProse(value.body, () => undefined);
  const edges = [
    {
      a: "p1",
      b: "p2",
      names: [
        ["white", "red"],
        ["white", "red"],
      ],
      length: 1,
      contrast: [50, 50],
      outcome: "same",
    },
  ] as const;
  return [...problems, ...checkProse(value, { edges, before: { focus: { source: "none" } } })];
}

/** `from` and `step` of the large files that this process takes. */
if (process.send) {
  const [from = 0, step = 1] = process.argv.slice(2).map(Number);
  let index = -1;
  for (const large of listLarge()) {
    index += 1;
    if (index < from || (index - from) % step !== 0) continue;
    process.send({ index, name: large.name });
    const { name, kind, text } = large;
    const start = performance.now();
    const passed = pass({ name, kind, text });
    process.send({
      index,
      name,
      bytes: Buffer.byteLength(text),
      milliseconds: performance.now() - start,
      ...passed,
    });
  }
  process.disconnect();
}
