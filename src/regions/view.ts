// Floor 3, step 3. The distance view: parts too thin to be told apart go to the neighbours that remain.
// A model of resolution: an opening of every paint by a disc as wide as the thinnest part that is seen.
import { fillVanished } from "./fill.ts";
import type { LabelMap } from "./label.ts";

/** tan of one arcminute: what a 20/20 eye resolves (standards: 20/20 is 1 arcminute of detail). */
const oneArcminute = Math.tan(Math.PI / (180 * 60));

/** Returns the thickness, in flag heights, under which parts are not told apart from `distanceHeights` away. */
export function measureThinnest(distanceHeights: number): number {
  return distanceHeights * oneArcminute;
}

/** Returns the map with each label replaced by `joins[label]`. */
export function joinLabels(map: LabelMap, joins: readonly number[]): LabelMap {
  if (joins.every((to, from) => to === from)) return map;
  const labels = new Uint16Array(map.labels.length);
  for (let at = 0; at < labels.length; at += 1) labels[at] = joins[map.labels[at] as number] as number;
  return { ...map, labels };
}

/**
 * Returns the map as seen when nothing thinner than `thinnestPixels` is told apart.
 *
 * A part stays if a disc of that diameter fits into its paint near it; right-angled corners stay whole. The border of
 * the flag and transparent parts bound a paint like any other. Where nothing would remain, the map stays as it is.
 * Thickness is met to the pixel: a stripe of n pixels stays from n = round(thinnestPixels).
 *
 * `whole`, where given, is the same map with labels joined that count as one paint for thickness.
 */
export function viewFrom(map: LabelMap, thinnestPixels: number, whole: LabelMap = map): LabelMap {
  const least = Math.round(thinnestPixels);
  if (least <= 1) return map;
  const opening = new Opening(whole, least);
  const vanished = opening.findVanished();
  if (vanished.length === 0 || vanished.length === opening.paintedPixels) return map;
  return { ...map, labels: fillVanished(map, vanished, opening.state) };
}

/** Returns every `factor`th pixel of every `factor`th row, for views in which nothing that thin is seen. */
export function shrinkMap(map: LabelMap, factor: number): LabelMap {
  if (factor <= 1) return map;
  const width = Math.max(1, Math.floor(map.width / factor));
  const height = Math.max(1, Math.floor(map.height / factor));
  return { width, height, exactShare: map.exactShare, labels: shrink(map.labels, map.width, factor, width, height) };
}

/** The same for a mask of `map`'s size. */
export function shrinkMask(mask: Uint8Array, map: LabelMap, factor: number): Uint8Array {
  if (factor <= 1) return mask;
  return Uint8Array.from(shrink(mask, map.width, factor, Math.max(1, Math.floor(map.width / factor)), Math.max(1, Math.floor(map.height / factor))));
}

function shrink(values: Uint8Array | Uint16Array, stride: number, factor: number, width: number, height: number): Uint16Array {
  const half = factor >> 1;
  const small = new Uint16Array(width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) small[y * width + x] = values[(y * factor + half) * stride + x * factor + half] as number;
  }
  return small;
}

/** State of a pixel: not looked at or core, eroded, kept after all. */
export const core = 0;
export const eroded = 1;
export const kept = 2;

interface Stamp {
  readonly dx: Int32Array;
  readonly dy: Int32Array;
}

/**
 * Erosion marks every place where the disc does not fit; places are pixel centres for odd diameters and upper left
 * pixel corners for even ones, so that the disc is as wide as it should be. Dilation keeps what lies near a place
 * where it fits. Only pixels near a change of label are ever visited.
 */
class Opening {
  readonly state: Uint8Array;
  paintedPixels = 0;
  private readonly map: LabelMap;
  private readonly shift: number;
  private readonly radius: number;
  private readonly reach: number;
  private readonly touched: number[] = [];

  constructor(map: LabelMap, least: number) {
    this.map = map;
    this.state = new Uint8Array(map.labels.length);
    this.shift = least % 2 === 0 ? 0.5 : 0;
    // A middle pixel of a stripe n wide is (n + 1) / 2 from the first pixel outside; 0.4 less makes slanted stripes,
    // whose outer pixels lie closer to the true edge, count alike.
    this.radius = least / 2 + 0.1;
    // A right-angled corner lies √2 · (n − 1) / 2 from the nearest place where the disc fits.
    this.reach = (Math.SQRT2 * (least - 1)) / 2 + 0.05;
  }

