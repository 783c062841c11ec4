// Floor 6. The flags beside the studies: those in `flags/` measured, those of another folder made into grids, in the pool.
import { dirname, resolve } from "node:path";
import { readFolder } from "../../content/disk/readfile.ts";
import type { FolderDrawing } from "../../content/folder/flagfiles.ts";
import { listFolder, readListed } from "../../content/folder/flagfolder.ts";
import { outOfTime } from "../../content/folder/gallerybudget.ts";
import { showFolder } from "../../content/folder/loadgallery.ts";
import type { Gallery } from "../../content/study/study.ts";
import { findNearest } from "../../problem/knownword.ts";
import { compareText, type Outcome, type Problem, report } from "../../problem/problem.ts";
import { catchFault } from "../jobs/catchfault.ts";
import type { JobKind, Jobs } from "../jobs/job.ts";
import { runOrdered } from "../jobs/orderedqueue.ts";
import { defaultLimits, type Line } from "../jobs/pool.ts";
import type { KnownFlag } from "../likeness/compareredesign.ts";
import type { FlagOutcome } from "./surveyflags.ts";

/** What a folder gave, and what is wrong in it; nothing of that is more than a warning. */
interface Gathered<T> {
  readonly items: readonly T[];
  readonly problems: readonly Problem[];
}

/** Where a gallery lies, and what it measures with. */
export interface Ground {
  readonly pool: Line;
  readonly contentDir: string;
  readonly gallery: Gallery;
  /** The moment, of `performance.now()`, after which no drawing is begun any more; default never. */
  readonly end?: number;
  /** Whether the drawing at a place of its folder's list, from 0, is looked at; default all are. */
  readonly isOwn?: (place: number) => boolean;
  readonly onProgress?: (done: number, total: number) => void;
}

/**
 * Measures every drawing of `flags/` whose path in the content folder is not in `known`. A broken one comes back with its
 * problems. None where there is no such folder.
 */
export async function measureFlags(
  ground: Ground,
  known: ReadonlySet<string>,
): Promise<Gathered<FlagOutcome>> {
  const listed = await listFolder(ground.contentDir, "flags", true);
  const wanted = keepOwn(ground, listed.value ?? []).filter(({ name }) => !known.has(`flags/${name}`));
  return measureEach(ground, wanted, listed.problems);
}

/** Measures the drawings that pages show, but for those that are in `measured`. Problems as those of `measureFlags`. */
export async function measureShown(
  { onProgress: _, ...ground }: Ground,
  drawings: readonly FolderDrawing[],
  measured: readonly FlagOutcome[],
): Promise<Gathered<FlagOutcome>> {
  const known = new Map(measured.map((one) => [one.file, one]));
  const left = drawings.filter(({ inner }) => !known.has(inner));
  const { items, problems } = await measureEach(ground, left);
  return { items: [...drawings.flatMap(({ inner }) => known.get(inner) ?? []), ...items], problems };
}

async function measureEach(
  ground: Ground,
  drawings: readonly FolderDrawing[],
  problems: readonly Problem[] = [],
): Promise<Gathered<FlagOutcome>> {
  const { cloth, viewingDistance, palette } = ground.gallery;
  const options = { cloth, distance: viewingDistance, palette };
  const { done, late } = await runEach(ground, drawings, "flag", (bytes) => ({ bytes, options }));
  return {
    items: done.map(({ drawing, outcome }) => ({ file: drawing.inner, outcome })),
    problems: [...problems, ...done.flatMap(({ outcome }) => outcome.problems), ...late].map(soften),
  };
}

/**
 * Makes the grids of the folder that the gallery compares with. Problems, all of them warnings: `study/folder-missing`,
 * `study/folder-empty`, those of the drawings.
 */
