// Floor 6, a check on the label map: what is seen must be what is measured.
import type { Hex } from "../../colour/colour.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { measureDifference } from "../../colour/difference.ts";
import { colourLimits } from "../../measure/limit.ts";
import { formatShare } from "../../measure/percenttext.ts";
import { type Problem, report } from "../../problem/problem.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { countLost, type IsOther, measureSteps, nothing } from "../../regions/lostcolour.ts";
import type { Raster } from "../../regions/raster.ts";
import { countThin } from "../../regions/thinpart.ts";
import type { PaintedShapes } from "../../svg/paint.ts";
import { labelOf, paintOf, transparent } from "../../svg/paintnumber.ts";
import type { EmptyPaint } from "./emptypaint.ts";
import { isJoined, mostColours } from "./smallcolour.ts";

/**
 * A colour, or `null` for none, that shows where the label map has another; `share` of the flag, 0 to 1. Or a paint inside
 * which a border shows that the map has not; `length` in flag heights. Or a gradient or pattern that is mostly not there. Or
 * parts so thin that they show as a mixture; or more colours than are measured.
 */
export type Lost =
  | { readonly hex: Hex | null; readonly share: number }
  | { readonly paint: string; readonly length: number; readonly others: number }
  | { readonly thin: number }
  | { readonly joined: number }
  | EmptyPaint;

/** Share of the flag up to which such pixels are roundings along lines (the most of 798 real drawings is 0.13 %). */
const mostLost = 0.0015;

/** Length up to which borders inside paints are passed over, in flag heights (the most of those drawings is 0.105, of all paints together). */
const longestStep = 0.125;

/**
 * Where something is faint, which is told, it may shade a paint: up to ΔE00 10, and on a part of the flag up to 20; from there on
 * two colours differ by hue alone (the most of those drawings, over 10, is 0.4 %).
 */
const shades = [
  { from: 20, most: mostLost },
  { from: 10, most: 0.02 },
];

/**
 * Over which part of the height a colour has to change, and by which ΔE00, to be a border and no shading: at once by what
 * tells two paints apart; by twice that over a 90th, which is not told apart from a border from 40 heights away; and
 * over up to half of it, where it hardly changes half as far before and after. The shading of real drawings is slower, and goes on.
 */
const hardBorders = [
  { part: 1 / 360, from: colourLimits.same },
  { part: 1 / 90, from: 2 * colourLimits.same },
];
const softParts = [48, 32, 24, 16, 12, 8, 6, 4, 3, 2];

/** Share of the flag over which colours that are measured as one, since there are too many, would be a colour of their own. */
const mostJoined = 0.05;

/**
 * Parts up to this part of the height are thin: screens mix them with what is beside them, each as its size has it, and no eye
 * parts them from 40 heights away. Whatever is thicker has an inside, which is looked at.
 */
const thinPart = 1 / 180;

/** Share of the flag up to which thin parts are those of an emblem (the most of those drawings is 8.5 %). */
const mostThin = 0.12;

/** Returns what the true rendering shows and the map has not. */
export function findLost(
  picture: Raster,
  map: LabelMap,
  { paints, faint }: Pick<PaintedShapes, "paints" | "faint">,
  flagPixels: number,
): readonly Lost[] {
  const colours = paints.map(({ flat, declared }) =>
    flat && declared !== null ? Number.parseInt(declared.slice(1), 16) : undefined,
  );
  const limits = faint.length > 0 ? shades : [{ from: colourLimits.same, most: mostLost }];
  const lost: Lost[] = [];
  for (const { from, most } of limits)
    if (lost.length === 0)
      lost.push(...findColour(countLost(picture, map, colours, createIsOther(from)), flagPixels, most));
  const thin = countThin(map, Math.round(map.height * thinPart)) / Math.max(1, flagPixels);
  if (thin > mostThin) lost.push({ thin });
  const joined = countJoined(map, paints) / Math.max(1, flagPixels);
  if (joined > mostJoined) lost.push({ joined });
  return [...lost, ...findSteps(picture, map, paints)];
}

function countJoined({ labels }: LabelMap, paints: PaintedShapes["paints"]): number {
  const joined = labelOf(paints.findIndex(isJoined));
  return joined === transparent ? 0 : labels.reduce((sum, label) => sum + (label === joined ? 1 : 0), 0);
}

