// Floor 11. The command measure: the colours and edges of drawings.

import { runOrdered } from "../analysis/jobs/orderedqueue.ts";
import type { Measure } from "../measure/measurement.ts";
import { formatJson } from "../measure/roundnumber.ts";
import type { Outcome, Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { tellMeasure } from "../words/uncertainty.ts";
import type { Given, Output } from "./command.ts";
import { readLooking } from "./lookoption.ts";
import { statusOf } from "./text/exitstatus.ts";
import { describeMeasure } from "./text/measuretext.ts";

/** The version of the form, as schema/measure.schema.json has it: it changes when a field changes or goes. */
const schemaVersion = 2;

export async function run(given: Given, output: Output): Promise<number> {
  const looking = readLooking(given);
  const isJson = given.switches.has("json");
  const [{ Desk }, { defaultLimits }] = await Promise.all([
    import("./drawingjob.ts"),
    import("../analysis/jobs/pool.ts"),
  ]);
  const desk = new Desk(looking);
  const files = given.operands;
  const measures: Measure[] = [];
  const problems: Problem[] = [];
  const take = (outcome: Outcome<Measure>, index: number): void => {
    problems.push(...outcome.problems);
    if (outcome.value !== undefined) {
      if (!isJson) output.data(`${measures.length > 0 ? "\n" : ""}${describeMeasure(outcome.value)}`);
      measures.push(outcome.value);
    }
    output.progress(index + 1, files.length, "drawings");
  };
  try {
    await runOrdered(files, defaultLimits.size + 1, (file) => desk.measure(file), take);
  } finally {
    desk.close();
  }
  if (isJson && (files.length > 1 || measures.length > 0)) {
    const printed = measures.map((measure) => ({ schemaVersion, ...tellMeasure(measure) }));
    output.data(formatJson(files.length > 1 ? printed : printed[0]));
  }
  if (problems.length > 0) output.message(formatProblems(problems));
  return statusOf(problems);
}
