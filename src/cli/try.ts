// Floor 11. The command try: one colour change of a drawing, compared edge by edge; without one, the options by colour.

import type { Change } from "../content/study/study.ts";
import type { ComparedEdge, Comparison } from "../measure/comparison.ts";
import { formatJson } from "../measure/roundnumber.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { tellReport } from "../words/optionsreport.ts";
import { tellMeasure } from "../words/uncertainty.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import type { Looking } from "./drawingjob.ts";
import { readLooking } from "./lookoption.ts";
import { describeComparison } from "./text/comparisontext.ts";
import { statusOf } from "./text/exitstatus.ts";
import { describeRanking } from "./text/optionstext.ts";
import { checkFree, writeNew } from "./writenew.ts";

export async function run(given: Given, output: Output): Promise<number> {
  const [file = ""] = given.operands;
  const change = readChange(given);
  const looking = readLooking(given);
  const isJson = given.switches.has("json");
  return change === undefined
    ? rankChanges(file, looking, isJson, output)
    : compareChange(file, change, looking, isJson, given.values["out"], output);
}

/** Returns the change that is asked for, or undefined where none is. Throws UsageError for half of one. */
function readChange({ values }: Given): Change | undefined {
  const { replace, with: next, only, out } = values;
  if (replace !== undefined && next !== undefined)
    return { replace, with: next, ...(only === undefined ? {} : { only }) };
  const named = Object.entries({ replace, with: next, only, out }).find(([, value]) => value !== undefined);
  if (named === undefined) return undefined;
  const missing = replace === undefined ? "--replace" : "--with";
  throw new UsageError(
    `--${named[0]} needs ${missing} beside it.`,
    'Type, for example: counterchange try FILE.svg --replace "#701c2b" --with "#e6b436"',
  );
}

async function rankChanges(file: string, looking: Looking, isJson: boolean, output: Output): Promise<number> {
  const { Desk } = await import("./drawingjob.ts");
  const desk = new Desk(looking);
  try {
    const { value, problems } = await desk.rank(file);
    const style = { distance: looking.distance, hasColour: output.hasColour };
    const told = value && tellReport(value);
    if (told) output.data(isJson ? formatJson({ schemaVersion, ...told }) : describeRanking(told, style));
    if (problems.length > 0) output.message(formatProblems(problems));
    return statusOf(problems);
  } finally {
    desk.close();
  }
}

async function compareChange(
  file: string,
  change: Change,
  looking: Looking,
  isJson: boolean,
  out: string | undefined,
  output: Output,
): Promise<number> {
  if (out !== undefined) await checkFree(out, "the redesign");
  const { Desk } = await import("./drawingjob.ts");
  const desk = new Desk(looking);
  try {
    const { value, problems } = await desk.compare(file, change);
    if (value && out !== undefined) await writeNew(out, value.redesign);
    if (value) output.data(isJson ? formatCompared(value.comparison) : describeComparison(value.comparison));
    if (value && out !== undefined) output.message(`The redesign is in ${out}.`);
    if (problems.length > 0) output.message(formatProblems(problems));
    return statusOf(problems);
  } finally {
    desk.close();
  }
}

/** The version of both forms, as src/cli/schema/try.schema.json and options.schema.json have it. */
const schemaVersion = 2;

/** The contract names an edge by its ids alone; the names are in `before` and `after`. */
function formatCompared({ change, before, after, edges, price, ...rest }: Comparison): string {
  const plain = ({ a, b, length, contrast, outcome }: ComparedEdge) => ({ a, b, length, contrast, outcome });
  return formatJson({
    schemaVersion,
    change,
    before: tellMeasure(before),
    after: tellMeasure(after),
    ...rest,
    edges: edges.map(plain),
    price: price.map(plain),
  });
}
