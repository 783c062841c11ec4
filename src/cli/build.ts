// Floor 7. The command build: publishes the gallery, then says in a line for each study what its change does.
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Measure } from "../measure/measure.ts";
import { hasError } from "../problem/problem.ts";
import { showText } from "../problem/quote.ts";
import { formatProblems } from "../problem/report.ts";
import { measureColumns } from "../problem/width.ts";
import type { StudyResult } from "../study/result.ts";
import type { AnalysedGallery } from "../study/run.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { nameWeakest } from "./describe.ts";
import { count, countProblems, statusOf } from "./status.ts";
import { formatPercent, formatShare, formatTable } from "./table.ts";

export async function run(given: Given, output: Output): Promise<number> {
  const [content = "content"] = given.operands;
  const { out = "_site", base } = given.values;
  if (base !== undefined && !/^\/(?:[\w.~-]+\/)*$/.test(base)) {
    throw new UsageError(
      `--base is “${base}”; a path begins and ends with a slash.`,
      "Type, for example: --base /flags/",
    );
  }
  const { analyseGallery } = await import("../study/run.ts");
  const analysed = await analyseGallery(content, {
    drafts: given.switches.has("drafts"),
    onProgress: (done, total, what) => output.progress(done, total, what),
  });
  const isMissing = statusOf(analysed.problems) === 2;
  if (isMissing || (given.switches.has("strict") && hasError(analysed.problems))) {
    output.message(formatProblems(analysed.problems));
    output.message(`\nNothing was published: ${countProblems(analysed.problems)}.`);
    return statusOf(analysed.problems);
  }
  const published = analysed.studies.length === 0 ? await countPublished(out) : 0;
  if (published > 0) {
    if (analysed.problems.length > 0) output.message(`${formatProblems(analysed.problems)}\n`);
    output.message(refusal(out, published, analysed.leftOut));
    return 1;
  }
  const { OutputError, publishGallery } = await importSite();
  try {
    const options = { keepOut: [content], ...(base === undefined ? {} : { base }) };
    const { result, pages } = await publishGallery(analysed, out, options);
    report({ ...analysed, problems: result.problems }, pages, out, output);
    return statusOf(result.problems);
  } catch (error) {
    if (error instanceof OutputError) throw new UsageError(error.message, "Type, for example: --out my-site");
    throw error;
  }
}

async function importSite() {
  const [{ publishGallery }, { OutputError }] = await Promise.all([
    import("../site/publish.ts"),
    import("../site/output.ts"),
  ]);
  return { publishGallery, OutputError };
}

function report(result: AnalysedGallery, pages: number, out: string, output: Output): void {
  if (result.problems.length > 0) {
    output.message(formatProblems(result.problems));
    output.message(`\n${countProblems(result.problems)}.\n`);
  }
  if (result.studies.length > 0) output.data(formatStudies(result.studies, output.columns));
  const where = join(out, "index.html");
  output.data(
    `${count(result.studies.length, "study", "studies")} on ${count(pages, "page", "pages")}: open ${where}`,
  );
  const { leftOut } = result;
  if (leftOut.length > 0) output.message(`${nameLeftOut(leftOut)}.`);
}

function nameLeftOut(leftOut: readonly string[]): string {
  return `${count(leftOut.length, "study", "studies")} left out: ${leftOut.map(showText).join(", ")}`;
}

/** How many studies the gallery has that stands in `out`, by the list that its build left there. */
async function countPublished(out: string): Promise<number> {
  const marker = await readFile(join(out, ".counterchange-site"), "utf8").catch(() => "");
  return marker.split("\n").filter((line) => /^studies\/[^/]+\/index\.html$/.test(line)).length;
}

function refusal(out: string, published: number, leftOut: readonly string[]): string {
  const why = leftOut.length > 0 ? nameLeftOut(leftOut) : "there is no study to publish";
  const stands = count(published, "study", "studies");
  return `Nothing was published: ${why}, and ${out} holds a gallery of ${stands}.\n    Mend a study; or, if the gallery is to be empty, remove ${out} first.`;
}

/** The names of the weakest edges are left out where they would not fit. */
function formatStudies(studies: readonly StudyResult[], room = Number.POSITIVE_INFINITY): string {
  const columns = ["study", "verdict", "clear edges", "weakest edge"].map(
    (head) => ({ head, align: "left" }) as const,
  );
  const format = (describeWeakest: (measure: Measure) => string): string =>
    formatTable(
      columns,
      studies.map(({ study, comparison: { clearEdgeShare, before, after, verdict } }) => [
        study.slug,
        verdict,
        `${formatShare(clearEdgeShare[0])} → ${formatShare(clearEdgeShare[1])}`,
        `${describeWeakest(before)} → ${describeWeakest(after)}`,
      ]),
    );
  const full = format(nameWeakest);
  const isWide = full.split("\n").some((line) => measureColumns(line) > room);
  return isWide ? format(({ weakestEdge }) => formatPercent(weakestEdge?.contrast ?? null)) : full;
}
