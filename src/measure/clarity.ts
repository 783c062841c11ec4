// Floor 4, step 2. From edges with contrast to the marks of a flag: clarity, strength, clear-edge share, the weakest edge.
import { clearFrom, gradeOf, isClear, strongFrom } from "../colour/contrast.ts";
import { edgeLimits } from "./limit.ts";

/** Figures of one edge with contrast (percent) and lengths (flag heights), as the marks need them. */
export interface WeighedEdge {
  readonly length: number;
  readonly focusLength: number;
  readonly contrast: number;
}

/**
 * Returns clarity in percent: Σ (length + focusLength) · min(1, contrast / 45) ÷ Σ (length + focusLength), or null
 * where there is no edge.
 *
 * Example: an edge of contrast 22.5 with the focus beside it and one of 90 without, equally long:
 * (2 · 0.5 + 1) / 3 = 66.7 %.
 */
export function measureClarity(edges: readonly WeighedEdge[]): number | null {
  return weigh(edges, clearFrom, (edge) => edge.length + edge.focusLength);
}

/** Returns strength in percent: as clarity, with 60 in place of 45; null where there is no edge. */
export function measureStrength(edges: readonly WeighedEdge[]): number | null {
  return weigh(edges, strongFrom, (edge) => edge.length + edge.focusLength);
}

/** Returns the clarity of the focus edges alone, in percent, or null where there is none. */
export function measureFocusClarity(edges: readonly WeighedEdge[]): number | null {
  return weigh(edges, clearFrom, (edge) => edge.focusLength);
}

function weigh(
  edges: readonly WeighedEdge[],
  full: number,
  weightOf: (edge: WeighedEdge) => number,
): number | null {
  let [seen, total] = [0, 0];
  for (const edge of edges) {
    const weight = weightOf(edge);
    total += weight;
    seen += weight * Math.min(1, edge.contrast / full);
  }
  return total === 0 ? null : 100 * (seen / total);
}

/** Returns the share of edge length that is clear or strong, 0 to 1, or null where there is no edge. */
export function measureClearShare(edges: readonly WeighedEdge[]): number | null {
  const total = sumLengths(edges);
  if (total === 0) return null;
  return edges.reduce((sum, edge) => sum + (isClear(gradeOf(edge.contrast)) ? edge.length : 0), 0) / total;
}

/** Returns the edges of at least 1 % of all edge length: those that decide. */
export function listDeciding<E extends { readonly length: number }>(edges: readonly E[]): readonly E[] {
  const least = edgeLimits.deciding * sumLengths(edges);
  return edges.filter(({ length }) => length > 0 && length >= least);
}

/** Returns the edge of lowest contrast among those that decide, or undefined. */
export function findWeakest<E extends WeighedEdge>(edges: readonly E[]): E | undefined {
  return listDeciding(edges).reduce<E | undefined>(
    (weakest, edge) => (weakest === undefined || edge.contrast < weakest.contrast ? edge : weakest),
    undefined,
  );
}

/** Returns a mark in whole percent, as marks are compared by it. What arithmetic leaves of a half rounds up. */
export function roundMark(percent: number): number {
  return Math.round(percent + 1e-9);
}

function sumLengths(edges: readonly { readonly length: number }[]): number {
  return edges.reduce((sum, { length }) => sum + length, 0);
}
