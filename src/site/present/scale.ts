// Floor 6. The reflectance scale as finished geometry: paints at their reflectance, original and redesign facing.
import type { Cloth } from "../../colour/cloth.ts";
import type { Hex } from "../../colour/colour.ts";
import { gradeOf, isClear } from "../../colour/contrast.ts";
import type { Comparison } from "../../measure/comparison.ts";
import type { MeasuredColour } from "../../measure/measure.ts";
import { type Arc, chipX, type Join, placeArcs, type Stand } from "./arc.ts";
import type { Format } from "./format.ts";
import { nameWhole } from "./paint.ts";
import { spreadApart } from "./spread.ts";

/** One side of the scale, in units of its view box. That of the redesign is mirrored. */
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
  readonly width: number;
  readonly height: number;
  readonly label: string;
  readonly labelX: number;
  readonly labelY: number;
  /** A line from the chip to its label, where the label had to give way. */
  readonly leader: string | undefined;
}

export interface ScaleView {
  readonly title: string;
  /** Of each panel's view box. */
  readonly width: number;
  readonly height: number;
  readonly panels: readonly [ScalePanel, ScalePanel];
}

const panel = { width: 340, height: 400, top: 22, bottom: 378 };
const chip = { width: 20, height: 10, lane: 23 };
/** Where the numbers of the scale stand. */
const farX = 334;
const labelGap = 17;
/** Lines that the description names. */
const mostLines = 12;

/** The scale of a comparison: original and, mirrored, redesign. Heights run from the blackest cloth to the whitest. */
export function presentScale(comparison: Comparison, cloth: Cloth, format: Format): ScaleView {
  const { before, after, edges } = comparison;
  const first = edges.flatMap((edge) =>
    edge.contrast[0] === null ? [] : joinPaints(before.colours, edge, edge.contrast[0]),
  );
  const second = edges.flatMap((edge) => joinPaints(after.colours, edge, edge.contrast[1]));
  return {
    title: "Reflectance scale",
    width: panel.width,
    height: panel.height,
    panels: [
      presentPanel("Original", before.colours, addJoins(first), cloth, format, false),
      presentPanel("Redesign", after.colours, addJoins(second), cloth, format, true),
    ],
  };
}

function joinPaints(
  colours: readonly MeasuredColour[],
  edge: { readonly a: string; readonly b: string; readonly length: number },
  contrast: number,
): readonly Join[] {
  const from = colours.find((colour) => colour.id === edge.a)?.hex;
  const to = colours.find((colour) => colour.id === edge.b)?.hex;
  return from === undefined || to === undefined ? [] : [{ from, to, length: edge.length, contrast }];
}

/** A change can give two edges the same two colours: on the scale they are one line. */
function addJoins(joins: readonly Join[]): readonly Join[] {
  const added = new Map<string, Join>();
  for (const join of joins) {
    const key = [join.from, join.to].sort().join();
    const known = added.get(key);
    added.set(key, known ? { ...known, length: known.length + join.length } : join);
  }
  return [...added.values()];
}

function presentPanel(
  heading: string,
  colours: readonly MeasuredColour[],
  joins: readonly Join[],
  cloth: Cloth,
  format: Format,
  mirrored: boolean,
): ScalePanel {
  const heightOf = (reflectance: number) =>
    panel.top + ((cloth.white - reflectance) / (cloth.white - cloth.black)) * (panel.bottom - panel.top);
  const across = (x: number) => (mirrored ? panel.width - x : x);
  const stands = placePaints(colours, heightOf);
  return {
    heading,
    description: describePanel(stands, joins, format),
    ticks: listTicks(cloth).map((tick) => ({ y: round(heightOf(tick)), text: format.number(tick, 0) })),
    tick: { x1: across(0), x2: across(farX - 22), textX: across(farX) },
    tickAnchor: mirrored ? "start" : "end",
    labelAnchor: mirrored ? "end" : "start",
    chips: placeChips(stands, across, format),
    arcs: placeArcs(joins, stands, across, panel.bottom - panel.top, format),
  };
}

function listTicks(cloth: Cloth): readonly number[] {
  const between = [20, 40, 60, 80].filter((tick) => tick > cloth.black + 8 && tick < cloth.white - 8);
  return [cloth.black, ...between, cloth.white];
}

/**
 * Lightest first. Paints of one colour stand in one place: a part that `only` selects is not told apart here. Two
 * paints that reflect alike stand side by side, not on top of each other.
 */
function placePaints(
  colours: readonly MeasuredColour[],
  heightOf: (reflectance: number) => number,
): readonly Stand[] {
  const distinct = new Map(colours.map((colour) => [colour.hex, colour]));
  const lastInLane: number[] = [];
  return [...distinct.values()]
    .sort((first, second) => second.reflectance - first.reflectance)
    .map((colour) => {
      const { hex, reflectance } = colour;
      const y = heightOf(reflectance);
      const free = lastInLane.findIndex((last) => y - last >= chip.height + 2);
      const lane = free === -1 ? lastInLane.length : free;
      lastInLane[lane] = y;
      return { hex, name: nameWhole(colour), reflectance, x: chipX + lane * chip.lane, y };
    });
}

function placeChips(
  stands: readonly Stand[],
  across: (x: number) => number,
  format: Format,
): readonly Chip[] {
  const heights = stands.map((stand) => stand.y);
  const labelHeights = spreadApart(heights, labelGap, panel.top, panel.bottom);
  const labelX = Math.max(...stands.map((stand) => stand.x), chipX) + chip.width / 2 + 9;
  return stands.map((stand, index) => {
    const labelY = labelHeights[index] ?? stand.y;
    const isBeside = Math.abs(labelY - stand.y) < 2 && labelX - stand.x < chip.lane;
    const start = `M${round(across(stand.x + chip.width / 2))} ${round(stand.y)}`;
    return {
      hex: stand.hex,
      x: round(across(stand.x) - chip.width / 2),
      y: round(stand.y - chip.height / 2),
      width: chip.width,
      height: chip.height,
      label: `${stand.name} ${format.number(stand.reflectance, 0)}`,
      labelX: round(across(labelX)),
      labelY: round(labelY + 4.5),
      leader: isBeside ? undefined : `${start}L${round(across(labelX - 3))} ${round(labelY)}`,
    };
  });
}

function describePanel(stands: readonly Stand[], joins: readonly Join[], format: Format): string {
  if (stands.length === 0) return "No paints.";
  const listed = stands.map((stand) => `${stand.name} at ${format.number(stand.reflectance, 0)}`);
  const nameOf = (hex: Hex) => stands.find((stand) => stand.hex === hex)?.name ?? hex;
  const lines = [...joins]
    .sort((first, second) => second.contrast - first.contrast)
    .map(({ from, to, contrast }) => {
      const grade = gradeOf(contrast);
      const stroke = isClear(grade) ? "solid" : "broken";
      return `${nameOf(from)} to ${nameOf(to)} ${format.contrast(contrast)}, ${grade}, ${stroke}`;
    });
  const edges =
    lines.length === 0
      ? "No lines."
      : `Lines: ${lines.slice(0, mostLines).join("; ")}${lines.length > mostLines ? "; and others" : ""}.`;
  return `Reflectance in percent, lightest first: ${format.list(listed)}. ${edges}`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
