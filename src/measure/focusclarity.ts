// Floor 4. What is left of the focus from each viewing distance, how clear it is there, and to where it lasts.
import { gradeOf, isClear } from "../colour/contrast.ts";
import { measureThinnest } from "../regions/view/distanceview.ts";
import { measureFocusClarity, type WeighedEdge } from "./clarity.ts";
import type { FocusStep, TableEdge, TableFocus } from "./edgetable.ts";
import type { FocusView, MeasuredFocus } from "./measurement.ts";

/** Viewing distances that are tried, in flag heights. */
export const distanceSteps = [10, 20, 40, 80, 160, 320] as const;

/** Share of the focus's area that has to be left for it to last (our own judgement). */
export const leastLeft = 1 / 2;

/**
 * Arcminutes that the largest piece of the focus has to span: the size of the letters that 20/20 sight reads.
 *
 * Source: definition of the 20/20 optotype, five arcminutes high with details of one; ISO 8596. For flags our own judgement.
 */
export const leastSpanArcminutes = 5;

/**
 * Returns the last distance step, in flag heights, before the first at which the focus does not last: less than half of
 * its area is left, or no piece of it spans five arcminutes. Null where that is the first step, or there is no focus. It
 * is a matter of size alone.
 */
export function findLastsTo(steps: readonly FocusStep[]): number | null {
  let reached: number | null = null;
  for (const { distance, left, span } of steps) {
    if (left < leastLeft || span < leastSpanArcminutes * measureThinnest(distance)) return reached;
    reached = distance;
  }
  return reached;
}

/**
 * Measures a focus. `clarity` is that of its edges from the gallery's distance; `contrastOf` gives the contrast of an edge
 * in percent, 0 for a merged one, null for two paints that are one, which make no edge.
 */
export function measureFocus(
  focus: TableFocus,
  clarity: number | null,
  contrastOf: (edge: TableEdge) => number | null,
): MeasuredFocus {
  return {
    source: focus.source,
    share: focus.share,
    clarity,
    from: focus.steps.map((step) => measureStep(step, contrastOf)),
    lastsTo: findLastsTo(focus.steps),
  };
}

function measureStep(
  { distance, left, edges }: FocusStep,
  contrastOf: (edge: TableEdge) => number | null,
): FocusView {
  const seen = edges.flatMap((edge): WeighedEdge[] => {
    const contrast = contrastOf(edge);
    return contrast === null ? [] : [{ ...edge, contrast }];
  });
  return { distance, left, clarity: measureFocusClarity(seen), outlineClear: measureClearFocus(seen) };
}

/** Share of the focus's edge length that is clear or strong, 0 to 1; null where it has none. */
function measureClearFocus(edges: readonly WeighedEdge[]): number | null {
  let [all, clear] = [0, 0];
  for (const { focusLength, contrast } of edges) {
    all += focusLength;
    if (isClear(gradeOf(contrast))) clear += focusLength;
  }
  return all === 0 ? null : clear / all;
}
