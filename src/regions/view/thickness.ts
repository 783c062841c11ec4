// Floor 3, part of step 3. How thick every part of a label map is, as far as the distance view asks.
import type { LabelMap } from "../labelmap.ts";
import { PixelList, sortPixels } from "../pixellist.ts";
import type { Runs } from "../runs.ts";
import { giveBack, takeBytes, takeWords } from "../scratch.ts";
import { keepThin, reclaimFromCentres, reclaimFromCorners, thin } from "./dilate.ts";
import { down, left, right, type Stamp, stampsFor, up } from "./disc.ts";
import { findRim } from "./rim.ts";
import { findZone, type Zone } from "./thinzone.ts";

const farAway = 0xffff;

const hasAny = ({ length }: Int32Array): boolean => length > 0;

/**
 * Says which pixels belong to parts thinner than any thickness up to `greatest`, in pixels and parts of pixels.
 *
 * A part is so thick where a disc of that diameter fits, with its centre on a pixel centre or on a pixel corner (so
 * that odd and even thicknesses are met alike). For each pixel the distance to the nearest pixel of another label,
 * or beyond the border, is found once, by stamping outward from the pixels on either side of every line. Only the zone
 * in which parts are short in rows or columns is looked at: elsewhere nothing is thin.
 */
export class Thickness {
  private readonly map: LabelMap;
  private readonly runs: Runs;
  private known: Field | undefined;
  private readonly greatest: number;
  private readonly zone: Zone;

  constructor(map: LabelMap, runs: Runs, greatest: number) {
    this.map = map;
    this.runs = runs;
    this.greatest = greatest;
    this.zone = findZone(runs, greatest);
  }

  /**
   * Returns the pixels that are not within reach of a place where a disc of that diameter fits, in reading order. Where
   * `isWorth` denies it of pixels among which all of them are, none.
   */
  findThinner(thickness: number, isWorth: (pixels: Int32Array) => boolean = hasAny): Int32Array {
    if (thickness <= 1 || this.zone.isEmpty) return new Int32Array(0);
    // A middle pixel of a stripe is half its thickness and half a pixel from the first pixel outside. Slanted stripes,
    // whose outer pixels lie closer to the true edge, are met with a little less: then all slopes go at one thickness.
    const apart = thickness / 2 + 0.45;
    // A right-angled corner of a stripe n wide lies √2 · (n − 1) / 2 from the nearest place where the disc fits.
    const reach = (Math.SQRT2 * (Math.ceil(thickness) - 1)) / 2 + 0.05;
    const field = this.field();
    const state = takeBytes(this.map.labels.length);
    const thinner = markThin(field, 4 * apart * apart, state);
    reclaimFromCentres(this.map, state, thinner, reach);
    const left = keepThin(thinner, state);
    const goesOn = isWorth(left);
    if (goesOn) reclaimFromCorners(this.map, field.distance, state, { thinner, left, apart, reach });
    const found = goesOn ? sortPixels(keepThin(left, state)) : new Int32Array(0);
    giveBack(state, thinner, left);
    return found;
  }

  /** Gives back the memory of the distances; who asks again has them found anew. */
  release(): void {
    if (this.known !== undefined) giveBack(this.known.distance, this.known.touched);
    this.known = undefined;
  }

  private field(): Field {
    if (this.known !== undefined) return this.known;
    const rim = findRim(this.map, this.runs, this.zone);
    this.known = measureField(this.map, rim, this.zone, this.greatest / 2 + 0.6);
    giveBack(rim);
    return this.known;
  }
}

/** Marks the pixels whose own place is too near another paint, and lists them. */
function markThin({ touched, distance }: Field, fits: number, state: Uint8Array): Int32Array {
  const thinner = new PixelList();
  for (let index = 0; index < touched.length; index += 1) {
    const at = touched[index] as number;
    if ((distance[at] as number) >= fits) continue;
    state[at] = thin;
    thinner.add(at);
  }
  return thinner.pixels;
}

/**
 * Four times the squared distance of each place from the nearest pixel of another label; `touched` lists the painted
 * pixels whose place is nearer than the radius asked for.
 */
interface Field {
  readonly distance: Uint16Array;
  readonly touched: Int32Array;
}

function measureField(map: LabelMap, rim: Int32Array, zone: Zone, radius: number): Field {
  const { labels, width, height } = map;
  const distance = takeWords(labels.length).fill(farAway);
  const touched = new PixelList();
  const stamps = stampsFor(radius - 1e-9);
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
  boundField(map, zone, distance, touched, radius);
  return { distance, touched: touched.pixels };
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
  radius: number,
): void {
  const span = Math.ceil(radius);
  for (let y = 0; y < height; y += 1) {
    const isWhole = y < span || y >= height - span || width <= 2 * span;
    for (let x = 0; x < width; x += 1) {
      if (!isWhole && x === span) x = width - span;
      const at = y * width + x;
      if (labels[at] === 0 || !isNear(zone, x, y)) continue;
      const away = Math.min(x + 1, y + 1, width - x, height - y);
      const fourSquares = 4 * away * away;
      if (away > radius || fourSquares >= (distance[at] as number)) continue;
      if (distance[at] === farAway) touched.add(at);
      distance[at] = fourSquares;
    }
  }
}
