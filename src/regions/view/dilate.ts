// Floor 3, part of step 3. Thin pixels that lie near enough to a place where the disc fits are kept after all.
import type { LabelMap } from "../labelmap.ts";
import { down, left, right, type Stamp, stampFromCorner, stampsFor, up } from "./disc.ts";

/** States of a pixel: of a thin part; kept after all; a place where the disc fits, looked at. 0 is none of these. */
export const thin = 1;
const kept = 2;
const visited = 3;

/** Keeps every thin pixel within `reach` of a pixel of its paint on which the disc fits: stamps from the rim of those. */
export function reclaimFromCentres(
  map: LabelMap,
  state: Uint8Array,
  thinner: Int32Array,
  reach: number,
): void {
  const centres = new Centres(map, state, stampsFor(reach));
  for (let index = 0; index < thinner.length; index += 1) centres.visitAround(thinner[index] as number);
}

class Centres {
  private readonly map: LabelMap;
  private readonly state: Uint8Array;
  private readonly stamps: readonly Stamp[];
  private readonly span: number;

  constructor(map: LabelMap, state: Uint8Array, stamps: readonly Stamp[]) {
    this.map = map;
    this.state = state;
    this.stamps = stamps;
    this.span = 1 + Math.max(0, ...(stamps[15]?.dx ?? []));
  }

  visitAround(at: number): void {
    const { labels, width } = this.map;
    const label = labels[at] as number;
    const x = at % width;
    if (x > 0 && this.isPlace(at - 1, label)) this.stampFrom(at - 1, label);
    if (x + 1 < width && this.isPlace(at + 1, label)) this.stampFrom(at + 1, label);
    if (this.isPlace(at - width, label)) this.stampFrom(at - width, label);
    if (this.isPlace(at + width, label)) this.stampFrom(at + width, label);
  }

  private isPlace(at: number, label: number): boolean {
    const state = this.state[at];
    return state !== thin && state !== kept && this.map.labels[at] === label;
  }

  private stampFrom(at: number, label: number): void {
    const { state, span } = this;
    if (state[at] === visited) return;
    state[at] = visited;
    const { labels, width, height } = this.map;
    const y = (at / width) | 0;
    const x = at - y * width;
    const sides =
      (x > 0 && this.isPlace(at - 1, label) ? 0 : left) |
      (x + 1 < width && this.isPlace(at + 1, label) ? 0 : right) |
      (this.isPlace(at - width, label) ? 0 : up) |
      (this.isPlace(at + width, label) ? 0 : down);
    const { dx, dy } = this.stamps[sides] as Stamp;
    const isInside = x >= span && y >= span && x + span < width && y + span < height;
    for (let step = 0; step < dx.length; step += 1) {
      const px = x + (dx[step] as number);
      const py = y + (dy[step] as number);
      if (!isInside && (px < 0 || py < 0 || px >= width || py >= height)) continue;
      const pixel = py * width + px;
      if (state[pixel] === thin && labels[pixel] === label) state[pixel] = kept;
    }
  }
}

/** What is left to look at: all thin pixels, those not kept so far, and the distances that decide. */
export interface Leftover {
  readonly thinner: Int32Array;
  readonly left: Int32Array;
  /** How far other paints must be from a place, and how near a kept pixel must be to one, in pixels. */
  readonly apart: number;
  readonly reach: number;
}

/**
 * Keeps what lies within reach of a pixel corner on which the disc fits. Only corners of pixels on which it almost fits
 * can do so (a corner is no further from another paint than its pixels are, and 1/√2), and only those near pixels that
 * are left over can matter: the others have pixels nearer still. `distance` is four times the squared distance of each
 * pixel from another paint.
 */
