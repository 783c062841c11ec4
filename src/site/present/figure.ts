// Floor 6. The figure an author asks for in prose: one edge, before and after.
import type { Comparison } from "../../measure/comparison.ts";
import { findNamedEdge } from "../../study/prose.ts";
import { type EdgeRow, presentEdge } from "./edge.ts";
import type { PlaceEdge } from "./edgekey.ts";
import type { Format } from "./format.ts";

/**
 * Returns the edge between two colours, named as in the original and in either order, or undefined where the original
 * has no such edge.
 */
export function findEdgeFigure(
  edge: string,
  comparison: Comparison,
  format: Format,
  address?: PlaceEdge,
): EdgeRow | undefined {
  const found = findNamedEdge(edge, comparison.edges);
  return found && presentEdge(found, comparison, format, address);
}
