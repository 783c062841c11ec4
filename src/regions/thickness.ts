// Floor 3, part of step 3. How thick every part of a label map is, as far as the distance view asks.
import type { LabelMap } from "./label.ts";
import { PixelList } from "./pixels.ts";
import { findRim } from "./rim.ts";
import type { Runs } from "./runs.ts";
import { down, left, right, type Stamp, stampsFor, up } from "./stamp.ts";
import { findZone, type Zone } from "./zone.ts";

const farAway = 0xffff;

/**
 * Says which pixels belong to parts thinner than any thickness up to `greatest`, in pixels and parts of pixels.
 *
 * A part is so thick where a disc of that diameter fits, with its centre on a pixel centre or on a pixel corner (so
 * that odd and even thicknesses are met alike). For each such place the distance to the nearest pixel of another label,
 * or beyond the border, is found once, by stamping outward from the pixels on either side of every line. Only the zone
 * in which parts are short in rows or columns is looked at: elsewhere nothing is thin.
 */
export class Thickness {
  private readonly map: LabelMap;
  private readonly runs: Runs;
  private readonly fields: { centres?: Field; corners?: Field } = {};
  private readonly greatest: number;
  private readonly zone: Zone;
  private rim: Int32Array | undefined;

  constructor(map: LabelMap, runs: Runs, greatest: number) {
    this.map = map;
    this.runs = runs;
    this.greatest = greatest;
    this.zone = findZone(runs, greatest);
  }

  /** Returns the pixels that are not within reach of a place where a disc of that diameter fits, in no order. */
  findThinner(thickness: number): Int32Array {
    if (thickness <= 1 || this.zone.isEmpty) return new Int32Array(0);
    // A middle pixel of a stripe is half its thickness and half a pixel from the first pixel outside. Slanted stripes,
    // whose outer pixels lie closer to the true edge, are met with a little less: then all slopes go at one thickness.
    const fits = 4 * (thickness / 2 + 0.45) ** 2;
    // A right-angled corner of a stripe n wide lies √2 · (n − 1) / 2 from the nearest place where the disc fits.
    const reach = (Math.SQRT2 * (Math.ceil(thickness) - 1)) / 2 + 0.05;
    const centres = this.fieldFor("centres");
    const state = markThin(centres, fits, this.map.labels.length);
    const thinner = listThin(centres, state);
    new Reclaim(this.map, state, state, stampsFor(reach, 0)).run(thinner);
    const corners = this.fieldFor("corners");
    // From a corner even the pixels straight ahead lie half a pixel aside.
    const cornerState = markThin(corners, fits + 1, this.map.labels.length);
    const reclaim = new Reclaim(this.map, cornerState, state, stampsFor(reach, -1));
    reclaim.run(listThin(corners, cornerState));
    reclaim.runCorners(thinner);
    return thinner.filter((at) => state[at] === thin);
  }

  private fieldFor(places: "centres" | "corners"): Field {
    this.rim ??= findRim(this.map, this.runs, this.zone);
    const field =
      this.fields[places] ??
      measureField(this.map, this.rim, this.zone, places === "corners" ? 1 : 0, this.greatest / 2 + 0.6);
    this.fields[places] = field;
    return field;
  }
}

function markThin({ touched, distance }: Field, fits: number, pixels: number): Uint8Array {
  const state = new Uint8Array(pixels);
  for (let index = 0; index < touched.length; index += 1) {
    const at = touched[index] as number;
    if ((distance[at] as number) < fits) state[at] = thin;
  }
  return state;
}

function listThin({ touched }: Field, state: Uint8Array): Int32Array {
  return touched.filter((at) => state[at] === thin);
}

/**
 * Four times the squared distance of each place from the nearest pixel of another label; `touched` lists the painted
 * pixels whose place is nearer than the radius asked for. `half` is 1 where places are corners.
 */
interface Field {
  readonly distance: Uint16Array;
  readonly touched: Int32Array;
  readonly half: 0 | 1;
}

