// Floor 2, part of step 2. What is right by the standard, each value by itself, and is drawn by the measuring renderer and by
// browsers in two ways. Found by drawing it in both: tests/svg/probe.ts has each of these.

import { findReference } from "../style/attributevalue.ts";
import { findHref, type SvgElement } from "../tree.ts";
import { boundsOf, lengthOf } from "./bounds.ts";
import type { Reporter } from "./drawingreport.ts";

type Ids = ReadonlyMap<string, SvgElement>;
type Attributes = Readonly<Record<string, string>>;

/** An element with what it inherits from those around it, itself included. */
interface Standing {
  readonly element: SvgElement;
  readonly parent: SvgElement;
  readonly all: Attributes;
  readonly ids: Ids;
}

/** What is drawn in two ways: words for a message, and where. */
const unlike: readonly { readonly what: string; readonly isAt: (standing: Standing) => boolean }[] = [
  {
    what: "display: none, which some programs pass over there",
    isAt: ({ element: { name, attributes } }) =>
      attributes["display"] === "none" && /^(?:symbol|clipPath|mask|marker|pattern|.*Gradient)$/.test(name),
  },
  {
    what: "a clip path or mask, which some programs pass over there",
    isAt: ({ element: { name, attributes }, parent }) =>
      (isSet(attributes["clip-path"]) &&
        (/^(?:symbol|mask|pattern)$/.test(name) || parent.name === "clipPath")) ||
      (isSet(attributes["mask"]) && /^(?:symbol|mask|pattern)$/.test(name)),
  },
  {
    what: "an opacity, which some programs pass over there",
    isAt: ({ element: { name, attributes } }) =>
      Number(attributes["opacity"] ?? 1) !== 1 && /^(?:symbol|pattern)$/.test(name),
  },
  {
    what: "a preserveAspectRatio, which programs follow in two ways there",
    isAt: ({ element: { name, attributes } }) => {
      const ratio = attributes["preserveAspectRatio"] ?? "none";
      return (name === "pattern" && ratio !== "none") || (name === "marker" && ratio.endsWith("slice"));
    },
  },
  {
    what: "no length or no radius, for which programs take another of its colours",
    isAt: ({ element, ids }) => element.name.endsWith("Gradient") && isPoint(element, ids),
  },
  {
    what: "no length and square ends, which some programs do not draw",
    isAt: ({ element, all }) =>
      all["stroke-linecap"] === "square" &&
      boundsOf(element, 1)?.every((value, at, box) => value === box[at % 2]) === true,
  },
  {
    what: "a clip path or mask by the box of a straight line, which has no area",
    isAt: ({ element, ids }) => {
      const box = boundsOf(element, 1);
      const isLine = box !== undefined && (box[0] === box[2] || box[1] === box[3]);
      return isLine && ["clip-path", "mask"].some((name) => isByBox(element.attributes[name], ids));
    },
  },
  {
    what: "a marker that turns with the line where a closed path begins and ends, which programs turn in two ways",
    isAt: ({ element, all, ids }) =>
      (element.name === "polygon" || (element.name === "path" && /z/i.test(element.attributes["d"] ?? ""))) &&
      ["marker-start", "marker-end"].some((name) =>
        targetOf(all[name], ids)?.attributes["orient"]?.startsWith("auto"),
      ),
  },
];

/**
 * Returns whether nothing in the drawing is drawn in two ways.
 *
 * Problems: svg/unlike.
 */
export function checkUnlike(root: SvgElement, ids: Ids, reporter: Reporter): boolean {
  const found = findUnlike({ element: root, parent: root, all: {}, ids });
  if (found === undefined) return true;
  const { element, what } = found;
  const reason = `<${element.name}> has ${what}.`;
  reporter.error("svg/unlike", element.place, reason, "Remove it, and draw what it does as plain shapes.");
  return false;
}

function findUnlike(standing: Standing): { readonly element: SvgElement; readonly what: string } | undefined {
  const { element, ids } = standing;
  const what = unlike.find(({ isAt }) => isAt(standing))?.what;
  if (what !== undefined) return { element, what };
  for (const child of element.children) {
    if (child.type !== "element") continue;
    const all = { ...inheritedOf(standing.all), ...child.attributes };
    const found = findUnlike({ element: child, parent: element, all, ids });
    if (found !== undefined) return found;
  }
  return undefined;
}

/** What of the attributes around an element the tests ask for. */
function inheritedOf(all: Attributes): Attributes {
  const kept: Record<string, string> = {};
  for (const name of ["stroke-linecap", "marker-start", "marker-end"]) {
    const value = all[name];
    if (value !== undefined) kept[name] = value;
  }
  return kept;
}

const isSet = (value: string | undefined): boolean => value !== undefined && value !== "none";

function targetOf(value: string | undefined, ids: Ids): SvgElement | undefined {
  const id = findReference(value ?? "");
  return typeof id === "string" ? ids.get(id) : undefined;
}

function isByBox(value: string | undefined, ids: Ids): boolean {
  const target = targetOf(value, ids);
  if (target === undefined) return false;
  const units = target.attributes[target.name === "mask" ? "maskUnits" : "clipPathUnits"];
  const content = target.attributes["maskContentUnits"];
  return (
    content === "objectBoundingBox" ||
    (target.name === "mask" ? units !== "userSpaceOnUse" : units === "objectBoundingBox")
  );
}

/** Whether the vector of a gradient, with what it has from others, comes to one point, or its circle to none. */
function isPoint(gradient: SvgElement, ids: Ids): boolean {
  const attributes: Record<string, string> = {};
  for (
    let at: SvgElement | undefined = gradient;
    at !== undefined;
    at = ids.get(findHref(at)?.slice(1) ?? "")
  )
    for (const [name, value] of Object.entries(at.attributes)) attributes[name] ??= value;
  const at = (name: string, usual: string): number => lengthOf(attributes[name] ?? usual, 1);
  if (gradient.name === "radialGradient") return at("r", "50%") === 0;
  return at("x1", "0") === at("x2", "100%") && at("y1", "0") === at("y2", "0");
}
