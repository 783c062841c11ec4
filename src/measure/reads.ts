// Floor 4. From how far away the focus can still be made out.
import { gradeOf, isClear } from "../colour/contrast.ts";
import type { TableEdge, TableFocus } from "./table.ts";

/** Viewing distances that are tried, in flag heights. */
export const distanceSteps = [10, 20, 40, 80, 160, 320] as const;

/**
 * The focus fails where less of its area is left, or less of its remaining length is clear (our own judgement); where
 * it has no edge at all it cannot be seen.
 */
export const leastRemaining = 1 / 2;
const leastClear = 2 / 3;

/**
 * Returns the last distance step before the first at which the focus fails, in flag heights; null where it fails at
 * the first or there is no focus. `contrastOf` gives the contrast of an edge in percent, 0 for a merged one, null for
 * two paints that are one, which make no edge.
 */
export function measureReadsTo(
  focus: TableFocus,
  contrastOf: (edge: TableEdge) => number | null,
): number | null {
  let reached: number | null = null;
  for (const step of focus.steps) {
    if (fails(step.remaining, step.edges, contrastOf)) return reached;
    reached = step.distance;
  }
  return reached;
}

function fails(
  remaining: number,
  edges: readonly TableEdge[],
  contrastOf: (edge: TableEdge) => number | null,
): boolean {
  if (remaining < leastRemaining) return true;
  let all = 0;
  let clear = 0;
  for (const edge of edges) {
    const contrast = contrastOf(edge);
    if (contrast === null) continue;
    all += edge.focusLength;
    if (isClear(gradeOf(contrast))) clear += edge.focusLength;
  }
  return all === 0 || clear < leastClear * all;
}

/**
 * Says whether a focus with these edges, or lines of edges, surely fails: by more than what adding them up in another
 * order could change. Saves looking from further away.
 */
export function isSurelyLost(
  lines: readonly { readonly focusLength: number; readonly contrast: number }[],
): boolean {
  const all = lines.reduce((sum, { focusLength }) => sum + focusLength, 0);
  const clear = lines.reduce(
    (sum, { focusLength, contrast }) => sum + (isClear(gradeOf(contrast)) ? focusLength : 0),
    0,
  );
  return clear < (leastClear - 1e-6) * all;
}
