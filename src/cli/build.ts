// Floor 7. The command build: publishes the gallery, then says in a line for each study what its change does.
import { join } from "node:path";
import { hasError } from "../problem/problem.ts";
import { formatProblems } from "../problem/report.ts";
import type { GalleryResult, StudyResult } from "../study/result.ts";
import { type Command, type Given, type Output, UsageError } from "./command.ts";
import { nameWeakest } from "./describe.ts";
import { count, countProblems, statusOf } from "./status.ts";
import { formatShare, formatTable } from "./table.ts";

export const buildCommand: Command = {
  name: "build",
  usage: "[CONTENT] [--out DIR] [--base PATH] [--drafts] [--strict]",
  summary: "Publishes the gallery of a content folder as a web site.",
  example: "build content --out _site",
  operands: [0, 1],
  options: {
    out: { value: "DIR", help: "The folder to write the site to (default _site)." },
    base: { value: "PATH", help: "The path under which a host will show the site, such as /flags/." },
    drafts: { help: "Publish drafts as well." },
    strict: { help: "Publish nothing where any study has an error." },
  },
  run: buildGallery,
};

async function buildGallery(given: Given, output: Output): Promise<number> {
  const [content = "content"] = given.operands;
  const { out = "_site", base } = given.values;
  if (base !== undefined && !/^\/(?:[\w.~-]+\/)*$/.test(base)) {
    throw new UsageError(
      `--base is “${base}”; a path begins and ends with a slash.`,
      "Type, for example: --base /flags/",
    );
  }
  const { analyseGallery } = await import("../study/run.ts");
  const analysed = await analyseGallery(content, { drafts: given.switches.has("drafts") });
  const isMissing = statusOf(analysed.problems) === 2;
  if (isMissing || (given.switches.has("strict") && hasError(analysed.problems))) {
    output.message(formatProblems(analysed.problems));
    output.message(`\nNothing was published: ${countProblems(analysed.problems)}.`);
    return statusOf(analysed.problems);
  }
  const { OutputError, publishGallery } = await importSite();
  try {
    const options = { keepOut: [content], ...(base === undefined ? {} : { base }) };
    const { result, pages } = await publishGallery(analysed, out, options);
    report(result, pages, out, output);
    return statusOf(result.problems);
  } catch (error) {
    if (error instanceof OutputError) throw new UsageError(error.message, "Choose another folder: --out DIR");
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

function report(result: GalleryResult, pages: number, out: string, output: Output): void {
  if (result.problems.length > 0) {
    output.message(formatProblems(result.problems));
    output.message(`\n${countProblems(result.problems)}.\n`);
  }
  const columns = ["study", "clear edges", "weakest edge", "verdict"].map(
    (head) => ({ head, align: "left" }) as const,
  );
  if (result.studies.length > 0) output.data(formatTable(columns, result.studies.map(describeStudy)));
  const where = join(out, "index.html");
  output.data(
    `${count(result.studies.length, "study", "studies")} on ${count(pages, "page", "pages")}: open ${where}`,
  );
}

function describeStudy({ study, comparison }: StudyResult): string[] {
  const { clearEdgeShare, before, after, verdict } = comparison;
  const shares = `${formatShare(clearEdgeShare[0])} → ${formatShare(clearEdgeShare[1])}`;
  return [study.slug, shares, `${nameWeakest(before)} → ${nameWeakest(after)}`, verdict];
}
