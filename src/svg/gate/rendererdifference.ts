// Floor 2, part of step 2. Whether the measuring renderer and browsers draw a drawing alike: what elements it has, with which
// attributes (elementform.ts), how far its numbers reach (reach.ts), and what of its shapes and paints is drawn in two ways.

import { stretchOf } from "../matrix.ts";
import { findReference } from "../style/attributevalue.ts";
import { findTarget, type SvgElement, type ViewBox, walkElements } from "../tree.ts";
import * as allow from "./allowlist.ts";
import { lengthOf } from "./bounds.ts";
import { limit } from "./drawinglimit.ts";
import type { Reporter } from "./drawingreport.ts";
import { type Standing, walkDrawn } from "./drawnwalk.ts";
import { findForm } from "./elementform.ts";
import { findOutline, type Outline } from "./outline.ts";
import { findReach } from "./reach.ts";

type Ids = ReadonlyMap<string, SvgElement>;

const plain = "Remove it, and draw what it does as plain shapes.";

/**
 * Returns whether everything in the drawing is on the list of what programs draw alike.
 *
 * Problems: svg/unlike, svg/too-far.
 */
export function checkAlike(root: SvgElement, viewBox: ViewBox, ids: Ids, reporter: Reporter): boolean {
  for (const element of walkElements(root)) {
    const what = element === root ? undefined : findForm(element, ids);
    if (what !== undefined) return refuse("svg/unlike", element, what, plain, reporter);
  }
  const side = Math.max(viewBox.width, viewBox.height);
  const outlines = new Map<SvgElement, Outline>();
  for (const standing of walkDrawn(root, viewBox, ids)) {
    const { element } = standing;
    const reach = findReach(standing, side);
    if (reach !== undefined) return refuse("svg/too-far", element, reach.what, reach.hint, reporter);
    const outline = outlines.get(element) ?? findOutline(element, standing.side);
    outlines.set(element, outline);
    const found = unlike.find(({ isAt }) => isAt(standing, { outline, ids, side }));
    if (found !== undefined) return refuse("svg/unlike", element, found.what, found.hint ?? plain, reporter);
  }
  return true;
}

function refuse(rule: string, element: SvgElement, what: string, hint: string, reporter: Reporter): false {
  reporter.error(rule, element.place, `<${element.name}> has ${what}.`, hint);
  return false;
}

/** What a test knows beside where an element stands; `side` is the longer one of the flag. */
interface Known {
  readonly outline: Outline;
  readonly ids: Ids;
  readonly side: number;
}

/** What is drawn in two ways: words for a message, and where. */
interface Unlike {
  readonly what: string;
  readonly hint?: string;
  readonly isAt: (standing: Standing, known: Known) => boolean;
}

const region = ["x", "y", "width", "height"];
/** Whether a mask has a region, and one that is not in numbers. */
function isMaskIll({ name, attributes }: SvgElement): boolean {
  if (name !== "mask" || isRegionUsual(attributes)) return false;
  return (
    attributes["maskUnits"] !== "userSpaceOnUse" ||
    region.some((key) => attributes[key]?.endsWith("%") !== false)
  );
}

/** The box of what is masked and a tenth more on each side, which all fills lie in, whatever box a program takes. */
function isRegionUsual(attributes: SvgElement["attributes"]): boolean {
  return (
    (attributes["maskUnits"] ?? "objectBoundingBox") === "objectBoundingBox" &&
    region.every((key) => attributes[key] === undefined)
  );
}

function isMaskFitted({ element }: Standing, ids: Ids): boolean {
  const id = findReference(element.attributes["mask"] ?? "");
  const mask = typeof id === "string" ? ids.get(id) : undefined;
  return mask !== undefined && isRegionUsual(mask.attributes);
}

/** Whether something in it shows beyond its box: strokes and markers. */
function showsBeyond(standing: Standing, ids: Ids): boolean {
  const known = new Map<SvgElement, Set<boolean>>();
  const look = (element: SvgElement, around: boolean): boolean => {
    const { stroke } = element.attributes;
    const isStroked = stroke === undefined ? around : stroke !== "none";
    if (known.get(element)?.has(isStroked) === true) return false;
    known.set(element, new Set([...(known.get(element) ?? []), isStroked]));
    if (allow.shapes.has(element.name) && isStroked) return true;
    if (markers.some((name) => (element.attributes[name] ?? "none") !== "none")) return true;
    const used = element.name === "use" ? findTarget(element, ids) : undefined;
    return [...element.children, ...(used === undefined ? [] : [used])].some(
      (child) => child.type === "element" && !allow.unshown.has(child.name) && look(child, isStroked),
    );
  };
  const { inherited } = standing;
  return (
    markers.some((name) => (inherited[name] ?? "none") !== "none") ||
    look(standing.element, (inherited["stroke"] ?? "none") !== "none")
  );
}

