// Floor 2, part of step 2. The box that the points of a shape lie in, in its own units, before any transform.

import type { SvgElement } from "../tree.ts";
import { splitNumbers } from "./geometry.ts";
import { remember } from "./remember.ts";

/** Left, top, right, bottom. */
export type Box = readonly [x0: number, y0: number, x1: number, y1: number];

/**
 * Returns a box that holds all points of a shape, control points with them, or the vector of a gradient, or undefined for what has none. `side` is what
 * a percentage is of. A stroke is not counted; an arc of a circle is
 * by its ends, unless it goes the long way round.
 */
export function boundsOf({ name, attributes }: SvgElement, side: number): Box | undefined {
  const at = (key: string): number => lengthOf(attributes[key], side);
  if (name === "path") return boundPath(attributes["d"] ?? "");
  if (name === "polyline" || name === "polygon") {
    const numbers = splitNumbers(attributes["points"] ?? "");
    return boundPoints(numbers);
  }
  if (name === "line") return boundPoints([at("x1"), at("y1"), at("x2"), at("y2")]);
  if (name === "rect") return boundPoints([at("x"), at("y"), at("x") + at("width"), at("y") + at("height")]);
  if (name.endsWith("Gradient")) return boundGradient(attributes, side);
  if (name !== "circle" && name !== "ellipse") return undefined;
  const [rx, ry] = name === "circle" ? [at("r"), at("r")] : [at("rx"), at("ry")];
  return boundPoints([at("cx") - rx, at("cy") - ry, at("cx") + rx, at("cy") + ry]);
}

/** The vector or circle of a gradient, in units of its box where it is fitted to one. */
function boundGradient(attributes: SvgElement["attributes"], side: number): Box | undefined {
  const unit = attributes["gradientUnits"] === "userSpaceOnUse" ? side : 1;
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, cx = 0, cy = 0, fx = 0, fy = 0, r = 0] = gradientLengths.map((key) =>
    lengthOf(attributes[key], unit),
  );
  return boundPoints([x1, y1, x2, y2, fx, fy, cx - r, cy - r, cx + r, cy + r]);
}

const gradientLengths = ["x1", "y1", "x2", "y2", "cx", "cy", "fx", "fy", "r"];

/** Returns a length in user units; 0 where there is none. */
export function lengthOf(text: string | undefined, side: number): number {
  const number = Number.parseFloat(text ?? "0");
  return text?.endsWith("%") === true ? (number * side) / 100 : number;
}

/** Returns the box of points; `numbers` are x and y in turn. */
export function boundPoints(numbers: readonly number[]): Box | undefined {
  const box: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let at = 0; at + 1 < numbers.length; at += 2) {
    const [x, y] = [numbers[at] as number, numbers[at + 1] as number];
    box[0] = Math.min(box[0], x);
    box[1] = Math.min(box[1], y);
    box[2] = Math.max(box[2], x);
    box[3] = Math.max(box[3], y);
  }
  return box[0] === Infinity ? undefined : box;
}

/** One step of a path: its command in small letters, its numbers as they are written, and its points, the last one its end. */
export interface PathStep {
  readonly command: string;
  readonly values: readonly number[];
  readonly points: readonly number[];
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/** Follows path data as `readPath` writes it. */
export function* stepsOf(data: string): Generator<PathStep> {
  let from: PathStep["from"] = [0, 0];
  let start = from;
  for (const [, letter = "", text = ""] of data.matchAll(/([mzlhvcsqta])([^mzlhvcsqta]*)/gi)) {
    const command = letter.toLowerCase();
    const numbers = splitNumbers(text);
    const size = command === "a" ? 7 : ({ h: 1, v: 1, c: 6, s: 4, q: 4 }[command] ?? 2);
    for (let at = 0; at < Math.max(1, numbers.length); at += size) {
      const values = numbers.slice(at, at + size);
      const origin = letter === command ? from : ([0, 0] as const);
      const step = pairsOf(command, values, from[0] - origin[0], from[1] - origin[1]);
      const points = command === "z" ? start : step.map((value, index) => value + (origin[index % 2] ?? 0));
      const to = points.slice(-2) as [number, number];
      yield { command: at > 0 && command === "m" ? "l" : command, values, points, from, to };
      if (command === "m" && at === 0) start = to;
      from = to;
    }
  }
}

const boundPath = remember((data: string): Box | undefined =>
  boundPoints([...stepsOf(data)].flatMap(({ points }) => points)),
);

/** The points of one step; `x` and `y` are where a step along one axis stays. The last is where it ends. */
function pairsOf(command: string, step: readonly number[], x: number, y: number): readonly number[] {
  const [first = 0, second = 0, , isLong = 0] = step;
  if (command === "h") return [first, y];
  if (command === "v") return [x, first];
  if (command !== "a") return step;
  const [endX = 0, endY = 0] = step.slice(5);
  const isShort = isLong === 0 && first === second;
  const reach = isShort ? 0 : 2 * Math.max(Math.abs(first), Math.abs(second));
  return [endX - reach, endY - reach, endX + reach, endY + reach, endX, endY];
}
