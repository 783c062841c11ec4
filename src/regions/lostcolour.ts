// Floor 3, a check on step 2. What the true rendering shows where the label map gives another paint.
import { type Label, type List, type PaintIndex, paintOf } from "../svg/paintnumber.ts";
import type { LabelMap } from "./labelmap.ts";
import { colourOver, type Raster, wordOf, wordsOf } from "./raster.ts";
import { findRuns, type Runs } from "./runs.ts";

/** Whether a colour, 0xrrggbb, is told from what a paint is measured as. */
export type IsOther = (seen: number, paint: PaintIndex) => boolean;

/** Stands for a colour where nothing shows. */
export const nothing = -1;

/** How many pixels around one have to have its label, so that no smoothed border is looked at. */
const within = 2;

/**
 * Returns, by the label that the map has and then by colour (0xrrggbb, or {@link nothing}), how many pixels of `picture` show
 * what `isOther` tells from what they are measured as: inside an area, or at its border where they show exactly what another
 * paint is measured as. `colours` is what each paint is measured as. Picture and map have the same size; `runs`
 * are those of the map.
 */
export function countLost(
  picture: Raster,
  map: LabelMap,
  colours: List<PaintIndex, number>,
  isOther: IsOther,
  runs: Runs = findRuns(map),
): ReadonlyMap<Label, ReadonlyMap<number, number>> {
  const words = wordsOf(picture);
  const expected = Uint32Array.from([0, ...colours.map(wordOf)]);
  const known = new Set(expected.subarray(1));
  const lost = new Map<Label, Map<number, number>>();
  eachUnexpected(words, runs, expected, (at, label, pixel) => {
    if (!isInside(map, at) && !(known.has(pixel) && !isMixture(map, expected, at, pixel))) return;
    const seen = lookOf(pixel, label, isOther);
    const isWrong = seen === nothing ? label !== 0 : label === 0 || isOther(seen, paintOf(label));
    if (!isWrong) return;
    const counts = lost.get(label) ?? new Map<number, number>();
    lost.set(label, counts.set(seen, (counts.get(seen) ?? 0) + 1));
  });
  return lost;
}

/** Visits the pixels that are not what their label is expected to show, run by run. */
function eachUnexpected(
  words: Uint32Array,
  { count, start, label: labels }: Runs,
  expected: Uint32Array,
  visit: (at: number, label: Label, pixel: number) => void,
): void {
  for (let run = 0; run < count; run += 1) {
    const label = labels[run] as Label;
    const word = expected[label] as number;
    const end = start[run + 1] as number;
    for (let at = start[run] as number; at < end; at += 1)
      if (words[at] !== word) visit(at, label, words[at] as number);
  }
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
  words: Uint32Array,
  at: number,
  pixel: number,
): boolean {
  const x = at % width;
  const y = (at - x) / width;
  const around: number[] = [];
  for (let row = Math.max(0, y - 1); row <= Math.min(height - 1, y + 1); row += 1)
    for (let column = Math.max(0, x - 1); column <= Math.min(width - 1, x + 1); column += 1) {
      const label = labels[row * width + column] as number;
      if (label !== 0) around.push(words[label] as number);
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