const lengths =
  /^(?:x|y|width|height|r|rx|ry|cx|cy|x1|y1|x2|y2|fx|fy|stroke-width|stroke-dasharray|stroke-dashoffset)$/;
/** What of a gradient is a percentage unless it is given (SVG 2, sections 14.2.2 and 14.2.3). */
const vectors: Readonly<Record<string, readonly string[]>> = {
  linearGradient: ["x2"],
  radialGradient: ["cx", "cy", "r"],
};

const unlike: readonly Unlike[] = [
  {
    what: "a radius that is tiny, or tiny beside the other, which some programs do not draw",
    isAt: (_, { outline }) => outline.isFlat,
  },
  {
    what: "no length, or a circle or focus that leaves none, for which programs take another of its colours",
    isAt: (standing) => standing.element.name.endsWith("Gradient") && isPoint(standing),
  },
  {
    what: "square ends on hardly any length, which some programs do not draw",
    isAt: (standing, { outline }) =>
      standing.all["stroke-linecap"] === "square" &&
      (outline.part < strokeOf(standing) / 100 || (outline.hasLoneMove && strokeOf(standing) > 0)),
  },
  {
    what: "a stroke on a curve that ends where it begins, which programs turn in two ways",
    isAt: (standing, { outline, side }) =>
      outline.returns && strokeOf(standing) * stretchOf(standing.matrix) > side / 200,
  },
  {
    what: "dashes with ends of their own, or on a closed path, which programs begin and end in two ways",
    hint: "Leave out stroke-linecap, or draw each dash as a shape.",
    isAt: (standing) => dashesOf(standing).length > 0 && (hasEnds(standing) || isClosed(standing.element)),
  },
  {
    what: "ends on an arc that ends where it begins, which some programs draw as a dot",
    hint: "Draw the dot as a circle.",
    isAt: (standing, { outline }) => outline.isDot && strokeOf(standing) > 0 && hasEnds(standing),
  },
  {
    what: "dashes or gaps of no length that come closer than the stroke is wide, which programs draw in two ways",
    hint: "Give each a length, or draw dots as circles.",
    isAt: (standing) => {
      const dashes = dashesOf(standing);
      return dashes.includes(0) && dashes.some((each) => each > 0);
    },
  },
  {
    what: "a dashed stroke that is wider than the shape, or wide where there may be corners, which programs bend in two ways",
    hint: "Draw each dash as a shape.",
    isAt: (standing, { outline, side }) =>
      dashesOf(standing).length > 0 &&
      (strokeOf(standing) > breadthOf(standing) ||
        (/^(?:path|rect|poly.*)$/.test(standing.element.name) &&
          !(outline.mitres.length === 1 && isLevel(standing)) &&
          strokeOf(standing) * stretchOf(standing.matrix) > side / 10)),
  },
  {
    what: "a wide stroke on a part that is tiny, which programs turn in two ways",
    isAt: (standing, { outline, side }) =>
      strokeOf(standing) * stretchOf(standing.matrix) > side / 200 && isTiny(outline, standing, side),
  },
  {
    what: "a marker on a point or on a part that is tiny, or a stroke width in percent, for which programs draw it in two ways",
    isAt: (standing, { outline, ids, side }) =>
      markersOf(standing, ids).length > 0 &&
      (outline.stops ||
        isTiny(outline, standing, side) ||
        standing.all["stroke-width"]?.endsWith("%") === true),
  },
  {
    what: "a marker that turns with the line between its ends, or where a closed path begins and ends, which programs turn in two ways",
    hint: 'Write its angle: orient="30". Or draw it as shapes.',
    isAt: (standing, { ids }) =>
      markersOf(standing, ids, isClosed(standing.element) ? markers : ["marker-mid"]).some(
        ({ attributes }) => attributes["orient"]?.startsWith("auto") === true,
      ),
  },
  {
    what: "a mitre as long as stroke-miterlimit allows to a hair, which some programs cut off",
    hint: "Write another stroke-miterlimit.",
    isAt: (standing, { outline, side }) => {
      const { all, matrix } = standing;
      const most = Number(all["stroke-miterlimit"] ?? 4);
      return (
        (all["stroke-linejoin"] ?? "miter") === "miter" &&
        strokeOf(standing) * stretchOf(matrix) > side / 200 &&
        outline.mitres.some((each) => Math.abs(each - most) < most / 10_000)
      );
    },
  },
  {
    what: "no region in numbers, which programs take of boxes of different sizes",
    hint: 'Write maskUnits="userSpaceOnUse" on it, and x, y, width and height in plain numbers.',
    isAt: ({ element }) => isMaskIll(element),
  },
  {
    what: "strokes or markers in it and a mask without a region, which programs take of boxes of different sizes",
    hint: 'Write maskUnits="userSpaceOnUse" on the mask, and x, y, width and height in plain numbers.',
    isAt: (standing, { ids }) => isMaskFitted(standing, ids) && showsBeyond(standing, ids),
  },
  {
    what: "a percentage in it or left to it, of something else than the flag, which programs take of different lengths",
    hint: "Write plain numbers in place of percentages; of a gradient write x2, or cx, cy and r.",
    isAt: ({ element: { name }, all, fitted, isPartial }) =>
      isPartial &&
      fitted === undefined &&
      (Object.entries(all).some(([key, value]) => lengths.test(key) && value.includes("%")) ||
        (vectors[name] ?? []).some((key) => all[key] === undefined)),
  },
];

