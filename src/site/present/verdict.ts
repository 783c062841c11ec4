// Floor 6. What a change does, in two sentences: the change itself, and the verdict.
import type { Comparison, Outcome } from "../../measure/comparison.ts";
import type { StudyResult } from "../../study/result.ts";
import type { Format } from "./format.ts";
import { findChanged } from "./paint.ts";
import { capitalise } from "./phrase.ts";

export interface VerdictView {
  readonly word: string;
  readonly sentence: string;
}

/** Verdicts as headings. */
export const verdictWords = {
  clearer: "Clearer",
  mixed: "Mixed",
  "less clear": "Less clear",
  "no gain": "No gain",
};

const outcomeOrder: readonly Outcome[] = ["gained", "better", "parted", "lost", "worse", "merged", "same"];

/** The change in one sentence: `Dark red becomes yellow.`, `Green becomes darker green.`, with the part where `only` selects one. */
export function describeChange(result: StudyResult): string {
  const [before, after] = findChanged(result);
  const { only, part = `the selected part (${only})` } = result.change;
  return `${capitalise(before.name)} becomes ${after.name}${only === undefined ? "" : `, only in ${part}`}.`;
}

/** The verdict in a word and in one sentence with the figures that made it. */
export function describeVerdict(comparison: Comparison, format: Format): VerdictView {
  const word = verdictWords[comparison.verdict];
  const [shareBefore, shareAfter] = comparison.clearEdgeShare;
  const [clarityBefore, clarityAfter] = comparison.clarity;
  if (shareBefore === null && shareAfter === null) {
    return { word, sentence: "One colour: no edges to measure." };
  }
  const share = describeMove("The clear-edge share", format.share(shareBefore), format.share(shareAfter));
  const clarity = describeMove("clarity", format.percent(clarityBefore), format.percent(clarityAfter));
  return { word, sentence: `${share}, ${clarity}. ${describeCounts(comparison, format)}` };
}

function describeMove(what: string, before: string, after: string): string {
  return before === after ? `${what} stays at ${after}` : `${what} goes from ${before} to ${after}`;
}

/** `2 of 4 edges gained, 1 merged.` */
function describeCounts(comparison: Comparison, format: Format): string {
  const total = comparison.edges.length;
  const moved = outcomeOrder.flatMap((outcome) => {
    const count = comparison.edges.filter((edge) => edge.outcome === outcome).length;
    return count === 0 || outcome === "same" ? [] : [{ outcome, count }];
  });
  const [first] = moved;
  if (first === undefined)
    return total === 1 ? "Its one edge stays, within 3 points." : "All edges stay, within 3 points.";
  if (total === 1) return `Its one edge is ${first.outcome}.`;
  const others = moved.slice(1).map(({ outcome, count }) => `, ${format.number(count, 0)} ${outcome}`);
  return `${format.number(first.count, 0)} of ${format.number(total, 0)} edges ${first.outcome}${others.join("")}.`;
}
