// Floor 6. The reflectance scale as finished geometry: paints at their reflectance, edges as arcs that join them.
import type { Cloth } from "../../colour/cloth.ts";
import type { Hex } from "../../colour/colour.ts";
import { gradeOf, isClear } from "../../colour/contrast.ts";
import type { Comparison } from "../../measure/comparison.ts";
import type { MeasuredColour } from "../../measure/measure.ts";
import type { Format } from "./format.ts";
import { spreadApart } from "./spread.ts";

/** Everything in units of the panel's view box; `x` values of the redesign are mirrored. */
export interface ScalePanel {
  readonly heading: string;
  readonly description: string;
  readonly ticks: readonly { readonly y: number; readonly text: string }[];
  readonly tick: { readonly x1: number; readonly x2: number; readonly textX: number };
  readonly tickAnchor: "start" | "end";
  readonly labelAnchor: "start" | "end";
  readonly chips: readonly Chip[];
  readonly arcs: readonly Arc[];
}

export interface Chip {
  readonly hex: Hex;
  readonly x: number;
  readonly y: number;
  readonly label: string;
  readonly labelX: number;
  readonly labelY: number;
  /** A leader from the chip to its label, where the label had to give way. */
  readonly leader: string | undefined;
}

export interface Arc {
  readonly path: string;
  readonly width: number;
  /** `stroke-dasharray` of an edge that is not clear. */
  readonly dash: string | undefined;
  readonly text: string;
  readonly textX: number;
  readonly textY: number;
}

export interface ScaleView {
  readonly title: string;
  /** Of each panel's view box. */
  readonly width: number;
  readonly height: number;
  readonly panels: readonly [ScalePanel, ScalePanel];
}

const panelWidth = 340;
const panelHeight = 400;
const top = 22;
const bottom = 378;
const chipX = 186;
const chipSize = 18;
const labelX = 204;
const farX = 334;
/** How far the longest arc reaches from the chips, and the shortest. */
const reach = { most: 128, least: 26 };

interface Paint {
  readonly hex: Hex;
  readonly name: string;
  readonly reflectance: number;
}

interface Join {
  readonly from: number;
  readonly to: number;
  readonly length: number;
  readonly contrast: number;
}

/** The scale of a comparison: original and, mirrored, redesign. Heights run from the blackest cloth to the whitest. */
export function presentScale(comparison: Comparison, cloth: Cloth, format: Format): ScaleView {
  const before = comparison.edges.flatMap((edge) => {
    const contrast = edge.contrast[0];
    return contrast === null ? [] : joinPaints(comparison.before.colours, edge.a, edge.b, edge.length, contrast);
  });
  const after = comparison.edges.flatMap((edge) =>
    joinPaints(comparison.after.colours, edge.a, edge.b, edge.length, edge.contrast[1]),
  );
  return {
    title: "Reflectance scale",
    width: panelWidth,
    height: panelHeight,
    panels: [
      presentPanel("Original", comparison.before.colours, before, cloth, format, false),
      presentPanel("Redesign", comparison.after.colours, after, cloth, format, true),
    ],
  };
}

function joinPaints(
  colours: readonly MeasuredColour[],
  a: string,
  b: string,
  length: number,
  contrast: number,
): readonly Join[] {
  const from = colours.find((colour) => colour.id === a)?.reflectance;
  const to = colours.find((colour) => colour.id === b)?.reflectance;
  return from === undefined || to === undefined ? [] : [{ from, to, length, contrast }];
}

function presentPanel(
  heading: string,
  colours: readonly MeasuredColour[],
  joins: readonly Join[],
  cloth: Cloth,
  format: Format,
  mirrored: boolean,
): ScalePanel {
  const paints = listPaints(colours);
  const heightOf = (reflectance: number) =>
    top + ((cloth.white - reflectance) / (cloth.white - cloth.black)) * (bottom - top);
  const across = (x: number) => (mirrored ? panelWidth - x : x);
  return {
    heading,
    description: describePanel(paints, joins, format),
    ticks: listTicks(cloth).map((tick) => ({ y: round(heightOf(tick)), text: format.number(tick, 0) })),
    tick: { x1: across(0), x2: across(farX - 22), textX: across(farX) },
    tickAnchor: mirrored ? "start" : "end",
    labelAnchor: mirrored ? "end" : "start",
    chips: placeChips(paints, heightOf, across, format),
    arcs: placeArcs(joins, heightOf, across, format),
  };
}

