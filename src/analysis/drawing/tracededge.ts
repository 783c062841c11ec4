// Floor 6. Traced lines → plain data for figures: whose edge each line belongs to, and where it runs in flag heights.
import type { EdgeTable } from "../../measure/edgetable.ts";
import type { Line } from "../../regions/traceline.ts";
import type { EdgeLine } from "../result.ts";

/**
 * Returns the lines with the ids of their two paints, the larger paint first as in the edge table, and points in flag
 * heights to 0.001. `heightPixels` is the height of the map they were traced on.
 */
export function toEdgeLines(
  lines: readonly Line[],
  table: EdgeTable,
  heightPixels: number,
): readonly EdgeLine[] {
  const rankOf = new Map(table.order.map((index, rank) => [index, rank]));
  return lines.flatMap((line) => {
    const one = rankOf.get(line.a - 1);
    const other = rankOf.get(line.b - 1);
    if (one === undefined || other === undefined) return [];
    const idOf = (rank: number): string => table.paints[rank]?.id ?? "";
    const points = line.points.map((value) => Math.round((value / heightPixels) * 1000) / 1000);
    return [
      { a: idOf(Math.min(one, other)), b: idOf(Math.max(one, other)), points, focusShare: line.focusShare },
    ];
  });
}
