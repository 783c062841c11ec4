// Floor 7. What a change did to each edge, ready to be told: who changed beside whom, from which grade to which, and
// along how much of the focus.
import { type Grade, gradeOf } from "../colour/contrast.ts";
import type { ComparedEdge, Comparison, Outcome } from "../measure/comparison.ts";
import type { Measure, MeasuredEdge } from "../measure/measurement.ts";
import type { Format } from "./format.ts";
import { findPaint } from "./paintname.ts";
import { nameInText } from "./phrase.ts";

/** One edge of a comparison. Contrast in percent, parts as fractions 0 to 1. */
export interface Moved {
  readonly outcome: Outcome;
  /** What it was called and is called, and the neighbour; without a neighbour both sides changed, or none. */
  readonly was: string;
  readonly is: string;
  readonly neighbour: string | undefined;
  readonly before: { readonly contrast: number; readonly grade: Grade } | undefined;
  readonly after: { readonly contrast: number; readonly grade: Grade };
  /** Its part of all edge length, and of the outline of the focus. */
  readonly part: number;
  readonly focusPart: number;
  /** Whether more than a little of it runs outside the focus. */
  readonly goesBeyond: boolean;
}

/** What became of each edge, in the order of `comparison.edges`. */
export function listMoves(comparison: Comparison, format: Format): readonly Moved[] {
  const all = sum(comparison.edges.map((edge) => edge.length));
  const focused = comparison.edges.map(
    (edge) => findMeasured(comparison.after.edges, edge)?.focusLength ?? 0,
  );
  const outline = sum(focused);
  return comparison.edges.map((edge, index) => ({
    ...describe(edge, comparison, format),
    part: edge.length / all,
    focusPart: outline === 0 ? 0 : (focused[index] ?? 0) / outline,
    goesBeyond: (focused[index] ?? 0) < 0.9 * edge.length,
  }));
}

/** The measured edge between the same two paints. */
export function findMeasured(
  edges: readonly MeasuredEdge[],
  { a, b }: { a: string; b: string },
): MeasuredEdge | undefined {
  return edges.find((edge) => (edge.a === a && edge.b === b) || (edge.a === b && edge.b === a));
}

function describe(
  edge: ComparedEdge,
  comparison: Comparison,
  format: Format,
): Omit<Moved, "part" | "focusPart" | "goesBeyond"> {
  const [before, after] = edge.contrast;
  const figures = {
    outcome: edge.outcome,
    before: before === null ? undefined : { contrast: before, grade: gradeOf(before) },
    after: { contrast: after, grade: gradeOf(after) },
  };
  const changed = [edge.a, edge.b].map((id) => hasChanged(id, comparison));
  const [was, is] = [comparison.before, comparison.after].map(
    (measure) => [edge.a, edge.b].map((id) => nameOf(measure, id, format)) as [string, string],
  ) as [[string, string], [string, string]];
  if (changed[0] === changed[1])
    return { ...figures, was: sayPair(was, format), is: sayPair(is, format), neighbour: undefined };
  const at = changed[0] ? 0 : 1;
  return { ...figures, was: was[at], is: is[at], neighbour: is[1 - at] };
}

function hasChanged(id: string, { before, after }: Comparison): boolean {
  return findPaint(before, id)?.hex !== findPaint(after, id)?.hex;
}

function sayPair([one, other]: readonly [string, string], { say }: Format): string {
  return say("edgeSaid.pair", { one, other });
}

function nameOf(measure: Measure, id: string, format: Format): string {
  return nameInText(findPaint(measure, id) ?? { name: id }, format);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