/** The width of a stroke that shows, in the units of the shape. */
function strokeOf({ all, side }: Standing): number {
  return (all["stroke"] ?? "none") === "none" ? 0 : lengthOf(all["stroke-width"] ?? "1", side);
}

/** Whether lines go on beyond where they end. */
function hasEnds({ all }: Standing): boolean {
  return (all["stroke-linecap"] ?? "butt") !== "butt";
}

/** The dashes and gaps of a stroke that shows, in the units of the shape. */
function dashesOf(standing: Standing): readonly number[] {
  const text = standing.all["stroke-dasharray"] ?? "none";
  if (text === "none" || strokeOf(standing) === 0) return [];
  return text.split(/[\s,]+/).map((dash) => lengthOf(dash, standing.side));
}

/** The shorter diameter of a round shape; without end for others. */
function breadthOf({ element: { name }, box }: Standing): number {
  const [x0, y0, x1, y1] = box ?? [0, 0, 0, 0];
  return name === "circle" || name === "ellipse" ? Math.min(x1 - x0, y1 - y0) : Infinity;
}

function isLevel({ box: [x0, y0, x1, y1] = [0, 0, 1, 1] }: Standing): boolean {
  return x0 === x1 || y0 === y1;
}

/** Whether a step is shorter than a part of a pixel in which programs reckon, about 1/20 at 1,440 pixels. */
function isTiny({ step }: Outline, { matrix }: Standing, side: number): boolean {
  return step * stretchOf(matrix) < side / 20_000;
}

const markers = ["marker-start", "marker-mid", "marker-end"];

function markersOf({ element, all }: Standing, ids: Ids, names = markers): readonly SvgElement[] {
  if (!/^(?:path|line|poly.*)$/.test(element.name)) return [];
  return names.flatMap((name) => {
    const id = findReference(all[name] ?? "");
    return (typeof id === "string" ? ids.get(id) : undefined) ?? [];
  });
}

function isClosed({ name, attributes }: SvgElement): boolean {
  return name === "polygon" || (name === "path" && /z/i.test(attributes["d"] ?? ""));
}

/** Whether the vector of a gradient comes to one point, its circle to none, or its focus to the border of the circle. */
function isPoint({ element, all, side, fitted }: Standing): boolean {
  const unit = fitted === undefined ? side : 1;
  const at = (key: string, usual: string): number => lengthOf(all[key] ?? usual, unit);
  if (element.name === "linearGradient")
    return Math.hypot(at("x2", "100%") - at("x1", "0"), at("y2", "0") - at("y1", "0")) < unit / 100_000;
  const [cx, cy, r] = [all["cx"] ?? "50%", all["cy"] ?? "50%", at("r", "50%")];
  const away = Math.hypot(at("fx", cx) - at("cx", cx), at("fy", cy) - at("cy", cy));
  return away > limit.focus * r || r < unit / 100_000;
}