/** Paints of one colour stand in one place: a part that `only` selects is not told apart here. */
function listPaints(colours: readonly MeasuredColour[]): readonly Paint[] {
  const seen = new Map<Hex, Paint>();
  for (const { hex, name, reflectance } of colours) {
    if (!seen.has(hex)) seen.set(hex, { hex, name, reflectance });
  }
  return [...seen.values()].sort((first, second) => second.reflectance - first.reflectance);
}

function listTicks(cloth: Cloth): readonly number[] {
  const between = [20, 40, 60, 80].filter((tick) => tick > cloth.black + 4 && tick < cloth.white - 4);
  return [cloth.black, ...between, cloth.white];
}

function placeChips(
  paints: readonly Paint[],
  heightOf: (reflectance: number) => number,
  across: (x: number) => number,
  format: Format,
): readonly Chip[] {
  const heights = paints.map((paint) => heightOf(paint.reflectance));
  const labels = spreadApart(heights, 17, top, bottom);
  let lane = 0;
  return paints.map((paint, index) => {
    const y = heights[index] ?? 0;
    const labelY = labels[index] ?? y;
    const previous = heights[index - 1];
    // Two paints that reflect alike stand side by side, not on top of each other.
    lane = previous !== undefined && y - previous < chipSize + 2 ? lane + 1 : 0;
    const x = chipX - lane * (chipSize + 2);
    const moved = Math.abs(labelY - y) > 2 || lane > 0;
    return {
      hex: paint.hex,
      x: round(across(x) - chipSize / 2),
      y: round(y - chipSize / 2),
      label: `${paint.name} ${format.number(paint.reflectance, 0)}`,
      labelX: across(labelX),
      labelY: round(labelY + 4.5),
      leader: moved
        ? `M${across(x + chipSize / 2)} ${round(y)}L${across(labelX - 3)} ${round(labelY)}`
        : undefined,
    };
  });
}

function placeArcs(
  joins: readonly Join[],
  heightOf: (reflectance: number) => number,
  across: (x: number) => number,
  format: Format,
): readonly Arc[] {
  const longest = Math.max(...joins.map((join) => join.length), 0);
  const placed: { x: number; y: number }[] = [];
  const shortFirst = [...joins].sort(
    (first, second) => Math.abs(first.from - first.to) - Math.abs(second.from - second.to),
  );
  return shortFirst.map((join) => {
    const [y1, y2] = [heightOf(join.from), heightOf(join.to)];
    const span = Math.abs(y1 - y2) / (bottom - top);
    const apex = { x: chipX - reach.least - span * (reach.most - reach.least), y: (y1 + y2) / 2 };
    while (placed.some((other) => isNear(apex, other)) && apex.x > chipX - reach.most - 20) apex.x -= 12;
    placed.push(apex);
    const width = 1.25 + 6.75 * (longest === 0 ? 0 : join.length / longest);
    // The middle of a cubic lies three quarters of the way out to its two control points.
    const control = across(round(chipX - (chipX - apex.x) / 0.75));
    return {
      path: `M${across(chipX)} ${round(y1)}C${control} ${round(y1)} ${control} ${round(y2)} ${across(chipX)} ${round(y2)}`,
      width: round(width),
      dash: isClear(gradeOf(join.contrast)) ? undefined : `${round(width * 0.6 + 2)} ${round(width * 0.6 + 3)}`,
      text: format.contrast(join.contrast),
      textX: round(across(apex.x - width / 2 - 5)),
      textY: round(apex.y + 4.5),
    };
  });
}

function isNear(a: { x: number; y: number }, b: { x: number; y: number }): boolean {
  return Math.abs(a.y - b.y) < 14 && Math.abs(a.x - b.x) < 26;
}

function describePanel(paints: readonly Paint[], joins: readonly Join[], format: Format): string {
  if (paints.length === 0) return "No paints.";
  const stand = paints.map((paint) => `${paint.name} at ${format.number(paint.reflectance, 0)}`);
  const clear = joins.filter((join) => isClear(gradeOf(join.contrast))).length;
  const edges = joins.length === 0 ? "No edges." : `${clear} of ${joins.length} edges are clear.`;
  return `Reflectance in percent, lightest first: ${format.list(stand)}. ${edges}`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
