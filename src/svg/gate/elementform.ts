// Floor 2, part of step 2. What may stand on an element that is more than a shape or a group, and what in it: a finite list of
// what the measuring renderer and browsers draw alike. What is on it was drawn in both: tests/svg/probe.ts.

import { properties } from "../style/property.ts";
import { findTarget, type SvgElement } from "../tree.ts";
import * as allow from "./allowlist.ts";
import { readViewBox } from "./geometry.ts";

type Ids = ReadonlyMap<string, SvgElement>;

const words = (text: string): ReadonlySet<string> => new Set(text.split(" "));

/** The attributes, beside what is inherited and free text, of an element that is more than a shape or a group. */
const forms: Readonly<Record<string, ReadonlySet<string>>> = {
  svg: words("x y width height viewBox preserveAspectRatio opacity clip-path mask"),
  defs: words(""),
  symbol: words("width height viewBox preserveAspectRatio"),
  clipPath: words("transform"),
  mask: words("x y width height maskUnits mask-type"),
  marker: words("viewBox preserveAspectRatio refX refY markerWidth markerHeight markerUnits orient overflow"),
  pattern: words("x y width height patternUnits patternTransform"),
  linearGradient: words("x1 y1 x2 y2 gradientUnits gradientTransform"),
  radialGradient: words("cx cy r fx fy gradientUnits gradientTransform"),
};

/** Returns what of an element is not on the list, in words that follow "has", or undefined. */
export function findForm(element: SvgElement, ids: Ids): string | undefined {
  const { name, attributes, children } = element;
  const form = forms[name];
  const odd =
    form === undefined ? undefined : Object.keys(attributes).find((key) => !isFormed(key, element, form));
  if (odd !== undefined)
    return `${odd}="${attributes[odd]?.slice(0, 40)}", which not all programs follow there`;
  if (form !== undefined && attributes["preserveAspectRatio"]?.endsWith("slice") === true)
    return "a preserveAspectRatio with slice, which programs follow in two ways there";
  if (name === "marker" && !isFilled(attributes))
    return "a viewBox of other proportions than its size, which not all programs cut alike";
  if (name !== "clipPath") return undefined;
  const inside = children.filter(
    (child): child is SvgElement => child.type === "element" && !/^(?:title|desc)$/.test(child.name),
  );
  return inside.length <= 1 && inside.every((child) => isClip(child, ids))
    ? undefined
    : "more in it than one shape, or <use> of one shape, that is not clipped or masked itself";
}

/** Whether a marker is as wide to its height as its viewBox, which then fills it. */
function isFilled({ viewBox, markerWidth = "3", markerHeight = "3" }: SvgElement["attributes"]): boolean {
  const box = readViewBox(viewBox ?? "");
  const factor =
    box === undefined
      ? 1
      : (Number.parseFloat(markerWidth) * box.height) / (Number.parseFloat(markerHeight) * box.width);
  return Math.abs(factor - 1) < 0.01;
}

function isFormed(key: string, { name, attributes }: SvgElement, form: ReadonlySet<string>): boolean {
  const property = properties.get(key);
  if (property?.inherits === true || form.has(key)) return true;
  if (/^(?:clipPathUnits|.*ContentUnits)$/.test(key)) return attributes[key] === "userSpaceOnUse";
  if (key === "spreadMethod") return attributes[key] === "pad";
  if (key === "overflow")
    return attributes[key] === "hidden" || !/^(?:svg|symbol|marker|pattern)$/.test(name);
  return attributes[key] === property?.initial || /href$/.test(key) || allow.textAttribute.test(key);
}

function isClip(element: SvgElement, ids: Ids): boolean {
  const { name, attributes } = element;
  if (["clip-path", "mask"].some((key) => (attributes[key] ?? "none") !== "none")) return false;
  if (name !== "use") return allow.shapes.has(name);
  const target = findTarget(element, ids);
  return target === undefined || (target.name !== "use" && isClip(target, ids));
}
