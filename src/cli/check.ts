// Floor 7. The command check: every problem of a content folder, and nothing written.
import { randomUUID } from "node:crypto";
import { plainProblem } from "../problem/plain.ts";
import type { Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/report.ts";
import { formatAnnotations, guardText, isOnActions } from "./annotation.ts";
import { openCache } from "./cache.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { spellCommands } from "./invocation.ts";
import { formatMarkdown } from "./markdown.ts";
import { findContent } from "./place.ts";
import { count, countProblems, statusOf } from "./status.ts";

/** The version of the form, as schema/check.schema.json has it: it changes when a field changes or goes. */
const schemaVersion = 1;

export async function run(given: Given, output: Output): Promise<number> {
  const { switches } = given;
  if (switches.has("json") && switches.has("markdown"))
    throw new UsageError("--json and --markdown are two forms of one thing.", "Give one of them.");
  const content = findContent(given);
  const { analyseGallery } = await import("../study/run.ts");
  const { studies, problems } = await analyseGallery(content, {
    drafts: true,
    store: await openCache(given, content, output, true),
    onProgress: (done, total, what) => output.progress(done, total, what),
  });
  const status = statusOf(problems, switches.has("strict"));
  if (switches.has("json"))
    output.data(JSON.stringify({ schemaVersion, problems: problems.map(plainProblem) }, null, 2));
  else if (switches.has("markdown")) output.data(formatMarkdown(problems));
  else {
    if (problems.length > 0) output.data(formatReport(problems));
    output.message(`${countProblems(problems)}; ${count(studies.length, "good study", "good studies")}.`);
  }
  return status;
}

/** On GitHub Actions the report, kept from being read as commands, and then an annotation for each problem. */
function formatReport(problems: readonly Problem[]): string {
  const report = spellCommands(formatProblems(problems));
  if (!isOnActions(process.env)) return report;
  return `${guardText(report, randomUUID())}\n${formatAnnotations(problems, process.env)}`;
}
