// Floor 6. One slice of a gallery: every Nth study and every Nth flag beside them measured, each handed on and let go of, so
// that what is kept of all slices answers all that the whole gallery asks of its drawings.
import { loadGallery, showFolder } from "../content/folder/loadgallery.ts";
import { pathOfOriginal } from "../content/study/original.ts";
import type { Gallery } from "../content/study/study.ts";
import { hasError, type Problem } from "../problem/problem.ts";
import { limitProblems } from "../problem/tally.ts";
import { computeStudy, type RunOptions } from "./analysegallery.ts";
import { runOrdered } from "./jobs/orderedqueue.ts";
import { defaultLimits, type Line } from "./jobs/pool.ts";
import { makeGrid } from "./likeness/comparegallery.ts";
import type { StudyResult } from "./result.ts";
import { gridCollection, measureFlags } from "./survey/collection.ts";

/** The slice `index`, from 1, of `count`. */
export interface Slice {
  readonly index: number;
  readonly count: number;
}

export interface SliceOptions extends Pick<RunOptions, "drafts" | "onProgress"> {
  readonly line: Line;
  /** Does more with a study that is measured; what is wrong then is wrong in the slice. */
  readonly use: (result: StudyResult, gallery: Gallery) => Promise<readonly Problem[]>;
}

/** How many good studies, and good flags beside them, the slice has; problems are those of the slice alone. */
export interface SliceReport {
  readonly studies: number;
  readonly flags: number;
  readonly problems: readonly Problem[];
}

/**
 * Measures a slice of the gallery in `contentDir`: of all folders in studies/ by name, good and bad, every `count`th from the
 * `index`th on; of the drawings in flags/, and of those that the gallery compares with, the same. Never throws for what is in
 * the folder. There is no budget of minutes: whoever divides the work says how long a slice may take.
 */
export async function analyseSlice(
  contentDir: string,
  slice: Slice,
  { line, drafts = false, onProgress, use }: SliceOptions,
): Promise<SliceReport> {
  const { gallery, studies, folders, problems: loading } = await loadGallery(contentDir);
  const isOwn = (place: number): boolean => place % slice.count === slice.index - 1;
  const own = new Set(folders.filter((_, place) => isOwn(place)));
  const problems = loading.filter(({ file }) => isOfSlice(file, contentDir, own));
  const shown = studies.filter(({ status }) => drafts || status !== "draft");
  const wanted = shown.filter(({ slug }) => own.has(slug));
  let good = 0;
  const work = async (study: (typeof wanted)[number]): Promise<readonly Problem[]> => {
    const { value, problems: found } = await computeStudy(line, study, gallery);
    if (value === undefined || hasError(found)) return found;
    const { original, redesign } = value.drawings;
    for (const svg of [original, redesign]) await makeGrid(line, study.originalFile, svg, gallery.cloth);
    const used = await use(value, gallery);
    if (!hasError(used)) good += 1;
    return [...found, ...used];
  };
  await runOrdered(wanted, 2 * defaultLimits.size + 2, work, (found, index) => {
    problems.push(...found);
    onProgress?.(index + 1, wanted.length, "studies");
  });
  const ground = {
    pool: line,
    contentDir,
    gallery,
    isOwn,
    onProgress: (done: number, total: number) => onProgress?.(done, total, "flags"),
  };
  const beside = await measureFlags(ground, new Set(shown.map(pathOfOriginal)));
  const flags = beside.items.flatMap(({ file, outcome: { value } }) => (value ? [{ file, value }] : []));
  for (const { file, value } of flags) await makeGrid(line, file, value.drawing, gallery.cloth);
  const collection = await gridCollection(ground);
  problems.push(...beside.problems, ...collection.problems);
  return {
    studies: good,
    flags: flags.length + collection.items.length,
    problems: limitProblems(problems),
  };
}

/** Whether a problem of loading is this slice's: of a study of its own, of gallery.yaml, or of the folders that hold all. */
function isOfSlice(file: string, contentDir: string, own: ReadonlySet<string>): boolean {
  const [part = "", name] = file.slice(showFolder(contentDir).length + 1).split("/");
  if (part === "studies") return name === undefined || own.has(name);
  return part === "" || part === "gallery.yaml";
}
