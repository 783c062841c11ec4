// Floor 3, part of step 3. Gaps: transparent parts too thin to be told apart, which belong to the paints beside them.

import type { LabelMap } from "../labelmap.ts";
import { findRuns, type Runs } from "../runs.ts";
import { type Filled, fillVanished } from "./fillvanished.ts";
import { Thickness } from "./thickness.ts";

/** Whether any pixel is transparent. */
export function hasTransparent({ label }: Runs): boolean {
  return label.includes(0);
}

/**
 * Gives the transparent parts of a map that are thinner than `thinnestPixels` to the nearest paint; all wider ones stay.
 * Beyond the border all is transparent, so what lies between a paint and the border is no slit. Undefined where there is
 * nothing to give.
 */
export function closeSlits(map: LabelMap, thinnestPixels: number): Filled | undefined {
  const margin = Math.ceil(thinnestPixels) + 4;
  const open = invert(map, margin);
  const thickness = new Thickness(open, findRuns(open), Math.max(1, Math.ceil(thinnestPixels)));
  const slits = thickness.findThinner(thinnestPixels);
  const filled = fillVanished(
    map,
    slits.map((at) => within(at, map, margin)).filter((at) => at >= 0),
  );
  return filled.pixels.length === 0 ? undefined : filled;
}

/** What is transparent as the one paint of a map that is larger by `margin` all round; what is painted bounds it. */
function invert({ width, height, labels }: LabelMap, margin: number): LabelMap {
  const wide = width + 2 * margin;
  const open = new Uint16Array(wide * (height + 2 * margin)).fill(1);
  for (let at = 0; at < labels.length; at += 1) {
    if (labels[at] === 0) continue;
    const y = (at / width) | 0;
    open[(y + margin) * wide + at - y * width + margin] = 0;
  }
  return { width: wide, height: height + 2 * margin, labels: open, exactShare: 1 };
}

/** The pixel of a map that a pixel of the larger one is, −1 where it lies beyond the border. */
function within(at: number, { width, height }: LabelMap, margin: number): number {
  const wide = width + 2 * margin;
  const y = ((at / wide) | 0) - margin;
  const x = (at % wide) - margin;
  return x < 0 || y < 0 || x >= width || y >= height ? -1 : y * width + x;
}

/** Returns two givings as one: what `then` took from a pixel that `first` gave away comes from where that came from. */
export function joinGivings(
  first: Omit<Filled, "labels">,
  then: Omit<Filled, "labels">,
): Omit<Filled, "labels"> {
  const sources = new Map<number, number>();
  for (const [index, at] of first.pixels.entries()) sources.set(at, first.sources[index] as number);
  const all = new Map(sources);
  for (const [index, at] of then.pixels.entries()) {
    const source = then.sources[index] as number;
    all.set(at, sources.get(source) ?? source);
  }
  return { pixels: Int32Array.from(all.keys()), sources: Int32Array.from(all.values()) };
}
