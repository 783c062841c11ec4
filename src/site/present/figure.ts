// Floor 6. The figure an author asks for in prose: one edge, before and after.
import type { Comparison } from "../../measure/comparison.ts";
import { type EdgeRow, presentEdge } from "./edge.ts";
import type { Format } from "./format.ts";

/**
 * Returns the edge between two colours, named as in the original and in either order, or undefined where the original
 * has no such edge. Names of colours have no `/` of their own.
 */
export function findEdgeFigure(edge: string, comparison: Comparison, format: Format): EdgeRow | undefined {
  const asked = edge.split("/").map((name) => name.trim().toLowerCase());
  if (asked.length !== 2) return undefined;
  const found = comparison.edges.find(({ names: [[a, b]], contrast: [before] }) => {
    const names = [a.toLowerCase(), b.toLowerCase()];
    return (
      before !== null && asked.every((name) => names.includes(name)) && names.every((n) => asked.includes(n))
    );
  });
  return found && presentEdge(found, comparison, format);
}
