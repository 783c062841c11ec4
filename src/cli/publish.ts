// Floor 11. The command publish: publishes the gallery, then says in a line for each study what its change does to the flag's clarity.
import { join, relative } from "node:path";
import type { AnalysedGallery } from "../analysis/analysegallery.ts";
import type { StudyResult } from "../analysis/result.ts";
import type { Store } from "../analysis/store/resultstore.ts";
import { formatPercent } from "../measure/percenttext.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { showText } from "../problem/quote.ts";
import type { Holder } from "../publish/folder/lockowner.ts";
import { readManifest } from "../publish/folder/manifest.ts";
import type { Output as PublishedFolder } from "../publish/folder/output.ts";
import type { Kept } from "../publish/folder/stagingfolder.ts";
import type { BuildReport } from "../publish/publishgallery.ts";
import { sweepLeavings } from "./begin/draftfolder.ts";
import { openCache } from "./cacheoption.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { findContent, listKeepOut, usualSite } from "./contentfolder.ts";
import { checkTemporary } from "./temporary.ts";
import { count, countProblems, statusOfGallery } from "./text/exitstatus.ts";
import { formatTable } from "./text/texttable.ts";

export async function run(given: Given, output: Output): Promise<number> {
  const content = await findContent(given);
  const { out = usualSite, base } = given.values;
  if (base !== undefined && !/^\/(?:[\w.~-]+\/)*$/.test(base)) {
    throw new UsageError(
      `--base is “${base}”; a path begins and ends with a slash.`,
      "Type, for example: --base /flags/",
    );
  }
  await checkTemporary();
  await sweepLeavings(content);
  const store = await openCache(given, content, output);
  const { withOutput, OutputError } = await importOutput();
  const options = {
    keepOut: listKeepOut(content, out),
    isForced: given.switches.has("force"),
    onWait: ({ pid, host }: Holder) =>
      output.message(
        `Another run is at work on ${out} (process ${pid} on ${host}): waiting until it is done.`,
      ),
  };
  try {
    return await withOutput(out, options, (site) => publish({ given, content, out, store, output }, site));
  } catch (error) {
    if (error instanceof OutputError) throw new UsageError(error.message, error.hint);
    throw error;
  } finally {
    await store?.close();
  }
}

/** Loaded when it is needed: the help of the command needs none of it. */
async function importOutput() {
  const [{ withOutput }, { OutputError }] = await Promise.all([
    import("../publish/folder/output.ts"),
    import("../publish/folder/diskfailure.ts"),
  ]);
  return { withOutput, OutputError };
}

interface Work {
  readonly given: Given;
  readonly content: string;
  readonly out: string;
  readonly store: Store | undefined;
  readonly output: Output;
}

/** Does the work while nobody else works on the published folder, and returns the exit status. */
async function publish({ given, content, out, store, output }: Work, site: PublishedFolder): Promise<number> {
  if (site.aside !== undefined)
    output.message(
      `${site.aside} lay beside ${out} under the name of our hidden folder, and was not made by you on this machine: it was put aside, and nothing of it is used.\n    Delete it, unless it holds something that you know.\n`,
    );
  for (const kept of site.kept) output.message(`${describeKept(kept, out)}\n`);
  const [{ analyseGallery }, { withPool }, { beginAddresses, findLacking, keepAddresses }] =
    await Promise.all([
      import("../analysis/analysegallery.ts"),
      import("../publish/pictures/drawfiles.ts"),
      import("../publish/keepaddresses.ts"),
    ]);
  const drafts = given.switches.has("with-drafts");
  if (!drafts) await beginAddresses(content, await site.standing());
  return withPool(store, async (line) => {
    const analysed = await analyseGallery(content, {
      drafts,
      line,
      onProgress: (done, total, what) => output.progress(done, total, what),
    });
    const isStrict = given.switches.has("strict");
    const refused = await refuse(analysed, out, output, isStrict);
    if (refused !== undefined) return refused;
    const { prepareSite } = await import("../publish/publishgallery.ts");
    const prepared = await prepareSite(site, analysed, { line, store }, given.values["base"]);
    const { result, addresses } = prepared;
    const lacking = isStrict ? findLacking(content, result.addresses, addresses.keys()) : undefined;
    const problems = lacking === undefined ? result.problems : [...result.problems, lacking];
    const isWorse = problems.length > analysed.problems.length;
    const refusedNow = isWorse ? await refuse({ ...result, problems }, out, output, isStrict) : undefined;
    if (refusedNow !== undefined) return refusedNow;
    const swapped = await site.publish();
    report(prepared, out, output);
    if (swapped.kept !== undefined) output.message(describeKept(swapped.kept, out));
    // Who looks at drafts has published nothing that anyone else could have seen.
    if (drafts) return statusOfGallery(result.problems);
    const unkept = await keepAddresses(content, addresses);
    if (unkept === undefined) return statusOfGallery(result.problems);
    output.message(formatProblems([unkept]));
    return statusOfGallery([...result.problems, unkept]);
  });
}