function measureField(map: LabelMap, rim: Int32Array, zone: Zone, half: 0 | 1, radius: number): Field {
  const { labels, width, height } = map;
  const distance = new Uint16Array(labels.length).fill(farAway);
  const touched = new PixelList();
  const stamps = stampsFor(radius - 1e-9, half);
  const span = Math.ceil(radius) + 1;
  for (let index = 0; index < rim.length; index += 1) {
    const at = rim[index] as number;
    const y = (at / width) | 0;
    const x = at - y * width;
    const label = labels[at] as number;
    const sides =
      (x > 0 && labels[at - 1] === label ? 0 : left) |
      (x + 1 < width && labels[at + 1] === label ? 0 : right) |
      (y > 0 && labels[at - width] === label ? 0 : up) |
      (y + 1 < height && labels[at + width] === label ? 0 : down);
    const { dx, dy, fourSquares } = stamps[sides] as Stamp;
    const isInside = x >= span && y >= span && x + span < width && y + span < height;
    for (let step = 0; step < dx.length; step += 1) {
      const stepX = dx[step] as number;
      const stepY = dy[step] as number;
      if (!isInside && isBeyond(x + stepX, y + stepY, width, height)) continue;
      const place = at + stepY * width + stepX;
      const now = fourSquares[step] as number;
      const before = distance[place] as number;
      if (now >= before) continue;
      const other = labels[place] as number;
      if (other === label || other === 0) continue;
      if (before === farAway && isNear(zone, x + stepX, y + stepY)) touched.add(place);
      distance[place] = now;
    }
  }
  boundField(map, zone, distance, touched, half, radius);
  return { distance, touched: touched.pixels, half };
}

function isNear({ near, bits, columns }: Zone, x: number, y: number): boolean {
  return near[(y >> bits) * columns + (x >> bits)] === 1;
}

function isBeyond(x: number, y: number, width: number, height: number): boolean {
  return x < 0 || y < 0 || x >= width || y >= height;
}

/** Beyond the border lies another paint, as far as thickness goes. */
function boundField(
  { labels, width, height }: LabelMap,
  zone: Zone,
  distance: Uint16Array,
  touched: PixelList,
  half: 0 | 1,
  radius: number,
): void {
  const span = Math.ceil(radius);
  for (let y = 0; y < height; y += 1) {
    const isWhole = y < span || y >= height - span || width <= 2 * span;
    for (let x = 0; x < width; x += 1) {
      if (!isWhole && x === span) x = width - span;
      const at = y * width + x;
      if (labels[at] === 0 || !isNear(zone, x, y)) continue;
      const away = Math.min(
        2 * x + 2 - half,
        2 * y + 2 - half,
        2 * (width - x) + half,
        2 * (height - y) + half,
      );
      // Beyond the border too, the pixels straight ahead of a corner lie half a pixel aside.
      const fourSquares = away * away + half;
      if (away > 2 * radius || fourSquares >= (distance[at] as number)) continue;
      if (distance[at] === farAway) touched.add(at);
      distance[at] = fourSquares;
    }
  }
}

/** States of a pixel: of a thin part; kept after all; a place where the disc fits, looked at. */
const thin = 1;
const kept = 2;
const visited = 3;

/**
 * Keeps every thin pixel within reach of a place of its paint where the disc fits: stamps from the rim of those.
 * `state` are the places, `pixels` the pixels; for pixel centres they are one.
 */
class Reclaim {
  private readonly map: LabelMap;
  private readonly state: Uint8Array;
  private readonly pixels: Uint8Array;
  private readonly stamps: readonly Stamp[];
  private readonly span: number;

  constructor(map: LabelMap, state: Uint8Array, pixels: Uint8Array, stamps: readonly Stamp[]) {
    this.map = map;
    this.state = state;
    this.pixels = pixels;
    this.stamps = stamps;
    this.span = 1 + Math.max(0, ...(stamps[15]?.dx ?? []));
  }

  run(thinner: Int32Array): void {
    const { labels, width } = this.map;
    for (let index = 0; index < thinner.length; index += 1) {
      const at = thinner[index] as number;
      const label = labels[at] as number;
      const x = at % width;
      if (x > 0 && this.isPlace(at - 1, label)) this.stampFrom(at - 1, label);
      if (x + 1 < width && this.isPlace(at + 1, label)) this.stampFrom(at + 1, label);
      if (this.isPlace(at - width, label)) this.stampFrom(at - width, label);
      if (this.isPlace(at + width, label)) this.stampFrom(at + width, label);
    }
  }

  /** Corners that fit and have none beside them that do not: those of the pixels themselves. */
  runCorners(thinner: Int32Array): void {
    const { labels, width } = this.map;
    for (let index = 0; index < thinner.length; index += 1) {
      const at = thinner[index] as number;
      if (this.pixels[at] !== thin) continue;
      const label = labels[at] as number;
      const right = at % width === width - 1 ? 0 : 1;
      for (const corner of [at, at + right, at + width, at + width + right]) {
        if (this.isPlace(corner, label)) this.stampFrom(corner, label);
      }
    }
  }

  private isPlace(at: number, label: number): boolean {
    const state = this.state[at];
    return state !== thin && state !== kept && this.map.labels[at] === label;
  }

  private stampFrom(at: number, label: number): void {
    const { state, pixels, span } = this;
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
      if (!isInside && isBeyond(x + stepX, y + stepY, width, height)) continue;
      const pixel = at + stepY * width + stepX;
      if (pixels[pixel] === thin && labels[pixel] === label) pixels[pixel] = kept;
    }
  }
}
