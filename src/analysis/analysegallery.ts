// Floor 6. The whole gallery: every study loaded and computed; a bad one is left out and named, the rest go on.

import { drawingChanged } from "../content/folder/absent.ts";
import type { FolderDrawing } from "../content/folder/flagfiles.ts";
import { listContested, listFormer } from "../content/folder/formerly.ts";
import { endOf, folderOfStudies, outOfTime } from "../content/folder/gallerybudget.ts";
import { type LoadedGallery, loadGallery, readOriginal } from "../content/folder/loadgallery.ts";
import { checkAnswered } from "../content/study/answerkey.ts";
import { pathOfOriginal } from "../content/study/original.ts";
import { checkProse } from "../content/study/prosecheck.ts";
import type { Gallery, Logo, Study } from "../content/study/study.ts";
import { hasError, type Outcome, type Problem } from "../problem/problem.ts";
import { limitProblems } from "../problem/tally.ts";
import { catchFault } from "./jobs/catchfault.ts";
import { runOrdered } from "./jobs/orderedqueue.ts";
import { pack } from "./jobs/pack.ts";
import { type Line, Pool } from "./jobs/pool.ts";
import { measureStudy, rankChanges } from "./jobs/studyjob.ts";
import { compareAll } from "./likeness/comparegallery.ts";
import { checkAnsweredChanges } from "./options/namedchange.ts";
import type { GalleryResult, ShownDrawing, StudyResult } from "./result.ts";
import { findUnshown, settleSeries } from "./settleseries.ts";
import type { Store } from "./store/resultstore.ts";
import { findAdoptedTwice } from "./survey/adoptedtwice.ts";
import { type Ground, gridCollection, measureFlags, measureShown } from "./survey/collection.ts";
import { checkFlagNames } from "./survey/flagcalled.ts";
import { surveyGallery } from "./survey/overview.ts";
import type { GallerySurvey } from "./survey/surveyentry.ts";

export interface RunOptions {
  /** Computes studies with the status draft too. */
  readonly drafts?: boolean;
  /** Minutes after which no study and no flag is begun any more; default those of the budget. */
  readonly minutes?: number;
  /** Keeps measurements, so that none is made twice. */
  readonly store?: Store | undefined;
  /** Does the work instead of a pool of its own. */
  readonly line?: Line;
  /** The slug of the study that is measured before any other is begun. */
  readonly first?: string | undefined;
  /** Hears of each study as soon as it is measured, before its options are ranked: undefined for one that is left out. */
  readonly onMeasured?: (result: StudyResult | undefined, loaded: LoadedGallery, left: number) => void;
  /** Hears how many studies are computed, of how many; then the same of the flags beside them. */
  readonly onProgress?: (done: number, total: number, what: "studies" | "flags") => void;
}

/** Studies whose drawings are read before it is their turn: so many are first measured, then ranked. */
const readAhead = 64;

/** A computed gallery. `leftOut` names the folders of studies/ that have an error, sorted. */
export interface AnalysedGallery extends GalleryResult {
  readonly leftOut: readonly string[];
}

/** Loads and computes the gallery in `contentDir`. Never throws for what is in the folder. */
export async function analyseGallery(contentDir: string, options: RunOptions = {}): Promise<AnalysedGallery> {
  const loaded = await loadGallery(contentDir);
  const { gallery, studies, folders, problems } = loaded;
  const wanted = studies.filter((study) => study.status !== "draft" || options.drafts === true);
  const found: Problem[] = [...problems];
  const results: StudyResult[] = [];
  const own = new Pool({}, options.store);
  const pool = options.line ?? own;
  const end = endOf(options.minutes);
  let survey: GallerySurvey;
  let compared: readonly StudyResult[];
  let drawings: ReadonlyMap<string, ShownDrawing>;
  let logo: Logo | undefined;
  try {
    for (const outcome of await analyseAll(pool, wanted, loaded, options, end)) {
      found.push(...outcome.problems);
      if (outcome.value !== undefined && !hasError(outcome.problems)) results.push(outcome.value);
    }
    const onFlag = (done: number, total: number) => options.onProgress?.(done, total, "flags");
    const ground = { pool, contentDir, gallery, end, onProgress: onFlag };
    const beside = await lookBeside(ground, results, loaded.drawings);
    found.push(...beside.problems);
    ({ survey, studies: compared, drawings } = beside);
    const judged = await judgeLogo(pool, loaded);
    found.push(...judged.problems);
    logo = judged.value;
  } finally {
    own.close();
  }
  const kept = new Set([
    ...results.map(({ study }) => study.slug),
    ...studies.filter((study) => !wanted.includes(study)).map(({ slug }) => slug),
  ]);
  const leftOut = folders.filter((name) => !kept.has(name));
  const { series, problems: gaps } = settleSeries(loaded.series, { studies: compared, survey });
  found.push(...gaps, ...findAdoptedTwice(survey, compared), ...checkFlagNames(survey, compared));
  const { nominations, addresses, pages } = loaded;
  found.push(...findUnshown(pages, { studies: compared, folders }));
  return {
    gallery: logo === undefined ? gallery : { ...gallery, logo },
    studies: compared,
    series,
    pages,
    drawings,
    nominations,
    ...(addresses && { addresses }),
    former: listFormer(studies, addresses),
    contested: listContested(studies, addresses),
    folders,
    survey,
    leftOut,
    problems: limitProblems(found),
  };
}

