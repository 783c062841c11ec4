// Floor 2. The tree of a drawing, in svgson's shape with a place on every element; readonly plain data.
import type { Place } from "../problem/problem.ts";
import type { XmlElement } from "./xml/xmlnode.ts";

export interface SvgElement {
  readonly type: "element";
  /** Local name in the SVG namespace. */
  readonly name: string;
  readonly value: "";
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly SvgNode[];
  /** Where the element starts in the file, and where each of its attributes does. */
  readonly place: Place;
  readonly attributePlaces: Readonly<Record<string, Place>>;
  /** The element as its author wrote it, by which selectors find it; absent for what the author did not write. */
  readonly author?: XmlElement;
}

export interface SvgText {
  readonly type: "text";
  readonly name: "";
  readonly value: string;
  readonly attributes: Readonly<Record<string, never>>;
  readonly children: readonly [];
  readonly place: Place;
}

export type SvgNode = SvgElement | SvgText;

/**
 * A drawing that passed the gate, in the one form that is measured and published: everything in it is allowed, every property
 * is an attribute, every reference resolves and none runs in a circle.
 */
export interface Drawing {
  readonly file: string;
  readonly root: SvgElement;
  readonly viewBox: ViewBox;
  /** What of it is left out, where it has filters or blends, until it is changed. */
  readonly effects?: Effects;
  /** Lines of the source text, for messages. */
  readonly lines: readonly string[];
}

/** What a filter or a blend looks like; `mode` is how colours are mixed, as CSS calls it, of other kinds empty. */
export interface EffectLook {
  readonly kind: "shadow" | "blur" | "colours" | "blend" | "other";
  readonly mode: string;
}

/** A drawing with its filters and blends. */
export interface Effects {
  readonly root: SvgElement;
  /** What they look like, each once, in the order of the drawing, and where the first of them stands. */
  readonly looks: readonly EffectLook[];
  readonly place: Place;
}

/** In user units; width and height are positive and finite. */
export interface ViewBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Visits `element` and all elements below it in document order. */
export function* walkElements(element: SvgElement): Generator<SvgElement> {
  yield element;
  for (const child of element.children) {
    if (child.type === "element") yield* walkElements(child);
  }
}

/** Returns what a `use`, gradient or pattern points at (`href` before `xlink:href`), or undefined. */
export function findHref(element: SvgElement): string | undefined {
  return element.attributes["href"] ?? element.attributes["xlink:href"];
}

/** Returns the element that it points at, or undefined. */
export function findTarget(
  element: SvgElement,
  ids: ReadonlyMap<string, SvgElement>,
): SvgElement | undefined {
  return ids.get(findHref(element)?.slice(1) ?? "");
}

/**
 * Returns a gradient or pattern with those that it has from what it lacks, the nearest first. Source: SVG 2, sections 14.2.2
 * and 14.3.2. They must not lead back to themselves.
 */
export function chainOf(server: SvgElement, ids: ReadonlyMap<string, SvgElement>): readonly SvgElement[] {
  const next = findTarget(server, ids);
  return next === undefined ? [server] : [server, ...chainOf(next, ids)];
}

/**
 * Rebuilds the tree with each element replaced by what `change` returns for it; children are rebuilt first.
 * Elements that do not change are shared with the old tree, so identity tells what moved.
 */
export function mapElements(
  element: SvgElement,
  change: (element: SvgElement, original: SvgElement) => SvgElement,
): SvgElement {
  let moved = false;
  const children = element.children.map((child) => {
    if (child.type !== "element") return child;
    const next = mapElements(child, change);
    if (next !== child) moved = true;
    return next;
  });
  return change(moved ? { ...element, children } : element, element);
}
