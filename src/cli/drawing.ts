// Floor 7. From a file somebody names to its numbers, with the settings of a gallery that says nothing of its own.
import type { Measure } from "../measure/measure.ts";
import type { Outcome } from "../problem/problem.ts";
import { compareDrawing, type DrawnComparison, measureDrawing } from "../study/analyse.ts";
import { defaultGallery } from "../study/gallery.ts";
import { readDrawing } from "../study/load.ts";
import type { Change } from "../study/study.ts";

/** Reads and measures the drawing `file` from `distance` flag heights away. */
export async function measureFile(file: string, distance: number): Promise<Outcome<Measure>> {
  const { value, problems } = await readDrawing(file);
  if (!value) return { value: undefined, problems };
  return measureDrawing(file, value, {
    cloth: defaultGallery.cloth,
    palette: defaultGallery.palette,
    distance,
  });
}

/** Reads the drawing `file` and compares it with itself after `change`, from `distance` flag heights away. */
export async function compareFile(
  file: string,
  change: Change,
  distance: number,
): Promise<Outcome<DrawnComparison>> {
  const { value, problems } = await readDrawing(file);
  if (!value) return { value: undefined, problems };
  const { cloth, palette } = defaultGallery;
  return compareDrawing(file, value, change, { cloth, palette, distance });
}
