// Floor 9. What pages show, by its address → the drawing that it is made from.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { placeDrawing } from "../../views/survey/flagname.ts";
import type { Source } from "./picturescene.ts";
import type { DrawnFile } from "./recipe.ts";

/** Finds what a picture on a page shows by its address there. Throws RangeError for an address that nothing is drawn for. */
export type FindSource = (src: string) => Source;

/** Everything drawn of a gallery by its site path, as `listDrawn` has it: what pages show. */
export type Drawn = ReadonlyMap<string, Source>;

/** The sources of some studies, and of the flags without one. `listed` are the files of each study. */
export function collectSources(
  studies: readonly (readonly [StudyResult, readonly DrawnFile[]])[],
  survey: GalleryResult["survey"],
): Drawn {
  const drawn = new Map<string, Source>();
  for (const entry of survey?.entries ?? [])
    if (entry.drawing !== undefined)
      drawn.set(placeDrawing(entry), { drawing: entry.drawing, proportions: entry.measure.proportions });
  for (const [{ comparison }, files] of studies) {
    const { proportions } = comparison.before;
    for (const { path, recipe } of files) {
      if (recipe.kind === "drawing") drawn.set(`/${path}`, { drawing: recipe.drawing, proportions });
      if (recipe.kind === "crop")
        drawn.set(`/${path}`, { drawing: recipe.drawing, proportions, crop: recipe.crop });
      if (recipe.kind === "distance")
        drawn.set(`/${path}`, { drawing: recipe.drawing, proportions, distance: recipe.distance });
    }
  }
  return drawn;
}

/** For the page at the site path `path`. */
export function findFrom(path: string, drawn: Drawn): FindSource {
  return (src) => {
    const at = decodeURI(new URL(src, `https://site.example${path}`).pathname);
    const found = drawn.get(at);
    if (found === undefined) throw new RangeError(`nothing is drawn for ${at}`);
    return found;
  };
}
