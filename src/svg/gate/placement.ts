// Floor 2, part of step 2. What depends on where an element stands: the outermost one has its size from the viewBox alone
// and is no shape; inside, sizes in styles, and the colour of a stop.

import { readLength } from "../style/attributevalue.ts";
import { handedOn } from "../style/declaration.ts";
import type { SvgElement, ViewBox } from "../tree.ts";
import type { Reporter } from "./drawingreport.ts";
import { readViewBox } from "./geometry.ts";

/** Attributes that say how large the picture is, where the viewBox says it already. */
const sizes = ["x", "y", "width", "height", "preserveAspectRatio"];

/** What browsers do to the outermost element as to a box of a page, and other programs as to a shape, or not at all. */
const refused = ["transform", "clip-path", "mask", "opacity", "display", handedOn.box];

/** Width to height of the picture and of the viewBox may differ by this factor: sizes are often rounded. */
const roundedBy = 1.02;

/**
 * Returns the tree with every element settled, or undefined where the outermost one cannot be.
 *
 * Problems: svg/root, svg/number (the viewBox of an element inside), svg/unsupported (sizes in a style).
 */
export function settle(root: SvgElement, viewBox: ViewBox, reporter: Reporter): SvgElement | undefined {
  const name = refused.find((each) => isThere(each, root.attributes[each]));
  const isBox = name === handedOn.box;
  const what = isBox ? root.attributes[name] : name;
  if (name !== undefined) {
    reporter.error(
      "svg/root",
      root.attributePlaces[name] ?? root.place,
      `<svg> has ${what}, which programs draw differently or not at all.`,
      isBox ? "Draw the ground as a shape." : `Put everything into a <g> and write ${what} there.`,
    );
    return undefined;
  }
  const other = findOtherShape(root, viewBox);
  if (other === undefined) return settleElement(root, reporter, "#000000", true);
  reporter.error(
    "svg/root",
    root.attributePlaces["width"] ?? root.place,
    `The picture is ${other}, which is another shape than that of the viewBox.`,
    "Delete width and height from <svg>, or give viewBox the same proportions.",
  );
  return undefined;
}

function isThere(name: string, value: string | undefined): boolean {
  if (value === undefined || value === "inline") return false;
  if (name === "opacity") return Number(value) !== 1;
  return name === "display" || name === "transform" ? value !== "" : value !== "none";
}

function findOtherShape({ attributes }: SvgElement, viewBox: ViewBox): string | undefined {
  const [width = "", height = ""] = ["width", "height"].map(
    (name) => readLength(attributes[name] ?? "") ?? "",
  );
  if (width === "" || height === "" || /%$/.test(width) || /%$/.test(height)) return undefined;
  const factor = Number(width) / Number(height) / (viewBox.width / viewBox.height);
  return Math.max(factor, 1 / factor) <= roundedBy
    ? undefined
    : `${attributes["width"]} by ${attributes["height"]}`;
}

/** `color` is what `currentColor` means around the element; a stop is coloured where it stands, never through a `use`. */
function settleElement(element: SvgElement, reporter: Reporter, color: string, isRoot: boolean): SvgElement {
  const attributes: Record<string, string> = Object.create(null);
  for (const [name, value] of Object.entries(element.attributes))
    if (isKept(name, value, isRoot)) attributes[name] = value;
  if (!isRoot) checkInside(element, reporter);
  const here = attributes["color"] ?? color;
  if (element.name === "stop") {
    const colour = attributes["stop-color"] ?? "#000000";
    attributes["stop-color"] = colour === "currentColor" ? here : colour;
  }
  const children = element.children.map((child) =>
    child.type === "element" ? settleElement(child, reporter, here, false) : child,
  );
  return { ...element, attributes, children };
}

function isKept(name: string, value: string, isRoot: boolean): boolean {
  if (name === handedOn.box || name === handedOn.geometry || (isRoot && sizes.includes(name))) return false;
  return !(name === "color" && value === "currentColor");
}

function checkInside(element: SvgElement, reporter: Reporter): void {
  const { viewBox, [handedOn.geometry]: size } = element.attributes;
  if (viewBox !== undefined && readViewBox(viewBox) === undefined) {
    const reason = `viewBox=${JSON.stringify(viewBox.slice(0, 60))} is not four numbers.`;
    reporter.error("svg/number", element.attributePlaces["viewBox"], reason, "Write four plain numbers.");
  }
  const isSized =
    size === "d" ? element.name === "path" : /^(?:rect|circle|ellipse|use|svg)$/.test(element.name);
  if (size === undefined || !isSized) return;
  reporter.error(
    "svg/unsupported",
    element.attributePlaces[handedOn.geometry] ?? element.place,
    `<${element.name}> has its ${size} from a style, which is not supported.`,
    `Write it as an attribute: ${size}="…".`,
  );
}
