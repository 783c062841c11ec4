// Floor 3, step 4. Lines between paints, traced between the pixels of a label map. One method and one tolerance for
// every flag: follow the cracks between two labels from junction to junction, take the middle of every crack, and
// straighten the path as long as no middle lies further than `tolerance` from it.
import type { LabelMap } from "./label.ts";
import { measurePath, simplify } from "./path.ts";

/** One line: where the labels `a` < `b` meet, as x, y pairs in pixels from the upper hoist corner. */
export interface Line {
  readonly a: number;
  readonly b: number;
  readonly points: readonly number[];
  /** In pixels. */
  readonly length: number;
  /** Share of the line, 0 to 1, that has the focus on at least one side. */
  readonly focusShare: number;
}

/** How far, in pixels, the middle of a crack may lie from the straightened line. */
export const tolerance = 1.1;

const right = 1;
const down = 2;

/**
 * Traces every line of the map. The border of the picture and of transparent parts (label 0) is no line.
 * `focus` is 1 where a pixel belongs to the focus. Time is linear in pixels plus cracks; two bytes a pixel of memory.
 */
export function traceLines(map: LabelMap, focus?: Uint8Array): readonly Line[] {
  return new Tracer(map, focus).trace();
}

class Tracer {
  private readonly cracks: Uint8Array;
  private readonly walked: Uint8Array;
  private readonly stride: number;
  private readonly nodes: number[] = [];
  private readonly lines: Line[] = [];
  private readonly map: LabelMap;

  private readonly focus: Uint8Array | undefined;

  constructor(map: LabelMap, focus: Uint8Array | undefined) {
    this.map = map;
    this.focus = focus;
    this.stride = map.width + 1;
    this.cracks = new Uint8Array(this.stride * (map.height + 1));
    this.walked = new Uint8Array(this.cracks.length);
  }

  trace(): readonly Line[] {
    this.findCracks();
    for (const node of this.nodes) if (this.degreeOf(node) !== 2) this.walkFrom(node);
    for (const node of this.nodes) this.walkFrom(node);
    return this.lines;
  }

  /** Marks each crack at its upper or left node. */
  private findCracks(): void {
    const { labels, width, height } = this.map;
    const { cracks, stride, nodes } = this;
    for (let y = 0; y < height; y += 1) {
      let at = y * width;
      let node = y * stride;
      let before = 0;
      for (let x = 0; x < width; x += 1, at += 1, node += 1) {
        const label = labels[at] as number;
        if (label === 0) {
          before = 0;
          continue;
        }
        const above = y === 0 ? 0 : (labels[at - width] as number);
        const bits = (before !== 0 && before !== label ? down : 0) | (above !== 0 && above !== label ? right : 0);
        if (bits !== 0) {
          cracks[node] = bits;
          nodes.push(node);
        }
        before = label;
      }
    }
  }

  private degreeOf(node: number): number {
    const { cracks, stride } = this;
    const own = cracks[node] as number;
    return (own & 1) + (own >> 1) + ((cracks[node - 1] ?? 0) & right) + (((cracks[node - stride] ?? 0) & down) >> 1);
  }

  /** Walks every crack that leaves `node` and was not walked yet. The far ends of lines count as starts too. */
  private walkFrom(node: number): void {
    for (let direction = 0; direction < 4; direction += 1) {
      if (this.isOpen(node, direction)) this.walk(node, direction);
    }
  }

  /** Directions: 0 right, 1 down, 2 left, 3 up. */
  private isOpen(node: number, direction: number): boolean {
    const at = this.crackOf(node, direction);
    const bit = direction % 2 === 0 ? right : down;
    return ((this.cracks[at] ?? 0) & bit) !== 0 && ((this.walked[at] ?? 0) & bit) === 0;
  }

  private crackOf(node: number, direction: number): number {
    return direction === 2 ? node - 1 : direction === 3 ? node - this.stride : node;
  }

  private walk(start: number, first: number): void {
    const { stride } = this;
    const pair = this.pairOf(start, first);
    const points: number[] = [];
    let node = start;
    let direction = first;
    let focused = 0;
    for (;;) {
      if (this.focus !== undefined && this.isFocused(node, direction)) focused += 1;
      const crack = this.crackOf(node, direction);
      this.walked[crack] = (this.walked[crack] as number) | (direction % 2 === 0 ? right : down);
      const next = node + (direction === 0 ? 1 : direction === 1 ? stride : direction === 2 ? -1 : -stride);
      points.push(((node % stride) + (next % stride)) / 2, (Math.floor(node / stride) + Math.floor(next / stride)) / 2);
      node = next;
      if (node === start || this.degreeOf(node) !== 2) break;
      const following = this.continue(node, direction);
      if (following < 0 || this.pairOf(node, following) !== pair) break;
      direction = following;
    }
    this.close(start, node, pair, points, focused);
  }

  private continue(node: number, direction: number): number {
    for (let turn = 0; turn < 4; turn += 1) {
      const next = (direction + turn) % 4;
      if (turn !== 2 && this.isOpen(node, next)) return next;
    }
    return -1;
  }

  /** The two labels beside a crack, smaller first, as one number. */
  private pairOf(node: number, direction: number): number {
    const { labels, width } = this.map;
    const crack = this.crackOf(node, direction);
    const x = crack % this.stride;
    const y = (crack - x) / this.stride;
    const at = y * width + x;
    const one = labels[at] as number;
    const other = labels[direction % 2 === 0 ? at - width : at - 1] as number;
    return one < other ? one * 0x10000 + other : other * 0x10000 + one;
  }

  private isFocused(node: number, direction: number): boolean {
    const crack = this.crackOf(node, direction);
    const x = crack % this.stride;
    const at = ((crack - x) / this.stride) * this.map.width + x;
    return this.focus?.[at] === 1 || this.focus?.[direction % 2 === 0 ? at - this.map.width : at - 1] === 1;
  }

  private close(start: number, end: number, pair: number, middles: readonly number[], focused: number): void {
    const { stride } = this;
    const place = (node: number): readonly [number, number] => [node % stride, Math.floor(node / stride)];
    const isLoop = start === end && this.degreeOf(start) === 2;
    const path = isLoop ? [...middles, middles[0] as number, middles[1] as number] : [...place(start), ...middles, ...place(end)];
    const straight = simplify(path, tolerance);
    // A loop with less than three corners has shrunk to nothing: it is kept as it is.
    const points = isLoop && straight.length < 8 ? path : straight;
    this.lines.push({ a: Math.floor(pair / 0x10000), b: pair % 0x10000, points, length: measurePath(points), focusShare: (2 * focused) / middles.length });
  }
}
