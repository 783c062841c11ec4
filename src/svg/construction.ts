// Floor 2. What of a drawing can be laid out with a rule and a pair of compasses: upright rectangles, lines, circles and rings.
import type { Hex } from "../colour/colour.ts";
import { boundPoints, stepsOf } from "./gate/bounds.ts";
import type { Instance, PaintSource, ResolvedDrawing } from "./instance.ts";
import { type Matrix, matricesOf, multiply, shift } from "./matrix.ts";

/** A plain shape as it is painted. */
export interface PlainShape {
  readonly kind: "rectangle" | "line" | "circle" | "ring";
  readonly hex: Hex;
  /**
   * In flag heights from the upper hoist corner. Of a rectangle or line, as far as it lies on the flag: left, top, width,
   * height. Of a circle or ring: centre across and down, diameter, diameter of the hole, which is 0 in a circle.
   */
  readonly sizes: readonly [number, number, number, number];
}

export interface Construction {
  /** Width of the flag in flag heights. */
  readonly width: number;
  /** In the order in which they are laid: what comes later covers what is before. */
  readonly shapes: readonly PlainShape[];
  /** How many other shapes are painted. */
  readonly left: number;
}

/** Shapes that are told (our own judgement): a page of paper has room for them. */
const mostShapes = 10;
/** What rounding leaves of nothing, beside 1. */
const tiny = 1e-9;

/**
 * Reads the plain shapes of a drawing. Left out are those that are turned, clipped, rounded, translucent, painted with a
 * gradient or with an outline around a rectangle, and all curves but whole circles.
 *
 * Example: `<svg viewBox="0 0 30 20">` with a circle of radius 5 in the middle → sizes [0.75, 0.5, 0.5, 0].
 */
export function readConstruction({ drawing, instances }: ResolvedDrawing): Construction {
  const { x, y, width, height } = drawing.viewBox;
  const toFlag: Matrix = [1 / height, 0, 0, 1 / height, -x / height, -y / height];
  const shapes: PlainShape[] = [];
  let left = 0;
  for (const instance of instances) {
    if (!instance.shown || !isPainted(instance)) continue;
    const matrix = placeOf(instance, toFlag);
    const own = matrix && readShape(instance, matrix, width / height);
    if (own === undefined || shapes.length + own.length > mostShapes) left += 1;
    else shapes.push(...own);
  }
  return { width: width / height, shapes, left };
}

function isPainted({ fill, fillOpacity, stroke, strokeOpacity }: Instance): boolean {
  return (fill.kind !== "none" && fillOpacity > 0) || (stroke.kind !== "none" && strokeOpacity > 0);
}

/** From the units of a shape to flag heights; undefined where something around it fits, cuts or repeats it. */
function placeOf({ element: { name, attributes }, parent }: Instance, toFlag: Matrix): Matrix | undefined {
  if (parent === null) return toFlag;
  const isCut = ["clip-path", "mask"].some((key) => (attributes[key] ?? "none") !== "none");
  if (isCut || /^(?:svg|symbol|marker|pattern)$/.test(name)) return undefined;
  const around = placeOf(parent, toFlag);
  const own = matricesOf(attributes["transform"] ?? "");
  const steps = name === "use" ? [...own, shift(numberOf(attributes["x"]), numberOf(attributes["y"]))] : own;
  return around && steps.reduce((outer, inner) => multiply(outer, inner), around);
}

/** Not a number where it is a percentage. */
function numberOf(text: string | undefined): number {
  return Number(text ?? "0");
}

function readShape(instance: Instance, matrix: Matrix, width: number): readonly PlainShape[] | undefined {
  const fill = plainPaint(instance.fill, instance.fillOpacity);
  const stroke = plainPaint(instance.stroke, instance.strokeOpacity);
  if (fill === undefined || stroke === undefined) return undefined;
  const { name } = instance.element;
  if (name === "circle" || name === "ellipse") return readCircle(instance, matrix, fill, stroke);
  const corners = cornersOf(instance);
  if (corners === undefined) return undefined;
  if (corners.length === 4)
    return layLine(corners, stroke, strokeOf(instance), (box, hex) =>
      layBox("line", hex, box, matrix, width),
    );
  if (stroke !== null || fill === null || !isUprightBox(corners)) return undefined;
  return layBox("rectangle", fill, corners, matrix, width);
}

/** Null for no paint, undefined for one that is not one plain colour. */
function plainPaint(paint: PaintSource, opacity: number): Hex | null | undefined {
  if (paint.kind === "none" || opacity === 0) return null;
  return paint.kind === "colour" && opacity > 0.995 ? paint.hex : undefined;
}

/** Nearest value of a property that is inherited. */
function inheritedOf({ element, parent }: Instance, name: string): string | undefined {
  return element.attributes[name] ?? (parent === null ? undefined : inheritedOf(parent, name));
}

/** Width of a stroke that is drawn whole and has no ends of its own, else not a number. */
function strokeOf(instance: Instance): number {
  const isWhole =
    (inheritedOf(instance, "stroke-dasharray") ?? "none") === "none" &&
    (inheritedOf(instance, "stroke-linecap") ?? "butt") === "butt" &&
    inheritedOf(instance, "vector-effect") === undefined;
  return isWhole ? Number(inheritedOf(instance, "stroke-width") ?? "1") : Number.NaN;
}

