// Floor 7. The command check: every problem of a content folder, and nothing written.

import { plainProblem } from "../problem/plain.ts";
import { formatProblems } from "../problem/report.ts";
import type { Given, Output } from "./command.ts";
import { count, countProblems, statusOf } from "./status.ts";

export async function run(given: Given, output: Output): Promise<number> {
  const [content = "content"] = given.operands;
  const { analyseGallery } = await import("../study/run.ts");
  const { studies, problems } = await analyseGallery(content, {
    drafts: true,
    onProgress: (done, total, what) => output.progress(done, total, what),
  });
  if (given.switches.has("json")) {
    output.data(JSON.stringify({ problems: problems.map(plainProblem) }, null, 2));
    return statusOf(problems);
  }
  if (problems.length > 0) output.data(formatProblems(problems));
  output.message(`${countProblems(problems)}; ${count(studies.length, "good study", "good studies")}.`);
  return statusOf(problems);
}
