// Floor 2, part of step 2. Every showing of an element, with the transforms around it as one matrix and with what it inherits
// there: what is judged is what is drawn, by whatever way it comes to be drawn.

import { identity, type Matrix, matricesOf, multiply, shift, stretchOf } from "../matrix.ts";
import { findReference } from "../style/attributevalue.ts";
import { properties } from "../style/property.ts";
import { chainOf, findHref, type SvgElement, type ViewBox } from "../tree.ts";
import * as allow from "./allowlist.ts";
import { type Box, boundsOf, lengthOf } from "./bounds.ts";
import { readViewBox } from "./geometry.ts";

export type Attributes = Readonly<Record<string, string>>;

/** Where something stands. */
interface Place {
  /** From its own units to those of the flag. */
  readonly matrix: Matrix;
  /** The sum of all ways that it was moved, whatever cancels out, in units of the flag. */
  readonly detour: number;
  /** What a percentage is of, at the most, in its own units. */
  readonly side: number;
  readonly inherited: Attributes;
  /** Whether it is inside what has a size of its own, where a percentage is not of the flag. */
  readonly isPartial: boolean;
}

/** One showing of an element. */
export interface Standing extends Place {
  readonly element: SvgElement;
  /** What it inherits and, over that, its own attributes; of a gradient or pattern, with what it has from others. */
  readonly all: Attributes;
  /** The points of a shape, or the vector of a gradient, in its own units. */
  readonly box: Box | undefined;
  /** Width and height that it gives what is in it, in its own units. */
  readonly viewport: readonly [width: number, height: number] | undefined;
  /** From units of the box that it is fitted to, for what has some such units. */
  readonly fitted: Matrix | undefined;
  /** Where what is in it stands. */
  readonly inside: Place;
}

type Ids = ReadonlyMap<string, SvgElement>;

/** Yields all showings, those around others first. */
export function walkDrawn(root: SvgElement, viewBox: ViewBox, ids: Ids): Generator<Standing> {
  return new Walk(root, viewBox, ids).start();
}

const clips = ["clip-path", "mask"];
/** What an element draws with beside itself; the paints and markers are inherited, so only shapes draw them. */
const drawnBy = (name: string): readonly string[] =>
  allow.shapes.has(name) ? [...clips, "fill", "stroke", "marker-start", "marker-mid", "marker-end"] : clips;

/** Which of what is pointed at is fitted to the box of what points at it, wholly or in part, by name. */
const byBox: Readonly<Record<string, (attributes: Attributes) => boolean>> = {
  linearGradient: (attributes) => attributes["gradientUnits"] !== "userSpaceOnUse",
  radialGradient: (attributes) => attributes["gradientUnits"] !== "userSpaceOnUse",
  pattern: (attributes) => attributes["patternUnits"] !== "userSpaceOnUse",
};

class Walk {
  private readonly boxes = new Map<SvgElement, Map<number, Box | undefined>>();
  /** What elements that are shown elsewhere inherit where they were written. */
  private readonly inherited = new Map<SvgElement, Attributes>();
  private readonly root: SvgElement;
  private readonly viewBox: ViewBox;
  private readonly ids: Ids;

  constructor(root: SvgElement, viewBox: ViewBox, ids: Ids) {
    this.root = root;
    this.viewBox = viewBox;
    this.ids = ids;
    this.noteInherited(root, {});
  }

  *start(): Generator<Standing> {
    const { x, y, width, height } = this.viewBox;
    const side = Math.max(width, height);
    const place = {
      matrix: identity,
      detour: 0,
      side,
      inherited: inheritInto(this.root, {}),
      isPartial: false,
    };
    const inside = move(place, shift(-x, -y));
    const none = { box: undefined, viewport: undefined, fitted: undefined };
    const standing = { ...inside, ...none, element: this.root, all: {}, inside };
    yield standing;
    yield* this.visitInside(standing);
  }

  private noteInherited(element: SvgElement, around: Attributes): void {
    if (allow.unshown.has(element.name)) this.inherited.set(element, around);
    const here = inheritInto(element, around);
    for (const child of element.children) if (child.type === "element") this.noteInherited(child, here);
  }

  /** `by` is what points at the element. */
  private *visit(element: SvgElement, around: Place, by?: Standing): Generator<Standing> {
    const { name } = element;
    const isServer = name === "pattern" || name.endsWith("Gradient");
    const attributes = isServer ? completeServer(element, this.ids) : element.attributes;
    const inherited = inheritInto(element, around.inherited);
    const isByBox = by !== undefined && byBox[name]?.(attributes) === true;
    const fitted = isByBox ? matrixOfBox(by) : undefined;
    let place: Place = { ...around, inherited };
    if (fitted !== undefined && name.endsWith("Gradient")) place = move(place, fitted);
    for (const key of ["transform", "gradientTransform", "patternTransform"])
      for (const matrix of matricesOf(attributes[key] ?? "")) place = move(place, matrix);
    if (/^(?:use|svg|pattern)$/.test(name))
      place = move(
        place,
        shift(lengthOf(attributes["x"], place.side), lengthOf(attributes["y"], place.side)),
      );
    const all = { ...inherited, ...attributes };
    const viewport = findViewport(element, place.side, by);
    const isPartial = place.isPartial || /^(?:svg|symbol|marker|pattern)$/.test(name);
    const inside = { ...fitViewport(element, place, viewport, by), isPartial };
    const standing = {
      ...place,
      element,
      all,
      box: this.boxOf(element, place.side),
      viewport,
      fitted,
      inside,
    };
    yield standing;
    yield* this.visitInside(standing);
  }

