// Floor 3, a check on step 2. What the true rendering shows where the label map gives another paint.
import { type Label, type List, type PaintIndex, paintOf } from "../svg/paintnumber.ts";
import type { LabelMap } from "./labelmap.ts";
import { type Raster, wordOf, wordsOf } from "./raster.ts";

/** Whether two colours, 0xrrggbb, are told apart at a glance. */
export type IsOther = (seen: number, expected: number) => boolean;

/** Stands for a colour where nothing shows. */
export const nothing = -1;

/** How many pixels around one have to have its label, so that no smoothed border is looked at. */
const within = 2;

/**
 * Returns, by colour (0xrrggbb, or {@link nothing}), how many pixels of `picture` show that where the map has a paint of
 * another colour, or none: exactly the colour of another paint, or, inside an area, anything that `isOther` tells apart.
 * `colours` is what each paint shows; undefined where that is not one colour: there only what is transparent
 * counts. Picture and map have the same size.
 */
export function countLost(
  picture: Raster,
  map: LabelMap,
  colours: List<PaintIndex, number | undefined>,
  isOther: IsOther,
): ReadonlyMap<number, number> {
  const pixels = wordsOf(picture);
  const words = colours.map((colour) => (colour === undefined ? undefined : wordOf(colour)));
  const known = new Set(words);
  const lost = new Map<number, number>();
  for (let at = 0; at < map.labels.length; at += 1) {
    const label = map.labels[at] as Label;
    const pixel = pixels[at] as number;
    const expected = label === 0 ? 0 : words[paintOf(label)];
    if (pixel === expected) continue;
    const seen = pixel >>> 24 < 128 ? nothing : codeOf(pixel);
    const isKnown = expected !== undefined && known.has(pixel) && !isMixture(map, words, at, pixel);
    const isWrong =
      seen === nothing
        ? label !== 0
        : label === 0 || (expected !== undefined && isOther(seen, codeOf(expected)));
    if (isKnown || (isWrong && isInside(map, at))) lost.set(seen, (lost.get(seen) ?? 0) + 1);
  }
  return lost;
}

const codeOf = (word: number): number => ((word & 0xff) << 16) | (word & 0xff00) | ((word >>> 16) & 0xff);

/** Whether a pixel can be a smoothed border of the paints around it: the colour of none, and no channel beyond theirs. */
function isMixture(
  { width, height, labels }: LabelMap,
  words: List<PaintIndex, number | undefined>,
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

/**
 * What counts as a border inside a label: the colour becomes another, as `isOther` tells, from one pixel to the one `reach`
 * to the right or below; with `isSame`, only where it stays the same half as far before and after, however soft the border is.
 */
export interface Border {
  readonly reach: number;
  readonly isOther: IsOther;
  readonly isSame?: IsOther;
}

/**
 * Returns, by label, how long the borders of each kind are that the true rendering shows inside one label, in pixels: the
 * longest of the kinds. Only `labels` are looked at.
 */
export function measureSteps(
  picture: Raster,
  map: LabelMap,
  labels: ReadonlySet<Label>,
  borders: readonly Border[],
): ReadonlyMap<Label, number> {
  const longest = new Map<Label, number>();
  if (labels.size === 0) return longest;
  const inside = map.labels.map((label, at) => (labels.has(label as Label) && isInside(map, at) ? 1 : 0));
  for (const border of borders)
    for (const [label, pixels] of measureBorder(wordsOf(picture), map, inside, border))
      longest.set(label, Math.max(longest.get(label) ?? 0, pixels));
  return longest;
}

function measureBorder(
  pixels: ReturnType<typeof wordsOf>,
  { width, height, labels }: LabelMap,
  inside: LabelMap["labels"],
  { reach, isOther, isSame }: Border,
): ReadonlyMap<Label, number> {
  const steps = new Map<Label, number>();
  const side = isSame === undefined ? 0 : Math.ceil(reach / 2);
  const wide = reach + 2 * side;
  const look = (first: number, stride: number, count: number): void => {
    let run = 0;
    for (let index = 0; index < count; index += 1) {
      const at = first + index * stride;
      run =
        inside[at] === 1 && (run === 0 || labels[at] === labels[at - stride]) ? run + 1 : (inside[at] ?? 0);
      if (run <= wide) continue;
      const codeAt = (back: number) => codeOf(pixels[at - back * stride] as number);
      // Most pixels of a paint are alike.
      if (pixels[at - side * stride] === pixels[at - (side + reach) * stride]) continue;
      const isBorder =
        isOther(codeAt(side), codeAt(side + reach)) &&
        (isSame === undefined ||
          (isSame(codeAt(0), codeAt(side)) && isSame(codeAt(side + reach), codeAt(wide))));
      const label = labels[at] as Label;
      if (isBorder) steps.set(label, (steps.get(label) ?? 0) + 1 / reach);
    }
  };
  for (let y = 0; y < height; y += 1) look(y * width, 1, width);
  for (let x = 0; x < width; x += 1) look(x, width, height);
  return steps;
}
