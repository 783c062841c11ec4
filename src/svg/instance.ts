// Floor 2, step 4. The drawing as it is shown: every `use` followed, every paint and opacity resolved for each shape.
import type { Hex } from "../colour/colour.ts";
import { parseColour } from "../colour/parse.ts";
import * as allow from "./allow.ts";
import { type Cascade, type Declaration, resolveCascade } from "./cascade.ts";
import { idsOf } from "./reference.ts";
import type { SelectNode } from "./select.ts";
import { type Drawing, findHref, type SvgElement } from "./tree.ts";
import { findReference } from "./value.ts";

/**
 * What fills or strokes a shape. `declaration` says the colour and is null for the initial black, where `initial` says
 * of which property; `owner` is the instance on which the property itself is declared, which for `currentColor` need
 * not be where the colour is.
 */
export type PaintSource =
  | { readonly kind: "none" }
  | {
      readonly kind: "colour";
      readonly hex: Hex;
      readonly alpha01: number;
      readonly declaration: Declaration | null;
      readonly owner: Instance | null;
      readonly initial?: "fill" | "color";
    }
  | {
      readonly kind: "server";
      readonly id: string;
      readonly declaration: Declaration;
      readonly owner: Instance;
    };

/** One showing of one element. The children of a `use` are its target, resolved in its place. */
export interface Instance extends SelectNode {
  readonly parent: Instance | null;
  readonly children: readonly Instance[];
  /** Whether the element is painted here (not inside defs, a clip path, a mask …). */
  readonly shown: boolean;
  readonly fill: PaintSource;
  readonly stroke: PaintSource;
  /** Products of all opacities, with the alpha of the paint: 0 to 1. */
  readonly fillOpacity: number;
  readonly strokeOpacity: number;
}

export interface ResolvedDrawing {
  readonly drawing: Drawing;
  readonly cascade: Cascade;
  readonly ids: ReadonlyMap<string, SvgElement>;
  readonly root: Instance;
  /** Every instance, parents before children. */
  readonly instances: readonly Instance[];
}

/** `currentColor` is inherited as the keyword (CSS Color 4, section 9.2) and becomes a colour on each shape. */
type PaintValue = PaintSource | { readonly kind: "current"; readonly owner: Instance };

interface Inherited {
  readonly fill: PaintValue;
  readonly stroke: PaintValue;
  readonly color: PaintSource;
  readonly fillOpacity: number;
  readonly strokeOpacity: number;
  readonly strokeWidthZero: boolean;
  readonly visible: boolean;
  readonly opacity: number;
  readonly shown: boolean;
}

const black: PaintSource = {
  kind: "colour",
  hex: "#000000",
  alpha01: 1,
  declaration: null,
  owner: null,
  initial: "fill",
};
const blackColor: PaintSource = { ...black, initial: "color" };
const none: PaintSource = { kind: "none" };
const initial: Inherited = {
  fill: black,
  stroke: none,
  color: blackColor,
  fillOpacity: 1,
  strokeOpacity: 1,
  strokeWidthZero: false,
  visible: true,
  opacity: 1,
  shown: true,
};

const hidden = new Set([
  "defs",
  "symbol",
  "clipPath",
  "mask",
  "marker",
  "linearGradient",
  "radialGradient",
  "pattern",
  "style",
  "title",
  "desc",
  "stop",
]);

/** Resolves a drawing. Needs a checked drawing: references resolve and do not run in circles. */
export function resolveDrawing(drawing: Drawing): ResolvedDrawing {
  const cascade = resolveCascade(drawing.root);
  const ids = idsOf(drawing.root);
  const builder = new Builder(cascade, ids, findMarkers(cascade));
  const root = builder.add(drawing.root, null, initial);
  return { drawing, cascade, ids, root, instances: builder.instances };
}

/** Ids of markers that some element uses: their content is painted. */
function findMarkers(cascade: Cascade): ReadonlySet<string> {
  const used = new Set<string>();
  for (const declarations of cascade.values()) {
    for (const [property, { value }] of declarations) {
      const id = property.startsWith("marker") ? findReference(value) : undefined;
      if (typeof id === "string") used.add(id);
    }
  }
  return used;
}

class Builder {
  readonly instances: Instance[] = [];
  private readonly cascade: Cascade;
  private readonly ids: ReadonlyMap<string, SvgElement>;
  private readonly markers: ReadonlySet<string>;