export function reclaimFromCorners(
  map: LabelMap,
  distance: Uint16Array,
  state: Uint8Array,
  { thinner, left: open, apart, reach }: Leftover,
): void {
  // From a corner even the pixels straight ahead lie half a pixel aside.
  const clear = Math.hypot(apart, 0.5);
  const corners = new Corners(map, state, stampFromCorner(clear - 1e-9), stampFromCorner(reach));
  const almost = 4 * Math.max(0, clear - Math.SQRT1_2) ** 2 - 1e-9;
  const { width } = map;
  const isAlmost = (at: number): boolean => (distance[at] as number) >= almost;
  const near = new Blocks(map, open, reach + 2);
  for (let index = 0; index < thinner.length; index += 1) {
    const at = thinner[index] as number;
    if (!isAlmost(at) || !near.has(at)) continue;
    for (const corner of [at, at + 1, at + width, at + width + 1])
      if (
        !corners.isKnown(corner) &&
        isAlmost(corner) &&
        isAlmost(corner - 1) &&
        isAlmost(corner - width) &&
        isAlmost(corner - width - 1)
      )
        corners.visit(corner);
  }
}

/** Blocks of four pixels a side, and which of them lie within `reach` pixels of some. */
class Blocks {
  private readonly near: Uint8Array;
  private readonly columns: number;
  private readonly width: number;
  /** How many blocks the reach is, at most; so many are added on each side. */
  private readonly span: number;

  constructor({ width, height }: LabelMap, pixels: Int32Array, reach: number) {
    this.width = width;
    this.span = Math.ceil(reach / 4);
    this.columns = (width >> 2) + 1 + 2 * this.span;
    const own = new Uint8Array(this.columns * ((height >> 2) + 1 + 2 * this.span));
    this.near = new Uint8Array(own.length);
    for (let index = 0; index < pixels.length; index += 1) {
      const block = this.blockOf(pixels[index] as number);
      if (own[block] === 0) this.widen(block);
      own[block] = 1;
    }
  }

  has(at: number): boolean {
    return this.near[this.blockOf(at)] === 1;
  }

  private blockOf(at: number): number {
    const y = (at / this.width) | 0;
    return ((y >> 2) + this.span) * this.columns + ((at - y * this.width) >> 2) + this.span;
  }

  private widen(block: number): void {
    const { span, columns } = this;
    for (let row = -span; row <= span; row += 1) {
      const middle = block + row * columns;
      this.near.fill(1, middle - span, middle + span + 1);
    }
  }
}

class Corners {
  private readonly looked: Uint8Array;
  private readonly map: LabelMap;
  private readonly state: Uint8Array;
  private readonly apart: Stamp;
  private readonly reach: Stamp;

  constructor(map: LabelMap, state: Uint8Array, apart: Stamp, reach: Stamp) {
    this.map = map;
    this.state = state;
    this.apart = apart;
    this.reach = reach;
    this.looked = new Uint8Array(map.labels.length);
  }

  /** Corners are numbered by the pixel right below them. */
  isKnown(corner: number): boolean {
    return this.looked[corner] === 1;
  }

  visit(corner: number): void {
    this.looked[corner] = 1;
    const y = (corner / this.map.width) | 0;
    const x = corner - y * this.map.width;
    if (this.fits(x, y)) this.keepAround(x, y);
  }

  private fits(x: number, y: number): boolean {
    const { labels, width, height } = this.map;
    const label = labels[y * width + x];
    const { dx, dy } = this.apart;
    for (let step = 0; step < dx.length; step += 1) {
      const px = x + (dx[step] as number);
      const py = y + (dy[step] as number);
      if (px < 0 || py < 0 || px >= width || py >= height || labels[py * width + px] !== label) return false;
    }
    return true;
  }

  private keepAround(x: number, y: number): void {
    const { labels, width, height } = this.map;
    const label = labels[y * width + x];
    const { dx, dy } = this.reach;
    for (let step = 0; step < dx.length; step += 1) {
      const px = x + (dx[step] as number);
      const py = y + (dy[step] as number);
      if (px < 0 || py < 0 || px >= width || py >= height) continue;
      const pixel = py * width + px;
      if (this.state[pixel] === thin && labels[pixel] === label) this.state[pixel] = kept;
    }
  }
}
