// Floor 9. What is drawn for a site, made in child processes or taken from what was kept; a study that cannot be drawn is left
// out, and the others go on.
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { catchFault } from "../../analysis/jobs/catchfault.ts";
import { runOrdered } from "../../analysis/jobs/orderedqueue.ts";
import { defaultLimits, type Line, Pool } from "../../analysis/jobs/pool.ts";
import { leaveOut } from "../../analysis/leave.ts";
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { Store } from "../../analysis/store/resultstore.ts";
import { programFolder } from "../../content/disk/packagefile.ts";
import { endOf, folderOfStudies, outOfTime } from "../../content/folder/gallerybudget.ts";
import type { Gallery } from "../../content/study/study.ts";
import { hasError, type Outcome, type Problem } from "../../problem/problem.ts";
import { listDrawn } from "./drawingrecipe.ts";
import { questionOf } from "./imagecache.ts";
import type { DrawnFile } from "./recipe.ts";

/** A file with its bytes. */
export interface MadeFile {
  readonly path: string;
  readonly bytes: string | Uint8Array;
}

/** Who draws, and where drawings are kept. */
export interface Means {
  readonly line: Line;
  readonly store?: Store | undefined;
  /** Minutes after which no study is begun any more; default those of the budget. */
  readonly minutes?: number;
}

/** What a drawing is drawn for: `file` is named in messages, `drawing` is the one that all the files show. */
export interface Subject {
  readonly file: string;
  readonly drawing: string;
}

const maker = pathToFileURL(join(programFolder, "children/makefiles.js")).href;

/** Opens a pool that can publish. */
export function openPool(limits: ConstructorParameters<typeof Pool>[0] = {}, store?: Store): Pool {
  return new Pool({ publisher: maker, ...limits }, store);
}

/** Does something with a pool that can publish, and closes it. */
export async function withPool<T>(store: Store | undefined, use: (line: Pool) => Promise<T>): Promise<T> {
  const line = openPool({}, store);
  try {
    return await use(line);
  } finally {
    line.close();
  }
}

/**
 * Returns the files with their bytes. In a trial those that are not kept have none: all that can fail was tried.
 *
 * Problems: `study/not-published`, `study/too-much-output`, those of the pool, `study/fault`.
 */
export async function drawFiles(
  { line, store }: Means,
  { file, drawing }: Subject,
  files: readonly DrawnFile[],
  isTrial = false,
): Promise<Outcome<readonly MadeFile[]>> {
  const questions = await Promise.all(files.map(({ recipe }) => (store ? questionOf(recipe) : undefined)));
  const kept = await Promise.all(
    questions.map((question) => (question ? store?.find<string | Uint8Array>(question) : undefined)),
  );
  const missing = files.flatMap((_, index) => (kept[index] === undefined ? [index] : []));
  const recipes = missing.flatMap((index) => files[index]?.recipe ?? []);
  const input = { file, bytes: Buffer.from(drawing), recipes, isTrial };
  const made: Outcome<readonly (string | Uint8Array)[]> =
    recipes.length === 0
      ? { value: [], problems: [] }
      : await catchFault(file, () => line.run("publish", file, input));
  if (made.value === undefined) return { value: undefined, problems: made.problems };
  const fresh = new Map(missing.map((index, at) => [index, made.value?.[at] ?? ""]));
  for (const [index, value] of fresh)
    if (questions[index] !== undefined && !isTrial) store?.put(questions[index], { value, problems: [] });
  const whole = files.map(({ path }, index) => ({
    path,
    bytes: fresh.get(index) ?? kept[index]?.value ?? "",
  }));
  return { value: whole, problems: made.problems };
}

/** Draws all that `listDrawn` lists of a study, as `drawFiles` does. */
export async function drawStudy(
  one: StudyResult,
  gallery: Gallery,
  means: Means,
  isTrial = false,
): Promise<Outcome<readonly MadeFile[]>> {
  const { file } = one.study;
  const subject = { file, drawing: one.drawings.original };
  return catchFault(file, async () => drawFiles(means, subject, listDrawn(one, gallery), isTrial));
}

/**
 * Draws every study, a few at a time, and hands its files on; without `take` it is a trial. Returns the gallery without the
 * studies that cannot be drawn.
 */
export async function drawStudies<R extends GalleryResult>(
  result: R,
  means: Means,
  take?: (files: readonly MadeFile[]) => Promise<void>,
): Promise<R> {
  const slugs = new Set<string>();
  const problems: Problem[] = [];
  const end = endOf(means.minutes);
  const late: StudyResult[] = [];
  const work = async (one: StudyResult) => {
    const { slug } = one.study;
    if (performance.now() >= end) {
      late.push(one);
      return;
    }
    const drawn = await drawStudy(one, result.gallery, means, take === undefined);
    if (drawn.value === undefined || hasError(drawn.problems)) slugs.add(slug);
    else await take?.(drawn.value);
    problems.push(...drawn.problems);
  };
  await runOrdered(result.studies, defaultLimits.size + 1, work, () => undefined);
  const [first] = late;
  if (first !== undefined) {
    const names = late.map(({ study }) => study.slug);
    for (const name of names) slugs.add(name);
    problems.push(outOfTime(folderOfStudies(first.study.file), names, "drawing"));
  }
  return slugs.size === 0 ? result : leaveOut(result, slugs, problems);
}