  constructor(cascade: Cascade, ids: ReadonlyMap<string, SvgElement>, markers: ReadonlySet<string>) {
    this.cascade = cascade;
    this.ids = ids;
    this.markers = markers;
  }

  add(element: SvgElement, parent: Instance | null, above: Inherited): Instance {
    const children: Instance[] = [];
    const node: { -readonly [K in keyof Instance]: Instance[K] } = {
      element,
      parent,
      children,
      shown: false,
      fill: none,
      stroke: none,
      fillOpacity: 0,
      strokeOpacity: 0,
    };
    this.instances.push(node);
    const here = this.inherit(node, above, parent?.element.name === "use");
    node.shown = here.shown && allow.shapes.has(element.name) && here.visible;
    node.fill = useColor(here.fill, here.color);
    node.stroke = here.strokeWidthZero ? none : useColor(here.stroke, here.color);
    node.fillOpacity = here.opacity * here.fillOpacity * alphaOf(node.fill);
    node.strokeOpacity = here.opacity * here.strokeOpacity * alphaOf(node.stroke);
    for (const child of element.children)
      if (child.type === "element") children.push(this.add(child, node, here));
    const href = element.name === "use" ? findHref(element) : undefined;
    const target = href === undefined ? undefined : this.ids.get(href.slice(1));
    if (target !== undefined) children.push(this.add(target, node, here));
    return node;
  }

  private inherit(node: Instance, above: Inherited, isTarget: boolean): Inherited {
    const declared = this.cascade.get(node.element) ?? new Map<string, Declaration>();
    const color = useColor(resolvePaint(declared.get("color"), above.color, blackColor, node), above.color);
    const name = node.element.name;
    const isUsedMarker = name === "marker" && this.markers.has(node.element.attributes["id"] ?? "");
    const leavesHidden = isUsedMarker
      ? true
      : above.shown && (!hidden.has(name) || (isTarget && name === "symbol"));
    return {
      color,
      fill: resolvePaint(declared.get("fill"), above.fill, black, node),
      stroke: resolvePaint(declared.get("stroke"), above.stroke, none, node),
      fillOpacity: resolveNumber(declared.get("fill-opacity")?.value, above.fillOpacity, 1),
      strokeOpacity: resolveNumber(declared.get("stroke-opacity")?.value, above.strokeOpacity, 1),
      strokeWidthZero: declared.has("stroke-width")
        ? Number.parseFloat(declared.get("stroke-width")?.value ?? "") === 0
        : above.strokeWidthZero,
      visible: resolveVisible(declared.get("visibility")?.value, above.visible),
      opacity: (isUsedMarker ? 1 : above.opacity) * resolveNumber(declared.get("opacity")?.value, 1, 1),
      shown: leavesHidden && declared.get("display")?.value !== "none",
    };
  }
}

function useColor(value: PaintValue, color: PaintSource): PaintSource {
  if (value.kind !== "current") return value;
  return color.kind === "colour" ? { ...color, owner: value.owner } : color;
}

function resolvePaint(
  declaration: Declaration | undefined,
  above: PaintValue,
  start: PaintSource,
  owner: Instance,
): PaintValue {
  if (declaration === undefined) return above;
  const value = declaration.value.trim();
  const keyword = value.toLowerCase();
  if (keyword === "inherit" || keyword === "unset") return above;
  if (keyword === "none") return none;
  if (keyword === "currentcolor") return { kind: "current", owner };
  if (keyword === "initial")
    return start.kind === "colour"
      ? { kind: "colour", hex: start.hex, alpha01: 1, declaration, owner }
      : start;
  const id = findReference(value);
  if (typeof id === "string") return { kind: "server", id, declaration, owner };
  const colour = parseColour(value);
  return colour === undefined
    ? above
    : { kind: "colour", hex: colour.hex, alpha01: colour.alpha01, declaration, owner };
}

function resolveNumber(value: string | undefined, above: number, start: number): number {
  if (value === undefined || value === "inherit") return above;
  const number = Number.parseFloat(value) / (value.trim().endsWith("%") ? 100 : 1);
  return Number.isFinite(number) ? Math.min(1, Math.max(0, number)) : start;
}

function resolveVisible(value: string | undefined, above: boolean): boolean {
  if (value === undefined || value === "inherit") return above;
  return value === "visible" || value === "initial";
}

function alphaOf(paint: PaintSource): number {
  return paint.kind === "colour" ? paint.alpha01 : 1;
}
