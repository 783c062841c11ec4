// Floor 6. What a change does, in sentences: the change itself, the verdict, and every edge that moved.
import type { Comparison, Outcome } from "../../measure/comparison.ts";
import type { StudyResult } from "../../study/result.ts";
import { type EdgeRow, presentEdges } from "./edge.ts";
import type { Format } from "./format.ts";
import { findChanged } from "./paint.ts";

export interface VerdictView {
  readonly word: string;
  readonly sentence: string;
}

/** Everything that happened to the edges under one heading. */
export interface OutcomeGroup {
  readonly outcome: Outcome;
  readonly heading: string;
  readonly sentences: readonly string[];
}

const verdictWords = { clearer: "Clearer", mixed: "Mixed", "less clear": "Less clear", "no gain": "No gain" };

const headings: Readonly<Record<Outcome, string>> = {
  gained: "Gained",
  better: "Better",
  parted: "Parted",
  lost: "Lost",
  worse: "Worse",
  merged: "Merged",
  same: "Same",
};

const outcomeOrder: readonly Outcome[] = ["gained", "better", "parted", "lost", "worse", "merged", "same"];

/** The change in one sentence: `Dark red becomes yellow.`, with the selector where `only` names one. */
export function describeChange(result: StudyResult): string {
  const [before, after] = findChanged(result);
  const where = result.change.only === undefined ? "" : `, only in ${result.change.only}`;
  return `${capitalise(before.name)} becomes ${after.name}${where}.`;
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

/** The edges that moved, in words, in groups: what is easier to see first. */
export function describeOutcomes(comparison: Comparison, format: Format): readonly OutcomeGroup[] {
  const rows = presentEdges(comparison, format);
  return outcomeOrder.flatMap((outcome) => {
    const members = rows.filter((row) => row.outcome === outcome);
    if (members.length === 0) return [];
    return [{ outcome, heading: headings[outcome], sentences: members.map(describeEdge) }];
  });
}

/** A text with its first letter in upper case. */
export function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
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
  if (first === undefined) return total === 1 ? "Its one edge stays as it is." : "No edge moves.";
  if (total === 1) return `Its one edge is ${first.outcome}.`;
  const others = moved.slice(1).map(({ outcome, count }) => `, ${format.number(count, 0)} ${outcome}`);
  return `${format.number(first.count, 0)} of ${format.number(total, 0)} edges ${first.outcome}${others.join("")}.`;
}

function describeEdge(row: EdgeRow): string {
  const { before, after } = row;
  const name = capitalise(row.names);
  if (before === undefined)
    return `${capitalise(after.names)} now meet: contrast ${after.contrast}, ${after.grade}.`;
  if (row.outcome === "merged")
    return `${name} become one colour where they meet, over ${row.length} flag heights.`;
  const becomes = row.renamed === undefined ? "" : ` becomes ${row.renamed}`;
  if (row.outcome === "same" && before.contrast === after.contrast) {
    return `${name}${becomes}: contrast stays at ${after.contrast}, ${after.grade}.`;
  }
  const grades = before.grade === after.grade ? `still ${after.grade}` : `${before.grade} to ${after.grade}`;
  return `${name}${becomes}: contrast ${before.contrast} to ${after.contrast}, ${grades}.`;
}
