// Floor 2, part of step 7. Gives one showing of a shared drawing its own copy, so that it alone can change colour.
import type { Instance } from "./instance.ts";
import type { PaintProperty } from "./paint.ts";
import type { SvgElement, SvgNode } from "./tree.ts";

/** Colours of the copy, by showing: what `fill` and `stroke` are to become. */
export type CopyColours = ReadonlyMap<Instance, ReadonlyMap<PaintProperty, string>>;

/** Returns the outermost `use` that shows `instance`: a copy in its place looks the same. */
export function findExpandable(instance: Instance): Instance | undefined {
  let outermost: Instance | undefined;
  for (let at = instance.parent; at !== null; at = at.parent) if (at.element.name === "use") outermost = at;
  return outermost;
}

/**
 * Returns the name and attributes of what is drawn for a showing: for a `use` a group (SVG 2, section 5.5: its x and y behind
 * its transform), for a symbol or svg in it an svg, in the size that the `use` asks for.
 */
export function drawnFor({ element, parent }: Instance): Pick<SvgElement, "name" | "attributes"> {
  if (element.name === "use") return { name: "g", attributes: groupOf(element.attributes) };
  const hasViewport = element.name === "symbol" || element.name === "svg";
  if (!hasViewport || parent?.element.name !== "use") return element;
  const { attributes: asked } = parent.element;
  const width = asked["width"] ?? element.attributes["width"] ?? "100%";
  const height = asked["height"] ?? element.attributes["height"] ?? "100%";
  return { name: "svg", attributes: { ...element.attributes, width, height } };
}

function groupOf(use: SvgElement["attributes"]): SvgElement["attributes"] {
  const { x, y, width: _width, height: _height, href: _href, "xlink:href": _xlink, ...kept } = use;
  const shift = x === undefined && y === undefined ? "" : `translate(${x ?? 0} ${y ?? 0})`;
  const transform = `${kept["transform"] ?? ""} ${shift}`.trim();
  return transform === "" ? kept : { ...kept, transform };
}

/** Returns a group that shows what the `use` showed, with `colours` on it. Ids are left out: what they name stays where it was. */
export function expandUse(use: Instance, colours: CopyColours): SvgElement {
  return { ...use.element, ...drawnFor(use), children: copyChildren(use, colours) };
}

function copy(instance: Instance, colours: CopyColours): SvgElement {
  const { name, attributes: drawn } = drawnFor(instance);
  const { id: _id, ...attributes } = drawn;
  return {
    ...instance.element,
    name,
    attributes: { ...attributes, ...Object.fromEntries(colours.get(instance) ?? []) },
    children: copyChildren(instance, colours),
  };
}

/** What is written inside it, and behind that what a `use` shows. */
function copyChildren({ element, children }: Instance, colours: CopyColours): readonly SvgNode[] {
  const shown = children.map((child) => copy(child, colours));
  const inside = element.children.map((child) => (child.type === "text" ? child : (shown.shift() ?? child)));
  return [...inside, ...shown];
}
