// Floor 3, step 4. Lines between paints, traced between the pixels of a label map. One method and one tolerance for
// every flag: follow the cracks between two labels from junction to junction, take the middle of every crack, and
// straighten the path as long as no middle lies further than `tolerance` from it.
import type { Label } from "../svg/paintnumber.ts";
import type { LabelMap } from "./labelmap.ts";
import { measurePath, simplify } from "./polyline.ts";
import { eachContact, findRuns, type Runs } from "./runs.ts";
import { giveBack, takeBytes } from "./scratch.ts";

/** One line: where the labels `a` < `b` meet, as x, y pairs in pixels from the upper hoist corner. */
export interface Line {
  readonly a: Label;
  readonly b: Label;
  readonly points: readonly number[];
  /** In pixels. */
  readonly length: number;
  /** Share of the line, 0 to 1, that has the focus on at least one side. */
  readonly focusShare: number;
  /** For each charge by number, the share of the line that bounds it; empty where the line bounds none. */
  readonly outlineShares: readonly number[];
}

/** Marks of a pixel: outside the focus, in it, and from this one on in a charge, counted from 0. */
export const firstCharge = 2;

/**
 * How far, in pixels, the middle of a crack may lie from the straightened line. Middles lie up to half a pixel from
 * the true line and so do the ends of a chord, so anything over 1 straightens a straight line whatever its slope.
 */
export const tolerance = 1.1;

/** Bits of a node (a pixel corner): a crack leads right or down from it; that crack was walked. */
const right = 1;
const down = 2;
const walked = 4;

/**
 * Traces every line of the map. The border of the picture and of transparent parts (label 0) is no line. `focus` marks
 * the pixels of the focus: 0 outside it, 1 in it, from {@link firstCharge} on in a charge. `runs` are those of the map.
 * Time is linear in runs and cracks; one byte a pixel.
 */
export function traceLines(map: LabelMap, focus?: Uint8Array, runs: Runs = findRuns(map)): readonly Line[] {
  return new Tracer(map, runs, focus).trace();
}

class Tracer {
  private readonly cracks: Uint8Array;
  private readonly stride: number;
  private readonly nodes: number[] = [];
  private readonly lines: Line[] = [];
  private hasTransparent = false;
  private readonly map: LabelMap;
  private readonly runs: Runs;
  private readonly focus: Uint8Array | undefined;

  constructor(map: LabelMap, runs: Runs, focus: Uint8Array | undefined) {
    this.map = map;
    this.runs = runs;
    this.focus = focus;
    this.stride = map.width + 1;
    // One node more at either end, so that looking left of the first or above it finds nothing.
    this.cracks = takeBytes(this.stride * (map.height + 2));
  }

  trace(): readonly Line[] {
    this.findCracks();
    for (const node of this.nodes) if (this.degreeOf(node) !== 2) this.walkFrom(node);
    for (const node of this.nodes) this.walkFrom(node);
    giveBack(this.cracks);
    return this.lines;
  }

  /** Marks each crack at its upper or left node. */
  private findCracks(): void {
    const { runs, cracks, nodes } = this;
    const { width, label, start, rowStart } = runs;
    const mark = (node: number, bit: number): void => {
      if (cracks[node] === 0) nodes.push(node);
      cracks[node] = (cracks[node] as number) | bit;
    };
    for (let y = 0; y < runs.height; y += 1) {
      const end = rowStart[y + 1] as number;
      for (let run = rowStart[y] as number; run < end; run += 1) {
        if (label[run] === 0) this.hasTransparent = true;
        else if (run > (rowStart[y] as number) && label[run - 1] !== 0)
          mark((start[run] as number) + y, down);
      }
      if (y === 0) continue;
      eachContact(runs, y, (above, below, from, to) => {
        if (label[above] === label[below] || label[above] === 0 || label[below] === 0) return;
        for (let at = from; at < to; at += 1) mark(at + y, right);
      });
    }
    // A node is numbered y · (width + 1) + x, a pixel y · width + x: they differ by y.
    if (width + 1 !== this.stride)
      throw new RangeError(`runs of width ${width} for a map of width ${this.map.width}`);
  }

  private degreeOf(node: number): number {
    const { cracks, stride } = this;
    const own = cracks[node] as number;
    return (
      (own & 1) + ((own >> 1) & 1) + ((cracks[node - 1] ?? 0) & 1) + (((cracks[node - stride] ?? 0) >> 1) & 1)
    );
  }

  /** Walks every crack that leaves `node` and was not walked yet. */
  private walkFrom(node: number): void {
    for (let direction = 0; direction < 4; direction += 1)
      if (this.isOpen(node, direction)) this.walk(node, direction);
  }

