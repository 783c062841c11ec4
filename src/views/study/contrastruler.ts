// Floor 8. The contrast ruler as finished geometry: a row for each edge, from its contrast in the original to that in the
// redesign, on one axis from 0 to 100 percent.

import type { StudyResult } from "../../analysis/result.ts";
import { clearFrom, type Grade, softFrom, strongFrom } from "../../colour/contrast.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import { findMeasured } from "../../words/edgemove.ts";
import type { Format } from "../../words/format.ts";
import { gradeIds } from "../../words/gradeword.ts";
import type { Linker } from "../address.ts";
import { listPlacedEdges } from "../edge/edgeaddress.ts";
import { type EdgeRow, presentEdge } from "../edge/edgerow.ts";
import { type Details, presentDetails } from "./edgedetail.ts";

/** Places on the axis are in percent of its length. */
export interface RulerView {
  readonly title: string;
  readonly bands: readonly { readonly name: string; readonly middle: number }[];
  readonly ticks: readonly { readonly x: number; readonly text: string; readonly isClear: boolean }[];
  /** Edges that change first, those of the focus before others, then the longest. */
  readonly rows: readonly RulerRow[];
  /** What opens on demand, so that a flag with many edges stays readable. */
  readonly rest: { readonly label: string; readonly rows: readonly RulerRow[] } | undefined;
  readonly notes: Readonly<Record<"falls" | "crosses" | "merged" | "outline" | "near" | "hue", boolean>>;
}

export interface RulerRow {
  readonly edge: EdgeRow;
  /** What it and the rows after it are lines of; undefined where that is the edge's own name. */
  readonly group?: string;
  readonly details: Details;
  /** Of the line from ring to dot, in pixels: the longer the edge, the thicker. */
  readonly thickness: number;
  readonly radius: { readonly ring: number; readonly dot: number };
  /** Undefined where the edge was not there before. */
  readonly ring: number | undefined;
  /** Undefined where the two colours became one. */
  readonly dot: number | undefined;
  /** Of the paper within the line where contrast falls, in pixels. */
  readonly hollow: number | undefined;
}

/** Pixels. Even the shortest edge is as visible as any other, and can be hollow: `wall` is both sides of one together. */
const thickness = { least: 4, most: 10, wall: 2.5 };
/** By how much a dot is thicker than its line, and a ring than a dot that it stands round. */
const more = { dot: 3, ring: 3.5 };
/** Percent of the axis within which the ring stands round the dot. */
const heldWithin = 1;
/** Up to so many edges all are shown at once; of more, those that change, up to the other number. */
const mostTogether = 8;
const mostRows = 12;

/** The ruler of a study, or undefined where there is no edge. */
export function presentRuler(result: StudyResult, link: Linker, format: Format): RulerView | undefined {
  const { study, comparison } = result;
  const paths = new Map(listPlacedEdges(study.slug, comparison).map(({ edge, path }) => [edge, path]));
  const address = (edge: ComparedEdge) => {
    const path = paths.get(edge);
    return path === undefined ? undefined : link(path);
  };
  const rows = orderEdges(comparison).map((edge) => ({
    ...presentRow(edge, comparison, format, address),
    details: presentDetails(result, edge, link),
  }));
  if (rows.length === 0) return undefined;
  const isOpen = ({ edge }: RulerRow, index: number) =>
    rows.length <= mostTogether || (!edge.isSame && index < mostRows);
  const rest = rows.filter((row, index) => !isOpen(row, index));
  return {
    ...rule(rows, comparison.before.focus.source !== "none", format),
    rows: rows.filter(isOpen),
    rest: rest.length === 0 ? undefined : { label: countRest(rest, format), rows: rest },
  };
}

/** An edge of any study; `called` and `address` in place of its own. */
interface Ruled {
  readonly result: StudyResult;
  readonly edge: ComparedEdge;
  readonly called?: string;
  readonly group?: string;
  readonly address?: string;
}

/** The ruler of edges that are chosen one by one, in the order given. */
export function presentChosen(chosen: readonly Ruled[], link: Linker, format: Format): RulerView {
  const rows = chosen.map(({ result, edge, called, group, address }) => {
    const row = presentRow(edge, result.comparison, format, () => address);
    return {
      ...row,
      ...(group === undefined ? {} : { group }),
      edge: called === undefined ? row.edge : { ...row.edge, called },
      details: presentDetails(result, edge, link),
    };
  });
  const hasOutline = chosen.some(({ result }) => result.comparison.before.focus.source !== "none");
  return { ...rule(rows, hasOutline, format), rows, rest: undefined };
}

