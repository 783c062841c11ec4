// Floor 11. A measured drawing as text for a terminal.

import { type EdgeMetric, edgeMetrics } from "../../measure/edgemetric.ts";
import type { FocusView, Measure, MeasuredEdge, MeasuredFocus } from "../../measure/measurement.ts";
import { formatContrast, formatPercent, formatShare } from "../../measure/percenttext.ts";
import { showText } from "../../problem/quote.ts";
import { plainFormat } from "../../words/format.ts";
import { wordsOf } from "../../words/metricwords.ts";
import { describeDoubt } from "../../words/uncertainty.ts";
import { describeDistance, formatLastsTo } from "./distancetext.ts";
import { type Column, formatTable } from "./texttable.ts";

const left = (head: string): Column => ({ head, align: "left" });
const right = (head: string): Column => ({ head, align: "right" });

/** What is said in the place of edges, and of a focus, where there are none. */
export const noEdges = "  One colour: no edges to measure.";
export const noFocus = "  No emblem found: nothing has to be seen before the rest.";

/** Steps of distance, in flag heights, from which is told what is left of the focus. */
const toldSteps: readonly number[] = [20, 80, 320];

/** Returns what a drawing comes to, then its colours and edges. */
export function describeMeasure(measure: Measure): string {
  const { file, proportions, distance, edges, clarity, strength } = measure;
  return [
    `${showText(file)}: ${proportions.join(":")}, ${describeDistance(distance)}`,
    "",
    edges.length === 0
      ? noEdges
      : `  Clarity ${formatPercent(clarity)}, strength ${formatPercent(strength)}, weakest edge ${nameWeakest(measure)}`,
    ...describeFocus(measure.focus),
    "",
    describeColours(measure),
    ...(edges.length === 0 ? [] : ["", describeEdges(measure)]),
    ...listWarnings(measure),
  ].join("\n");
}

/** Returns a grade as it stands in a table: `clear`, `clear, near the line`. */
export function formatGrade({ grade, nearLine }: Pick<MeasuredEdge, "grade" | "nearLine">): string {
  return nearLine ? `${grade}, near the line` : grade;
}

/** Returns the warnings of a measure, a line each behind an empty one. */
export function listWarnings({ warnings }: Measure): readonly string[] {
  return warnings.length === 0
    ? []
    : ["", ...warnings.map((warning) => `  Note: ${showText(describeDoubt(warning, plainFormat))}`)];
}

/** The weakest edge in words, `12.3 % (dark blue / red)`. */
function nameWeakest({ weakestEdge, edges }: Measure): string {
  if (weakestEdge === null) return "none";
  const edge = edges.find(({ a, b }) => a === weakestEdge.a && b === weakestEdge.b);
  const names = edge?.names ?? [weakestEdge.a, weakestEdge.b];
  return `${formatContrast(weakestEdge.contrast)} (${names.map(showText).join(" / ")})`;
}

function describeFocus({ source, share, clarity, lastsTo, from }: MeasuredFocus): readonly string[] {
  if (source === "none") return [noFocus];
  const told = from.filter(({ distance }) => toldSteps.includes(distance)).map(describeStep);
  return [
    `  Focus (${source}): ${formatShare(share)} of the flag, clarity ${formatPercent(clarity)}, lasts to ${formatLastsTo(lastsTo)} flag heights`,
    ...(told.length === 0 ? [] : [`  Left of it: ${told.join(", ")}`]),
  ];
}

/** `98 % from 20 (clarity 49 %)`. */
function describeStep({ distance, left: rest, clarity }: FocusView): string {
  if (rest === 0) return `nothing from ${distance}`;
  const says = clarity === null ? "no edge" : `clarity ${formatPercent(clarity, 0)}`;
  return `${formatShare(rest, 0)} from ${distance} (${says})`;
}

function describeColours(measure: Measure): string {
  const columns = [
    left("id"),
    left("colour"),
    left("hex"),
    right("share"),
    right("reflectance"),
    left("tincture"),
  ];
  const rows = measure.colours.map(({ id, name, hex, share, reflectance, tincture, vanishes, uneven }) => {
    const ends = uneven === null ? "" : `uneven, ${uneven.lightest} to ${uneven.darkest}`;
    const notes = [vanishes ? "vanishes" : "", ends].filter((note) => note !== "");
    const shown = notes.length === 0 ? name : `${name} (${notes.join(", ")})`;
    const cells = [id, shown, hex, formatShare(share), formatPercent(reflectance)];
    return [...cells, tincture === "unclassed" ? "" : tincture];
  });
  return formatTable(columns, rows);
}

function describeEdges({ edges }: Measure): string {
  const told = edgeMetrics.flatMap((metric: EdgeMetric) => {
    const { id, head } = metric;
    return head === undefined ? [] : [{ id: id as keyof MeasuredEdge, head, ...wordsOf(metric) }];
  });
  const cells = told.filter(({ cell }) => cell !== undefined);
  const columns = [left("edge"), right("length"), right("contrast"), left("grade")];
  return formatTable(
    [...columns, ...cells.map(({ head }) => right(head)), left("")],
    edges.map((edge) => [
      edge.names.join(" / "),
      edge.length.toFixed(2),
      formatContrast(edge.contrast),
      formatGrade(edge),
      ...cells.map(({ id, cell }) => cell?.(edge[id]) ?? ""),
      told.flatMap(({ id, head, note }) => note?.(edge[id], head) || []).join(", "),
    ]),
  );
}