async function analyseAll(
  pool: Line,
  studies: readonly Study[],
  loaded: LoadedGallery,
  options: RunOptions,
  end: number,
): Promise<readonly Outcome<StudyResult>[]> {
  let counted = 0;
  let left = studies.length;
  let begin = (): void => undefined;
  const isFirstMeasured = new Promise<void>((resolve) => {
    begin = resolve;
  });
  const isFirst = ({ slug }: Study): boolean => slug === options.first;
  if (!studies.some(isFirst)) begin();
  const work = async (study: Study): Promise<Outcome<StudyResult>> => {
    if (!isFirst(study)) await isFirstMeasured;
    const outcome = await computeStudy(pool, study, loaded.gallery, (result) => {
      left -= 1;
      options.onMeasured?.(result, loaded, left);
      begin();
    }).finally(begin);
    counted += 1;
    options.onProgress?.(counted, studies.length, "studies");
    return outcome;
  };
  const outcomes = new Map<Study, Outcome<StudyResult>>();
  const firstOnes = [...studies.filter(isFirst), ...studies.filter((study) => !isFirst(study))];
  const late: Study[] = [];
  const measure = async (study: Study): Promise<void> => {
    if (performance.now() < end) outcomes.set(study, await work(study));
    else late.push(study);
  };
  await runOrdered(firstOnes, readAhead, measure, () => undefined);
  const done = studies.flatMap((study) => outcomes.get(study) ?? []);
  const [first] = late;
  if (first === undefined) return done;
  const slugs = late.map(({ slug }) => slug);
  const told = outOfTime(folderOfStudies(first.file), slugs, "measuring");
  return [...done, { value: undefined, problems: [told] }];
}

/**
 * Measures a study and ranks its changes. Problems: those of the jobs, of the prose, and of what `answers` and `options` name.
 * `onMeasured` hears of it before its changes are ranked.
 */
export async function computeStudy(
  pool: Line,
  study: Study,
  gallery: Gallery,
  onMeasured: (result: StudyResult | undefined) => void = () => undefined,
): Promise<Outcome<StudyResult>> {
  const bytes = await readOriginal(study).catch(() => undefined);
  if (bytes === undefined) {
    onMeasured(undefined);
    return { value: undefined, problems: [drawingChanged(study)] };
  }
  const work = () => measureStudy(pool, study, bytes, gallery);
  const { value, problems } = await catchFault(study.file, work);
  onMeasured(hasError(problems) ? undefined : value);
  const prose = checkProse(study, value?.comparison);
  if (value === undefined) return { value, problems: [...problems, ...prose] };
  const packed = { ...value, drawings: pack(value.drawings) };
  const rank = () => rankChanges(pool, value, bytes, gallery);
  const ranked = await catchFault(study.file, rank);
  return {
    value: ranked.value === undefined ? packed : { ...packed, ranking: pack(ranked.value) },
    problems: [
      ...problems,
      ...(ranked.value === undefined ? ranked.problems.map(unranked) : ranked.problems),
      ...prose,
      ...checkAnswered(study, value.comparison.edges),
      ...(ranked.value ? checkAnsweredChanges(study.answers, ranked.value.matrix) : []),
    ],
  };
}

/** The study itself is measured: without its options it is worth publishing. */
function unranked(problem: Problem): Problem {
  return {
    ...problem,
    severity: "warning",
    reason: `The other single changes were not ranked. ${problem.reason}`,
  };
}

async function judgeLogo(pool: Line, { logo }: LoadedGallery): Promise<Outcome<Logo>> {
  if (logo === undefined) return { value: undefined, problems: [] };
  return catchFault(logo.file, () => pool.run("logo", logo.file, { bytes: logo.bytes }));
}

/** The survey of all flags, the drawings that pages show, and the studies with the flags that their redesigns look most like. */
async function lookBeside(
  ground: Ground,
  studies: readonly StudyResult[],
  drawings: readonly FolderDrawing[],
): Promise<{
  readonly drawings: ReadonlyMap<string, ShownDrawing>;
  readonly survey: GallerySurvey;
  readonly studies: readonly StudyResult[];
  readonly problems: readonly Problem[];
}> {
  const flags = await measureFlags(ground, new Set(studies.map(({ study }) => pathOfOriginal(study))));
  const collection = await gridCollection(ground);
  const shown = await measureShown(ground, drawings, flags.items);
  const { pool, gallery } = ground;
  const compared = await compareAll(pool, studies, flags.items, collection.items, gallery.cloth);
  return {
    survey: surveyGallery(studies, flags.items),
    studies: compared.studies,
    drawings: new Map(shown.items.flatMap(({ file, outcome: { value } }) => (value ? [[file, value]] : []))),
    problems: [...flags.problems, ...shown.problems, ...collection.problems, ...compared.problems],
  };
}