/** The colour that most of them show, where they are more than `limit` of the flag. */
function findColour(counts: ReadonlyMap<number, number>, flagPixels: number, limit: number): readonly Lost[] {
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  const pixels = [...counts.values()].reduce((sum, count) => sum + count, 0);
  const share = pixels / Math.max(1, flagPixels, pixels);
  if (most === undefined || share <= limit) return [];
  return [{ hex: most[0] === nothing ? null : hexOfCode(most[0]), share }];
}

/** Returns the paint of more than one colour that changes most at borders, where all of them together do so too far. */
export function findSteps(picture: Raster, map: LabelMap, paints: PaintedShapes["paints"]): readonly Lost[] {
  const uneven = paints.flatMap((paint, at) => (paint.flat || isJoined(paint) ? [] : [labelOf(at)]));
  const reachOf = (part: number): number => Math.max(2, Math.round(map.height * part));
  const isOther = createIsOther(colourLimits.same);
  const isSame = not(createIsOther(colourLimits.same / 4));
  const kinds = [
    ...hardBorders.map(({ part, from }) => ({ reach: reachOf(part), isOther: createIsOther(from) })),
    ...softParts.map((parts) => ({ reach: reachOf(1 / parts), isOther, isSame })),
  ];
  const steps = [...measureSteps(picture, map, new Set(uneven), kinds)].sort((a, b) => b[1] - a[1]);
  const length = steps.reduce((sum, [, pixels]) => sum + pixels, 0) / map.height;
  const [longest] = steps;
  if (longest === undefined || length <= longestStep) return [];
  return [{ paint: paints[paintOf(longest[0])]?.key ?? "", length, others: steps.length - 1 }];
}

const not =
  (isOther: IsOther): IsOther =>
  (one, other) =>
    !isOther(one, other);

const hexOfCode = (code: number): Hex => `#${code.toString(16).padStart(6, "0")}`;

function createIsOther(from: number): IsOther {
  const known = new Map<number, boolean>();
  return (one, other) => {
    const key = one * 2 ** 24 + other;
    let found = known.get(key);
    if (found === undefined) {
      found = measureDifference(linearOf(hexOfCode(one)), linearOf(hexOfCode(other))) >= from;
      known.set(key, found);
    }
    return found;
  };
}

/**
 * Returns the error `study/colour-lost` or `study/edge-lost`. Which shape it is cannot be told: the file is its place.
 * `isAfter`: it shows after the change alone.
 */
export function tellLost(file: string, lost: Lost, isAfter = false): Problem {
  if ("paint" in lost) {
    const others =
      lost.others === 0 ? "" : ` and ${lost.others === 1 ? "one other" : `${lost.others} others`} like it`;
    return report("study/edge-lost", file, {
      reason: `${isAfter ? "After the change, inside" : "Inside"} ${describePaint(lost.paint)}${others} colours meet along ${lost.length.toFixed(1)} flag heights, which would not be measured.`,
      hint: "Draw each of these colours as a shape of its own, with a plain fill.",
    });
  }
  if ("server" in lost)
    return report("study/colour-lost", file, {
      reason: `The gradient or pattern url(#${lost.server}) does not show on ${formatShare(lost.share)} of what would be measured as it.`,
      hint: `Delete what has fill="url(#${lost.server})", or give it a plain fill.`,
    });
  if ("thin" in lost)
    return report("study/colour-lost", file, {
      reason: `${formatShare(lost.thin)} of the flag is lines or dots thinner than a ${1 / thinPart}th of its height, which look as a mixture of their colours and would be measured as each.`,
      hint: "Draw each field of them as one shape, in the colour that it looks.",
    });
  if ("joined" in lost)
    return report("study/colour-lost", file, {
      reason: `${formatShare(lost.joined)} of the flag is colours beyond the ${mostColours} that show most, which would be measured as one.`,
      hint: "Give near shades one colour, and draw what is of many colours in few.",
    });
  const { hex, share } = lost;
  return report("study/colour-lost", file, {
    reason:
      hex === null
        ? `${formatShare(share)} of the flag shows nothing and would be measured as a colour.`
        : `${formatShare(share)} of the flag looks ${hex} and would be measured as another colour.`,
    hint:
      hex === null
        ? "Delete what cannot be seen, or give it a plain fill."
        : `Draw what looks so as a plain shape with fill="${hex}", at full opacity and without a transform.`,
  });
}

function describePaint(key: string): string {
  return key.startsWith("url(")
    ? `the gradient or pattern ${key.split(" ")[0]}`
    : `the translucent ${key.split("/")[0]}`;
}
