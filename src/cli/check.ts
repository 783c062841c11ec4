// Floor 11. The command check: every problem of a content folder, and nothing written.

import type { GalleryResult } from "../analysis/result.ts";
import { plainProblem } from "../problem/problemjson.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { openCache } from "./cacheoption.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { findContent } from "./contentfolder.ts";
import { formatAnnotations, isOnActions } from "./text/annotation.ts";
import { count, countProblems, statusOfGallery } from "./text/exitstatus.ts";
import { spellCommands } from "./text/invocation.ts";
import { formatMarkdown } from "./text/markdown.ts";

/** The version of the form, as schema/check.schema.json has it: it changes when a field changes or goes. */
const schemaVersion = 1;

export async function run(given: Given, output: Output): Promise<number> {
  const { switches } = given;
  if (switches.has("json") && switches.has("markdown"))
    throw new UsageError("--json and --markdown are two forms of one thing.", "Give one of them.");
  const content = await findContent(given);
  const { studies, problems } = await checkGallery(given, content, output);
  const status = statusOfGallery(problems, switches.has("strict"));
  if (switches.has("json"))
    output.data(JSON.stringify({ schemaVersion, problems: problems.map(plainProblem) }, null, 2));
  else if (switches.has("markdown")) output.data(formatMarkdown(problems));
  else {
    if (problems.length > 0) {
      output.data(spellCommands(formatProblems(problems)));
      if (isOnActions(process.env)) output.data(formatAnnotations(problems, process.env), true);
    }
    output.message(`${countProblems(problems)}; ${count(studies.length, "good study", "good studies")}.`);
  }
  return status;
}

/** Does all that can fail when the gallery is built, but for the pages. */
async function checkGallery(given: Given, content: string, output: Output): Promise<GalleryResult> {
  const [{ analyseGallery }, { drawStudies, withPool }] = await Promise.all([
    import("../analysis/analysegallery.ts"),
    import("../publish/pictures/drawfiles.ts"),
  ]);
  const store = await openCache(given, content, output, true);
  const onProgress: Output["progress"] = (...args) => output.progress(...args);
  return withPool(store, async (line) =>
    drawStudies(await analyseGallery(content, { drafts: true, line, onProgress }), { line, store }),
  );
}
