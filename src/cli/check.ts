// Floor 7. The command check: every problem of a content folder, and nothing written.
import type { Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/report.ts";
import type { Command, Given, Output } from "./command.ts";
import { count, countProblems, statusOf } from "./status.ts";

export const checkCommand: Command = {
  name: "check",
  usage: "[CONTENT] [--json]",
  summary: "Lists every problem of a content folder, drafts included. Writes nothing.",
  example: "check content",
  operands: [0, 1],
  options: { json: { help: "Print JSON." } },
  run: checkContent,
};

async function checkContent(given: Given, output: Output): Promise<number> {
  const [content = "content"] = given.operands;
  const { analyseGallery } = await import("../study/run.ts");
  const { studies, problems } = await analyseGallery(content, { drafts: true });
  if (given.switches.has("json")) {
    output.data(JSON.stringify({ problems: problems.map(plainProblem) }, null, 2));
    return statusOf(problems);
  }
  if (problems.length > 0) output.data(formatProblems(problems));
  output.message(`${countProblems(problems)}; ${count(studies.length, "good study", "good studies")}.`);
  return statusOf(problems);
}

/** A problem as the contract has it. What there is none of is null. */
function plainProblem({ rule, severity, file, place, reason, hint }: Problem) {
  return {
    rule,
    severity,
    file,
    line: place?.line ?? null,
    column: place?.column ?? null,
    reason,
    hint: hint ?? null,
  };
}
