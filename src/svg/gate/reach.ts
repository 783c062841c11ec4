// Floor 2, part of step 2. How far the numbers of a drawing reach, once all transforms are followed: renderers reckon in
// single floats or in fixed point, and each goes wrong in its own way beyond what that holds.

import { type Matrix, multiply, stretchOf } from "../matrix.ts";
import { lengthOf } from "./bounds.ts";
import { limit } from "./drawinglimit.ts";
import type { Standing } from "./drawnwalk.ts";
import { readViewBox } from "./geometry.ts";

/** What is wrong with numbers, in words that follow "has", and what to do. */
export interface Reach {
  readonly what: string;
  readonly hint: string;
}

const far: Reach = {
  what: "numbers, or transforms around it, that no two programs draw alike: too large for the viewBox, or too small",
  hint: `Keep what is drawn within ${limit.reach} times the viewBox, and let transforms shrink and stretch it less.`,
};
const uneven: Reach = {
  what: "transforms around it, or a box it is fitted to, that come to a line or nearly to one",
  hint: `Let nothing be stretched more than ${limit.uneven} times as far in one direction as in another; a gradient, pattern, mask or clip path on a line needs userSpaceOnUse.`,
};
const tiny: Reach = {
  what: "a size, a viewBox or tiles of hardly any units, which some programs do not draw",
  hint: `Write larger numbers, such as viewBox="0 0 100 100"; a tile of a pattern has to be a ${limit.tiles}th of the flag.`,
};

/** Returns what of the numbers of a showing is not drawn alike, or undefined. `side` is the longer one of the flag. */
export function findReach(standing: Standing, side: number): Reach | undefined {
  const { element, matrix, detour, inside, fitted, box } = standing;
  const matrices = fitted === undefined ? [inside.matrix] : [inside.matrix, multiply(matrix, fitted)];
  if (isTiny(standing) || isFine(standing, side)) return tiny;
  const most = element.name.endsWith("Gradient") ? limit.unevenGradient : limit.uneven;
  if (matrices.some((each) => !(unevenness(each) <= most))) return uneven;
  if (!(detour <= limit.detour * side)) return far;
  const stretch = stretchOf(matrix);
  if (stretch * lengthOf(standing.all["stroke-width"], standing.side) > limit.reach * side) return far;
  if (box === undefined) return undefined;
  const [x0, y0, x1, y1] = box;
  const shows = stretch * Math.max(x1 - x0, y1 - y0) > side / 1_000;
  const scale = (1_000 * stretch) / side;
  const isFar =
    !(reachOf(standing) <= limit.reach * side) ||
    stretch * Math.max(...box.map(Math.abs)) > limit.detour * side ||
    (shows && (scale < limit.scaleMin || scale > limit.scaleMax));
  return isFar ? far : undefined;
}

/** By how much more `matrix` stretches in one direction than in another; without end where it leaves a line or a point. */
function unevenness(matrix: Matrix): number {
  const [a, b, c, d] = matrix;
  return stretchOf(matrix) ** 2 / Math.abs(a * d - b * c);
}

function isTiny({ element, viewport }: Standing): boolean {
  if (viewport === undefined) return false;
  const box = readViewBox(element.attributes["viewBox"] ?? "");
  const sides = box === undefined ? viewport : [...viewport, box.width, box.height];
  return !sides.every((each) => each >= limit.viewportSideMin && each <= limit.viewBoxSideMax);
}

/** Whether a pattern has tiles too small to be seen. */
function isFine({ element, all, matrix, fitted, side }: Standing, flagSide: number): boolean {
  if (element.name !== "pattern") return false;
  const isByBox = all["patternUnits"] !== "userSpaceOnUse" && fitted !== undefined;
  const [width, height] = ["width", "height"].map((key) => lengthOf(all[key], isByBox ? 1 : side));
  const [a, b, c, d] = isByBox ? multiply(matrix, fitted) : matrix;
  const least = Math.min((width ?? 0) * Math.hypot(a, b), (height ?? 0) * Math.hypot(c, d));
  return least * limit.tiles < flagSide;
}

/** How far from the corner of the flag a box comes, in units of the flag. */
function reachOf({ box = [0, 0, 0, 0], matrix: [a, b, c, d, e, f] }: Standing): number {
  const [x0, y0, x1, y1] = box;
  const corners = [[x0, y0] as const, [x1, y0] as const, [x0, y1] as const, [x1, y1] as const];
  return Math.max(...corners.flatMap(([x, y]) => [Math.abs(a * x + c * y + e), Math.abs(b * x + d * y + f)]));
}
