// Floor 6. The edge table of a comparison as finished rows.

import type { Hex } from "../../colour/colour.ts";
import { type Grade, gradeOf, isClear } from "../../colour/contrast.ts";
import type { ComparedEdge, Comparison, Outcome } from "../../measure/comparison.ts";
import { isWhole } from "../../measure/format.ts";
import type { Measure } from "../../measure/measure.ts";
import { findMeasured } from "./account.ts";
import type { Format } from "./format.ts";
import { findPaint } from "./paint.ts";

/** One reading of an edge. `contrast` is finished text; `clear` says whether its line is drawn solid. */
export interface Reading {
  readonly hexes: readonly [Hex, Hex];
  readonly names: string;
  readonly contrast: string;
  readonly grade: Grade | "merged";
  readonly clear: boolean;
  /** `near the line` where the grade would be another on cloth that reaches further, else undefined. */
  readonly near: string | undefined;
}

/** How a grade near the line is marked; the method page explains it. */
export const nearLine = "near the line";

export interface EdgeRow {
  readonly key: string;
  /** Where its own page is, as the page at hand links to it. */
  readonly address: string | undefined;
  readonly names: string;
  /** The names after the change, where they differ. */
  readonly renamed: string | undefined;
  readonly length: string;
  /** How much of the outline of the focus it is, or undefined where it is none of it. */
  readonly focus: string | undefined;
  /** Undefined where the edge was not there before. */
  readonly before: Reading | undefined;
  readonly after: Reading;
  readonly outcome: Outcome;
}

/** The rows of the edge table: edges of the focus first, most of its outline first; then the others, longest first. */
export function presentEdges(
  comparison: Comparison,
  format: Format,
  address?: (edge: ComparedEdge) => string | undefined,
): readonly EdgeRow[] {
  const focusOf = (edge: ComparedEdge) => findMeasured(comparison.after.edges, edge)?.focusLength ?? 0;
  return [...comparison.edges]
    .sort((first, second) => focusOf(second) - focusOf(first) || second.length - first.length)
    .map((edge) => presentEdge(edge, comparison, format, address));
}

/** One row of the edge table. */
export function presentEdge(
  edge: ComparedEdge,
  comparison: Comparison,
  format: Format,
  address?: (edge: ComparedEdge) => string | undefined,
): EdgeRow {
  const [before, after] = edge.contrast;
  const names = formatNames(edge.names[0]);
  const renamed = formatNames(edge.names[1]);
  return {
    key: `${edge.a}-${edge.b}`,
    address: address?.(edge),
    names,
    renamed: renamed === names ? undefined : renamed,
    length: format.number(edge.length, 2),
    focus: describeFocusPart(edge, comparison, format),
    before:
      before === null ? undefined : presentReading(edge, comparison.before, names, before, false, format),
    after: presentReading(edge, comparison.after, renamed, after, edge.outcome === "merged", format),
    outcome: edge.outcome,
  };
}

/** Two paint names as an edge is called: `white / light blue`. */
export function formatNames(names: readonly [string, string]): string {
  return `${names[0]} / ${names[1]}`;
}

function describeFocusPart(edge: ComparedEdge, { after }: Comparison, format: Format): string | undefined {
  const own = findMeasured(after.edges, edge)?.focusLength ?? 0;
  const outline = after.edges.reduce((sum, { focusLength }) => sum + focusLength, 0);
  if (own === 0) return undefined;
  return isWhole(own / outline) ? "its whole outline" : `${format.share(own / outline)} of its outline`;
}

function presentReading(
  edge: ComparedEdge,
  measure: Measure,
  names: string,
  contrast: number,
  merged: boolean,
  format: Format,
): Reading {
  const grade = gradeOf(contrast);
  return {
    hexes: findHexes(edge, measure),
    names,
    contrast: format.contrast(contrast),
    grade: merged ? "merged" : grade,
    clear: isClear(grade),
    near: !merged && findMeasured(measure.edges, edge)?.nearLine ? nearLine : undefined,
  };
}

/** A merged paint may be gone from the drawing: then the colour it merged into stands for both. */
function findHexes(edge: ComparedEdge, measure: Measure): readonly [Hex, Hex] {
  const a = findPaint(measure, edge.a)?.hex;
  const b = findPaint(measure, edge.b)?.hex;
  const either = a ?? b;
  if (either === undefined) throw new RangeError(`no paint ${edge.a} or ${edge.b} in ${measure.file}`);
  return [a ?? either, b ?? either];
}