  findVanished(): number[] {
    this.erode();
    this.dilate();
    const vanished: number[] = [];
    for (const at of this.touched) if (this.state[at] === eroded) vanished.push(at);
    if (vanished.length > this.map.labels.length / 4) for (const label of this.map.labels) if (label !== 0) this.paintedPixels += 1;
    return vanished;
  }

  private erode(): void {
    const { labels, width, height } = this.map;
    const stamp = makeStamp(this.radius, this.shift);
    for (let y = 0; y < height; y += 1) {
      const row = y * width;
      for (let x = 0; x < width; x += 1) {
        const at = row + x;
        const label = labels[at];
        if ((x + 1 < width && labels[at + 1] !== label) || (x > 0 && labels[at - 1] !== label) || (y + 1 < height && labels[at + width] !== label) || (y > 0 && labels[at - width] !== label)) {
          this.stampOthers(x, y, label as number, stamp);
        }
      }
    }
    this.erodeBorder();
  }

  private stampOthers(x: number, y: number, label: number, { dx, dy }: Stamp): void {
    const { labels, width, height } = this.map;
    for (let index = 0; index < dx.length; index += 1) {
      const px = x + (dx[index] as number);
      const py = y + (dy[index] as number);
      if (px < 0 || py < 0 || px >= width || py >= height) continue;
      const at = py * width + px;
      const other = labels[at];
      if (other === label || other === 0 || this.state[at] !== core) continue;
      this.state[at] = eroded;
      this.touched.push(at);
    }
  }

  /** Beyond the border lies another paint, as far as thickness goes. */
  private erodeBorder(): void {
    const { width, height } = this.map;
    const before = Math.ceil(this.radius - 1 + this.shift);
    const behind = Math.ceil(this.radius - 1 - this.shift);
    for (let y = 0; y < height; y += 1) {
      const isEdgeRow = y < before || y >= height - behind;
      if (isEdgeRow) this.erodeSpan(y, 0, width);
      else {
        this.erodeSpan(y, 0, Math.min(width, before));
        this.erodeSpan(y, Math.max(0, width - behind), width);
      }
    }
  }

  private erodeSpan(y: number, from: number, to: number): void {
    const { labels, width } = this.map;
    for (let at = y * width + from; at < y * width + to; at += 1) {
      if (labels[at] === 0 || this.state[at] !== core) continue;
      this.state[at] = eroded;
      this.touched.push(at);
    }
  }

  private dilate(): void {
    const { labels, width, height } = this.map;
    const { dx, dy } = makeStamp(this.reach + 1e-9, -this.shift);
    for (const at of this.touched) {
      const label = labels[at] as number;
      const x = at % width;
      const y = (at - x) / width;
      // Looks from the eroded pixel for a place where the disc fits: offsets are those of the stamp, turned round.
      for (let index = 0; index < dx.length; index += 1) {
        const px = x - (dx[index] as number);
        const py = y - (dy[index] as number);
        if (px < 0 || py < 0 || px >= width || py >= height) continue;
        const place = py * width + px;
        if (this.state[place] === core && labels[place] === label) {
          this.state[at] = kept;
          break;
        }
      }
    }
  }
}

/** Offsets from a pixel to the places (pixel centres, or upper left corners with `shift` 0.5) closer than `radius`. */
function makeStamp(radius: number, shift: number): Stamp {
  const dx: number[] = [];
  const dy: number[] = [];
  const span = Math.ceil(radius) + 1;
  const offsets: { readonly x: number; readonly y: number; readonly away: number }[] = [];
  for (let y = -span; y <= span; y += 1) {
    for (let x = -span; x <= span; x += 1) {
      const away = Math.hypot(x - shift, y - shift);
      if (away < radius) offsets.push({ x, y, away });
    }
  }
  offsets.sort((a, b) => a.away - b.away);
  for (const offset of offsets) {
    dx.push(offset.x);
    dy.push(offset.y);
  }
  return { dx: Int32Array.from(dx), dy: Int32Array.from(dy) };
}
