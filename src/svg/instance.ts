// Floor 2, step 4. The drawing as it is shown: every `use` followed, every paint and opacity resolved for each shape.
import type { Hex } from "../colour/colour.ts";
import { parseColour } from "../colour/colourtext.ts";
import * as allow from "./gate/allowlist.ts";
import { idsOf } from "./gate/reference.ts";
import { findReference } from "./style/attributevalue.ts";
import type { SelectNode } from "./style/selector.ts";
import { type Drawing, findHref, type SvgElement, walkElements } from "./tree.ts";

/** The attribute that says a colour. */
export interface Site {
  readonly element: SvgElement;
  readonly name: string;
}

/**
 * What fills or strokes a shape. `site` says the colour and is null for the initial black, where `initial` says of which
 * property; `owner` is the instance on which the property itself is declared, which for `currentColor` need not be where the
 * colour is.
 */
export type PaintSource =
  | { readonly kind: "none" }
  | {
      readonly kind: "colour";
      readonly hex: Hex;
      readonly alpha01: number;
      readonly site: Site | null;
      readonly owner: Instance | null;
      readonly initial?: "fill" | "color";
    }
  | {
      readonly kind: "server";
      readonly id: string;
      readonly owner: Instance;
    };

/** One showing of one element. The children of a `use` are its target, resolved in its place. */
export interface Instance extends SelectNode {
  readonly element: SvgElement;
  readonly parent: Instance | null;
  readonly children: readonly Instance[];
  /** Whether the element is painted here (not inside defs, a clip path, a mask …). */
  readonly shown: boolean;
  readonly fill: PaintSource;
  readonly stroke: PaintSource;
  /** Product of the opacities of the element and those around it. */
  readonly opacity: number;
  /** Products of all opacities, with the alpha of the paint: 0 to 1. */
  readonly fillOpacity: number;
  readonly strokeOpacity: number;
}

export interface ResolvedDrawing {
  readonly drawing: Drawing;
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
  site: null,
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

/** Resolves a drawing. Needs a checked drawing: references resolve and do not run in circles. */
export function resolveDrawing(drawing: Drawing): ResolvedDrawing {
  const ids = idsOf(drawing.root);
  const builder = new Builder(ids, findMarkers(drawing.root));
  const root = builder.add(drawing.root, null, initial);
  return { drawing, ids, root, instances: builder.instances };
}

/** Ids of markers that some element uses: their content is painted. */
function findMarkers(root: SvgElement): ReadonlySet<string> {
  const used = new Set<string>();
  for (const { attributes } of walkElements(root)) {
    for (const side of ["start", "mid", "end"]) {
      const id = findReference(attributes[`marker-${side}`] ?? "");
      if (typeof id === "string") used.add(id);
    }
  }
  return used;
}

class Builder {
  readonly instances: Instance[] = [];
  private readonly ids: ReadonlyMap<string, SvgElement>;
  private readonly markers: ReadonlySet<string>;

  constructor(ids: ReadonlyMap<string, SvgElement>, markers: ReadonlySet<string>) {
    this.ids = ids;
    this.markers = markers;
  }

  add(element: SvgElement, parent: Instance | null, above: Inherited): Instance {
    const children: Instance[] = [];
    const node: { -readonly [K in keyof Instance]: Instance[K] } = {
      element,
      author: element.author,
      parent,
      children,
      shown: false,
      fill: none,
      stroke: none,
      opacity: 1,
      fillOpacity: 0,
      strokeOpacity: 0,
    };
    this.instances.push(node);
    const here = this.inherit(node, above, parent?.element.name === "use");
    node.shown = here.shown && allow.shapes.has(element.name) && here.visible;
    node.fill = useColor(here.fill, here.color);
    node.stroke = here.strokeWidthZero ? none : useColor(here.stroke, here.color);
    node.opacity = here.opacity;
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
    const { name, attributes } = node.element;
    const color = useColor(resolvePaint("color", above.color, node), above.color);
    const isUsedMarker = name === "marker" && this.markers.has(attributes["id"] ?? "");
    const leavesHidden = isUsedMarker
      ? true
      : above.shown && (!allow.unshown.has(name) || (isTarget && name === "symbol"));
    return {
      color,
      fill: resolvePaint("fill", above.fill, node),
      stroke: resolvePaint("stroke", above.stroke, node),
      fillOpacity: Number(attributes["fill-opacity"] ?? above.fillOpacity),
      strokeOpacity: Number(attributes["stroke-opacity"] ?? above.strokeOpacity),
      strokeWidthZero:
        attributes["stroke-width"] === undefined
          ? above.strokeWidthZero
          : Number.parseFloat(attributes["stroke-width"]) === 0,
      visible:
        attributes["visibility"] === undefined ? above.visible : attributes["visibility"] === "visible",
      opacity: (isUsedMarker ? 1 : above.opacity) * Number(attributes["opacity"] ?? 1),
      shown: leavesHidden && attributes["display"] !== "none",
    };
  }
}

function useColor(value: PaintValue, color: PaintSource): PaintSource {
  if (value.kind !== "current") return value;
  return color.kind === "colour" ? { ...color, owner: value.owner } : color;
}

function resolvePaint(name: "fill" | "stroke" | "color", above: PaintValue, owner: Instance): PaintValue {
  const value = owner.element.attributes[name];
  if (value === undefined) return above;
  if (value === "none") return none;
  if (value === "currentColor") return { kind: "current", owner };
  const id = findReference(value);
  if (typeof id === "string") return { kind: "server", id, owner };
  const colour = parseColour(value);
  return colour === undefined
    ? above
    : { kind: "colour", ...colour, site: { element: owner.element, name }, owner };
}

function alphaOf(paint: PaintSource): number {
  return paint.kind === "colour" ? paint.alpha01 : 1;
}
