// Floor 2, part of step 2. Follows every reference of a drawing once, and counts how much is drawn in the end.

import { findReference } from "../style/attributevalue.ts";
import { findHref, type SvgElement, walkElements } from "../tree.ts";
import { limit } from "./drawinglimit.ts";

/** What an element costs with everything in it and everything it refers to, each repetition counted. */
export interface Extent {
  readonly instances: number;
  readonly vertices: number;
  /** Upper bound of the length of all outlines, in their own units; 0 where nothing is dashed. */
  readonly length: number;
  /** What is drawn apart and then laid over: masks, clip paths, patterns, translucent groups. */
  readonly layers: number;
  readonly depth: number;
}

interface Reference {
  readonly target: SvgElement;
  readonly property: string;
}

const inheritedReferences = /^(?:fill|stroke|marker)/;
const nothing: Extent = {
  instances: 0,
  vertices: 0,
  length: 0,
  layers: 0,
  depth: 0,
};

export class Graph {
  private readonly known = new Map<SvgElement, Extent>();
  private readonly path: SvgElement[] = [];
  private readonly ids: ReadonlyMap<string, SvgElement>;
  private readonly diagonal: number;
  private readonly hasDashes: boolean;

  /** `diagonal` is that of the drawing, in user units: what a percentage can come to. */
  constructor(root: SvgElement, ids: ReadonlyMap<string, SvgElement>, diagonal: number) {
    this.ids = ids;
    this.diagonal = diagonal;
    this.hasDashes = [...walkElements(root)].some(({ attributes }) => "stroke-dasharray" in attributes);
  }

  /** Returns how much drawing `element` costs with all it refers to, or the elements of a circle. */
  measure(element: SvgElement): Extent | readonly SvgElement[] {
    const known = this.known.get(element);
    if (known !== undefined) return known;
    const seen = this.path.indexOf(element);
    if (seen >= 0) return this.circleFrom(seen, element);
    // It is refused whatever lies further down, and a chain may be longer than the stack.
    if (this.path.length > limit.chain) return { ...nothing, depth: Number.POSITIVE_INFINITY };
    this.path.push(element);
    const inside = this.measureAll(this.contentOf(element));
    if (isCircle(inside)) return inside;
    let extent = add(
      inside,
      {
        ...nothing,
        instances: 1,
        vertices: countVertices(element),
        length: this.hasDashes ? boundLength(element, this.diagonal) : 0,
      },
      1,
    );
    for (const reference of this.referencesOf(element)) {
      const target = this.measure(reference.target);
      if (isCircle(target)) return target;
      extent = add(extent, target, timesOf(reference, inside, extent));
      if (reference.target.name !== "marker" && !reference.target.name.endsWith("Gradient"))
        extent = add(extent, { ...nothing, layers: 1 }, timesOf(reference, inside, extent));
    }
    const opacity = element.attributes["opacity"] ?? "1";
    const isLayer = Number.parseFloat(opacity) !== 1 && element.name !== "stop";
    this.path.pop();
    const total = {
      ...extent,
      layers: extent.layers + (isLayer ? 1 : 0),
      depth: extent.depth + 1,
    };
    this.known.set(element, total);
    return total;
  }

  private circleFrom(seen: number, element: SvgElement): readonly SvgElement[] {
    const steps = [...this.path.slice(seen), element];
    return steps.filter(
      (step, index) => index === 0 || index === steps.length - 1 || step.attributes["id"] !== undefined,
    );
  }

  private measureAll(elements: readonly SvgElement[]): Extent | readonly SvgElement[] {
    let sum = nothing;
    for (const element of elements) {
      const extent = this.measure(element);
      if (isCircle(extent)) return extent;
      sum = add(sum, extent, 1);
    }
    return sum;
  }

  /** The elements inside, and what an `href` puts there. */
  private contentOf(element: SvgElement): readonly SvgElement[] {
    const inside = element.children.filter((child): child is SvgElement => child.type === "element");
    const href = findHref(element);
    const pointed = href === undefined ? undefined : this.ids.get(href.slice(1));
    return pointed === undefined ? inside : [...inside, pointed];
  }

  private *referencesOf(element: SvgElement): Generator<Reference> {
    for (const [property, value] of Object.entries(element.attributes)) {
      const id = findReference(value);
      const target = typeof id === "string" ? this.ids.get(id) : undefined;
      if (target !== undefined) yield { target, property };
    }
  }
}

/** How often a reference is drawn: an inherited one by every shape inside, a marker at every point. */
function timesOf({ property }: Reference, inside: Extent, all: Extent): number {
  if (!inheritedReferences.test(property)) return 1;
  return property.startsWith("marker") ? Math.max(1, all.vertices) : Math.max(1, inside.instances);
}

function add(sum: Extent, more: Extent, times: number): Extent {
  return {
    instances: sum.instances + more.instances * times,
    vertices: sum.vertices + more.vertices * times,
    length: sum.length + more.length * times,
    layers: sum.layers + more.layers * times,
    depth: Math.max(sum.depth, more.depth),
  };
}

function countVertices(element: SvgElement): number {
  const data = element.attributes["d"] ?? element.attributes["points"];
  return data === undefined ? 1 : 1 + Math.ceil((data.match(/\d+\.?\d*|\.\d+/g)?.length ?? 0) / 2);
}

/**
 * No outline is longer than the sum of its coordinates to and fro, times 2 π for arcs; a percentage stands for the
 * diagonal.
 */
function boundLength(element: SvgElement, diagonal: number): number {
  let sum = 0;
  for (const name of ["d", "points", "x", "y", "width", "height", "r", "rx", "ry", "x1", "y1", "x2", "y2"]) {
    const value = element.attributes[name];
    if (value === undefined) continue;
    for (const [number] of value.matchAll(/(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/g)) sum += Number(number);
    if (value.includes("%")) sum += 2 * diagonal;
  }
  return 2 * Math.PI * 2 * sum;
}

function isCircle(extent: Extent | readonly SvgElement[]): extent is readonly SvgElement[] {
  return Array.isArray(extent);
}