/** A fill and a stroke are a circle and a ring over it. */
function readCircle(
  instance: Instance,
  [a, b, c, d, e, f]: Matrix,
  fill: Hex | null,
  stroke: Hex | null,
): readonly PlainShape[] | undefined {
  const { name, attributes } = instance.element;
  const at = (key: string): number => numberOf(attributes[key]);
  const [radius, other] = name === "circle" ? [at("r"), at("r")] : [at("rx"), at("ry")];
  const scale = Math.hypot(a, b);
  const isRound =
    Math.abs(Math.hypot(c, d) - scale) <= tiny * scale && Math.abs(a * c + b * d) <= tiny * scale ** 2;
  const [x, y] = [a * at("cx") + c * at("cy") + e, b * at("cx") + d * at("cy") + f];
  const line = stroke === null ? 0 : strokeOf(instance);
  if (!isRound || radius !== other || !(radius > 0) || !Number.isFinite(x + y + line)) return undefined;
  const across = 2 * radius * scale;
  const disc = fill === null ? [] : [{ kind: "circle", hex: fill, sizes: [x, y, across, 0] } as const];
  if (stroke === null) return disc;
  const hole = Math.max(0, across - line * scale);
  const kind = hole > 0 ? "ring" : "circle";
  return [...disc, { kind, hex: stroke, sizes: [x, y, across + line * scale, hole] }];
}

/** The corners of a shape of straight lines in one part, x and y in turn; undefined for any other. */
function cornersOf({ element: { name, attributes } }: Instance): readonly number[] | undefined {
  const at = (key: string): number => numberOf(attributes[key]);
  if (name === "line") return [at("x1"), at("y1"), at("x2"), at("y2")];
  if (name === "rect") {
    const [x, y, right, bottom] = [at("x"), at("y"), at("x") + at("width"), at("y") + at("height")];
    const isRounded = [attributes["rx"], attributes["ry"]].some(
      (radius) => Number.parseFloat(radius ?? "0") !== 0,
    );
    return isRounded ? undefined : [x, y, right, y, right, bottom, x, bottom];
  }
  const isPath = name === "path";
  const steps = [...stepsOf(isPath ? (attributes["d"] ?? "") : `M${attributes["points"] ?? ""}`)];
  const isPlain = steps.every(({ command }, index) => (index === 0 ? "m" : "lhvz").includes(command));
  if (!isPlain) return undefined;
  const drawn = steps.filter(({ from, to }, index) => index === 0 || from[0] !== to[0] || from[1] !== to[1]);
  const points = drawn.map(({ to }) => to);
  const [first, last] = [points[0], points.at(-1)];
  if (points.length > 2 && first?.[0] === last?.[0] && first?.[1] === last?.[1]) points.pop();
  return points.flat();
}

/** Whether four corners are those of an upright rectangle, one side after the other. */
function isUprightBox(corners: readonly number[]): boolean {
  if (corners.length !== 8) return false;
  const [x0, y0, x1, y1, x2, y2, x3, y3] = corners;
  const startsAcross = y0 === y1 && x1 === x2 && y2 === y3 && x3 === x0;
  const startsDown = x0 === x1 && y1 === y2 && x2 === x3 && y3 === y0;
  return startsAcross || startsDown;
}

/** What a stroke of this width paints along a line that is level or upright. */
function layLine(
  [x1 = 0, y1 = 0, x2 = 0, y2 = 0]: readonly number[],
  stroke: Hex | null,
  line: number,
  lay: (box: readonly number[], hex: Hex) => readonly PlainShape[] | undefined,
): readonly PlainShape[] | undefined {
  if (stroke === null) return [];
  if (x1 !== x2 && y1 !== y2) return undefined;
  const [across, down] = y1 === y2 ? [0, line / 2] : [line / 2, 0];
  const [left, right, top, bottom] = [Math.min(x1, x2), Math.max(x1, x2), Math.min(y1, y2), Math.max(y1, y2)];
  return lay([left - across, top - down, right + across, bottom + down], stroke);
}

/** The part of a box that lies on the flag; undefined where it is turned. */
function layBox(
  kind: "rectangle" | "line",
  hex: Hex,
  points: readonly number[],
  [a, b, c, d, e, f]: Matrix,
  width: number,
): readonly PlainShape[] | undefined {
  const size = Math.abs(a) + Math.abs(b) + Math.abs(c) + Math.abs(d);
  const isNothing = (value: number): boolean => Math.abs(value) <= tiny * size;
  const isUpright = (isNothing(b) && isNothing(c)) || (isNothing(a) && isNothing(d));
  const placed = points.flatMap((x, at) => {
    const y = points[at + 1] ?? 0;
    return at % 2 === 0 ? [a * x + c * y + e, b * x + d * y + f] : [];
  });
  const box = boundPoints(placed);
  if (!isUpright || box === undefined || !placed.every(Number.isFinite)) return undefined;
  const [x, y] = [Math.max(0, box[0]), Math.max(0, box[1])];
  const [wide, high] = [Math.min(width, box[2]) - x, Math.min(1, box[3]) - y];
  return wide > tiny && high > tiny ? [{ kind, hex, sizes: [x, y, wide, high] }] : [];
}
