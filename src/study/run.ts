// Floor 5. The whole gallery: every study loaded and computed; a bad one is left out and named, the rest go on.
import { compareProblems, hasError, type Outcome, type Problem } from "../problem/problem.ts";
import { type Ground, gridCollection, measureFlags } from "./collection.ts";
import type { GallerySurvey } from "./entry.ts";
import { catchFault } from "./fault.ts";
import { loadGallery, readOriginal } from "./load.ts";
import { pathOfOriginal } from "./original.ts";
import { surveyGallery } from "./overview.ts";
import { Pool } from "./pool.ts";
import { checkProse } from "./prose.ts";
import { compareAll } from "./proximity.ts";
import type { GalleryResult, StudyResult } from "./result.ts";
import type { Gallery, Study } from "./study.ts";

export interface RunOptions {
  /** Computes studies with the status draft too. */
  readonly drafts?: boolean;
  /** Hears how many studies are computed, of how many; then the same of the flags beside them. */
  readonly onProgress?: (done: number, total: number, what: "studies" | "flags") => void;
}

/** A computed gallery. `leftOut` names the folders of studies/ that have an error, sorted. */
export interface AnalysedGallery extends GalleryResult {
  readonly leftOut: readonly string[];
}

/** Loads and computes the gallery in `contentDir`. Never throws for what is in the folder. */
export async function analyseGallery(contentDir: string, options: RunOptions = {}): Promise<AnalysedGallery> {
  const { gallery, studies, folders, problems } = await loadGallery(contentDir);
  const wanted = studies.filter((study) => study.status !== "draft" || options.drafts === true);
  const found: Problem[] = [...problems];
  const results: StudyResult[] = [];
  const pool = new Pool();
  let survey: GallerySurvey;
  let compared: readonly StudyResult[];
  try {
    for (const outcome of await analyseAll(pool, wanted, gallery, options)) {
      found.push(...outcome.problems);
      if (outcome.value !== undefined && !hasError(outcome.problems)) results.push(outcome.value);
    }
    const onFlag = (done: number, total: number) => options.onProgress?.(done, total, "flags");
    const beside = await lookBeside({ pool, contentDir, gallery, onProgress: onFlag }, results);
    found.push(...beside.problems);
    ({ survey, studies: compared } = beside);
  } finally {
    pool.close();
  }
  const kept = new Set([
    ...results.map(({ study }) => study.slug),
    ...studies.filter((study) => !wanted.includes(study)).map(({ slug }) => slug),
  ]);
  const leftOut = folders.filter((name) => !kept.has(name));
  return { gallery, studies: compared, survey, leftOut, problems: found.sort(compareProblems) };
}

function analyseAll(
  pool: Pool,
  studies: readonly Study[],
  gallery: Gallery,
  options: RunOptions,
): Promise<readonly Outcome<StudyResult>[]> {
  let done = 0;
  return Promise.all(
    studies.map(async (study) => {
      const outcome = await analyse(pool, study, gallery);
      done += 1;
      options.onProgress?.(done, studies.length, "studies");
      return outcome;
    }),
  );
}

async function analyse(pool: Pool, study: Study, gallery: Gallery): Promise<Outcome<StudyResult>> {
  const bytes = await readOriginal(study);
  const work = () => pool.run("study", study.file, { study, bytes, gallery });
  const { value, problems } = await catchFault(study.file, work);
  const prose = checkProse(study, value?.comparison.edges);
  if (value === undefined) return { value, problems: [...problems, ...prose] };
  const { comparison } = value;
  const rank = () => pool.run("rank", study.file, { study, comparison, bytes, gallery });
  const ranked = await catchFault(study.file, rank);
  return {
    value: ranked.value === undefined ? value : { ...value, ranking: ranked.value },
    problems: [
      ...problems,
      ...(ranked.value === undefined ? ranked.problems.map(unranked) : ranked.problems),
      ...prose,
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

/** The survey of all flags, and the studies with the flags that their redesigns look most like. */
async function lookBeside(
  ground: Ground,
  studies: readonly StudyResult[],
): Promise<{
  readonly survey: GallerySurvey;
  readonly studies: readonly StudyResult[];
  readonly problems: readonly Problem[];
}> {
  const flags = await measureFlags(ground, new Set(studies.map(({ study }) => pathOfOriginal(study))));
  const collection = await gridCollection(ground);
  const { pool, gallery } = ground;
  const compared = await compareAll(pool, studies, flags.items, collection.items, gallery.cloth);
  return {
    survey: surveyGallery(studies, flags.items),
    studies: compared.studies,
    problems: [...flags.problems, ...collection.problems, ...compared.problems],
  };
}
