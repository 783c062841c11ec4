// Floor 4, step 4. What a change does to one edge, and to the flag as a whole: outcome and verdict.
import { clearFrom, gradeOf, isClear, strongFrom } from "../colour/contrast.ts";
import { listDeciding, roundMark } from "./clarity.ts";
import { colourLimits, edgeLimits, flagLimits } from "./limit.ts";

export type Outcome = "gained" | "lost" | "better" | "worse" | "same" | "merged" | "parted";
export type Verdict = "clearer" | "clearer, at a price" | "mixed" | "less clear" | "no gain";

/** A pair of colours: contrast in percent, and ΔE00. */
export interface PairFigures {
  readonly contrast: number;
  readonly deltaE00: number;
}

/** Whether two colours `deltaE00` apart are one to the eye. */
export function isSameColour(deltaE00: number): boolean {
  return deltaE00 < colourLimits.same;
}

/**
 * Returns what becomes of an edge; undefined where two paints that are one in the original (`before` is null) still are.
 * An edge is gained or lost only if its contrast moves by 3 points or more as well, so that no move too small to be seen
 * decides; better and worse look at contrast up to 60, beyond which nothing gets clearer.
 */
export function judgeEdge(before: PairFigures | null, after: PairFigures): Outcome | undefined {
  const isOne = isSameColour(after.deltaE00);
  if (before === null) return isOne ? undefined : "parted";
  if (isOne && !isSameColour(before.deltaE00)) return "merged";
  const isUp = after.contrast > before.contrast;
  if (before.contrast < clearFrom !== after.contrast < clearFrom) {
    if (Math.abs(after.contrast - before.contrast) < edgeLimits.step) return "same";
    return isUp ? "gained" : "lost";
  }
  const move = Math.min(strongFrom, after.contrast) - Math.min(strongFrom, before.contrast);
  if (Math.abs(move) < edgeLimits.step) return "same";
  return isUp ? "better" : "worse";
}

/**
 * Returns what becomes of an edge, with its contrast as it counts after the change: a merged one counts 0. Undefined where
 * two paints that are one in the original (`before` is null) still are.
 */
export function judgePair(
  before: PairFigures | null,
  after: PairFigures,
): { readonly outcome: Outcome; readonly contrast: number } | undefined {
  const outcome = judgeEdge(before, after);
  return outcome && { outcome, contrast: outcome === "merged" ? 0 : after.contrast };
}

/** An edge with its outcome; `contrast` in percent as it counts after the change, 0 where it merged. */
export interface JudgedEdge {
  readonly length: number;
  readonly contrast: number;
  readonly outcome: Outcome;
}

/** Clarity and strength in percent, null where there is no edge. */
export interface Marks {
  readonly clarity: number | null;
  readonly strength: number | null;
}

/** Returns the edges that got worse and decide: lost, worse, merged, or parted and not clear; longest first. */
export function listPrice<E extends JudgedEdge>(edges: readonly E[]): readonly E[] {
  return listDeciding(edges)
    .filter((edge) => isLoss(edge))
    .sort((one, other) => other.length - one.length);
}

/**
 * Returns the verdict on a change. Clarity moves it, in whole percent, and where that is level strength; an edge under 1 %
 * of all edge length has no say.
 */
export function decideVerdict(edges: readonly JudgedEdge[], before: Marks, after: Marks): Verdict {
  const deciding = listDeciding(edges).filter(({ outcome }) => outcome !== "same");
  if (deciding.length === 0) return "no gain";
  const hasLoss = deciding.some(isLoss);
  const hasGain = deciding.some((edge) => !isLoss(edge));
  const move = moveOf(before.clarity, after.clarity) || moveOf(before.strength, after.strength);
  if (move >= flagLimits.move && !hasLoss) return "clearer";
  if (move >= flagLimits.largeMove) return "clearer, at a price";
  if (move <= -flagLimits.largeMove || (move <= -flagLimits.move && !hasGain)) return "less clear";
  return hasLoss && hasGain ? "mixed" : "no gain";
}

function isLoss({ outcome, contrast }: JudgedEdge): boolean {
  if (outcome === "parted") return !isClear(gradeOf(contrast));
  return outcome === "lost" || outcome === "worse" || outcome === "merged";
}

/** By how many whole percent a mark moves, as the two are printed. */
function moveOf(before: number | null, after: number | null): number {
  return roundMark(after ?? 0) - roundMark(before ?? 0);
}