/** Says why nothing may be published and returns the exit status, or undefined where all is well. */
async function refuse(
  analysed: AnalysedGallery,
  out: string,
  output: Output,
  isStrict: boolean,
): Promise<number | undefined> {
  const { problems } = analysed;
  if (statusOfGallery(problems) === 2 || (isStrict && problems.length > 0)) {
    output.message(formatProblems(problems));
    output.message(`\nNothing was published: ${countProblems(problems)}.`);
    return statusOfGallery(problems, isStrict);
  }
  const refused = await findRefusal(analysed, out);
  if (refused === undefined) return undefined;
  if (problems.length > 0) output.message(`${formatProblems(problems)}\n`);
  output.message(refused);
  return 1;
}

function describeKept({ folder, files }: Kept, out: string): string {
  const more = files.length > 3 ? ` and ${files.length - 3} more` : "";
  const named = `${files.slice(0, 3).map(showText).join(", ")}${more}`;
  return `${out} held ${count(files.length, "file that was", "files that were")} not written here (${named}). The folder as it was is kept: ${relative("", folder)}`;
}

function report(
  { result, pages, kept }: Pick<BuildReport<AnalysedGallery>, "result" | "pages" | "kept">,
  out: string,
  output: Output,
): void {
  if (result.problems.length > 0) {
    output.message(formatProblems(result.problems));
    output.message(`\n${countProblems(result.problems)}.\n`);
  }
  if (result.studies.length > 0) output.data(formatStudies(result.studies));
  const where = join(out, "index.html");
  output.data(
    `${count(result.studies.length, "study", "studies")} on ${count(pages, "page", "pages")}: open ${where}`,
  );
  const { leftOut } = result;
  const shown = leftOut.filter((slug) => kept.includes(slug));
  const stay = shown.length === 0 ? "" : ` The last good pages stay of ${shown.map(showText).join(", ")}.`;
  if (leftOut.length > 0) output.message(`${nameLeftOut(leftOut)}.${stay}`);
}

/** Why the site that stands in `out` is better left as it is, or undefined where it can be replaced. */
async function findRefusal(
  { studies, problems, leftOut }: AnalysedGallery,
  out: string,
): Promise<string | undefined> {
  const standing = await readManifest(out);
  if (standing === undefined) return undefined;
  const published = [...standing].filter((line) => /^studies\/[^/]+\/study\.json$/.test(line)).length;
  if (studies.length === 0 && published > 0) return refuseEmpty(out, published, leftOut);
  const isBroken = problems.some(
    ({ file, severity }) => severity === "error" && /(?:^|\/)gallery\.yaml$/.test(file),
  );
  if (!isBroken) return undefined;
  return `Nothing was published: gallery.yaml has an error, and ${out} holds a gallery with its settings as they were.\n    Mend gallery.yaml; or, to publish with the usual settings in the place of what is wrong, remove ${out} first.`;
}

function nameLeftOut(leftOut: readonly string[]): string {
  return `${count(leftOut.length, "study", "studies")} left out: ${leftOut.map(showText).join(", ")}`;
}

function refuseEmpty(out: string, published: number, leftOut: readonly string[]): string {
  const why = leftOut.length > 0 ? nameLeftOut(leftOut) : "there is no study to publish";
  const stands = count(published, "study", "studies");
  return `Nothing was published: ${why}, and ${out} holds a gallery of ${stands}.\n    Mend a study; or, if the gallery is to be empty, remove ${out} first.`;
}

function formatStudies(studies: readonly StudyResult[]): string {
  const columns = [
    { head: "study", align: "left" },
    { head: "clarity", align: "right" },
    { head: "verdict", align: "left" },
  ] as const;
  return formatTable(
    columns,
    studies.map(({ study, comparison: { clarity, verdict } }) => [
      study.slug,
      `${formatPercent(clarity[0], 0)} → ${formatPercent(clarity[1], 0)}`,
      verdict,
    ]),
  );
}
