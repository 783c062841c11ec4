// Floor 3, part of step 3. Parts whose thickness is so near the limit of sight that the view could as well be otherwise.
import { type Label, type List, type PaintIndex, paintOf } from "../../svg/paintnumber.ts";
import type { Viewer } from "./distanceview.ts";

/** How near, as a fraction of the thinnest part that is seen. */
const margin = 0.1;
/** Share of its paint, and of the flag, that has to be in doubt before it is worth a warning (our own judgement). */
const leastOfPaint = 0.1;
const leastOfFlag = 0.002;

/** Returns the greatest thickness that {@link findNearLimit} asks its viewer for, in pixels. */
export function furthestLimit(thinnestPixels: number): number {
  return thinnestPixels * (1 + margin);
}

/**
 * Returns the labels of which a part worth a warning is seen at 0.9 times `thinnestPixels` and gone at 1.1 times.
 * `pixels` are the areas by paint.
 */
export function findNearLimit(
  viewer: Viewer,
  thinnestPixels: number,
  pixels: List<PaintIndex, number>,
): readonly Label[] {
  const near = thinnestPixels * (1 - margin);
  const far = furthestLimit(thinnestPixels);
  if (thinnestPixels <= 0) return [];
  const goneFar = viewer.findVanished(far);
  if (goneFar.length < leastOfFlag * viewer.base.labels.length) return [];
  const goneNear = viewer.findVanished(near);
  const { labels } = viewer.base;
  const counts = new Map<Label, number>();
  const count = (at: number, by: number): void => {
    const label = labels[at] as Label;
    // A pixel of a slit went with the paint that it was given to.
    if (label === 0) return;
    counts.set(label, (counts.get(label) ?? 0) + by);
  };
  for (const at of goneFar) count(at, 1);
  for (const at of goneNear) count(at, -1);
  return [...counts]
    .filter(
      ([label, gone]) =>
        gone >= leastOfPaint * (pixels[paintOf(label)] ?? 0) && gone >= leastOfFlag * labels.length,
    )
    .map(([label]) => label);
}
