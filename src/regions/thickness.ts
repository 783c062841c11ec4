// Floor 3, part of step 3. How thick every part of a label map is, as far as the distance view asks.
import type { LabelMap } from "./label.ts";
import { eachContact, type Runs } from "./runs.ts";

/** Four times a squared distance in pixels: whole numbers for pixel centres and for pixel corners alike. */
type FourSquares = Uint16Array;

const farAway = 0xffff;

/**
 * Says which pixels belong to parts thinner than n pixels, for every n up to `greatest`.
 *
 * A part is n thick where a disc of diameter n fits: places for its centre are pixel centres for odd n and upper left
 * pixel corners for even n. For each place the distance to the nearest pixel of another label (or beyond the border)
 * is found once, by stamping outward from the pixels on either side of every line; a stamp leaves out the directions
 * in which a neighbour of its own label is nearer. Only pixels near a line are ever visited.
 */
export class Thickness {
  private readonly map: LabelMap;
  private readonly rim: Int32Array;
  private readonly fields: { odd?: Field; even?: Field } = {};
  private readonly greatest: number;

  constructor(map: LabelMap, runs: Runs, greatest: number) {
    this.map = map;
    this.greatest = greatest;
    this.rim = findRim(map, runs);
  }

  /** Returns the pixels that are not within reach of a place where a disc of diameter `n` fits, in no order. */
  findThinner(n: number): readonly number[] {
    if (n <= 1) return [];
    const field = this.fieldFor(n);
    // A middle pixel of a stripe n wide is (n + 1) / 2 from the first pixel outside; 0.4 less makes slanted stripes,
    // whose outer pixels lie closer to the true edge, count alike.
    const fits = 4 * (n / 2 + 0.1) ** 2;
    const state = new Uint8Array(this.map.labels.length);
    for (const at of field.touched) if ((field.distance[at] as number) < fits) state[at] = thin;
    // A right-angled corner lies √2 · (n − 1) / 2 from the nearest place where the disc fits: it stays whole.
    reclaim(this.map, field, state, (Math.SQRT2 * (n - 1)) / 2 + 0.05);
    return field.touched.filter((at) => state[at] === thin);
  }

  private fieldFor(n: number): Field {
    const parity = n % 2 === 0 ? "even" : "odd";
    const field = this.fields[parity] ?? measureField(this.map, this.rim, parity === "even" ? 1 : 0, this.greatest / 2 + 0.6);
    this.fields[parity] = field;
    return field;
  }
}

/** Distances of the places; `touched` lists the painted pixels whose place is nearer than the radius asked for. */
interface Field {
  readonly distance: FourSquares;
  readonly touched: readonly number[];
  readonly half: 0 | 1;
}

/** Pixels with a neighbour of another label. */
function findRim(map: LabelMap, runs: Runs): Int32Array {
  const { width, labels } = map;
  const seen = new Uint8Array(labels.length);
  const rim: number[] = [];
  const add = (at: number): void => {
    if (seen[at] === 1) return;
    seen[at] = 1;
    rim.push(at);
  };
  for (let y = 0; y < runs.height; y += 1) {
    for (let run = (runs.rowStart[y] as number) + 1; run < (runs.rowStart[y + 1] as number); run += 1) {
      const at = runs.start[run] as number;
      add(at - 1);
      add(at);
    }
    if (y === 0) continue;
    eachContact(runs, y, (above, below, from, to) => {
      if (runs.label[above] === runs.label[below]) return;
      for (let at = from; at < to; at += 1) {
        add(at - width);
        add(at);
      }
    });
  }
  return Int32Array.from(rim);
}

interface Stamp {
  readonly dx: Int32Array;
  readonly dy: Int32Array;
  readonly fourSquares: Int32Array;
}

/** Bits of the sides on which a pixel has no neighbour of its own label. */
const left = 1;
const right = 2;
const up = 4;
const down = 8;

function measureField(map: LabelMap, rim: Int32Array, half: 0 | 1, radius: number): Field {
  const { labels, width, height } = map;
  const distance = new Uint16Array(labels.length).fill(farAway);
  const touched: number[] = [];
  const stamps = Array.from({ length: 16 }, (_, sides) => makeStamp(radius - 1e-9, half, sides));
  const span = Math.ceil(radius) + 1;
  for (let index = 0; index < rim.length; index += 1) {
    const at = rim[index] as number;
    const x = at % width;
    const y = (at - x) / width;
    const label = labels[at] as number;
    const sides =
      (x > 0 && labels[at - 1] === label ? 0 : left) |
      (x + 1 < width && labels[at + 1] === label ? 0 : right) |
      (y > 0 && labels[at - width] === label ? 0 : up) |
      (y + 1 < height && labels[at + width] === label ? 0 : down);
    const { dx, dy, fourSquares } = stamps[sides] as Stamp;
    const isInside = x >= span && y >= span && x + span < width && y + span < height;
    for (let step = 0; step < dx.length; step += 1) {
      if (!isInside && isBeyond(x + (dx[step] as number), y + (dy[step] as number), width, height)) continue;
      const place = at + (dy[step] as number) * width + (dx[step] as number);
      const other = labels[place] as number;
      if (other === label || other === 0) continue;
      const before = distance[place] as number;
      const now = fourSquares[step] as number;
      if (now >= before) continue;
      if (before === farAway) touched.push(place);
      distance[place] = now;
    }
  }
  boundField(map, distance, touched, half, radius);
  return { distance, touched, half };
}

