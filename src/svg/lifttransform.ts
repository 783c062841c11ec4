// Floor 2, part of the last step. What a renderer is given: every transform of a shape stands on a group around it.
//
// Before librsvg 2.63 draws a shape it works out what the shape covers, under the transforms around it but without its
// own, in numbers that end 2^23 = 8,388,608 pixels from the corner (cairo's 24.8 fixed point); what lies beyond is left
// out, though its own transform would bring it into the picture. On a group around it the transform counts.
import * as allow from "./gate/allowlist.ts";
import { findHref, type SvgElement, walkElements } from "./tree.ts";

/**
 * Returns a drawing that looks the same in which no shape has a transform of its own. Shapes that clip paths show keep
 * theirs: they are never left out, and a group may not stand there.
 */
export function liftTransforms(root: SvgElement): SvgElement {
  const elements = [...walkElements(root)];
  if (!elements.some(isMovedShape)) return root;
  const clips = elements.filter(({ name }) => name === "clipPath");
  return lift(root, findUsed(clips));
}

function isMovedShape({ name, attributes }: SvgElement): boolean {
  return attributes["transform"] !== undefined && allow.shapes.has(name);
}

/** What the `use` elements inside `elements` point at, as `#id`. */
function findUsed(elements: readonly SvgElement[]): ReadonlySet<string> {
  return new Set(elements.flatMap((element) => [...walkElements(element)].map((at) => findHref(at) ?? "")));
}

/** The id goes with the transform, so that a `use` shows both. */
function lift(element: SvgElement, clipped: ReadonlySet<string>): SvgElement {
  if (element.name === "clipPath") return element;
  const children = element.children.map((child) => (child.type === "element" ? lift(child, clipped) : child));
  const { id, transform, ...kept } = element.attributes;
  if (!isMovedShape(element) || transform === undefined || clipped.has(`#${id}`))
    return { ...element, children };
  const attributes: Record<string, string> = id === undefined ? { transform } : { id, transform };
  return { ...element, name: "g", attributes, children: [{ ...element, attributes: kept, children }] };
}
