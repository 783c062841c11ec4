// One change judged a second time, written from the design's words alone: nothing here comes from src/. Plain loops, no
// care for speed. The steps (45, 60, 3 and 5 points, ΔE00 5, 1 %) are the design's own judgement.
import { contrast, difference } from "./oracle.ts";

/** Colours, edges `[a, b, length, focusLength]` by index, and the outlines `[a, b, length]` of the charges. */
export interface Flag {
  readonly paints: readonly string[];
  readonly edges: readonly (readonly [number, number, number, number])[];
  readonly charges?: readonly (readonly (readonly [number, number, number])[])[];
  /** Paints of one number are one paint in the original. Without it each is its own. */
  readonly groups?: readonly number[];
}

export interface JudgedByHand {
  readonly a: number;
  readonly b: number;
  readonly length: number;
  readonly focusLength: number;
  readonly before: number | null;
  readonly after: number;
  readonly outcome: "gained" | "lost" | "better" | "worse" | "same" | "merged" | "parted";
}

/** Every edge before and after, those left out that are in neither. */
export const judge = (flag: Flag, next: readonly string[]): JudgedByHand[] => {
  const judged: JudgedByHand[] = [];
  for (const [a, b, length, focusLength] of flag.edges) {
    const colour = (paints: readonly string[], at: number) => paints[at] ?? "";
    const wasOne = flag.groups !== undefined && flag.groups[a] === flag.groups[b];
    const isNear = difference(colour(next, a), colour(next, b)) < 5;
    const was = contrast(colour(flag.paints, a), colour(flag.paints, b));
    const is = contrast(colour(next, a), colour(next, b));
    const edge = { a, b, length, focusLength };
    if (wasOne) {
      // No edge before; one after only where the two are told apart.
      if (!isNear) judged.push({ ...edge, before: null, after: is, outcome: "parted" });
    } else if (isNear && difference(colour(flag.paints, a), colour(flag.paints, b)) >= 5) {
      judged.push({ ...edge, before: was, after: 0, outcome: "merged" });
    } else {
      judged.push({ ...edge, before: was, after: is, outcome: outcomeOf(was, is) });
    }
  }
  return judged;
};

/** Gained and lost by crossing 45, better and worse by min(contrast, 60), each by 3 points or more. */
export const outcomeOf = (was: number, is: number): JudgedByHand["outcome"] => {
  if (was < 45 && is >= 45) return is - was >= 3 ? "gained" : "same";
  if (was >= 45 && is < 45) return was - is >= 3 ? "lost" : "same";
  const moved = Math.min(is, 60) - Math.min(was, 60);
  if (moved >= 3) return "better";
  return moved <= -3 ? "worse" : "same";
};

/** Σ (length + focusLength) · min(1, contrast / full) ÷ Σ (length + focusLength), in percent; null without edges. */
export const share = (
  edges: readonly (readonly [contrast: number | null, length: number, focusLength: number])[],
  full: 45 | 60,
): number | null => {
  let [seen, all] = [0, 0];
  for (const [percent, length, focusLength] of edges) {
    if (percent === null) continue;
    all += length + focusLength;
    seen += (length + focusLength) * Math.min(1, percent / full);
  }
  return all === 0 ? null : (100 * seen) / all;
};

export const marksOf = (judged: readonly JudgedByHand[], when: "before" | "after") => {
  const rows = judged.map((edge) => [edge[when], edge.length, edge.focusLength] as const);
  return { clarity: share(rows, 45), strength: share(rows, 60) };
};

/** Clarity of the focus's own edges: contrast and length of each. */
export const focusClarityOf = (edges: readonly (readonly [contrast: number, length: number])[]) =>
  share(
    edges.map(([percent, length]) => [percent, length, 0]),
    45,
  );

/** Whether an edge is 1 % of all edge length or more: the others move no verdict. */
const decides = (judged: readonly JudgedByHand[]) => {
  const all = judged.reduce((sum, { length }) => sum + length, 0);
  return judged.filter(({ length }) => length >= all / 100);
};

const isLoss = ({ outcome, after }: JudgedByHand) =>
  outcome === "lost" || outcome === "worse" || outcome === "merged" || (outcome === "parted" && after < 45);

const isGain = ({ outcome, after }: JudgedByHand) =>
  outcome === "gained" || outcome === "better" || (outcome === "parted" && after >= 45);

/** What got worse among the edges that decide. */
export const priceOf = (judged: readonly JudgedByHand[]): JudgedByHand[] => decides(judged).filter(isLoss);

/** The movement in whole percent of clarity, or of strength where clarity is level. */
export const movementOf = (judged: readonly JudgedByHand[]): number => {
  const [was, is] = [marksOf(judged, "before"), marksOf(judged, "after")];
  const moved = (mark: "clarity" | "strength") => Math.round(is[mark] ?? 0) - Math.round(was[mark] ?? 0);
  return moved("clarity") || moved("strength");
};

export const verdictOf = (judged: readonly JudgedByHand[]): string => {
  const counted = decides(judged);
  if (counted.every(({ outcome }) => outcome === "same")) return "no gain";
  const moved = movementOf(judged);
  const [gains, losses] = [counted.some(isGain), counted.some(isLoss)];
  if (moved >= 1 && !losses) return "clearer";
  if (moved >= 5) return "clearer, at a price";
  if (moved <= -5 || (moved <= -1 && !gains)) return "less clear";
  return gains && losses ? "mixed" : "no gain";
};

/** Marks of `flag` once `next` has taken the place of paint `at`. */
export const after = (flag: Flag, at: number, next: string) =>
  marksOf(
    judge(
      flag,
      flag.paints.map((hex, index) => (index === at ? next : hex)),
    ),
    "after",
  );

/**
 * The last step of those from the nearest on that all keep half of the focus and a piece of five arcminutes. `span` in
 * flag heights, `distance` too: the angle is that whose tangent is one over the other.
 */
export const lastsTo = (
  steps: readonly { readonly distance: number; readonly left: number; readonly span: number }[],
): number | null => {
  let last: number | null = null;
  for (const { distance, left, span } of steps) {
    const minutes = (Math.atan(span / distance) * 60 * 180) / Math.PI;
    if (left < 0.5 || minutes < 5) break;
    last = distance;
  }
  return last;
};
