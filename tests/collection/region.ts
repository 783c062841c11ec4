// Sets of pixels, as one byte a pixel: which hold a label, what lies within 2 px of them, what lies 2 px inside.
import type { LabelMap } from "../../src/regions/labelmap.ts";

/** One byte a pixel, 1 where the pixel belongs to the set. */
export type PixelSet = Uint8Array | Uint16Array;

const withinTwo = offsets((squared) => squared <= 4);
const closerThanTwo = offsets((squared) => squared < 4);

/**
 * Returns the pixels of `map` that hold one of `labels`, in the map itself or in any of the samples that `fine`,
 * a whole number of times as large, takes of the pixel.
 */
export function findHolding(map: LabelMap, fine: LabelMap, labels: ReadonlySet<number>): PixelSet {
  return findWhere(map, fine, (label) => labels.has(label));
}

/** Returns the pixels of `map` that hold nothing but `labels`, in none of the 4 × 4 samples of `fine` either. */
export function findFilled(map: LabelMap, fine: LabelMap, labels: ReadonlySet<number>): PixelSet {
  return findWhere(map, fine, (label) => !labels.has(label)).map((held) => 1 - held);
}

function findWhere(map: LabelMap, fine: LabelMap, isWanted: (label: number) => boolean): PixelSet {
  const { first, others } = listHeld(map, fine);
  const wanted = Uint8Array.from({ length: 0x1_0000 }, (_, label) => (isWanted(label) ? 1 : 0));
  const set = first.map((label) => wanted[label] as number);
  for (const [pixel, labels] of others) if (labels.some((label) => wanted[label] === 1)) set[pixel] = 1;
  return set;
}

/** The labels that pixels hold: the one of each, and the others of those that hold several. */
interface Held {
  readonly first: Uint16Array;
  readonly others: ReadonlyMap<number, number[]>;
}

/** By the map of the samples, which are looked at once for all paints. */
const known = new WeakMap<LabelMap, Held>();

function listHeld(map: LabelMap, fine: LabelMap): Held {
  const found = known.get(fine);
  if (found !== undefined) return found;
  const first = map.labels;
  const others = new Map<number, number[]>();
  const factor = fine.width / map.width;
  for (let at = 0; at < fine.labels.length; at += 1) {
    const label = fine.labels[at] as number;
    const x = at % fine.width;
    const pixel = Math.floor((at - x) / fine.width / factor) * map.width + Math.floor(x / factor);
    if (label === first[pixel]) continue;
    const labels = others.get(pixel) ?? [];
    if (!labels.includes(label)) others.set(pixel, [...labels, label]);
  }
  known.set(fine, { first, others });
  return { first, others };
}

/**
 * Returns the pixels at an edge: they and the eight around them hold more than one label, in the samples of `fine`, or
 * lie at the border of the picture.
 */
export function findEdges(map: LabelMap, fine: LabelMap): PixelSet {
  const { width, height } = map;
  const least = new Uint16Array(width * height).fill(0xffff);
  const most = new Uint16Array(width * height);
  for (let at = 0; at < fine.labels.length; at += 1) {
    const x = at % fine.width;
    const pixel = (((at - x) / fine.width) >> 2) * width + (x >> 2);
    const label = fine.labels[at] as number;
    least[pixel] = Math.min(least[pixel] as number, label);
    most[pixel] = Math.max(most[pixel] as number, label);
  }
  return least.map((own, at) => {
    const x = at % width;
    const y = (at - x) / width;
    if (x === 0 || y === 0 || x === width - 1 || y === height - 1) return 1;
    for (let other = at - width; other <= at + width; other += width) {
      for (let dx = -1; dx <= 1; dx += 1) if (least[other + dx] !== own || most[other + dx] !== own) return 1;
    }
    return 0;
  });
}

/** Returns the pixels whose centre lies within 2 px of the centre of one of `set`. */
export function growTwo(set: PixelSet, width: number): PixelSet {
  const height = set.length / width;
  const grown = new Uint8Array(set.length);
  for (let at = 0; at < set.length; at += 1) {
    if (set[at] === 0) continue;
    for (const [dx, dy] of withinTwo) {
      const x = (at % width) + dx;
      const y = Math.floor(at / width) + dy;
      if (x >= 0 && x < width && y >= 0 && y < height) grown[y * width + x] = 1;
    }
  }
  return grown;
}

/** Returns the pixels of `set` with nothing outside it nearer than 2 px, from centre to centre. */
export function shrinkTwo(set: PixelSet, width: number): PixelSet {
  const height = set.length / width;
  return set.map((held, at) => {
    if (held === 0) return 0;
    const left = at % width;
    const top = (at - left) / width;
    const isInside = closerThanTwo.every(([dx, dy]) => {
      const x = left + dx;
      const y = top + dy;
      return x < 0 || x >= width || y < 0 || y >= height || set[y * width + x] === 1;
    });
    return isInside ? 1 : 0;
  });
}

function offsets(keep: (squared: number) => boolean): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (let dy = -2; dy <= 2; dy += 1)
    for (let dx = -2; dx <= 2; dx += 1) if (keep(dx * dx + dy * dy)) found.push([dx, dy]);
  return found;
}
