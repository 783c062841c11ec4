// Floor 2, part of step 2. What of the outline of a shape is too small, or too small beside the rest of it, for programs to
// draw it alike: they round points to a part of a pixel, and what they round away has no direction.

import type { SvgElement } from "../tree.ts";
import * as allow from "./allowlist.ts";
import { boundPoints, boundsOf, type PathStep, stepsOf } from "./bounds.ts";
import { limit } from "./drawinglimit.ts";
import { remember } from "./remember.ts";

/** Lengths in the units of the shape. */
export interface Outline {
  /** Whether a radius is tiny beside the other one, or beside the way of its arc. */
  readonly isFlat: boolean;
  /** The shortest of its parts, each from one move to the next, by the longer side of what it lies in. */
  readonly part: number;
  /** The shortest of its steps and sides that has a length. */
  readonly step: number;
  /** Whether some step has no length, or some part no step. */
  readonly stops: boolean;
  /** Whether some part is an arc that ends where it begins, and nothing else: with round ends, some programs draw a dot. */
  readonly isDot: boolean;
  /** Whether some part is a move alone. */
  readonly hasLoneMove: boolean;
  /** Whether some curve ends where it begins: programs turn its stroke in two ways. */
  readonly returns: boolean;
  /** By how much each mitre is longer than the stroke is wide, where it can be told (SVG 2, section 13.5.4). */
  readonly mitres: readonly number[];
}

const none = {
  isFlat: false,
  part: Infinity,
  step: Infinity,
  stops: false,
  isDot: false,
  hasLoneMove: false,
  returns: false,
  mitres: [],
};

/** Returns the outline of an element, if it is a shape; `side` is what a percentage is of. */
export function findOutline(element: SvgElement, side: number): Outline {
  const { name, attributes } = element;
  if (name === "path") return followPath(attributes["d"] ?? "");
  if (name === "polyline" || name === "polygon")
    return followPath(`M${attributes["points"] ?? ""}${name === "polygon" ? "Z" : ""}`);
  if (!allow.shapes.has(name)) return none;
  const [x0, y0, x1, y1] = boundsOf(element, side) ?? [0, 0, 0, 0];
  const [width, height] = [x1 - x0, y1 - y0];
  const at = (key: string): number => Number.parseFloat(attributes[key] ?? "0");
  return {
    ...none,
    isFlat: name === "ellipse" && isThin(at("rx"), at("ry"), 0),
    part: Math.max(width, height),
    step: Math.min(width || Infinity, height || Infinity),
    mitres: name === "rect" ? [Math.SQRT2] : [],
  };
}

/** In radians; not a number where it is not known. */
type Direction = number;

/** From one move to the next. */
interface Part {
  readonly points: number[];
  readonly directions: [begin: Direction, end: Direction][];
  /** All its steps have this length together. */
  way: number;
  hasArc: boolean;
}

const followPath = remember((data: string): Outline => {
  const found = { ...none };
  const parts: Part[] = [];
  let isLone = false;
  for (const each of stepsOf(data)) {
    const { command, from, to, points } = each;
    const isMove = command === "m";
    if (isMove) parts.push({ points: [], directions: [], way: 0, hasArc: false });
    const part = parts.at(-1);
    if (!isMove) part?.points.push(...from, ...points);
    found.hasLoneMove ||= isMove && isLone;
    isLone = isMove;
    if (!isMove && (from[0] !== to[0] || from[1] !== to[1])) part?.directions.push(directionsOf(each));
    if (part === undefined || isMove || command === "z") continue;
    const way = Math.hypot(to[0] - from[0], to[1] - from[1]);
    part.way += way;
    part.hasArc ||= command === "a";
    found.returns ||= way === 0 && /[csqt]/.test(command);
    found.isFlat ||= command === "a" && isThinArc(each);
    if (way === 0) found.stops = true;
    else found.step = Math.min(found.step, way);
  }
  found.hasLoneMove ||= isLone;
  found.stops ||= found.hasLoneMove;
  found.isDot = parts.some(({ way, hasArc }) => hasArc && way === 0);
  const mitres = parts.flatMap(({ directions }) =>
    directions.map(([begin], index) => mitreOf(directions.at(index - 1)?.[1] ?? Number.NaN, begin)),
  );
  for (const box of parts.map(({ points }) => boundPoints(points)).filter((each) => each !== undefined))
    found.part = Math.min(found.part, Math.max(box[2] - box[0], box[3] - box[1]));
  return { ...found, mitres };
});

/** A control point that is where the step begins or ends has no direction; that of an arc, and of a curve that goes on from another, is not known. */
function directionsOf({ command, points, from, to }: PathStep): [Direction, Direction] {
  if (command === "a") return [Number.NaN, Number.NaN];
  const [beginX = 0, beginY = 0] = points;
  const [endX = 0, endY = 0] = points.length > 2 ? points.slice(-4) : from;
  const begin = /[st]/.test(command) ? Number.NaN : Math.atan2(beginY - from[1], beginX - from[0]);
  return [begin, Math.atan2(to[1] - endY, to[0] - endX)];
}

/** The length of a mitre by the width of the stroke, between a line that comes by one direction and goes on by another. */
function mitreOf(before: Direction, after: Direction): number {
  return 1 / Math.abs(Math.cos((after - before) / 2));
}

function isThinArc({ values: [rx = 0, ry = 0], from, to }: PathStep): boolean {
  return isThin(rx, ry, Math.hypot(to[0] - from[0], to[1] - from[1]));
}

function isThin(rx: number, ry: number, way: number): boolean {
  const [least, most] = [Math.min(Math.abs(rx), Math.abs(ry)), Math.max(Math.abs(rx), Math.abs(ry))];
  return least > 0 && (most > limit.radii * least || way > limit.chord * least);
}
