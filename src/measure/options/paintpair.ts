// Floor 4, for the options. Two paints of a table as a pair: its name, and its contrast.
import { measureContrast } from "../../colour/contrast.ts";
import type { EdgeTable, TableEdge } from "../edgetable.ts";
import { endsOf, type PaintLook } from "../measurelooks.ts";
import type { SwatchBook } from "./swatchbook.ts";

/** Two paints of the original, by id and by name, the larger first. */
export interface PaintPair {
  readonly a: string;
  readonly b: string;
  readonly names: readonly [string, string];
}

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
