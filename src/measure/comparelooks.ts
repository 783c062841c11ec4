// Floor 4, step 5. Before and after over one edge table: what becomes of each edge, and the verdict.
import type { Cloth } from "../colour/cloth.ts";
import { linearOf } from "../colour/colourtext.ts";
import { measureDifference } from "../colour/difference.ts";
import type { ComparedEdge, Comparison, Outcome } from "./comparison.ts";
import type { EdgeTable, TableEdge } from "./edgetable.ts";
import {
  describeColours,
  type Frame,
  measureContrastOf,
  measureEdge,
  type PaintLook,
  seenAlong,
  summarise,
} from "./measurelooks.ts";
import type { MeasuredEdge, VisionFigures } from "./measurement.ts";
import { decideVerdict, judgeEdge, listPrice } from "./outcome.ts";

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
  const pairs = table.edges.flatMap((edge): Pair[] => {
    const was = isOneBefore(table, edge) ? null : measureEdge(table, edge, before, cloth);
    const is = measureEdge(table, edge, after, cloth);
    const outcome = judgeEdge(was, is);
    return outcome === undefined
      ? []
      : [{ before: was, after: outcome === "merged" ? mergeEdge(is) : is, outcome }];
  });
  const sideOf = (looks: readonly PaintLook[], edges: readonly MeasuredEdge[], contrastOf: ContrastOf) =>
    summarise(frame, describeColours(table, looks, cloth), edges, table.focus, contrastOf);
  const contrastBefore: ContrastOf = (edge) =>
    isOneBefore(table, edge) ? null : measureContrastOf(edge, before, cloth);
  const measures = {
    before: sideOf(
      before,
      pairs.flatMap((pair) => pair.before ?? []),
      contrastBefore,
    ),
    after: sideOf(
      after,
      pairs.map((pair) => pair.after),
      (edge) => measureAfter(edge, contrastBefore(edge), before, after, cloth),
    ),
  };
  const edges = pairs.map(describePair);
  const judged = edges.map((edge) => ({ edge, ...edge, contrast: edge.contrast[1] }));
  return {
    change,
    ...measures,
    edges,
    clearEdgeShare: [measures.before.clearEdgeShare, measures.after.clearEdgeShare],
    clarity: [measures.before.clarity, measures.after.clarity],
    strength: [measures.before.strength, measures.after.strength],
    verdict: decideVerdict(judged, measures.before, measures.after),
    price: listPrice(judged).map(({ edge }) => edge),
  };
}

type ContrastOf = (edge: TableEdge) => number | null;

function isOneBefore(table: EdgeTable, edge: TableEdge): boolean {
  return table.paints[edge.a]?.group === table.paints[edge.b]?.group;
}

/** One colour is none beside itself, whoever looks. */
function mergeEdge(edge: MeasuredEdge): MeasuredEdge {
  const merge = (figures: VisionFigures): VisionFigures => ({ ...figures, contrast: 0, grade: "weak" });
  const { protan, deutan, tritan, grey } = edge.vision;
  return {
    ...edge,
    contrast: 0,
    grade: "weak",
    nearLine: false,
    hueOnly: false,
    vision: { protan: merge(protan), deutan: merge(deutan), tritan: merge(tritan), grey },
  };
}

/** Contrast after the change as it counts: 0 where the pair merged, null where two paints that were one still are. */
function measureAfter(
  edge: TableEdge,
  contrastBefore: number | null,
  before: readonly PaintLook[],
  after: readonly PaintLook[],
  cloth: Cloth,
): number | null {
  const figuresOf = (looks: readonly PaintLook[], contrast: number) => ({
    contrast,
    deltaE00: differ(looks, edge),
  });
  const contrast = measureContrastOf(edge, after, cloth);
  const was = contrastBefore === null ? null : figuresOf(before, contrastBefore);
  const outcome = judgeEdge(was, figuresOf(after, contrast));
  return outcome === undefined ? null : outcome === "merged" ? 0 : contrast;
}

function differ(looks: readonly PaintLook[], edge: TableEdge): number {
  const [one, other] = seenAlong(looks, edge);
  return measureDifference(linearOf(one.hex), linearOf(other.hex));
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
