// Floor 2, step 6. The label drawing: the same geometry with every paint in its own flat code colour and no
// anti-aliasing, so that its picture is the map of paints. `use` is expanded, opacity goes.
import { drawnFor } from "./copyuse.ts";
import * as allow from "./gate/allowlist.ts";
import { inheritInto } from "./gate/drawnwalk.ts";
import type { Instance } from "./instance.ts";
import { type PaintedShapes, visibleFrom } from "./paint.ts";
import { labelOf, type PaintIndex } from "./paintnumber.ts";
import { findReference } from "./style/attributevalue.ts";
import { findHref, type SvgElement, type SvgNode } from "./tree.ts";
import { writeSized } from "./writesvg.ts";

/** Code colour of a paint, as 0xrrggbb; all different up to 2^24. */
export function codeOf(paint: PaintIndex): number {
  return Math.imul(labelOf(paint), 0x61c8b) & 0xffffff;
}

/** Returns the label drawing as SVG text, to be rendered at exactly `widthPixels` × `heightPixels`. */
export function writeLabels(shapes: PaintedShapes, widthPixels: number, heightPixels: number): string {
  const root = new LabelWriter(shapes).write();
  return writeSized({ ...shapes.resolved.drawing, root }, widthPixels, heightPixels, {
    "shape-rendering": "crispEdges",
  });
}

/** Never copied into a label drawing: colours are set anew, `use` is expanded, the rest has no effect on geometry. */
const left = new Set([
  "id",
  "fill",
  "stroke",
  "color",
  "opacity",
  "fill-opacity",
  "stroke-opacity",
  "stop-color",
  "stop-opacity",
  "href",
  "xlink:href",
  "display",
  "visibility",
  "lang",
  "role",
]);

type Attributes = Record<string, string>;

class LabelWriter {
  private readonly codes = new Map<Instance, { fill?: string; stroke?: string }>();
  /** What the label drawing points at, by id; `url` is false for what only a `use` shows, which inherits from there. */
  private readonly needed = new Map<string, { readonly element: SvgElement; readonly url: boolean }>();
  private readonly markers = new Map<string, Instance>();
  private readonly shapes: PaintedShapes;

  constructor(shapes: PaintedShapes) {
    this.shapes = shapes;
    const codeOfKey = new Map(
      shapes.paints.map(({ key }, paint) => [key, `#${codeOf(paint).toString(16).padStart(6, "0")}`]),
    );
    for (const { instance, property, key } of shapes.uses) {
      const codes = this.codes.get(instance) ?? {};
      codes[property] = codeOfKey.get(key) ?? "none";
      this.codes.set(instance, codes);
    }
    for (const instance of shapes.resolved.instances) {
      const id = instance.element.attributes["id"];
      if (instance.element.name === "marker" && id !== undefined && !this.markers.has(id))
        this.markers.set(id, instance);
    }
  }

  write(): SvgElement {
    const { root } = this.shapes.resolved;
    const body = this.emitChildren(root);
    const attributes = this.geometry(root.element.attributes);
    const definitions = make("defs", {}, this.emitDefinitions());
    return make("svg", attributes, [definitions, ...body]);
  }

  private emitChildren(instance: Instance): SvgNode[] {
    return instance.children.flatMap((child) => this.emit(child));
  }

  private emit(instance: Instance): SvgNode[] {
    if (instance.element.attributes["display"] === "none") return [];
    const { name, attributes: drawn } = drawnFor(instance);
    const attributes = this.geometry(drawn);
    if (allow.shapes.has(name)) return this.emitShape(instance, attributes);
    const children = name === "g" || name === "svg" ? this.emitChildren(instance) : [];
    return children.length === 0 ? [] : [make(name, attributes, children)];
  }

  private emitShape(instance: Instance, attributes: Attributes): SvgNode[] {
    if (!instance.shown) return [];
    const codes = this.codes.get(instance) ?? {};
    // Markers show as much as the shape does.
    if (instance.opacity < visibleFrom)
      for (const name of Object.keys(attributes)) if (name.startsWith("marker")) delete attributes[name];
    const hasMarker = Object.keys(attributes).some((name) => name.startsWith("marker"));
    if (codes.fill === undefined && codes.stroke === undefined && !hasMarker) return [];
    return [
      make(
        instance.element.name,
        { ...attributes, fill: codes.fill ?? "none", stroke: codes.stroke ?? "none" },
        [],
      ),
    ];
  }

  /** Those of an element's attributes that shape it; what they point at will be defined. */
  private geometry(all: SvgElement["attributes"]): Attributes {
    const attributes: Attributes = {};
    for (const [name, value] of Object.entries(all))
      if (!left.has(name) && !name.startsWith("data-") && !name.startsWith("aria-")) attributes[name] = value;
    for (const value of Object.values(attributes)) this.need(value);
    return attributes;
  }

  private need(value: string, url = true): void {
    const id = findReference(value);
    const element = typeof id === "string" ? this.shapes.resolved.ids.get(id) : undefined;
    if (typeof id === "string" && element !== undefined && !this.needed.has(id))
      this.needed.set(id, { element, url });
  }

  private emitDefinitions(): SvgNode[] {
    const definitions: SvgNode[] = [];
    const done = new Set<string>();
    for (;;) {
      const next = [...this.needed].find(([id]) => !done.has(id));
      if (next === undefined) return definitions;
      const [id, { element, url }] = next;
      done.add(id);
      const marker = element.name === "marker" ? this.markers.get(id) : undefined;
      const inheritedAttributes = url ? this.inheritedAt(element) : {};
      if (marker === undefined) definitions.push(this.copy(element, inheritedAttributes));
      else
        definitions.push(
          make(
            "marker",
            { ...inheritedAttributes, ...this.geometry(element.attributes), id },
            this.emitChildren(marker),
          ),
        );
    }
  }

  /** A clip path, mask or what they use: copied with its own colours. */
  private copy(element: SvgElement, above: SvgElement["attributes"]): SvgElement {
    const attributes: Attributes = { ...above, ...element.attributes };
    for (const value of Object.values(attributes)) this.need(value);
    const href = findHref(element);
    if (href !== undefined) this.need(`url(${href})`, false);
    return make(
      element.name,
      attributes,
      element.children.flatMap((child) => (child.type === "element" ? [this.copy(child, {})] : [])),
    );
  }

  /** What `element` inherits from the elements around it in the file. */
  private inheritedAt(element: SvgElement): SvgElement["attributes"] {
    const found = this.shapes.resolved.instances.find((instance) => instance.element === element);
    const inside = (at: Instance | null): SvgElement["attributes"] =>
      at === null ? {} : inheritInto(at.element, inside(at.parent));
    return inside(found?.parent ?? null);
  }
}

function make(name: string, attributes: Attributes, children: readonly SvgNode[]): SvgElement {
  return {
    type: "element",
    name,
    value: "",
    attributes,
    children,
    place: { line: 1, column: 1 },
    attributePlaces: {},
  };
}
