// Floor 6. The numbers of the gallery as files: one list of all studies, and for each study JSON and a table of edges.
import { gradeOf } from "../colour/contrast.ts";
import type { ComparedEdge, Comparison } from "../measure/comparison.ts";
import type { Measure, MeasuredEdge } from "../measure/measure.ts";
import type { StudyResult } from "../study/result.ts";
import type { Gallery } from "../study/study.ts";
import { findMeasured } from "./present/account.ts";
import { keyEdges, placeEdges } from "./present/edgekey.ts";
import { measureVersion, stampOf } from "./present/stamp.ts";
import { formatStudyPath } from "./present/status.ts";

/** Returns the absolute address of a site path. */
export type Address = (path: string) => string;

/** `study.json`: what the author says and everything measured, as `schemas/study.schema.json` describes it. */
export function formatStudyData(result: StudyResult, gallery: Gallery, address: Address): string {
  const { study, comparison } = result;
  const place = placeEdges(study.slug, comparison);
  const data = {
    schemaVersion: 0,
    ...summarise(result, gallery, address),
    measureVersion,
    ...(study.decision === undefined ? {} : { decision: study.decision }),
    ...(study.symbolism === undefined ? {} : { symbolism: study.symbolism }),
    ...(study.credit === undefined ? {} : { credit: study.credit }),
    comparison: plainComparison(result),
    edgePages: comparison.edges.map((edge) => ({ a: edge.a, b: edge.b, address: address(place(edge)) })),
  };
  return `${JSON.stringify(data, null, 2)}\n`;
}

/** `studies.json`: a line of facts for each study, in the order of the front page. */
export function formatStudiesData(
  results: readonly StudyResult[],
  gallery: Gallery,
  address: Address,
): string {
  const data = {
    schemaVersion: 0,
    title: gallery.title,
    address: address("/"),
    studies: results.map((result) => ({
      ...summarise(result, gallery, address),
      data: address(`${formatStudyPath(result.study.slug)}study.json`),
    })),
  };
  return `${JSON.stringify(data, null, 2)}\n`;
}

function summarise(result: StudyResult, gallery: Gallery, address: Address) {
  const { study, comparison, change } = result;
  return {
    slug: study.slug,
    title: study.title,
    address: address(formatStudyPath(study.slug)),
    unofficial: true,
    status: study.status,
    authors: study.authors,
    ...(study.date === undefined ? {} : { date: study.date }),
    tags: study.tags,
    stamp: stampOf(result, gallery),
    change: { replace: change.replace, with: change.with, ...(change.only && { only: change.only }) },
    verdict: comparison.verdict,
    clearEdgeShare: comparison.clearEdgeShare,
    clarity: comparison.clarity,
  };
}

/** As `try --json` prints it. Where a drawing lay on the machine that built the site is nobody's business. */
function plainComparison({ comparison, change }: StudyResult) {
  const { before, after, edges, clearEdgeShare, clarity, verdict } = comparison;
  const named = (measure: Measure, file: string): Measure => ({ ...measure, file });
  return {
    change: { replace: change.replace, with: change.with, ...(change.only && { only: change.only }) },
    before: named(before, "original.svg"),
    after: named(after, "redesign.svg"),
    edges: edges.map(({ a, b, length, contrast, outcome }) => ({ a, b, length, contrast, outcome })),
    clearEdgeShare,
    clarity,
    verdict,
  };
}

type Cell = string | number | null;

/** Columns of both sides, in the order before, after. */
const sides: readonly (readonly [string, (edge: MeasuredEdge) => Cell])[] = [
  ["contrastRatio", ({ contrastRatio }) => contrastRatio],
  ["deltaE00", ({ deltaE00 }) => deltaE00],
  ["hueOnly", ({ hueOnly }) => String(hueOnly)],
  ["tincture", ({ tincture }) => tincture],
  ["protanContrast", ({ vision }) => vision.protan.contrast],
  ["deutanContrast", ({ vision }) => vision.deutan.contrast],
  ["tritanContrast", ({ vision }) => vision.tritan.contrast],
  ["greyDeltaE00", ({ vision }) => vision.grey.deltaE00],
];

/** `edges.csv`: a row for each edge. Source: RFC 4180 for lines and quotes. */
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
  return [head, ...rows].map((cells) => `${cells.map(formatCell).join(",")}\r\n`).join("");
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

function formatCell(cell: Cell): string {
  if (cell === null) return "";
  const text = typeof cell === "number" ? String(Number(cell.toFixed(4))) : cell;
  return /[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}
