// Floor 11. The command stills: the pictures of a lesson, and what to say to each, in a folder of their own.
import { join, resolve } from "node:path";
import type { AnalysedGallery } from "../analysis/analysegallery.ts";
import { isInside } from "../content/disk/pathname.ts";
import { findNearest } from "../problem/knownword.ts";
import type { Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { quoteText } from "../problem/quote.ts";
import type { MadeFile, Means } from "../publish/pictures/drawfiles.ts";
import type { Lesson } from "../publish/pictures/lesson.ts";
import type { Size } from "../publish/pictures/paper.ts";
import { openCache } from "./cacheoption.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { findContent } from "./contentfolder.ts";
import { count, statusOf } from "./text/exitstatus.ts";
import { checkAllFree, writeAllNew } from "./writenew.ts";

/** Pixels that a side may have: what is smaller cannot be read, and no screen is larger. */
const sides = { least: 320, most: 8192 };
/** Pictures that are drawn by a child process at a time. */
const atOnce = 4;

export async function run(given: Given, output: Output): Promise<number> {
  const { series, out = "stills" } = given.values;
  const size = readSize(given.values["size"]);
  const slugs = given.operands;
  if ((series === undefined) === (slugs.length === 0))
    throw new UsageError(
      series === undefined
        ? "stills needs a study or a series."
        : "stills takes studies or a series, not both.",
      "Type, for example: counterchange stills harbour-light; or: counterchange stills --series from-the-quay",
    );
  const content = given.values["content"] ?? (await findContent({ operands: [] }));
  if (isInside(out, content) && resolve(content) !== process.cwd())
    throw new UsageError(
      `--out is ${out}, inside ${content}: pictures must not mix with what authors write.`,
      "Name a folder elsewhere, or leave --out away.",
    );
  const store = await openCache(given, content, output);
  const [{ analyseGallery }, { withPool }, { planLesson }] = await Promise.all([
    import("../analysis/analysegallery.ts"),
    import("../publish/pictures/drawfiles.ts"),
    import("../publish/pictures/lesson.ts"),
  ]);
  try {
    return await withPool(store, async (line) => {
      const gallery = await analyseGallery(content, {
        drafts: series === undefined,
        line,
        onProgress: (done, total, what) => output.progress(done, total, what),
      });
      const wanted = series === undefined ? slugs : [series];
      const missing = explainMissing(wanted, series !== undefined, gallery, output);
      if (missing !== undefined) return missing;
      const lessons = [...new Set(wanted)].map((slug) =>
        planLesson(gallery, slug, series !== undefined, size),
      );
      return await make(lessons, out, { line, store }, output);
    });
  } finally {
    await store?.close();
  }
}

/** What stands in the way of a name: the exit status where the content is wrong. Throws UsageError where there is none of that name. */
function explainMissing(
  wanted: readonly string[],
  isSeries: boolean,
  { studies, series = [], leftOut, problems }: AnalysedGallery,
  output: Output,
): number | undefined {
  const known = isSeries ? series.map(({ slug }) => slug) : studies.map(({ study }) => study.slug);
  const missing = wanted.find((name) => !known.includes(name));
  if (missing === undefined) return undefined;
  const own = problems.filter(({ file }) => file.includes(isSeries ? `/${missing}.md` : `/${missing}/`));
  if (leftOut.includes(missing) || own.length > 0) {
    output.message(formatProblems(own.length > 0 ? own : problems));
    return 1;
  }
  if (!isSeries && series.some(({ slug }) => slug === missing))
    throw new UsageError(`${quoteText(missing)} is a series.`, `Type: stills --series ${missing}`);
  const near = findNearest(missing, known);
  const kind = isSeries ? "series" : "study";
  throw new UsageError(
    `There is no ${kind} ${quoteText(missing)}.`,
    near === undefined ? `Those there are: ${known.join(", ")}` : `Did you mean ${near}?`,
  );
}

/** Draws all, then writes all: a drawing that fails leaves nothing behind. Throws UsageError where a file is there already. */
async function make(lessons: readonly Lesson[], out: string, means: Means, output: Output): Promise<number> {
  const place = (folder: string, path: string) => join(out, folder, path);
  await checkAllFree(
    lessons.flatMap(({ folder, files }) =>
      [...files, { path: "script.md" }].map(({ path }) => place(folder, path)),
    ),
  );
  const { drawFiles } = await import("../publish/pictures/drawfiles.ts");
  const problems: Problem[] = [];
  const made: MadeFile[] = [];
  const all = lessons.reduce((sum, { files }) => sum + files.length, 0);
  for (const { folder, file, files, script } of lessons) {
    for (let at = 0; at < files.length; at += atOnce) {
      const drawn = await drawFiles(means, { file, drawing: "" }, files.slice(at, at + atOnce));
      problems.push(...drawn.problems);
      made.push(...(drawn.value ?? []).map(({ path, bytes }) => ({ path: place(folder, path), bytes })));
      output.progress(made.length, all, "pictures");
    }
    made.push({ path: place(folder, "script.md"), bytes: script });
  }
  if (problems.length > 0) {
    output.message(formatProblems(problems));
    return statusOf(problems);
  }
  await writeAllNew(made);
  for (const { folder, files } of lessons)
    output.data(`${count(files.length, "picture", "pictures")} and script.md: ${join(out, folder)}`);
  return 0;
}

function readSize(text = "1920x1080"): Size {
  const [, width = "", height = ""] = /^(\d{3,4})x(\d{3,4})$/.exec(text) ?? [];
  const size = { width: Number(width), height: Number(height) };
  if (Object.values(size).every((side) => side >= sides.least && side <= sides.most)) return size;
  throw new UsageError(
    `--size is ${quoteText(text)}; it is a width and a height in pixels, each from ${sides.least} to ${sides.most}.`,
    "Type, for example: --size 1920x1080",
  );
}
