// Floor 8. One edge of a comparison in finished words: what it is called, how much there is of it, what became of it.

import type { Hex } from "../../colour/colour.ts";
import { gradeOf, isClear } from "../../colour/contrast.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import type { Measure } from "../../measure/measurement.ts";
import { isWhole } from "../../measure/percenttext.ts";
import { findMeasured } from "../../words/edgemove.ts";
import type { Format } from "../../words/format.ts";
import { gradeIds, outcomeIds } from "../../words/gradeword.ts";
import { findPaint } from "../../words/paintname.ts";
import { formatNames } from "../../words/phrase.ts";

/** One reading of an edge. `contrast` is finished text; `clear` says whether its line is drawn solid. */
export interface Reading {
  readonly hexes: readonly [Hex, Hex];
  readonly names: string;
  readonly contrast: string;
  readonly grade: string;
  readonly clear: boolean;
  /** `near the line` where the grade would be another on cloth that reaches further, else undefined. */
  readonly near: string | undefined;
}

/** How a grade near the line is marked; the method page explains it. */
const nearIds = { both: "mark.near", now: "mark.nearNow", before: "mark.nearBefore" } as const;
/** How an edge is marked that is weak, yet of two quite different colours. */
const hueIds = { both: "mark.hue", now: "mark.hueNow", before: "mark.hueBefore" } as const;

export interface EdgeRow {
  readonly key: string;
  /** Where its own page is, as the page at hand links to it. */
  readonly address: string | undefined;
  readonly names: string;
  /** What it is called after the change, where that differs. */
  readonly renamed: string | undefined;
  /** `the leaf on dark green`, where the author names the part that is changed. */
  readonly called: string | undefined;
  /** Each of its two paints before, and after where that is called something else. */
  readonly sides: readonly [readonly [string, string?], readonly [string, string?]];
  /** `2.11 flag heights, 57 % of outline`; with how much of it, where not all is: `3.16 flag heights, 1.80 of it whole outline`. */
  readonly extent: string;
  /** Its length alone. */
  readonly length: string;
  /** Undefined where the edge was not there before. */
  readonly before: Reading | undefined;
  readonly after: Reading;
  readonly outcome: string;
  /** Whether both colours are to the eye what they were. */
  readonly isSame: boolean;
  /** `weak to strong`, `strong`, `from strong`. */
  readonly grades: string;
  /** What makes a grade doubtful: `near the line now`, `by hue alone before`. */
  readonly marks: readonly string[];
  /** Whether it is told apart by hue alone, before or after. */
  readonly isHueAlone: boolean;
}

/** One edge in words. */
export function presentEdge(
  edge: ComparedEdge,
  comparison: Comparison,
  format: Format,
  address?: (edge: ComparedEdge) => string | undefined,
): EdgeRow {
  const [before, after] = edge.contrast;
  const names = formatNames(edge.names[0], format);
  const renamed = formatNames(edge.names[1], format);
  const called = callEdge(edge, comparison, format);
  const side = (at: 0 | 1): readonly [string, string?] => {
    const [was, is] = [edge.names[0][at], edge.names[1][at]];
    return was === is ? [was] : [was, is];
  };
  const readings = {
    before:
      before === null ? undefined : presentReading(edge, comparison.before, names, before, false, format),
    after: presentReading(edge, comparison.after, renamed, after, edge.outcome === "merged", format),
  };
  return {
    key: `${edge.a}-${edge.b}`,
    address: address?.(edge),
    names,
    renamed: renamed === names ? undefined : (called?.is ?? renamed),
    called: called?.was,
    sides: [side(0), side(1)],
    extent: describeExtent(edge, comparison, format),
    length: sayLength(edge, format),
    ...readings,
    outcome: format.say(outcomeIds[edge.outcome]),
    isSame: edge.outcome === "same",
    grades: describeGrades(edge, readings, format),
    marks: listMarks(edge, comparison, readings, format),
    isHueAlone: [comparison.before, comparison.after].some((measure) => isHueOnly(edge, measure)),
  };
}

/** `the leaf on dark green`, then `gold on dark green`, where the author names the part that is changed. */
function callEdge(
  { a, b, names }: ComparedEdge,
  { before, after }: Comparison,
  { say }: Format,
): { readonly was: string; readonly is: string } | undefined {
  const isPart = [a, b].map(
    (id) => (findPaint(before, id) ?? findPaint(after, id))?.part?.called !== undefined,
  );
  if (!isPart[0] && !isPart[1]) return undefined;
  const [was, is] = names.map(([one, other]) =>
    isPart[0] ? say("edge.on", { part: one, field: other }) : say("edge.on", { part: other, field: one }),
  );
  return was === undefined || is === undefined ? undefined : { was, is };
}

function sayLength({ length }: ComparedEdge, { say }: Format): string {
  return say("length.heights", { length: roundLength(length) });
}

/** A length as pages show it, by which a language chooses its plural. */
export function roundLength(heights: number): number {
  return Math.round(100 * heights) / 100;
}

function describeExtent(edge: ComparedEdge, { after }: Comparison, format: Format): string {
  const { say } = format;
  const length = sayLength(edge, format);
  const own = findMeasured(after.edges, edge)?.focusLength ?? 0;
  const outline = after.edges.reduce((sum, { focusLength }) => sum + focusLength, 0);
  if (own === 0) return length;
  const part = isWhole(own / outline)
    ? say("length.wholeOutline")
    : say("length.ofOutline", { share: format.share(own / outline) });
  return own < 0.99 * edge.length
    ? say("length.partly", { length, own: roundLength(own), part })
    : say("length.wholly", { length, part });
}

function describeGrades(
  { outcome }: ComparedEdge,
  { before, after }: Pick<EdgeRow, "before" | "after">,
  { say }: Format,
): string {
  if (before === undefined) return say("grade.now", { is: after.grade });
  if (outcome === "merged") return say("grade.from", { was: before.grade });
  return before.grade === after.grade
    ? after.grade
    : say("grade.move", { was: before.grade, is: after.grade });
}

function listMarks(
  edge: ComparedEdge,
  comparison: Comparison,
  { before, after }: Pick<EdgeRow, "before" | "after">,
  { say }: Format,
): readonly string[] {
  const mark = (ids: typeof nearIds | typeof hueIds, was: boolean, is: boolean) =>
    was || is ? [say(was && is ? ids.both : is ? ids.now : ids.before)] : [];
  return [
    ...mark(nearIds, before?.near !== undefined, after.near !== undefined),
    ...mark(
      hueIds,
      before !== undefined && isHueOnly(edge, comparison.before),
      isHueOnly(edge, comparison.after),
    ),
  ];
}

function isHueOnly(edge: ComparedEdge, { edges }: Measure): boolean {
  return findMeasured(edges, edge)?.hueOnly ?? false;
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
    grade: merged ? format.say("outcome.merged") : format.say(gradeIds[grade]),
    clear: isClear(grade),
    near: !merged && findMeasured(measure.edges, edge)?.nearLine ? format.say("mark.near") : undefined,
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
