// Floor 4, step 3. Before and after over one edge table: what each edge gained or lost, and the verdict.
import type { Cloth } from "../colour/cloth.ts";
import { gradeOf, isClear } from "../colour/contrast.ts";
import { measureDifference } from "../colour/difference.ts";
import { linearOf } from "../colour/parse.ts";
import type { ComparedEdge, Comparison, Outcome, Verdict } from "./comparison.ts";
import {
  deciding,
  describeColours,
  type Frame,
  measureContrastOf,
  measureEdge,
  type PaintLook,
  summarise,
} from "./figures.ts";
import type { MeasuredEdge } from "./measure.ts";
import { measureReadsTo } from "./reads.ts";
import type { EdgeTable, TableEdge } from "./table.ts";

/** ΔE00 under which two paints are one to the eye; points of contrast that count; points of clarity that count. */
const sameColour = 5;
const contrastStep = 3;
const clarityStep = 1;

interface Pair {
  readonly before: MeasuredEdge | null;
  readonly after: MeasuredEdge;
  readonly outcome: Outcome;
}

/**
 * Compares two sets of looks on one table. A pair that was one colour before is no edge before and *parted* after;
 * a pair that becomes one colour is *merged*: it keeps its length and counts as contrast 0 after.
 */
export function compareLooks(
  change: Comparison["change"],
  frame: Frame,
  table: EdgeTable,
  before: readonly PaintLook[],
  after: readonly PaintLook[],
  cloth: Cloth,
): Comparison {
  const pairs: Pair[] = [];
  for (const edge of table.edges) {
    const was = measureEdge(table, edge, before, cloth);
    const is = measureEdge(table, edge, after, cloth);
    const isSplit = isOneBefore(table, edge);
    if (isSplit && is.deltaE00 < sameColour) continue;
    const outcome = isSplit ? "parted" : judge(was, is);
    pairs.push({
      before: isSplit ? null : was,
      after: outcome === "merged" ? { ...is, contrast: 0, grade: "weak", hueOnly: false } : is,
      outcome,
    });
  }
  const edgesBefore = pairs.flatMap((pair) => (pair.before === null ? [] : [pair.before]));
  const edgesAfter = pairs.map((pair) => pair.after);
  const readsBefore = measureReadsTo(table.focus, (edge) =>
    isOneBefore(table, edge) ? null : measureContrastOf(edge, before, cloth),
  );
  const readsAfter = measureReadsTo(table.focus, (edge) => measureAfter(table, edge, before, after, cloth));
  const measures = {
    before: summarise(frame, describeColours(table, before, cloth), edgesBefore, table.focus, readsBefore),
    after: summarise(frame, describeColours(table, after, cloth), edgesAfter, table.focus, readsAfter),
  };
  return {
    change,
    ...measures,
    edges: pairs.map(describePair),
    clearEdgeShare: [measures.before.clearEdgeShare, measures.after.clearEdgeShare],
    clarity: [measures.before.clarity, measures.after.clarity],
    verdict: decide(pairs, measures.before.clarity, measures.after.clarity),
  };
}

function isOneBefore(table: EdgeTable, edge: TableEdge): boolean {
  return table.paints[edge.a]?.group === table.paints[edge.b]?.group;
}

/** Contrast after the change as it counts: 0 where the pair merged, null where two paints that were one still are. */
function measureAfter(
  table: EdgeTable,
  edge: TableEdge,
  before: readonly PaintLook[],
  after: readonly PaintLook[],
  cloth: Cloth,
): number | null {
  const isSame = differ(after, edge) < sameColour;
  if (isOneBefore(table, edge)) return isSame ? null : measureContrastOf(edge, after, cloth);
  return isSame && differ(before, edge) >= sameColour ? 0 : measureContrastOf(edge, after, cloth);
}

function differ(looks: readonly PaintLook[], edge: TableEdge): number {
  return measureDifference(
    linearOf(looks[edge.a]?.hex ?? "#000000"),
    linearOf(looks[edge.b]?.hex ?? "#000000"),
  );
}

function judge(was: MeasuredEdge, is: MeasuredEdge): Outcome {
  if (is.deltaE00 < sameColour && was.deltaE00 >= sameColour) return "merged";
  const wasClear = isClear(gradeOf(was.contrast));
  const isNowClear = isClear(gradeOf(is.contrast));
  if (wasClear !== isNowClear) return isNowClear ? "gained" : "lost";
  const moved = is.contrast - was.contrast;
  return Math.abs(moved) < contrastStep ? "same" : moved > 0 ? "better" : "worse";
}

function describePair({ before, after, outcome }: Pair): ComparedEdge {
  return {
    a: after.a,
    b: after.b,
    names: [before?.names ?? after.names, after.names],
    length: after.length,
    contrast: [before === null ? null : before.contrast, after.contrast],
    outcome,
  };
}

function decide(pairs: readonly Pair[], before: number | null, after: number | null): Verdict {
  const all = pairs.reduce((sum, pair) => sum + pair.after.length, 0);
  const outcomes = new Set(
    pairs.filter((pair) => pair.after.length >= deciding * all).map((pair) => pair.outcome),
  );
  const isUp = outcomes.has("gained") || outcomes.has("better");
  const isDown = outcomes.has("lost") || outcomes.has("merged") || outcomes.has("worse");
  if (isUp && isDown) return "mixed";
  const moved = (after ?? 0) - (before ?? 0);
  if (moved >= clarityStep) return "clearer";
  return moved <= -clarityStep ? "less clear" : "no gain";
}
