// Floor 2, part of step 2. How far the numbers of a drawing reach, once all transforms are followed: renderers reckon in
// single floats or in fixed point, and each goes wrong in its own way beyond what that holds.

import { identity, type Matrix, matricesOf, multiply, shift, stretchOf } from "../matrix.ts";
import { findReference } from "../style/attributevalue.ts";
import { findHref, type SvgElement, type ViewBox } from "../tree.ts";
import * as allow from "./allowlist.ts";
import { type Box, boundsOf, lengthOf } from "./bounds.ts";
import { limit } from "./drawinglimit.ts";
import type { Reporter } from "./drawingreport.ts";
import { readViewBox } from "./geometry.ts";

/** Where an element stands: its matrix, and the sum of all ways that it was moved, whatever cancels out. */
interface Standing {
  readonly matrix: Matrix;
  readonly detour: number;
}

/**
 * Returns whether all numbers are such that every program draws them alike.
 *
 * Problems: svg/too-far.
 */
export function checkReach(
  root: SvgElement,
  viewBox: ViewBox,
  ids: ReadonlyMap<string, SvgElement>,
  reporter: Reporter,
): boolean {
  const found = new Walk(viewBox, ids).find(root);
  if (found === undefined) return true;
  reporter.error(
    "svg/too-far",
    found.place,
    `<${found.name}> has numbers, or transforms around it, that no two programs draw alike: too large for the viewBox, or too small.`,
    `Keep what is drawn within ${limit.reach} times the viewBox, and let transforms shrink and stretch it less.`,
  );
  return false;
}

class Walk {
  private readonly boxes = new Map<SvgElement, Box | undefined>();
  private readonly side: number;
  private readonly viewBox: ViewBox;
  private readonly ids: ReadonlyMap<string, SvgElement>;

  constructor(viewBox: ViewBox, ids: ReadonlyMap<string, SvgElement>) {
    this.viewBox = viewBox;
    this.ids = ids;
    this.side = Math.max(viewBox.width, viewBox.height);
  }

  /** Returns the first element that reaches too far. */
  find(root: SvgElement): SvgElement | undefined {
    const { x, y } = this.viewBox;
    const start = this.move({ matrix: identity, detour: 0 }, shift(-x, -y));
    return start.detour > limit.detour * this.side ? root : this.visitInside(root, start);
  }

  private visit(element: SvgElement, around: Standing): SvgElement | undefined {
    const { attributes, name } = element;
    let here = around;
    for (const key of ["transform", "gradientTransform", "patternTransform"])
      for (const matrix of matricesOf(attributes[key] ?? "")) here = this.move(here, matrix);
    if (/^(?:use|svg|pattern)$/.test(name))
      here = this.move(
        here,
        shift(lengthOf(attributes["x"], this.side), lengthOf(attributes["y"], this.side)),
      );
    if (this.isTooFar(element, here)) return element;
    return this.visitInside(element, this.fit(element, here));
  }

  private visitInside(element: SvgElement, here: Standing): SvgElement | undefined {
    for (const target of this.shownBy(element)) {
      const found = this.visit(target, here);
      if (found !== undefined) return found;
    }
    return undefined;
  }

  /** The elements inside, and what an element points at, which is drawn where it stands. */
  private *shownBy(element: SvgElement): Generator<SvgElement> {
    for (const child of element.children)
      if (child.type === "element" && !allow.unshown.has(child.name)) yield child;
    const href = findHref(element);
    const pointed = [href?.slice(1), ...Object.values(element.attributes).map(findReference)];
    for (const id of pointed) {
      const target = typeof id === "string" ? this.ids.get(id) : undefined;
      if (target !== undefined) yield target;
    }
  }

  private move({ matrix, detour }: Standing, by: Matrix): Standing {
    return {
      matrix: multiply(matrix, by),
      detour: detour + stretchOf(matrix) * Math.hypot(by[4], by[5]),
    };
  }

  /** A viewBox inside, and units of a box, stretch what is in an element as a transform does. */
  private fit({ attributes, name }: SvgElement, here: Standing): Standing {
    const inner = name === "svg" || name === "symbol" || name === "marker" || name === "pattern";
    const box = inner ? readViewBox(attributes["viewBox"] ?? "") : undefined;
    if (box !== undefined && box.width > 0 && box.height > 0) {
      const [width, height] = ["width", "height"].map((key) =>
        lengthOf(attributes[key] ?? "100%", this.side),
      );
      const factor = Math.max((width ?? 0) / box.width, (height ?? 0) / box.height);
      return this.move(this.move(here, [factor, 0, 0, factor, 0, 0]), shift(-box.x, -box.y));
    }
    const isOfBox = Object.entries(attributes).some(
      ([key, value]) => /ontentUnits$|^clipPathUnits$/.test(key) && value === "objectBoundingBox",
    );
    return isOfBox ? this.move(here, [this.side, 0, 0, this.side, 0, 0]) : here;
  }

  private isTooFar(element: SvgElement, { matrix, detour }: Standing): boolean {
    const stretch = stretchOf(matrix);
    if (!Number.isFinite(stretch) || detour > limit.detour * this.side) return true;
    if (stretch * lengthOf(element.attributes["stroke-width"], this.side) > limit.reach * this.side)
      return true;
    if (!this.boxes.has(element)) this.boxes.set(element, boundsOf(element, this.side));
    const box = this.boxes.get(element);
    if (box === undefined) return false;
    const [x0, y0, x1, y1] = box;
    const corners = [
      [x0, y0],
      [x1, y0],
      [x0, y1],
      [x1, y1],
    ] as const;
    const [a, b, c, d, e, f] = matrix;
    const reach = Math.max(
      ...corners.flatMap(([x, y]) => [Math.abs(a * x + c * y + e), Math.abs(b * x + d * y + f)]),
    );
    const most = Math.max(...box.map(Math.abs));
    const shows = stretch * Math.max(x1 - x0, y1 - y0) > this.side / 1_000;
    const scale = (1_000 * stretch) / this.side;
    return (
      !(reach <= limit.reach * this.side) ||
      stretch * most > limit.detour * this.side ||
      (shows && (scale < limit.scaleMin || scale > limit.scaleMax))
    );
  }
}
