// Floor 11. The command sift: a drawing as it would be published, read and written anew.
import { formatProblems } from "../problem/problemtext.ts";
import type { Given, Output } from "./command.ts";
import { statusOf } from "./text/exitstatus.ts";
import { checkFree, writeNew } from "./writenew.ts";

export async function run(given: Given, output: Output): Promise<number> {
  const [file = ""] = given.operands;
  const { out } = given.values;
  if (out !== undefined) await checkFree(out, "the drawing");
  const { Desk } = await import("./drawingjob.ts");
  const desk = new Desk({ distance: 0 });
  try {
    const { value, problems } = await desk.sift(file);
    if (value !== undefined && out === undefined) output.data(value.trimEnd());
    if (problems.length > 0) output.message(formatProblems(problems));
    if (value !== undefined && out !== undefined) {
      await writeNew(out, value);
      output.message(`The drawing is in ${out}.`);
    }
    return statusOf(problems);
  } finally {
    desk.close();
  }
}
