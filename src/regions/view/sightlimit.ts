// Floor 3, part of step 3. Parts whose thickness is so near the limit of sight that the view could as well be otherwise.
import { type Label, type List, type PaintIndex, paintOf, transparent } from "../../svg/paintnumber.ts";
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
  const { labels } = viewer.base;
  const counts = new Int32Array(pixels.length + 1);
  const isMuch = (label: Label): boolean => {
    const gone = counts[label] as number;
    return gone >= leastOfPaint * (pixels[paintOf(label)] ?? 0) && gone >= leastOfFlag * labels.length;
  };
  const hasMuch = (gone: Int32Array): boolean => {
    const found = countLabels(labels, gone, counts, 1);
    const has = found.some(isMuch);
    counts.fill(0);
    return has;
  };
  const goneFar = viewer.findWorthwhile(far, hasMuch);
  const found = countLabels(labels, goneFar, counts, 1);
  // What is gone nearer by only makes less of it.
  if (!found.some(isMuch)) return [];
  countLabels(labels, viewer.findVanished(near), counts, -1);
  return found.filter(isMuch);
}

/** Adds `by` for each of `pixels` to the count of its label; returns the labels that had none, as they are met. */
function countLabels(
  labels: Uint16Array,
  pixels: Int32Array,
  counts: Int32Array,
  by: number,
): readonly Label[] {
  const met: Label[] = [];
  for (let index = 0; index < pixels.length; index += 1) {
    const label = labels[pixels[index] as number] as Label;
    // A pixel of a slit went with the paint that it was given to.
    if (label === transparent) continue;
    const before = counts[label] as number;
    if (before === 0) met.push(label);
    counts[label] = before + by;
  }
  return met;
}
