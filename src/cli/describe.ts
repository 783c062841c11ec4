// Floor 7. A measured drawing and a comparison as text for a terminal.
import { gradeOf } from "../colour/contrast.ts";
import type { ComparedEdge, Comparison } from "../measure/comparison.ts";
import { formatContrast, formatPercent, formatShare } from "../measure/format.ts";
import type { Measure, MeasuredFocus } from "../measure/measure.ts";
import { showText } from "../problem/quote.ts";
import { type Column, formatTable } from "./table.ts";

const left = (head: string): Column => ({ head, align: "left" });
const right = (head: string): Column => ({ head, align: "right" });

const noEdges = "  One colour: no edges to measure.";

/** Returns the colours and edges of a drawing, with what they come to. */
export function describeMeasure(measure: Measure): string {
  const { file, proportions, distance, edges, clearEdgeShare, clarity } = measure;
  const lines = [
    `${showText(file)}: ${proportions.join(":")}, ${describeDistance(distance)}`,
    "",
    describeColours(measure),
    "",
  ];
  if (edges.length === 0) lines.push(noEdges);
  else {
    const summary = [`Clear-edge share ${formatShare(clearEdgeShare)}`, `clarity ${formatPercent(clarity)}`];
    lines.push(describeEdges(measure), "", `  ${summary.join(", ")}, weakest edge ${nameWeakest(measure)}`);
  }
  return [...lines, `  ${describeFocus(measure.focus)}`, ...listWarnings(measure)].join("\n");
}

/** Returns a comparison: each edge before and after, and the verdict. */
export function describeComparison(comparison: Comparison): string {
  const { change, before, clearEdgeShare, clarity } = comparison;
  const only = change.only === undefined ? "" : `, only ${change.only}`;
  const focusOf = ({ a, b }: ComparedEdge): number =>
    comparison.after.edges.find((edge) => edge.a === a && edge.b === b)?.focusLength ?? 0;
  const hasFocus = comparison.edges.some((edge) => focusOf(edge) > 0);
  const figures = [right("before"), left("grade"), right("after"), left("grade"), left("outcome")];
  const columns = [left("edge"), right("length"), ...(hasFocus ? [right("focus")] : []), ...figures];
  const ordered = [...comparison.edges].sort((x, y) => focusOf(y) - focusOf(x) || y.length - x.length);
  const rows = ordered.map((edge) => {
    const focus = focusOf(edge) > 0 ? focusOf(edge).toFixed(2) : "";
    const lengths = [edge.length.toFixed(2), ...(hasFocus ? [focus] : [])];
    return [nameEdge(edge), ...lengths, ...describePair(edge), edge.outcome];
  });
  return [
    showText(
      `${before.file}: ${change.replace} → ${change.with}${only}, ${describeDistance(before.distance)}`,
    ),
    "",
    rows.length === 0 ? noEdges : formatTable(columns, rows),
    "",
    `  Clear-edge share ${formatShare(clearEdgeShare[0])} → ${formatShare(clearEdgeShare[1])}, clarity ${formatPercent(clarity[0])} → ${formatPercent(clarity[1])}`,
    `  ${compareFocus(before.focus, comparison.after.focus)}`,
    `  Verdict: ${comparison.verdict}`,
    ...listWarnings(comparison.after),
  ].join("\n");
}

/** Returns the weakest edge in words, `12.3 % (dark blue / red)`, or `none`. */
export function nameWeakest(measure: Measure): string {
  const { weakestEdge, edges } = measure;
  if (weakestEdge === null) return "none";
  const edge = edges.find(({ a, b }) => a === weakestEdge.a && b === weakestEdge.b);
  const names = edge?.names ?? [weakestEdge.a, weakestEdge.b];
  return `${formatContrast(weakestEdge.contrast)} (${names.join(" / ")})`;
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

function describeEdges(measure: Measure): string {
  const heads = [right("contrast ratio"), right("ΔE00"), left("")];
  const columns = [left("edge"), right("length"), right("contrast"), left("grade"), ...heads];
  const rows = measure.edges.map((edge) => {
    const notes = [edge.hueOnly ? "hue only" : "", edge.tincture ?? ""]
      .filter((note) => note !== "")
      .join(", ");
    const cells = [edge.names.join(" / "), edge.length.toFixed(2), formatContrast(edge.contrast), edge.grade];
    return [...cells, edge.contrastRatio.toFixed(2), edge.deltaE00.toFixed(1), notes];
  });
  return formatTable(columns, rows);
}

function nameEdge({ names, contrast: [before] }: ComparedEdge): string {
  const [from, to] = [(before === null ? names[1] : names[0]).join(" / "), names[1].join(" / ")];
  return from === to ? from : `${from} → ${to}`;
}

function describePair({ contrast: [before, after], outcome }: ComparedEdge): string[] {
  const start = before === null ? ["", ""] : [formatContrast(before), gradeOf(before)];
  const end = outcome === "merged" ? ["one colour", ""] : [formatContrast(after), gradeOf(after)];
  return [...start, ...end];
}

/** Returns from where a drawing was seen, in words. */
export function describeDistance(distance: number): string {
  return distance === 0 ? "the full drawing" : `seen from ${distance} flag heights away (a model of sight)`;
}

function describeFocus({ source, share, clarity, readsTo }: MeasuredFocus): string {
  if (source === "none") return "Focus: none found.";
  const reads =
    readsTo === null
      ? "not told apart even from 10 flag heights"
      : `reads to ${formatReach(readsTo)} flag heights`;
  return `Focus (${source}): ${formatShare(share)} of the flag, clarity ${formatPercent(clarity)}, ${reads}`;
}

function compareFocus(before: MeasuredFocus, after: MeasuredFocus): string {
  if (before.source === "none") return "Focus: none found.";
  const clarity = `clarity ${formatPercent(before.clarity)} → ${formatPercent(after.clarity)}`;
  const reach = [formatReach(before.readsTo), formatReach(after.readsTo)] as const;
  const reads =
    reach[0] === reach[1] ? `${reach[0]} flag heights as before` : `${reach.join(" → ")} flag heights`;
  return `Focus (${before.source}): ${clarity}, reads to ${reads}`;
}

function formatReach(readsTo: number | null): string {
  if (readsTo === null) return "under 10";
  return readsTo === 320 ? "320 or more" : String(readsTo);
}

function listWarnings(measure: Measure): string[] {
  return measure.warnings.length === 0
    ? []
    : ["", ...measure.warnings.map((warning) => `  Note: ${showText(warning)}`)];
}
