// Floor 7. The command check: every problem of a content folder, and nothing written.
import type { Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/report.ts";
import type { Command, Given, Output } from "./command.ts";
import { statusOf } from "./measure.ts";

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

/** Returns the numbers of errors and warnings in words: `2 errors, 1 warning`. */
export function countProblems(problems: readonly Problem[]): string {
  const errors = problems.filter(({ severity }) => severity === "error").length;
  return `${count(errors, "error", "errors")}, ${count(problems.length - errors, "warning", "warnings")}`;
}

/** Returns a number with its noun: `1 study`, `3 studies`. */
export function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
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