/** What the figure shows, as text. */
export function describeRuler({ title, rows, rest }: RulerView, format: Format): string {
  const said = [...rows, ...(rest?.rows ?? [])].map(({ edge }) => sayRow(edge, format));
  return `${title}. ${said.join(format.say("list.semicolon"))}.`;
}

function rule(
  rows: readonly RulerRow[],
  outline: boolean,
  format: Format,
): Pick<RulerView, "title" | "bands" | "ticks" | "notes"> {
  const steps = [0, softFrom, clearFrom, strongFrom, 100];
  const names: readonly Grade[] = ["weak", "soft", "clear", "strong"];
  return {
    title: format.say("ruler.title"),
    bands: names.map((name, index) => ({
      name: format.say(gradeIds[name]),
      middle: ((steps[index] ?? 0) + (steps[index + 1] ?? 0)) / 2,
    })),
    ticks: steps.map((x) => ({
      x,
      text: x === 100 ? format.percent(x) : format.number(x, 0),
      isClear: x === clearFrom,
    })),
    notes: {
      falls: rows.some(({ hollow }) => hollow !== undefined),
      crosses: rows.some(
        ({ ring = Number.NaN, dot = Number.NaN }) =>
          (ring < clearFrom && dot >= clearFrom) || (ring >= clearFrom && dot < clearFrom),
      ),
      merged: rows.some(({ dot }) => dot === undefined),
      outline,
      near: rows.some(({ edge: { before, after } }) => (before?.near ?? after.near) !== undefined),
      hue: rows.some(({ edge }) => edge.isHueAlone),
    },
  };
}

function orderEdges({ edges, after }: Comparison): readonly ComparedEdge[] {
  const focusOf = (edge: ComparedEdge) => findMeasured(after.edges, edge)?.focusLength ?? 0;
  const isSame = ({ outcome }: ComparedEdge) => Number(outcome === "same");
  return [...edges].sort(
    (first, second) =>
      isSame(first) - isSame(second) || focusOf(second) - focusOf(first) || second.length - first.length,
  );
}

function presentRow(
  edge: ComparedEdge,
  comparison: Comparison,
  format: Format,
  address?: (edge: ComparedEdge) => string | undefined,
): Omit<RulerRow, "details"> {
  const [before, after] = edge.contrast;
  const longest = Math.max(...comparison.edges.map(({ length }) => length));
  const thick = round(thickness.least + (thickness.most - thickness.least) * (edge.length / longest));
  const dot = round(thick / 2 + more.dot);
  const isHeld = before !== null && Math.abs(after - before) < heldWithin;
  return {
    edge: presentEdge(edge, comparison, format, address),
    thickness: thick,
    radius: { dot, ring: isHeld ? dot + more.ring : dot },
    ring: before === null ? undefined : round(before),
    dot: edge.outcome === "merged" ? undefined : round(after),
    hollow: before !== null && after < before ? round(thick - thickness.wall) : undefined,
  };
}

/** `2 more that change and 14 that do not`. */
function countRest(rest: readonly RulerRow[], format: Format): string {
  const same = rest.filter(({ edge }) => edge.isSame).length;
  const moved = rest.length - same;
  const { say } = format;
  if (moved === 0) return say("ruler.same", { count: same });
  if (same === 0) return say("ruler.moreMoved", { count: moved });
  return say("ruler.moreMovedAndSame", {
    moved: say("ruler.moreMoved", { count: moved }),
    same: say("ruler.same", { count: same }),
  });
}

/** `navy / black, 2.11 flag heights: contrast 5 % to 63 %, weak to strong; gained`. */
function sayRow(
  { called, names, extent, before, after, grades, outcome, marks }: EdgeRow,
  { say }: Format,
): string {
  const isOne = before === undefined || before.contrast === after.contrast;
  const contrast = isOne ? after.contrast : say("number.move", { was: before.contrast, is: after.contrast });
  const row = say("ruler.row", { edge: called ?? names, extent, contrast, grades });
  return [row, outcome, ...marks].join(say("list.semicolon"));
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