function isBeyond(x: number, y: number, width: number, height: number): boolean {
  return x < 0 || y < 0 || x >= width || y >= height;
}

/** Beyond the border lies another paint, as far as thickness goes. */
function boundField({ labels, width, height }: LabelMap, distance: FourSquares, touched: number[], half: 0 | 1, radius: number): void {
  const span = Math.ceil(radius);
  const bound = (x: number, y: number): void => {
    const at = y * width + x;
    if (labels[at] === 0) return;
    const away = Math.min(2 * x + 2 - half, 2 * y + 2 - half, 2 * (width - x) + half, 2 * (height - y) + half);
    if (away > 2 * radius || away * away >= (distance[at] as number)) return;
    if (distance[at] === farAway) touched.push(at);
    distance[at] = away * away;
  };
  for (let y = 0; y < height; y += 1) {
    const isInside = y >= span && y < height - span && width > 2 * span;
    if (!isInside) for (let x = 0; x < width; x += 1) bound(x, y);
    else {
      for (let x = 0; x < span; x += 1) bound(x, y);
      for (let x = width - span; x < width; x += 1) bound(x, y);
    }
  }
}

/**
 * Offsets (x, y) with |(x − half / 2, y − half / 2)| ≤ `radius` that lie straight on or towards one of `sides`: from a
 * pixel to places (`half` 0 or 1), or from a place to pixels (`half` 0 or −1).
 */
function makeStamp(radius: number, half: -1 | 0 | 1, sides: number): Stamp {
  const span = Math.ceil(radius) + 1;
  const found: { readonly x: number; readonly y: number; readonly fourSquares: number }[] = [];
  for (let y = -span; y <= span; y += 1) {
    for (let x = -span; x <= span; x += 1) {
      const fourSquares = (2 * x - half) ** 2 + (2 * y - half) ** 2;
      if (fourSquares > 4 * radius * radius || !isToward(2 * x - half, sides & left, sides & right) || !isToward(2 * y - half, sides & up, sides & down)) continue;
      found.push({ x, y, fourSquares });
    }
  }
  return { dx: Int32Array.from(found, ({ x }) => x), dy: Int32Array.from(found, ({ y }) => y), fourSquares: Int32Array.from(found, (offset) => offset.fourSquares) };
}

/** Up to half a pixel off, the neighbours are no nearer, so those offsets are never left out. */
function isToward(twice: number, before: number, behind: number): boolean {
  return twice < -1 ? before !== 0 : twice <= 1 || behind !== 0;
}

/** States of a pixel: of a thin part; kept after all; a place where the disc fits, looked at. */
const thin = 1;
const kept = 2;
const visited = 3;

/** Keeps every thin pixel within `reach` of a place of its paint where the disc fits: stamps from the rim of those. */
function reclaim(map: LabelMap, field: Field, state: Uint8Array, reach: number): void {
  const { labels, width, height } = map;
  const half = field.half === 1 ? -1 : 0;
  const stamps = Array.from({ length: 16 }, (_, sides) => makeStamp(reach, half, sides));
  const span = Math.ceil(reach) + 1;
  const isPlace = (at: number, label: number): boolean => labels[at] === label && state[at] !== thin && state[at] !== kept;
  const stampFrom = (at: number): void => {
    if (state[at] === visited) return;
    const label = labels[at] as number;
    const x = at % width;
    const y = (at - x) / width;
    const sides =
      (x > 0 && isPlace(at - 1, label) ? 0 : left) |
      (x + 1 < width && isPlace(at + 1, label) ? 0 : right) |
      (y > 0 && isPlace(at - width, label) ? 0 : up) |
      (y + 1 < height && isPlace(at + width, label) ? 0 : down);
    state[at] = visited;
    const { dx, dy } = stamps[sides] as Stamp;
    const isInside = x >= span && y >= span && x + span < width && y + span < height;
    for (let step = 0; step < dx.length; step += 1) {
      if (!isInside && isBeyond(x + (dx[step] as number), y + (dy[step] as number), width, height)) continue;
      const pixel = at + (dy[step] as number) * width + (dx[step] as number);
      if (state[pixel] === thin && labels[pixel] === label) state[pixel] = kept;
    }
  };
  for (const at of field.touched) {
    if (state[at] !== thin && state[at] !== kept) continue;
    const label = labels[at] as number;
    const x = at % width;
    if (x > 0 && isPlace(at - 1, label)) stampFrom(at - 1);
    if (x + 1 < width && isPlace(at + 1, label)) stampFrom(at + 1);
    if (at >= width && isPlace(at - width, label)) stampFrom(at - width);
    if (at + width < labels.length && isPlace(at + width, label)) stampFrom(at + width);
  }
}
