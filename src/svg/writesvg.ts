// Floor 2, last step. A tree → SVG text. Only what this module writes is ever rendered or published. svgson's `stringify`,
// whose shape the tree has, does not serve: what ends a CDATA section breaks its text, and it loses line feeds in attributes.
import { svgNamespace, xlinkNamespace } from "./gate/allowlist.ts";
import { liftTransforms } from "./lifttransform.ts";
import { properties } from "./style/property.ts";
import { type Drawing, type SvgElement, type SvgNode, walkElements } from "./tree.ts";

const order: ReadonlyMap<string, number> = new Map(
  [...properties.keys()].map((name, index) => [name, index]),
);

/** Returns the drawing as SVG 1.1/2 text in UTF-8: no XML declaration, no DOCTYPE, no comments, no CDATA. */
export function writeDrawing(drawing: Drawing): string {
  return writeRoot(drawing.root, { viewBox: viewBoxText(drawing) });
}

/** Returns the drawing sized in pixels, for a renderer, with `extra` attributes on its root. */
export function writeSized(
  drawing: Drawing,
  widthPixels: number,
  heightPixels: number,
  extra: Readonly<Record<string, string>> = {},
): string {
  return writeRoot(liftTransforms(drawing.root), {
    viewBox: viewBoxText(drawing),
    width: String(widthPixels),
    height: String(heightPixels),
    preserveAspectRatio: "none",
    ...extra,
  });
}

/** Returns the drawing's rectangle as a viewBox value. */
export function viewBoxText(drawing: Drawing): string {
  const { x, y, width, height } = drawing.viewBox;
  return `${x} ${y} ${width} ${height}`;
}

/** Writes `root` with `extra` attributes over its own. */
export function writeRoot(root: SvgElement, extra: Readonly<Record<string, string>>): string {
  const usesXlink = [...walkElements(root)].some((element) => element.attributes["xlink:href"] !== undefined);
  const attributes = {
    xmlns: svgNamespace,
    ...(usesXlink ? { "xmlns:xlink": xlinkNamespace } : {}),
    ...root.attributes,
    ...extra,
  };
  return `${writeElement({ ...root, attributes })}\n`;
}

function writeElement(element: SvgElement): string {
  const attributes = orderAttributes(element.attributes)
    .map(([name, value]) => ` ${name}="${escapeAttribute(value)}"`)
    .join("");
  if (element.children.length === 0) return `<${element.name}${attributes}/>`;
  return `<${element.name}${attributes}>${element.children.map(writeNode).join("")}</${element.name}>`;
}

/** Properties stand behind all else, in the order of their list: what is read and written again is the same text. */
function orderAttributes(
  attributes: Readonly<Record<string, string>>,
): readonly (readonly [string, string])[] {
  const all = Object.entries(attributes);
  const place = ([name]: readonly [string, string]): number => order.get(name) ?? -1;
  return all.sort((a, b) => place(a) - place(b));
}

function writeNode(node: SvgNode): string {
  return node.type === "element" ? writeElement(node) : escapeText(node.value);
}

function escapeText(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
}

function escapeAttribute(text: string): string {
  return escapeText(text).replace(/"/g, "&quot;").replace(/\t/g, "&#9;").replace(/\n/g, "&#10;");
}

/** Returns the drawing with `note` in its metadata. */
export function describeDrawing(drawing: Drawing, note: string): Drawing {
  const { place } = drawing.root;
  const text: SvgNode = { type: "text", name: "", value: note, attributes: {}, children: [], place };
  const metadata: SvgElement = {
    type: "element",
    name: "metadata",
    value: "",
    attributes: {},
    children: [text],
    place,
    attributePlaces: {},
  };
  return { ...drawing, root: { ...drawing.root, children: [metadata, ...drawing.root.children] } };
}