export async function gridCollection(ground: Ground): Promise<Gathered<KnownFlag>> {
  const inner = ground.gallery.compareWith?.replace(/\/$/, "");
  if (inner === undefined) return { items: [], problems: [] };
  const listed = await listFolder(ground.contentDir, inner, false);
  if (listed.value === undefined) return { items: [], problems: [await missing(ground, inner)] };
  if (listed.value.length === 0 && listed.problems.length === 0)
    return { items: [], problems: [empty(ground, inner)] };
  const { cloth } = ground.gallery;
  const wanted = keepOwn(ground, listed.value);
  const { done, late } = await runEach(ground, wanted, "grid", (bytes) => ({ bytes, cloth }));
  const items = done.flatMap(({ drawing, outcome: { value: grid } }): readonly KnownFlag[] =>
    grid === undefined ? [] : [{ file: `${inner}/${drawing.name}`, origin: "collection", grid }],
  );
  const broken = done.filter(({ outcome }) => outcome.value === undefined);
  return {
    items,
    problems: [...listed.problems, ...broken.flatMap(({ outcome }) => outcome.problems), ...late].map(soften),
  };
}

function keepOwn(
  { isOwn }: Pick<Ground, "isOwn">,
  listed: readonly FolderDrawing[],
): readonly FolderDrawing[] {
  return isOwn === undefined ? listed : listed.filter((_, place) => isOwn(place));
}

interface Done<K extends JobKind> {
  readonly drawing: FolderDrawing;
  readonly outcome: Outcome<Jobs[K]["output"]>;
}

/**
 * A file is opened when its turn comes, so that ten thousand of them are never in memory at once. `late` tells of those
 * whose turn came too late.
 */
async function runEach<K extends JobKind>(
  { pool, end = Number.POSITIVE_INFINITY, onProgress }: Ground,
  drawings: readonly FolderDrawing[],
  kind: K,
  inputOf: (bytes: Uint8Array) => Jobs[K]["input"],
): Promise<{ readonly done: readonly Done<K>[]; readonly late: readonly Problem[] }> {
  const done: Done<K>[] = [];
  const late: string[] = [];
  const work = async (drawing: FolderDrawing): Promise<Done<K> | "late"> => {
    if (performance.now() >= end) return "late";
    const read = await readListed(drawing);
    const { value: bytes } = read;
    if (bytes === undefined) return { drawing, outcome: { value: undefined, problems: read.problems } };
    const { file } = drawing;
    return { drawing, outcome: await catchFault(file, () => pool.run(kind, file, inputOf(bytes))) };
  };
  await runOrdered(drawings, defaultLimits.size + 1, work, (one, index) => {
    if (one === "late") late.push(drawings[index]?.name ?? "");
    else done.push(one);
    onProgress?.(index + 1, drawings.length);
  });
  const [first] = drawings;
  const folder = dirname(first?.file ?? "");
  return { done, late: late.length === 0 ? [] : [outOfTime(folder, late, "measuring", ["flag", "flags"])] };
}

function soften(problem: Problem): Problem {
  return { ...problem, severity: "warning" };
}

async function missing(
  { contentDir, gallery }: Pick<Ground, "contentDir" | "gallery">,
  inner: string,
): Promise<Problem> {
  const entries = await readFolder(resolve(contentDir));
  const names = ("kind" in entries ? [] : entries).flatMap(({ name, kind }) =>
    kind === "folder" ? [name] : [],
  );
  const near = findNearest(inner, names.sort(compareText));
  const problem = nothing(
    { contentDir, gallery },
    "study/folder-missing",
    `There is no folder ${inner} in the content folder`,
    inner,
  );
  return near === undefined ? problem : { ...problem, hint: `Type: compareWith: ${near}` };
}

function empty(ground: Pick<Ground, "contentDir" | "gallery">, inner: string): Problem {
  return nothing(ground, "study/folder-empty", `There is no SVG file right in the folder ${inner}`, inner);
}

function nothing(
  { contentDir, gallery }: Pick<Ground, "contentDir" | "gallery">,
  rule: string,
  why: string,
  inner: string,
): Problem {
  return report(
    rule,
    { file: `${showFolder(contentDir)}/gallery.yaml`, ...gallery.compareWithAt },
    {
      reason: `${why}, so “compareWith” compares with nothing.`,
      hint: `Put the drawings in ${inner}, or delete the line.`,
    },
    "warning",
  );
}
