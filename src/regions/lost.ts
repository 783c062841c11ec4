// Floor 3, a check on step 2. Colours that the true rendering shows where the label map gives another paint.
import type { LabelMap } from "./label.ts";
import { type Raster, wordOf, wordsOf } from "./raster.ts";

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
  const colourOf = new Map(
    colours.flatMap((colour) => (colour === undefined ? [] : [[wordOf(colour), colour]])),
  );
  // 0, which is no opaque pixel, for label 0 and for what is not looked at.
  const expected = Uint32Array.from([
    0,
    ...colours.map((colour) => (colour === undefined ? 0 : wordOf(colour))),
  ]);
  const lost = new Map<number, number>();
  for (let at = 0; at < labels.length; at += 1) {
    const label = labels[at] as number;
    if (pixels[at] === expected[label] || (label !== 0 && expected[label] === 0)) continue;
    const colour = colourOf.get(pixels[at] as number);
    if (colour !== undefined) lost.set(colour, (lost.get(colour) ?? 0) + 1);
  }
  return lost;
}
