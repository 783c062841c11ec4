// Floor 3, step 2. The picture of a label drawing → a map that says which paint each pixel shows.
import { type Label, type List, labelOf, type PaintIndex, paintOf } from "../svg/paintnumber.ts";
import { type Raster, wordOf, wordsOf } from "./raster.ts";
import { createRepeats } from "./repeatedrow.ts";

/**
 * Which paint each pixel shows, row by row from the upper hoist: a {@link Label}.
 * `exactShare` is the fraction of pixels that were exact codes (the rest took the nearest label).
 */
export interface LabelMap {
  readonly width: number;
  readonly height: number;
  readonly labels: Uint16Array;
  readonly exactShare: number;
}

const unknown = 0xffff;

/**
 * Share of pixels that may be no exact codes, and how many may anyway; a real drawing has 2 %. Beyond it is no smoothed border but a mask that lets a
 * part through, and to work inward would take minutes: those pixels have no label.
 */
const mostOpen = 0.1;
const fewOpen = 10_000;

/**
 * Reads a label picture. `codes` are the code colours (0xrrggbb) of the paints. Blended pixels (clip paths
 * are always anti-aliased) take the label of that known neighbour whose code is nearest to them.
 */
export function readLabels(raster: Raster, codes: List<PaintIndex, number>): LabelMap {
  const { width, height } = raster;
  const pixels = wordsOf(raster);
  const labels = new Uint16Array(width * height);
  const known = new Map<number, number>();
  for (const [paint, code] of codes.entries()) known.set(wordOf(code), labelOf(paint));
  const open: number[] = [];
  const repeats = createRepeats(pixels, width);
  for (let row = 0; row < labels.length; row += width) {
    if (repeats(row / width)) {
      labels.copyWithin(row, row - width, row);
      repeatOpen(open, row - width, width);
      continue;
    }
    let lastPixel = -1;
    let lastLabel = 0;
    for (let at = row; at < row + width; at += 1) {
      const pixel = pixels[at] as number;
      if (pixel !== lastPixel) {
        lastPixel = pixel;
        lastLabel = known.get(pixel) ?? (pixel >>> 24 < 128 ? 0 : unknown);
      }
      labels[at] = lastLabel;
      if (lastLabel === unknown) open.push(at);
    }
  }
  if (open.length > Math.max(fewOpen, mostOpen * labels.length)) for (const at of open) labels[at] = 0;
  else settle(labels, width, height, open, pixels, codes);
  return { width, height, labels, exactShare: 1 - open.length / Math.max(1, labels.length) };
}

/** The row above had open pixels from `rowAbove` on: this one has them in the same places. */
function repeatOpen(open: number[], rowAbove: number, width: number): void {
  let first = open.length;
  while (first > 0 && (open[first - 1] as number) >= rowAbove) first -= 1;
  for (const at of open.slice(first)) open.push(at + width);
}

/** Works inward from the known pixels, ring by ring, until no pixel is open. */
function settle(
  labels: Uint16Array,
  width: number,
  height: number,
  open: readonly number[],
  pixels: Uint32Array,
  codes: List<PaintIndex, number>,
): void {
  let waiting = open;
  while (waiting.length > 0) {
    const settled: { readonly at: number; readonly label: number }[] = [];
    const still: number[] = [];
    for (const at of waiting) {
      const label = nearestNeighbour(labels, width, height, at, pixels[at] as number, codes);
      if (label === unknown) still.push(at);
      else settled.push({ at, label });
    }
    if (settled.length === 0) {
      for (const at of still) labels[at] = 0;
      return;
    }
    for (const { at, label } of settled) labels[at] = label;
    waiting = still;
  }
}

function nearestNeighbour(
  labels: Uint16Array,
  width: number,
  height: number,
  at: number,
  pixel: number,
  codes: List<PaintIndex, number>,
): number {
  const x = at % width;
  const y = (at - x) / width;
  let best = unknown;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (let dy = -1; dy <= 1; dy += 1) {
    for (let dx = -1; dx <= 1; dx += 1) {
      if (x + dx < 0 || x + dx >= width || y + dy < 0 || y + dy >= height) continue;
      const label = labels[at + dy * width + dx] as Label;
      if (label === unknown || label === 0) continue;
      const distance = distanceOf(pixel, wordOf(codes[paintOf(label)] ?? 0)) + (dx !== 0 && dy !== 0 ? 1 : 0);
      if (distance < bestDistance) {
        best = label;
        bestDistance = distance;
      }
    }
  }
  return best;
}

function distanceOf(a: number, b: number): number {
  const red = (a & 0xff) - (b & 0xff);
  const green = ((a >> 8) & 0xff) - ((b >> 8) & 0xff);
  const blue = ((a >> 16) & 0xff) - ((b >> 16) & 0xff);
  return red * red + green * green + blue * blue;
}
