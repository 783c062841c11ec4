// Floor 3, a check on step 2. What the true rendering shows where the label map gives another paint.
import { type Label, type List, type PaintIndex, paintOf } from "../svg/paintnumber.ts";
import type { LabelMap } from "./labelmap.ts";
import { colourOver, type Raster, wordOf, wordsOf } from "./raster.ts";

/** Whether a colour, 0xrrggbb, is told from what a paint is measured as. */
export type IsOther = (seen: number, paint: PaintIndex) => boolean;

/** Stands for a colour where nothing shows. */
export const nothing = -1;

/** How many pixels around one have to have its label, so that no smoothed border is looked at. */
const within = 2;

/**
 * Returns, by the label that the map has and then by colour (0xrrggbb, or {@link nothing}), how many pixels of `picture` show
 * what `isOther` tells from what they are measured as: inside an area, or at its border where they show exactly what another
 * paint is measured as. `colours` is what each paint is measured as. Picture and map have the same size.
 */
export function countLost(
  picture: Raster,
  map: LabelMap,
  colours: List<PaintIndex, number>,
  isOther: IsOther,
): ReadonlyMap<Label, ReadonlyMap<number, number>> {
  const pixels = wordsOf(picture);
  const words = colours.map(wordOf);
  const known = new Set(words);
  const lost = new Map<Label, Map<number, number>>();
  for (let at = 0; at < map.labels.length; at += 1) {
    const label = map.labels[at] as Label;
    const pixel = pixels[at] as number;
    const expected = label === 0 ? 0 : words[paintOf(label)];
    if (pixel === expected) continue;
    const seen = lookOf(pixel, label, isOther);
    const isWrong = seen === nothing ? label !== 0 : label === 0 || isOther(seen, paintOf(label));
    if (!isWrong || !(isInside(map, at) || (known.has(pixel) && !isMixture(map, words, at, pixel)))) continue;
    const counts = lost.get(label) ?? new Map<number, number>();
    lost.set(label, counts.set(seen, (counts.get(seen) ?? 0) + 1));
  }
  return lost;
}

/**
 * The colour of a pixel. One that lets through what lies under the flag looks as it does on a white page, or on a black one
 * where that alone is another than what is measured.
 */
function lookOf(pixel: number, label: Label, isOther: IsOther): number {
  if (pixel >>> 24 < 128) return nothing;
  const onWhite = colourOver(pixel, 255);
  return label === 0 || isOther(onWhite, paintOf(label)) ? onWhite : colourOver(pixel, 0);
}

/** Whether a pixel can be a smoothed border of the paints around it: the colour of none, and no channel beyond theirs. */
function isMixture(
  { width, height, labels }: LabelMap,
  words: List<PaintIndex, number>,
  at: number,
  pixel: number,
): boolean {
  const x = at % width;
  const y = (at - x) / width;
  const around: number[] = [];
  for (let row = Math.max(0, y - 1); row <= Math.min(height - 1, y + 1); row += 1)
    for (let column = Math.max(0, x - 1); column <= Math.min(width - 1, x + 1); column += 1) {
      const word = words[paintOf(labels[row * width + column] as Label)];
      if (word !== undefined) around.push(word);
    }
  if (around.includes(pixel)) return false;
  return [0, 8, 16].every((shift) => {
    const channels = around.map((word) => (word >>> shift) & 0xff);
    const channel = (pixel >>> shift) & 0xff;
    return channel >= Math.min(...channels) && channel <= Math.max(...channels);
  });
}

/** Whether all pixels up to {@link within} away, to the sides and aslant, lie in the map and have the same label. */
function isInside({ width, height, labels }: LabelMap, at: number): boolean {
  const x = at % width;
  const y = (at - x) / width;
  if (x < within || y < within || x >= width - within || y >= height - within) return false;
  for (let dy = -within; dy <= within; dy += 1)
    for (let dx = -within; dx <= within; dx += 1)
      if (labels[at + dy * width + dx] !== labels[at]) return false;
  return true;
}