  private *visitInside(standing: Standing): Generator<Standing> {
    const { element, all, inside } = standing;
    for (const child of element.children)
      if (child.type === "element" && !allow.unshown.has(child.name)) yield* this.visit(child, inside);
    const used = element.name === "use" ? this.targetOf(findHref(element)?.slice(1)) : undefined;
    if (used !== undefined) yield* this.visit(used, standing, standing);
    for (const name of drawnBy(element.name)) {
      const target = this.targetOf(findReference(all[name] ?? ""));
      const inherited = target === undefined ? undefined : this.inherited.get(target);
      if (target !== undefined)
        yield* this.visit(target, { ...standing, inherited: inherited ?? {} }, standing);
    }
  }

  private targetOf(id: string | null | undefined): SvgElement | undefined {
    return typeof id === "string" ? this.ids.get(id) : undefined;
  }

  private boxOf(element: SvgElement, side: number): Box | undefined {
    const known = this.boxes.get(element) ?? new Map<number, Box | undefined>();
    this.boxes.set(element, known);
    if (!known.has(side)) known.set(side, boundsOf(element, side));
    return known.get(side);
  }
}

/** Returns what the children of an element inherit, where it inherits `around`. */
export function inheritInto({ attributes }: SvgElement, around: Attributes): Attributes {
  const here: Record<string, string> = { ...around };
  for (const [name, value] of Object.entries(attributes))
    if (properties.get(name)?.inherits === true) here[name] = value;
  return here;
}

/** Returns the attributes of a gradient or pattern with those that it has from others. */
function completeServer(server: SvgElement, ids: Ids): Attributes {
  return Object.assign(
    {},
    ...chainOf(server, ids)
      .map(({ attributes }) => attributes)
      .reverse(),
  );
}

/** What shows the element gives a symbol or svg its size; a marker has it of its own, by the stroke it stands on. */
function findViewport({ name, attributes }: SvgElement, side: number, by?: Standing): Standing["viewport"] {
  const used = by?.element.name === "use" ? by.all : {};
  const at = (key: string, usual: string): number => lengthOf(attributes[key] ?? usual, side);
  if (name === "marker") {
    const unit = strokeOf(attributes, by);
    return [unit * at("markerWidth", "3"), unit * at("markerHeight", "3")];
  }
  if (name !== "svg" && name !== "symbol") return undefined;
  return [
    lengthOf(used["width"], side) || at("width", "100%"),
    lengthOf(used["height"], side) || at("height", "100%"),
  ];
}

function strokeOf(marker: Attributes, by?: Standing): number {
  return marker["markerUnits"] === "userSpaceOnUse"
    ? 1
    : lengthOf(by?.all["stroke-width"] ?? "1", by?.side ?? 1);
}

/** A viewBox inside stretches what is in an element as a transform does. */
function fitViewport(
  { name, attributes }: SvgElement,
  place: Place,
  viewport: Standing["viewport"],
  by?: Standing,
): Place {
  if (viewport === undefined) return place;
  const [width, height] = viewport;
  const box = readViewBox(attributes["viewBox"] ?? "");
  const unit = name === "marker" ? strokeOf(attributes, by) : 1;
  if (box === undefined)
    return { ...move(place, [unit, 0, 0, unit, 0, 0]), side: Math.max(width, height) / unit };
  const [across, down] = [width / box.width, height / box.height];
  const isFree = attributes["preserveAspectRatio"]?.startsWith("none") === true;
  const least = Math.min(across, down);
  const scale: Matrix = isFree ? [across, 0, 0, down, 0, 0] : [least, 0, 0, least, 0, 0];
  return { ...move(move(place, scale), shift(-box.x, -box.y)), side: Math.max(box.width, box.height) };
}

/** From units of the box of what points at something to those around it; a group's box is taken for the viewport. */
function matrixOfBox({ box, side }: Standing): Matrix {
  const [x0, y0, x1, y1] = box ?? [0, 0, side, side];
  return [x1 - x0, 0, 0, y1 - y0, x0, y0];
}

function move(place: Place, by: Matrix): Place {
  const detour = place.detour + stretchOf(place.matrix) * Math.hypot(by[4], by[5]);
  return { ...place, matrix: multiply(place.matrix, by), detour };
}
