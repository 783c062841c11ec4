// Floor 4, for step 4. Two paints of a table as a pair: its name, whether it is one paint, its contrast, its weight in sums.
import type { Hex } from "../colour/colour.ts";
import { gradeOf, isClear, measureContrast } from "../colour/contrast.ts";
import type { PaintLook } from "./figures.ts";
import type { SwatchBook } from "./swatch.ts";
import type { EdgeTable, TableEdge } from "./table.ts";

/** Two paints of the original, by id and by name, the larger first. */
export interface PaintPair {
  readonly a: string;
  readonly b: string;
  readonly names: readonly [string, string];
}

/** Sums over edges: weights and lengths (flag heights), and the parts of them that are seen and that are clear. */
export interface Sums {
  weight: number;
  seen: number;
  length: number;
  clear: number;
}

/** Contrast from which an edge counts fully in clarity: where *clear* starts. */
const fullContrast = 45;

/** Returns the pair with the indexes `a` and `b`. */
export function pairOf(
  table: EdgeTable,
  looks: readonly PaintLook[],
  { a, b }: Pick<TableEdge, "a" | "b">,
): PaintPair {
  const idOf = (index: number): string => table.paints[index]?.id ?? "";
  return {
    a: idOf(a),
    b: idOf(b),
    names: [looks[a]?.name ?? "", looks[b]?.name ?? ""],
  };
}

/** Returns the contrast of two looks in percent; an uneven one counts with whichever end is nearer to the other. */
export function contrastOf(one: PaintLook, other: PaintLook, book: SwatchBook): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (const a of endsOf(one)) {
    for (const b of endsOf(other)) {
      lowest = Math.min(lowest, measureContrast(book.reflectanceOf(a), book.reflectanceOf(b)));
    }
  }
  return lowest;
}

/** Returns the colours a look counts with: its own, and its ends where it is uneven. */
export function endsOf({ hex, uneven }: PaintLook): readonly Hex[] {
  return uneven === null ? [hex] : [hex, uneven.lightest, uneven.darkest];
}

/** Adds an edge of `contrast` percent to `sums`. */
export function addEdge(sums: Sums, { length, focusLength }: TableEdge, contrast: number): void {
  const weight = length + focusLength;
  sums.weight += weight;
  sums.seen += weight * Math.min(1, contrast / fullContrast);
  sums.length += length;
  if (isClear(gradeOf(contrast))) sums.clear += length;
}
