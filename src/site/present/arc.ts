// Floor 6. The lines of the reflectance scale: arcs that join two paints, nested so that their numbers stay readable.
import type { Hex } from "../../colour/colour.ts";
import { gradeOf, isClear } from "../../colour/contrast.ts";
import { type Curve, type Point, placeLabels } from "./arclabel.ts";
import type { Format } from "./format.ts";

/** All edges between two colours. Length in flag heights, contrast in percent. */
export interface Join {
  readonly from: Hex;
  readonly to: Hex;
  readonly length: number;
  readonly contrast: number;
}

/** A paint in its place: the middle of its chip. */
export interface Stand {
  readonly hex: Hex;
  readonly name: string;
  readonly reflectance: number;
  readonly x: number;
  readonly y: number;
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

interface Span {
  readonly join: Join;
  readonly from: Stand;
  readonly to: Stand;
}

/** The middle of the first lane of chips. Arcs reach out from it on one side, labels stand on the other. */
export const chipX = 186;

/** How far from the chips the longest arc reaches, and the shortest. */
const reach = { most: 132, least: 26 };
/** How far apart the middles of two arcs stay, so that each has room for its contrast. */
const label = { width: 27, height: 15 };
const stroke = { most: 8, least: 1.25 };
/** A contrast keeps inside the panel on one side, and off the names of the paints on the other. */
const room = { leftmost: 2, rightmost: chipX + 12 };

/** The arcs of `joins` between `stands`; `across` mirrors, `fullHeight` is the height from black to white. */
export function placeArcs(
  joins: readonly Join[],
  stands: readonly Stand[],
  across: (x: number) => number,
  fullHeight: number,
  format: Format,
): readonly Arc[] {
  const longest = Math.max(...joins.map((join) => join.length), Number.MIN_VALUE);
  const taken: Point[] = [];
  const drawn = listSpans(joins, stands).map(({ join, from, to }) => {
    const apex = findApex(from, to, fullHeight, taken);
    taken.push(apex.text);
    // The middle of a cubic lies three quarters of the way out to its two control points.
    const control = round(chipX - (chipX - apex.x) / 0.75);
    const width = stroke.least + (stroke.most - stroke.least) * (join.length / longest);
    return { join, from, to, control, width, text: format.contrast(join.contrast) };
  });
  const labels = placeLabels(drawn.map(curveOf), stands, room);
  return drawn.map(({ join, from, to, control, width, text }, index) => {
    const label = labels[index] ?? { x: control, y: from.y };
    return {
      path: drawArc(from, to, control, across),
      width: round(width),
      dash: isClear(gradeOf(join.contrast))
        ? undefined
        : `${round(width * 0.6 + 2)} ${round(width * 0.6 + 3)}`,
      text,
      textX: round(across(label.x)),
      textY: round(label.y + 4.5),
    };
  });
}

function curveOf({ from, to, ...curve }: Omit<Curve, "start" | "end"> & Pick<Span, "from" | "to">): Curve {
  return { ...curve, start: { x: chipX, y: from.y }, end: { x: chipX, y: to.y } };
}

/** The widest first: it takes the outermost place, the others nest inside it. */
function listSpans(joins: readonly Join[], stands: readonly Stand[]): readonly Span[] {
  const spanOf = (span: Span) => Math.abs(span.from.y - span.to.y);
  return joins
    .flatMap((join) => {
      const from = stands.find((stand) => stand.hex === join.from);
      const to = stands.find((stand) => stand.hex === join.to);
      return from && to ? [{ join, from, to }] : [];
    })
    .sort((first, second) => spanOf(second) - spanOf(first));
}

/** How far out an arc goes, and where its contrast stands: moved in, then up or down, until it hides no other. */
function findApex(
  from: Stand,
  to: Stand,
  fullHeight: number,
  taken: readonly Point[],
): { x: number; text: Point } {
  const span = Math.abs(from.y - to.y) / fullHeight;
  const natural = chipX - reach.least - span * (reach.most - reach.least);
  const middle = (from.y + to.y) / 2;
  for (const shift of [0, label.height, -label.height, 2 * label.height, -2 * label.height]) {
    for (let x = natural; x <= chipX - reach.least; x += 7) {
      const text = { x, y: middle + shift };
      if (!taken.some((other) => isNear(text, other))) return { x, text };
    }
  }
  return { x: natural, text: { x: natural, y: middle } };
}

function drawArc(from: Stand, to: Stand, control: number, across: (x: number) => number): string {
  const [y1, y2] = [round(from.y), round(to.y)];
  const [edge, out] = [across(chipX), round(across(control))];
  return `M${across(from.x)} ${y1}H${edge}C${out} ${y1} ${out} ${y2} ${edge} ${y2}H${across(to.x)}`;
}

function isNear(a: Point, b: Point): boolean {
  return Math.abs(a.y - b.y) < label.height && Math.abs(a.x - b.x) < label.width;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
