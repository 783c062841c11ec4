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
 * Returns a group that shows what the `use` showed (SVG 2, section 5.5: `use` as a group, its x and y behind its
 * transform), with `colours` on it. Ids are left out of the copy: what they name stays where it was.
 */
export function expandUse(use: Instance, colours: CopyColours): SvgElement {
  const {
    x,
    y,
    width: _width,
    height: _height,
    href: _href,
    "xlink:href": _xlink,
    ...kept
  } = use.element.attributes;
  const shift = x === undefined && y === undefined ? "" : `translate(${x ?? 0} ${y ?? 0})`;
  const transform = `${kept["transform"] ?? ""} ${shift}`.trim();
  const attributes: Record<string, string> = { ...kept, ...(transform === "" ? {} : { transform }) };
  const [target] = use.children;
  return {
    ...use.element,
    name: "g",
    attributes,
    children: target === undefined ? [] : [copy(target, colours)],
  };
}

function copy(instance: Instance, colours: CopyColours): SvgElement {
  const { element, parent } = instance;
  const { id: _id, ...attributes } =
    element.name === "use" ? expandUse(instance, colours).attributes : element.attributes;
  const painted = { ...attributes, ...Object.fromEntries(colours.get(instance) ?? []) };
  const children =
    element.name === "use" ? expandUse(instance, colours).children : copyChildren(instance, colours);
  const isShownSymbol = element.name === "symbol" && parent?.element.name === "use";
  if (isShownSymbol || (element.name === "svg" && parent?.element.name === "use")) {
    const size = {
      width: parent.element.attributes["width"] ?? painted["width"] ?? "100%",
      height: parent.element.attributes["height"] ?? painted["height"] ?? "100%",
    };
    return { ...element, name: "svg", attributes: { ...painted, ...size }, children };
  }
  return { ...element, name: element.name === "use" ? "g" : element.name, attributes: painted, children };
}

function copyChildren(instance: Instance, colours: CopyColours): SvgNode[] {
  let at = 0;
  return instance.element.children.map((child) => {
    if (child.type === "text") return child;
    const shown = instance.children[at];
    at += 1;
    return shown === undefined ? child : copy(shown, colours);
  });
}
