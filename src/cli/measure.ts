// Floor 7. The command measure: the colours and edges of drawings.
import type { Measure } from "../measure/measure.ts";
import type { Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/report.ts";
import { numberOf } from "./arguments.ts";
import type { Command, Given, Output } from "./command.ts";
import { describeMeasure } from "./describe.ts";
import { statusOf } from "./status.ts";

export const measureCommand: Command = {
  name: "measure",
  usage: "FILE.svg… [--distance N] [--json]",
  summary: "Shows the colours and edges of drawings.",
  example: "measure content/flags/harbour.svg --distance 80",
  operands: [1, Number.POSITIVE_INFINITY],
  options: {
    distance: {
      value: "N",
      help: "Viewing distance in flag heights, 0 to 1000 (default 40; 0 is the full drawing).",
    },
    json: { help: "Print JSON: one object, or an array for several files." },
  },
  run: measureFiles,
};

async function measureFiles(given: Given, output: Output): Promise<number> {
  const distance = numberOf(given, "distance", [0, 1000], 40);
  const { measureFile } = await import("./drawing.ts");
  const measures: Measure[] = [];
  const problems: Problem[] = [];
  for (const file of given.operands) {
    const measured = await measureFile(file, distance);
    problems.push(...measured.problems);
    if (measured.value) measures.push(measured.value);
  }
  if (given.switches.has("json")) {
    const [only] = measures;
    if (given.operands.length > 1) output.data(JSON.stringify(measures, null, 2));
    else if (only) output.data(JSON.stringify(only, null, 2));
  } else if (measures.length > 0) {
    output.data(measures.map(describeMeasure).join("\n\n"));
  }
  if (problems.length > 0) output.message(formatProblems(problems));
  return statusOf(problems);
}
