// Floor 11. The command check: every problem of a content folder, and nothing written.

import { join } from "node:path";
import type { GalleryResult } from "../analysis/result.ts";
import { kindOf } from "../content/disk/readfile.ts";
import { compareProblems, type Problem } from "../problem/problem.ts";
import { plainProblem } from "../problem/problemjson.ts";
import { formatProblems } from "../problem/problemtext.ts";
import type { Moved } from "../publish/comparesite.ts";
import { manifestName } from "../publish/folder/manifest.ts";
import { openCache } from "./cacheoption.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { findContent, usualSite } from "./contentfolder.ts";
import { formatAnnotations, isOnActions } from "./text/annotation.ts";
import { count, countProblems, statusOfGallery } from "./text/exitstatus.ts";
import { spellCommands } from "./text/invocation.ts";
import { formatMoved } from "./text/movedtext.ts";

/** The version of the form, as schema/check.schema.json has it: it changes when a field changes or goes. */
const schemaVersion = 1;

export async function run(given: Given, output: Output): Promise<number> {
  const { switches } = given;
  if (switches.has("json") && switches.has("markdown"))
    throw new UsageError("--json and --markdown are two forms of one thing.", "Give one of them.");
  const content = await findContent(given);
  const against = given.values["against"];
  const checked = await checkGallery(given, content, output);
  const { studies } = checked;
  const { problems, moved, shown, address } = await compare(checked, content, against);
  const status = statusOfGallery(problems, switches.has("strict"));
  if (switches.has("json"))
    output.data(
      JSON.stringify(
        { schemaVersion, problems: problems.map(plainProblem), ...(moved && { moved }) },
        null,
        2,
      ),
    );
  else if (switches.has("markdown"))
    output.data(
      (await import("./text/replytext.ts")).formatReply(problems, shown, moved, { content, address }),
    );
  else {
    if (problems.length > 0) {
      output.data(spellCommands(formatProblems(problems)));
      if (isOnActions(process.env)) output.data(formatAnnotations(problems, process.env), true);
    }
    const lines = moved ? formatMoved(moved, against ?? usualSite) : [];
    if (lines.length > 0) output.data(`${problems.length > 0 ? "\n" : ""}${lines.join("\n")}`);
    output.message(`${countProblems(problems)}; ${count(studies.length, "good study", "good studies")}.`);
  }
  return status;
}

/**
 * Adds what the list of addresses lacks to the problems, and compares with a site: the one that was named, else the last one
 * if it is there and of this gallery. Throws UsageError where none is at the place that was named.
 */
async function compare(
  checked: GalleryResult,
  content: string,
  against: string | undefined,
): Promise<{
  readonly problems: readonly Problem[];
  readonly moved: Moved | undefined;
  /** What publishing would show: all but drafts. */
  readonly shown: GalleryResult;
  /** What a reply may link to; empty where a contribution would lead its links away from the site that stands. */
  readonly address: string;
}> {
  const { problems, addresses, leftOut = [], gallery } = checked;
  const { address } = gallery;
  const { leaveOut } = await import("../analysis/leave.ts");
  const drafts = checked.studies.flatMap(({ study }) => (study.status === "draft" ? [study.slug] : []));
  const shown = { ...leaveOut(checked, new Set(drafts), []), leftOut };
  const isNowhere = against === undefined && (await kindOf(join(usualSite, manifestName))) === undefined;
  if (isNowhere && addresses === undefined) return { problems, moved: undefined, shown, address };
  const [{ compareSite, readSiteHead }, { findLacking }, { listAddresses }, { formatCanonical }] =
    await Promise.all([
      import("../publish/comparesite.ts"),
      import("../publish/keepaddresses.ts"),
      import("../views/pageaddress.ts"),
      import("../views/address.ts"),
    ]);
  const lacking = addresses && findLacking(content, addresses, listAddresses(shown));
  const site = against ?? usualSite;
  const head = await readSiteHead(site);
  const isOurs = against !== undefined || head.title === gallery.title;
  const moved = isOurs ? await compareSite(site, shown) : undefined;
  if (moved === undefined && against !== undefined)
    throw new UsageError(
      `${against} holds no site that this program published.`,
      "Name the folder that “publish” wrote.",
    );
  const isThere = moved === undefined || formatCanonical(address, "/") === head.address;
  const all = [...problems, ...(lacking ? [lacking] : [])].sort(compareProblems);
  return { problems: all, moved, shown, address: isThere ? address : "" };
}

/** Does all that can fail when the gallery is built, but for the pages. */
async function checkGallery(given: Given, content: string, output: Output): Promise<GalleryResult> {
  const [{ analyseGallery }, { drawStudies, withPool }] = await Promise.all([
    import("../analysis/analysegallery.ts"),
    import("../publish/pictures/drawfiles.ts"),
  ]);
  const store = await openCache(given, content, output, { isReadOnly: true });
  const onProgress: Output["progress"] = (...args) => output.progress(...args);
  return withPool(store, async (line) =>
    drawStudies(await analyseGallery(content, { drafts: true, line, onProgress }), { line, store }),
  );
}
