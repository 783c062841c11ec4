// Floor 3, a check on step 2. Colours that the true rendering shows where the label map gives another paint.
import type { LabelMap } from "./label.ts";
import { type Raster, wordsOf } from "./raster.ts";

/**
 * Returns, by colour (0xrrggbb), how many pixels of `picture` show exactly that colour of a paint where the map has a paint
 * of another colour, or none. `colours[i]` is what the paint with index i shows; undefined where that is not one colour:
 * what such a paint covers is not looked at. Picture and map have the same size.
 */
export function countLost(
  picture: Raster,
  { labels }: LabelMap,
  colours: readonly (number | undefined)[],
): ReadonlyMap<number, number> {
  const pixels = wordsOf(picture);
  const own = [undefined, ...colours];
  const known = new Set(colours);
  const lost = new Map<number, number>();
  for (let at = 0; at < labels.length; ) {
    const pixel = pixels[at] as number;
    const label = labels[at] as number;
    const from = at;
    do at += 1;
    while (at < labels.length && pixels[at] === pixel && labels[at] === label);
    const colour = opaqueColour(pixel);
    const expected = own[label];
    if (colour === undefined || colour === expected || (label !== 0 && expected === undefined)) continue;
    if (known.has(colour)) lost.set(colour, (lost.get(colour) ?? 0) + at - from);
  }
  return lost;
}

/** 0xaabbggrr → 0xrrggbb, undefined where it is not opaque. */
function opaqueColour(word: number): number | undefined {
  if (word >>> 24 !== 0xff) return undefined;
  return ((word & 0xff) << 16) | (word & 0xff00) | ((word >>> 16) & 0xff);
}
