// Floor 3, part of step 3. Thin pixels that lie near enough to a place where the disc fits are kept after all.
import type { LabelMap } from "../labelmap.ts";
import { PixelList } from "../pixellist.ts";
import { giveBack, takeBytes } from "../scratch.ts";
import { down, left, right, ringFromCorner, type Stamp, stampsFor, stampsFromCorner, up } from "./disc.ts";

/** States of a pixel: of a thin part; kept after all; a place where the disc fits, looked at. 0 is none of these. */
export const thin = 1;
const kept = 2;
const visited = 3;

/** Returns those of `pixels` that are still thin. */
export function keepThin(pixels: Int32Array, state: Uint8Array): Int32Array {
  const left = new PixelList();
  for (let index = 0; index < pixels.length; index += 1)
    if (state[pixels[index] as number] === thin) left.add(pixels[index] as number);
  return left.pixels;
}

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
    if (this.isPlace(at - 1, label) && at % width > 0) this.stampFrom(at - 1, label);
    if (this.isPlace(at + 1, label) && (at + 1) % width > 0) this.stampFrom(at + 1, label);
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
      const stepX = dx[step] as number;
      const stepY = dy[step] as number;
      if (!isInside && isBeyond(x + stepX, y + stepY, this.map)) continue;
      const pixel = at + stepY * width + stepX;
      if (state[pixel] === thin && labels[pixel] === label) state[pixel] = kept;
    }
  }
}

function isBeyond(x: number, y: number, { width, height }: LabelMap): boolean {
  return x < 0 || y < 0 || x >= width || y >= height;
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
  const inner = Math.max(0, clear - Math.SQRT1_2);
  // Further in than the ring another paint would be too near one of the four pixels, which are of one paint if 1 is too near.
  const corners = new Corners(map, ringFromCorner(clear - 1e-9, inner > 1 ? inner - 1e-6 : 0));
  const almost = 4 * inner ** 2 - 1e-9;
  const { width } = map;
  const isAlmost = (at: number): boolean => (distance[at] as number) >= almost;
  const look = (corner: number): void => {
    if (
      !corners.isKnown(corner) &&
      isAlmost(corner) &&
      isAlmost(corner - 1) &&
      isAlmost(corner - width) &&
      isAlmost(corner - width - 1)
    )
      corners.visit(corner);
  };
  const near = new Blocks(map, open, reach + 2);
  for (let index = 0; index < thinner.length; index += 1) {
    const at = thinner[index] as number;
    if (!isAlmost(at) || !near.has(at)) continue;
    look(at);
    look(at + 1);
    look(at + width);
    look(at + width + 1);
  }
  corners.keepAround(state, stampsFromCorner(reach), Math.ceil(reach) + 1);
  corners.release();
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

/** Corners are numbered by the pixel right below them. */
class Corners {
  /** Of each corner: 0 not looked at, 1 the disc does not fit, 2 it does. */
  private readonly looked: Uint8Array;
  private readonly fitting = new PixelList();
  private readonly map: LabelMap;
  private readonly ring: Stamp;
  /** Pixels that the disc reaches on each side. */
  private readonly span: number;

  /** `ring`: what of the disc may show another paint, where its four middle pixels are as far from one as they have to be. */
  constructor(map: LabelMap, ring: Stamp) {
    this.map = map;
    this.ring = ring;
    this.span = 1 + Math.max(0, ...ring.dx);
    this.looked = takeBytes(map.labels.length);
  }

  release(): void {
    giveBack(this.looked);
  }

  isKnown(corner: number): boolean {
    return this.looked[corner] !== 0;
  }

  visit(corner: number): void {
    const fits = this.fits(corner);
    this.looked[corner] = fits ? 2 : 1;
    if (fits) this.fitting.add(corner);
  }

  private fits(corner: number): boolean {
    const { map, ring, span } = this;
    const { labels, width, height } = map;
    const y = (corner / width) | 0;
    const x = corner - y * width;
    if (x < span || y < span || x + span > width || y + span > height) return false;
    const label = labels[corner];
    for (let step = 0; step < ring.dx.length; step += 1)
      if (labels[corner + (ring.dy[step] as number) * width + (ring.dx[step] as number)] !== label)
        return false;
    return true;
  }

  /** Keeps what is thin and of one paint with a corner on which the disc fits, as far as the whole stamp reaches: `reach` pixels. */
  keepAround(state: Uint8Array, stamps: readonly Stamp[], reach: number): void {
    const corners = this.fitting.pixels;
    for (let index = 0; index < corners.length; index += 1) {
      const corner = corners[index] as number;
      this.stamp(corner, stamps[this.openSides(corner)] as Stamp, state, reach);
    }
  }

  /** The sides of a corner with no corner next to it on which the disc fits. */
  private openSides(corner: number): number {
    const { looked, map } = this;
    return (
      (looked[corner - 1] === 2 ? 0 : left) |
      (looked[corner + 1] === 2 ? 0 : right) |
      (looked[corner - map.width] === 2 ? 0 : up) |
      (looked[corner + map.width] === 2 ? 0 : down)
    );
  }

  private stamp(corner: number, { dx, dy }: Stamp, state: Uint8Array, reach: number): void {
    const { labels, width, height } = this.map;
    const label = labels[corner];
    const y = (corner / width) | 0;
    const x = corner - y * width;
    const isInside = x >= reach && y >= reach && x + reach < width && y + reach < height;
    for (let step = 0; step < dx.length; step += 1) {
      const stepX = dx[step] as number;
      const stepY = dy[step] as number;
      if (!isInside && isBeyond(x + stepX, y + stepY, this.map)) continue;
      const pixel = corner + stepY * width + stepX;
      if (state[pixel] === thin && labels[pixel] === label) state[pixel] = kept;
    }
  }
}
