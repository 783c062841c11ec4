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
  const share = describeMove(format.share(shareBefore), format.share(shareAfter));
  const clarity = describeMove(format.percent(clarityBefore), format.percent(clarityAfter));
  const moved = describeCounts(comparison, format);
  return { word, sentence: `The clear-edge share ${share}, clarity ${clarity}; ${moved}.` };
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

function describeMove(before: string, after: string): string {
  return before === after ? `stays at ${after}` : `goes from ${before} to ${after}`;
}

function describeCounts(comparison: Comparison, format: Format): string {
  const counts = outcomeOrder.flatMap((outcome) => {
    const count = comparison.edges.filter((edge) => edge.outcome === outcome).length;
    return count === 0 || outcome === "same" ? [] : [`${format.number(count, 0)} ${outcome}`];
  });
  return counts.length === 0 ? "no edge moves" : `of ${describeTotal(comparison, format)}, ${format.list(counts)}`;
}

function describeTotal(comparison: Comparison, format: Format): string {
  const total = comparison.edges.length;
  return `${format.number(total, 0)} ${total === 1 ? "edge" : "edges"}`;
}

function describeEdge(row: EdgeRow): string {
  const { before, after } = row;
  const name = capitalise(row.names);
  if (before === undefined) return `${capitalise(after.names)} now meet: contrast ${after.contrast}, ${after.grade}.`;
  if (row.outcome === "merged") return `${name} become one colour where they meet, over ${row.length} flag heights.`;
  const becomes = row.renamed === undefined ? "" : ` becomes ${row.renamed}`;
  if (row.outcome === "same" && before.contrast === after.contrast) {
    return `${name}${becomes}: contrast stays at ${after.contrast}, ${after.grade}.`;
  }
  const grades = before.grade === after.grade ? `still ${after.grade}` : `${before.grade} to ${after.grade}`;
  return `${name}${becomes}: contrast ${before.contrast} to ${after.contrast}, ${grades}.`;
}
