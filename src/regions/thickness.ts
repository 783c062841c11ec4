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
    const search = new Search(this.map, field, n, fits);
    return field.touched.filter((at) => (field.distance[at] as number) < fits && !search.reaches(at));
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
  const stamps = Array.from({ length: 16 }, (_, sides) => makeStamp(radius, half, sides));
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

/** Offsets from a pixel to the places nearer than `radius` that lie straight on or towards one of `sides`. */
function makeStamp(radius: number, half: 0 | 1, sides: number): Stamp {
  const span = Math.ceil(radius) + 1;
  const found: { readonly x: number; readonly y: number; readonly fourSquares: number }[] = [];
  for (let y = -span; y <= span; y += 1) {
    for (let x = -span; x <= span; x += 1) {
      const fourSquares = (2 * x - half) ** 2 + (2 * y - half) ** 2;
      if (fourSquares >= 4 * radius * radius || !isToward(x, half, sides & left, sides & right) || !isToward(y, half, sides & up, sides & down)) continue;
      found.push({ x, y, fourSquares });
    }
  }
  return { dx: Int32Array.from(found, ({ x }) => x), dy: Int32Array.from(found, ({ y }) => y), fourSquares: Int32Array.from(found, (offset) => offset.fourSquares) };
}

/** Offset 0 (for corners 0 and 1) is as near from the neighbours, so it is never left out. */
function isToward(offset: number, half: 0 | 1, before: number, behind: number): boolean {
  if (offset < 0) return before !== 0;
  return offset <= half || behind !== 0;
}

/** Looks for a place of the same paint near a pixel where the disc fits. */
class Search {
  private readonly dx: Int32Array;
  private readonly dy: Int32Array;
  private readonly straight: number;
  private readonly map: LabelMap;
  private readonly field: Field;
  private readonly fits: number;

  constructor(map: LabelMap, field: Field, n: number, fits: number) {
    this.map = map;
    this.field = field;
    this.fits = fits;
    this.straight = n >> 1;
    // A right-angled corner lies √2 · (n − 1) / 2 from the nearest place where the disc fits: it stays whole.
    const reach = 4 * ((Math.SQRT2 * (n - 1)) / 2 + 0.05) ** 2;
    const span = Math.ceil(n);
    const found: { readonly x: number; readonly y: number; readonly away: number }[] = [];
    for (let y = -span; y <= span; y += 1) {
      for (let x = -span; x <= span; x += 1) {
        const away = (2 * x - field.half) ** 2 + (2 * y - field.half) ** 2;
        if (away <= reach) found.push({ x, y, away });
      }
    }
    found.sort((a, b) => b.away - a.away);
    this.dx = Int32Array.from(found, ({ x }) => x);
    this.dy = Int32Array.from(found, ({ y }) => y);
  }

  reaches(at: number): boolean {
    const { width } = this.map;
    const label = this.map.labels[at] as number;
    const x = at % width;
    const y = (at - x) / width;
    const { straight } = this;
    // Beside a straight line the place lies straight ahead: four looks settle almost every pixel.
    if (this.isFit(x + straight, y, label) || this.isFit(x - straight, y, label) || this.isFit(x, y + straight, label) || this.isFit(x, y - straight, label)) return true;
    for (let step = 0; step < this.dx.length; step += 1) {
      if (this.isFit(x + (this.dx[step] as number), y + (this.dy[step] as number), label)) return true;
    }
    return false;
  }

  private isFit(x: number, y: number, label: number): boolean {
    const { width, height, labels } = this.map;
    if (isBeyond(x, y, width, height)) return false;
    const place = y * width + x;
    return labels[place] === label && (this.field.distance[place] as number) >= this.fits;
  }
}
