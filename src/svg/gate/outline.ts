// Floor 2, part of step 2. What of the outline of a shape is too small, or too small beside the rest of it, for programs to
// draw it alike: they round points to a part of a pixel, and what they round away has no direction.

import type { SvgElement } from "../tree.ts";
import * as allow from "./allowlist.ts";
import { boundParts, boundsOf, type PathStep, stepsOf } from "./bounds.ts";
import { limit } from "./drawinglimit.ts";

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
}

const none: Outline = { isFlat: false, part: Infinity, step: Infinity, stops: false };

/** Returns the outline of an element, if it is a shape; `side` is what a percentage is of. */
export function findOutline(element: SvgElement, side: number): Outline {
  const { name, attributes } = element;
  if (!allow.shapes.has(name)) return none;
  const at = (key: string): number => Number.parseFloat(attributes[key] ?? "0");
  const data = name === "path" ? attributes["d"] : /^poly/.test(name) ? `M${attributes["points"] ?? ""}` : "";
  const steps = [...stepsOf(data ?? "")];
  const box = boundsOf(element, side) ?? [0, 0, 0, 0];
  const sides = [box[2] - box[0], box[3] - box[1]];
  const isPath = steps.length > 0;
  const ways = isPath
    ? steps.filter(isWay).map(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1]))
    : sides;
  const parts = isPath
    ? boundParts(data ?? "").map(([x0, y0, x1, y1]) => Math.max(x1 - x0, y1 - y0))
    : [Math.max(...sides)];
  return {
    isFlat:
      (name === "ellipse" && isThin(at("rx"), at("ry"), 0)) ||
      steps.some((step) => step.command === "a" && isThinArc(step)),
    part: Math.min(...parts),
    step: Math.min(...ways.filter((way) => way > 0)),
    stops:
      isPath &&
      (ways.includes(0) ||
        steps.some(({ command }, index) => command === "m" && (steps[index + 1]?.command ?? "m") === "m")),
  };
}

const isWay = ({ command }: PathStep): boolean => command !== "m" && command !== "z";

function isThinArc({ values: [rx = 0, ry = 0], from, to }: PathStep): boolean {
  return isThin(rx, ry, Math.hypot(to[0] - from[0], to[1] - from[1]));
}

function isThin(rx: number, ry: number, way: number): boolean {
  const [least, most] = [Math.min(Math.abs(rx), Math.abs(ry)), Math.max(Math.abs(rx), Math.abs(ry))];
  return least > 0 && (most > limit.radii * least || way > limit.chord * least);
}
