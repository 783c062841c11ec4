// Floor 3, for views from far away. How deep every pixel lies in its paint: the exact distance to the nearest pixel of
// another label, so that a coarser map can still tell what a thin outline keeps apart.
import type { LabelMap } from "../labelmap.ts";
import { giveBack, takeFloats, takeWords } from "../scratch.ts";

/**
 * Returns, for each pixel, the squared distance in pixels from its centre to the centre of the nearest pixel of another
 * label, transparent ones and those beyond the border among them. What is `furthest` or more may be given as any such
 * distance, which spares most of the work. Two passes, linear in pixels.
 *
 * Source: P. Felzenszwalb, D. Huttenlocher, “Distance Transforms of Sampled Functions”, Theory of Computing 8, 2012,
 * 415–428: columns first, then the lower envelope of parabolas along each row; here run by run of one label.
 */
export function measureDepth(map: LabelMap, furthest = Number.POSITIVE_INFINITY): Float32Array {
  const { width, height, labels } = map;
  const columns = measureColumns(map);
  const depth = takeFloats(labels.length);
  const envelope = new Envelope(width + 2, furthest);
  for (let y = 0; y < height; y += 1) {
    const row = y * width;
    for (let from = 0; from < width; ) {
      const label = labels[row + from];
      let to = from + 1;
      while (to < width && labels[row + to] === label) to += 1;
      envelope.fill(columns, depth, row + from, to - from);
      from = to;
    }
  }
  giveBack(columns);
  return depth;
}

/** Returns how many rows each pixel is from the nearest of another label in its column, up or down. */
function measureColumns({ width, height, labels }: LabelMap): Uint16Array {
  const rows = takeWords(labels.length);
  rows.fill(1, 0, width);
  for (let at = width; at < labels.length; at += 1)
    rows[at] = labels[at] === labels[at - width] ? (rows[at - width] as number) + 1 : 1;
  rows.fill(1, (height - 1) * width);
  for (let at = labels.length - width - 1; at >= 0; at -= 1) {
    const below = labels[at] === labels[at + width] ? (rows[at + width] as number) + 1 : 1;
    if (below < (rows[at] as number)) rows[at] = below;
  }
  return rows;
}

/** The lower envelope of the parabolas that stand on one run, and on the pixels before and behind it at height 0. */
class Envelope {
  private readonly places: Int32Array;
  private readonly heights: Float64Array;
  private readonly starts: Float64Array;
  private readonly furthest: number;

  constructor(length: number, furthest: number) {
    this.furthest = furthest;
    this.places = new Int32Array(length);
    this.heights = new Float64Array(length);
    this.starts = new Float64Array(length);
  }

  /** Writes the squared distances of the run of `length` pixels that begins at pixel `first`. */
  fill(columns: Uint16Array, depth: Float32Array, first: number, length: number): void {
    let top = this.push(-1, -1, 0);
    for (let x = 0; x < length; x += 1) {
      const rows = columns[first + x] as number;
      if (rows < this.furthest) top = this.push(top, x, rows * rows);
    }
    if (top === 0) {
      this.fillBetween(depth, first, length);
      return;
    }
    top = this.push(top, length, 0);
    for (let x = 0, at = 0; x < length; x += 1) {
      while (at < top && (this.starts[at + 1] as number) < x) at += 1;
      const away = x - (this.places[at] as number);
      depth[first + x] = away * away + (this.heights[at] as number);
    }
  }

  /** The same where nothing but the ends of the run is near. */
  private fillBetween(depth: Float32Array, first: number, length: number): void {
    const ends = Math.min(Math.ceil(length / 2), Math.ceil(Math.min(this.furthest, length)));
    depth.fill(this.furthest * this.furthest, first + ends, first + length - ends);
    for (let x = 0; x < ends; x += 1) {
      depth[first + x] = (x + 1) * (x + 1);
      depth[first + length - 1 - x] = (x + 1) * (x + 1);
    }
  }

  /** Adds the parabola at `place` behind those up to `top`; returns the new top. */
  private push(top: number, place: number, height: number): number {
    let at = top;
    let start = Number.NEGATIVE_INFINITY;
    for (; at >= 0; at -= 1) {
      const before = this.places[at] as number;
      start =
        (height + place * place - ((this.heights[at] as number) + before * before)) / (2 * (place - before));
      if (start > (this.starts[at] as number)) break;
    }
    if (at < 0) start = Number.NEGATIVE_INFINITY;
    this.places[at + 1] = place;
    this.heights[at + 1] = height;
    this.starts[at + 1] = start;
    return at + 1;
  }
}
