// Floor 9. The edges of a study as a table for spreadsheets: a row for each edge, both sides beside each other.

import type { StudyResult } from "../../analysis/result.ts";
import { type Cell, formatRow } from "../../analysis/survey/csv.ts";
import { gradeOf } from "../../colour/contrast.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import { type EdgeMetric, edgeMetrics } from "../../measure/edgemetric.ts";
import type { MeasuredEdge } from "../../measure/measurement.ts";
import { keyEdges } from "../../views/edge/edgeaddress.ts";
import { findMeasured } from "../../words/edgemove.ts";
import { wordsOf } from "../../words/metricwords.ts";

/** Columns of both sides, in the order before, after. */
const sides = edgeMetrics.flatMap((metric: EdgeMetric) =>
  (wordsOf(metric).columns?.(metric.id) ?? []).map(
    ([name, cell]) =>
      [name, (edge: MeasuredEdge): Cell => cell(edge[metric.id as keyof MeasuredEdge])] as const,
  ),
);

/**
 * `edges.csv`; an empty cell where there is no such edge before or after, and nowhere else. Names of colours are ours and never begin as a
 * formula does; if one ever comes from a stranger, the row takes care of it.
 *
 * Source: RFC 4180 for the line ends.
 */
export function formatEdgesTable({ study, comparison }: StudyResult): string {
  const keys = keyEdges(comparison);
  const head = [
    "study",
    "edge",
    "namesBefore",
    "namesAfter",
    "length",
    "focusLength",
    "outcome",
    "contrastBefore",
    "contrastAfter",
    "gradeBefore",
    "gradeAfter",
    ...sides.flatMap(([name]) => [`${name}Before`, `${name}After`]),
  ];
  const rows = comparison.edges.map((edge, index) => [
    study.slug,
    keys[index] ?? "",
    ...listCells(edge, comparison),
  ]);
  return [head, ...rows].map((cells) => `${formatRow(cells)}\r\n`).join("");
}

function listCells(edge: ComparedEdge, { before, after }: Comparison): readonly Cell[] {
  const [was, is] = [findMeasured(before.edges, edge), findMeasured(after.edges, edge)];
  const [contrastBefore, contrastAfter] = edge.contrast;
  return [
    edge.names[0].join(" / "),
    edge.names[1].join(" / "),
    edge.length,
    (is ?? was)?.focusLength ?? 0,
    edge.outcome,
    contrastBefore,
    contrastAfter,
    contrastBefore === null ? null : gradeOf(contrastBefore),
    edge.outcome === "merged" ? "merged" : gradeOf(contrastAfter),
    ...sides.flatMap(([, read]) => [was ? read(was) : null, is ? read(is) : null]),
  ];
}
