// Floor 5. The whole gallery: every study loaded and computed; a bad one is left out and named, the rest go on.
import { compareProblems, hasError, type Outcome, type Problem } from "../problem/problem.ts";
import { loadGallery, readOriginal } from "./load.ts";
import { Pool } from "./pool.ts";
import type { GalleryResult, StudyResult } from "./result.ts";
import type { Gallery, Study } from "./study.ts";

export interface RunOptions {
  /** Computes studies with the status draft too. */
  readonly drafts?: boolean;
}

/** Loads and computes the gallery in `contentDir`. Never throws for what is in the folder. */
export async function analyseGallery(contentDir: string, options: RunOptions = {}): Promise<GalleryResult> {
  const { gallery, studies, problems } = await loadGallery(contentDir);
  const wanted = studies.filter((study) => study.status !== "draft" || options.drafts === true);
  const found: Problem[] = [...problems];
  const results: StudyResult[] = [];
  const pool = new Pool();
  try {
    for (const outcome of await Promise.all(wanted.map((study) => analyse(pool, study, gallery)))) {
      found.push(...outcome.problems);
      if (outcome.value !== undefined && !hasError(outcome.problems)) results.push(outcome.value);
    }
  } finally {
    pool.close();
  }
  return { gallery, studies: results, problems: found.sort(compareProblems) };
}

async function analyse(pool: Pool, study: Study, gallery: Gallery): Promise<Outcome<StudyResult>> {
  const bytes = await readOriginal(study);
  return pool.run("study", study.file, { study, bytes, gallery });
}