  /** Directions: 0 right, 1 down, 2 left, 3 up. */
  private isOpen(node: number, direction: number): boolean {
    const crack = direction === 2 ? node - 1 : direction === 3 ? node - this.stride : node;
    const bit = direction % 2 === 0 ? right : down;
    return ((this.cracks[crack] ?? 0) & (bit | (bit * walked))) === bit;
  }

  private walk(start: number, first: number): void {
    const { stride } = this;
    const startX = start % stride;
    const startY = (start - startX) / stride;
    const pair = this.pairBeside(startX, startY, first);
    const points: number[] = [];
    let [x, y, node, direction] = [startX, startY, start, first];
    let [cracks, focused, straight, last] = [0, 0, 0, -1];
    const outlines: number[] = [];
    for (;;) {
      const dx = direction === 0 ? 1 : direction === 2 ? -1 : 0;
      const dy = direction === 1 ? 1 : direction === 3 ? -1 : 0;
      const crack = direction === 2 ? node - 1 : direction === 3 ? node - stride : node;
      this.cracks[crack] = (this.cracks[crack] as number) | ((direction % 2 === 0 ? right : down) * walked);
      if (this.focus !== undefined && this.isFocused(this.focus, x, y, direction, outlines)) focused += 1;
      cracks += 1;
      // Middles between the first and the last of a straight stretch lie on it: they cannot be furthest from a chord.
      if (direction !== last) {
        if (straight > 1)
          points.push(
            x - 0.5 * ((last === 0 ? 1 : 0) - (last === 2 ? 1 : 0)),
            y - 0.5 * ((last === 1 ? 1 : 0) - (last === 3 ? 1 : 0)),
          );
        points.push(x + dx / 2, y + dy / 2);
        straight = 1;
        last = direction;
      } else straight += 1;
      x += dx;
      y += dy;
      node += dx + dy * stride;
      const following = node === start || this.degreeOf(node) !== 2 ? -1 : this.findNext(node, direction);
      if (following < 0 || (this.hasTransparent && this.pairBeside(x, y, following) !== pair)) {
        if (straight > 1) points.push(x - dx / 2, y - dy / 2);
        break;
      }
      direction = following;
    }
    this.close(
      [startX, startY],
      [x, y],
      pair,
      points,
      [focused, ...outlines].map((count) => (count ?? 0) / cracks),
    );
  }

  private findNext(node: number, direction: number): number {
    if (this.isOpen(node, direction)) return direction;
    const one = (direction + 1) % 4;
    if (this.isOpen(node, one)) return one;
    const other = (direction + 3) % 4;
    return this.isOpen(node, other) ? other : -1;
  }

  /** The two labels beside a crack, smaller first, as one number. */
  private pairBeside(x: number, y: number, direction: number): number {
    const [one, other] = this.pixelsBeside(x, y, direction);
    const a = this.map.labels[one] as number;
    const b = this.map.labels[other] as number;
    return a < b ? a * 0x10000 + b : b * 0x10000 + a;
  }

  private pixelsBeside(x: number, y: number, direction: number): readonly [number, number] {
    const { width } = this.map;
    const at = (direction === 3 ? y - 1 : y) * width + (direction === 2 ? x - 1 : x);
    return direction % 2 === 0 ? [at, at - width] : [at, at - 1];
  }

  /** Whether a crack has the focus beside it; counts it for each charge that it bounds. */
  private isFocused(focus: Uint8Array, x: number, y: number, direction: number, outlines: number[]): boolean {
    const [one, other] = this.pixelsBeside(x, y, direction);
    const [a, b] = [focus[one] as number, focus[other] as number];
    if (a === b) return a !== 0;
    for (const charge of [a - firstCharge, b - firstCharge])
      if (charge >= 0) outlines[charge] = (outlines[charge] ?? 0) + 1;
    return true;
  }

  private close(
    start: readonly [number, number],
    end: readonly [number, number],
    pair: number,
    middles: readonly number[],
    [focusShare = 0, ...outlineShares]: readonly number[],
  ): void {
    const isLoop =
      start[0] === end[0] && start[1] === end[1] && this.degreeOf(start[1] * this.stride + start[0]) === 2;
    const path = isLoop
      ? [...middles, middles[0] as number, middles[1] as number]
      : [...start, ...middles, ...end];
    const straight = simplify(path, tolerance);
    // A loop with less than three corners has shrunk to nothing: it is kept as it is.
    const points = isLoop && straight.length < 8 ? path : straight;
    this.lines.push({
      a: Math.floor(pair / 0x10000) as Label,
      b: (pair % 0x10000) as Label,
      points,
      length: measurePath(points),
      focusShare,
      outlineShares,
    });
  }
}
