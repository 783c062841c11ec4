// Floor 5. The whole gallery: every study loaded and computed; a bad one is left out and named, the rest go on.
import { compareProblems, hasError, type Problem } from "../problem/problem.ts";
import { analyseStudy } from "./analyse.ts";
import { loadGallery, readOriginal } from "./load.ts";
import type { GalleryResult, StudyResult } from "./result.ts";

export interface RunOptions {
  /** Computes studies with the status draft too. */
  readonly drafts?: boolean;
}

/** Loads and computes the gallery in `contentDir`. Never throws for what is in the folder. */
export async function analyseGallery(contentDir: string, options: RunOptions = {}): Promise<GalleryResult> {
  const { gallery, studies, problems } = await loadGallery(contentDir);
  const found: Problem[] = [...problems];
  const results: StudyResult[] = [];
  for (const study of studies) {
    if (study.status === "draft" && options.drafts !== true) continue;
    const bytes = await readOriginal(study);
    const analysed = await analyseStudy(study, bytes, gallery);
    found.push(...analysed.problems);
    if (analysed.value !== undefined && !hasError(analysed.problems)) results.push(analysed.value);
  }
  return { gallery, studies: results, problems: found.sort(compareProblems) };
}
