// Floor 7. The command try: one colour change of a drawing, compared edge by edge.
import { lstat, writeFile } from "node:fs/promises";
import type { Comparison } from "../measure/comparison.ts";
import { quoteText } from "../problem/quote.ts";
import { formatProblems } from "../problem/report.ts";
import { numberOf } from "./arguments.ts";
import { type Command, type Given, type Output, UsageError } from "./command.ts";
import { describeComparison } from "./describe.ts";
import { statusOf } from "./status.ts";

export const tryCommand: Command = {
  name: "try",
  usage: "FILE.svg --replace A --with B [--only SELECTOR] [--distance N] [--out F.svg] [--json]",
  summary: "Replaces one colour of a drawing and compares every edge before and after.",
  example: 'try content/flags/harbour.svg --replace "#7a1020" --with "#f4c430" --out lighter.svg',
  operands: [1, 1],
  options: {
    replace: { value: "A", help: "The colour to replace: a colour of the drawing, or its name." },
    with: { value: "B", help: "The new colour: any CSS colour, or a name of the usual palette." },
    only: { value: "SELECTOR", help: "Recolour only the elements that this CSS selector names." },
    distance: {
      value: "N",
      help: "Viewing distance in flag heights, 0 to 1000 (default 40; 0 is the full drawing).",
    },
    out: { value: "F.svg", help: "Write the redesign to this file, which must not be there yet." },
    json: { help: "Print JSON." },
  },
  run: tryChange,
};

async function tryChange(given: Given, output: Output): Promise<number> {
  const [file = ""] = given.operands;
  const { replace, with: replacement, only, out } = given.values;
  if (replace === undefined || replacement === undefined) {
    const missing = replace === undefined ? "--replace" : "--with";
    throw new UsageError(`try needs ${missing}.`, `Type: counterchange try ${tryCommand.usage}`);
  }
  const distance = numberOf(given, "distance", [0, 1000], 40);
  if (out !== undefined) await checkFree(out);

  const change = { replace, with: replacement, ...(only === undefined ? {} : { only }) };
  const { compareFile } = await import("./drawing.ts");
  const { value, problems } = await compareFile(file, change, distance);
  if (value) {
    if (out !== undefined) await writeNew(out, value.redesign);
    output.data(
      given.switches.has("json") ? formatJson(value.comparison) : describeComparison(value.comparison),
    );
    if (out !== undefined) output.message(`The redesign is in ${out}.`);
  }
  if (problems.length > 0) output.message(formatProblems(problems));
  return statusOf(problems);
}

/** The contract names an edge by its ids alone; the names are in `before` and `after`. */
function formatJson(comparison: Comparison): string {
  const { change, before, after, edges, clearEdgeShare, clarity, verdict } = comparison;
  const plain = edges.map(({ a, b, length, contrast, outcome }) => ({ a, b, length, contrast, outcome }));
  return JSON.stringify({ change, before, after, edges: plain, clearEdgeShare, clarity, verdict }, null, 2);
}

async function checkFree(out: string): Promise<void> {
  if (!/\.svg$/i.test(out)) {
    throw new UsageError(
      `--out is ${quoteText(out)}; the redesign is an SVG file.`,
      "Choose a name that ends in .svg",
    );
  }
  const exists = await lstat(out).then(
    () => true,
    () => false,
  );
  if (exists) throw alreadyThere(out);
}

/** Writes a file that must not exist: the flag holds even where one has come up since we looked. */
async function writeNew(out: string, text: string): Promise<void> {
  try {
    await writeFile(out, text, { flag: "wx" });
  } catch (error) {
    const code = error instanceof Error && "code" in error ? error.code : undefined;
    if (code === "EEXIST") throw alreadyThere(out);
    if (code === "ENOENT")
      throw new UsageError(`The folder of ${quoteText(out)} does not exist.`, "Make the folder first.");
    if (code === "EACCES" || code === "EPERM" || code === "EROFS") {
      throw new UsageError(`${quoteText(out)} may not be written there.`, "Choose another folder.");
    }
    throw error;
  }
}

function alreadyThere(out: string): UsageError {
  return new UsageError(
    `${quoteText(out)} is there already, and nothing is overwritten.`,
    "Choose another name for --out.",
  );
}
