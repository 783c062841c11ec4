// Floor 5. The whole gallery: every study loaded and computed; a bad one is left out and named, the rest go on.
import { compareProblems, hasError, type Outcome, type Problem } from "../problem/problem.ts";
import { catchFault } from "./fault.ts";
import { loadGallery, readOriginal } from "./load.ts";
import { Pool } from "./pool.ts";
import { checkProse } from "./prose.ts";
import type { GalleryResult, StudyResult } from "./result.ts";
import type { Gallery, Study } from "./study.ts";

export interface RunOptions {
  /** Computes studies with the status draft too. */
  readonly drafts?: boolean;
  /** Hears how many studies are computed, of how many. */
  readonly onProgress?: (done: number, total: number) => void;
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
  let done = 0;
  const pool = new Pool();
  try {
    const analyseOne = async (study: Study): Promise<Outcome<StudyResult>> => {
      const outcome = await analyse(pool, study, gallery);
      done += 1;
      options.onProgress?.(done, wanted.length);
      return outcome;
    };
    for (const outcome of await Promise.all(wanted.map(analyseOne))) {
      found.push(...outcome.problems);
      if (outcome.value !== undefined && !hasError(outcome.problems)) results.push(outcome.value);
    }
  } finally {
    pool.close();
  }
  const kept = new Set([
    ...results.map(({ study }) => study.slug),
    ...studies.filter((study) => !wanted.includes(study)).map(({ slug }) => slug),
  ]);
  const leftOut = folders.filter((name) => !kept.has(name));
  return { gallery, studies: results, leftOut, problems: found.sort(compareProblems) };
}

async function analyse(pool: Pool, study: Study, gallery: Gallery): Promise<Outcome<StudyResult>> {
  const bytes = await readOriginal(study);
  const work = () => pool.run("study", study.file, { study, bytes, gallery });
  const { value, problems } = await catchFault(study.file, work);
  return { value, problems: [...problems, ...checkProse(study, value?.comparison.edges)] };
}
