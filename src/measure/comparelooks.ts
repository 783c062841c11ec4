// Floor 4, step 5. Before and after over one edge table: what becomes of each edge, and the verdict.
import type { Cloth } from "../colour/cloth.ts";
import type { List, Rank } from "../svg/paintnumber.ts";
import { SwatchBook } from "./colourcache.ts";
import type { ComparedEdge, Comparison, Outcome } from "./comparison.ts";
import { figuresOf, type PaintLook, seenAlong } from "./edgefigure.ts";
import type { VisionFigures } from "./edgemetric.ts";
import { type EdgeTable, isOne, type TableEdge } from "./edgetable.ts";
import { describeColours, type Frame, measureEdge, summarise } from "./measurelooks.ts";
import type { MeasuredEdge } from "./measurement.ts";
import { decideVerdict, judgePair, listPrice } from "./outcome.ts";

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
  before: List<Rank, PaintLook>,
  after: List<Rank, PaintLook>,
  cloth: Cloth,
): Comparison {
  const book = new SwatchBook(cloth);
  const pairs = table.edges.flatMap((edge): Pair[] => {
    const was = isOne(table, edge) ? null : measureEdge(table, edge, before, book);
    const is = measureEdge(table, edge, after, book);
    const judged = judgePair(was, is);
    return judged === undefined
      ? []
      : [
          {
            before: was,
            after: judged.outcome === "merged" ? mergeEdge(is) : is,
            outcome: judged.outcome,
          },
        ];
  });
  const along = (edge: TableEdge, looks: List<Rank, PaintLook>) => figuresOf(...seenAlong(looks, edge), book);
  const figuresBefore = (edge: TableEdge) => (isOne(table, edge) ? null : along(edge, before));
  const measures = {
    before: summarise(
      frame,
      describeColours(table, before, book),
      pairs.flatMap((pair) => pair.before ?? []),
      table.focus,
      (edge) => figuresBefore(edge)?.contrast ?? null,
    ),
    after: summarise(
      frame,
      describeColours(table, after, book),
      pairs.map((pair) => pair.after),
      table.focus,
      (edge) => judgePair(figuresBefore(edge), along(edge, after))?.contrast ?? null,
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
