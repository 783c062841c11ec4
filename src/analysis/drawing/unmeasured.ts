// Floor 6, a check on the label map: what is seen must be what is measured.
import type { Hex, LinearRgb } from "../../colour/colour.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { measureDifference } from "../../colour/difference.ts";
import { linearOfCode } from "../../colour/srgb.ts";
import { type PaintLook, seenAlong } from "../../measure/edgefigure.ts";
import type { EdgeTable, TableEdge } from "../../measure/edgetable.ts";
import { colourLimits } from "../../measure/limit.ts";
import { formatShare } from "../../measure/percenttext.ts";
import { type Problem, report } from "../../problem/problem.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { countLost, type IsOther, nothing } from "../../regions/lostcolour.ts";
import type { Raster } from "../../regions/raster.ts";
import { findRuns, type Runs } from "../../regions/runs.ts";
import { countThin } from "../../regions/thinpart.ts";
import type { Paint } from "../../svg/paint.ts";
import { type List, type PaintIndex, paintOf, type Rank } from "../../svg/paintnumber.ts";
import { isJoined, mostColours } from "./smallcolour.ts";

/**
 * What the flag shows and is not measured as; `share` of the flag, 0 to 1: most of it a colour, `null` for none, or in a paint
 * that is measured as one colour, by its key. Or parts so thin that they show as a mixture. Or edges, as a share of their
 * length, that would have one contrast and show several.
 */
export type Lost =
  | { readonly hex: Hex | null; readonly share: number }
  | { readonly paint: string; readonly share: number }
  | { readonly thin: number }
  | { readonly edges: number };

/**
 * ΔE00 from which what is seen is not what is measured: as far from it as shapes may be that are joined to a plain colour. Two
 * colours of one gradient are then confusable at most.
 */
const unlikeFrom = colourLimits.same;

/** Share of the flag on which that may be so, for shading and roundings (the most of 798 real drawings is 0.71 %). */
const mostUnlike = 0.01;

/**
 * Parts up to this part of the height are thin: screens mix them with what is beside them, each as its size has it, and no eye
 * parts them from 40 heights away. Whatever is thicker has an inside, which is looked at.
 */
const thinPart = 1 / 180;

/** Share of the flag up to which thin parts are those of an emblem (the most of those drawings is 8.5 %). */
const mostThin = 0.12;

/**
 * ΔE00 over which the colours of a paint along an edge may not spread, and the share of the length of all edges on which they
 * may (the most of those drawings is 18 %, and 32 % in full): such an edge counts with the colour that is nearest to the other side.
 */
const spreadAlong = colourLimits.confusable;
const mostSpread = 1 / 3;

/**
 * Returns what the true rendering shows and is not measured as. `hexes` is what each of `paints` is measured as, `runs` those
 * of the map.
 */
export function findLost(
  picture: Raster,
  map: LabelMap,
  paints: List<PaintIndex, Paint>,
  hexes: List<PaintIndex, Hex>,
  flagPixels: number,
  runs: Runs = findRuns(map),
): readonly Lost[] {
  const codes = hexes.map((hex) => Number.parseInt(hex.slice(1), 16));
  const lost = findUnlike(countLost(picture, map, codes, createIsOther(hexes), runs), paints, flagPixels);
  const thin = countThin(map, Math.round(map.height * thinPart), runs) / Math.max(1, flagPixels);
  return thin > mostThin ? [...lost, { thin }] : lost;
}

/** Returns the edges that have no one contrast, where they are too many. `looks` are those of the table, along its edges. */
export function findSpread(
  { edges }: Pick<EdgeTable, "edges">,
  looks: List<Rank, PaintLook>,
): readonly Lost[] {
  const isSpread = ({ uneven }: PaintLook): boolean =>
    uneven !== null && measureDifference(linearOf(uneven.lightest), linearOf(uneven.darkest)) > spreadAlong;
  const lengthOf = (some: readonly TableEdge[]): number => some.reduce((sum, { length }) => sum + length, 0);
  const spread = lengthOf(edges.filter((edge) => seenAlong(looks, edge).some(isSpread)));
  const share = spread / Math.max(Number.MIN_VALUE, lengthOf(edges));
  return share > mostSpread ? [{ edges: share }] : [];
}

/** The paint, or the colour, that has most of what is unlike, where that is too much of the flag. */
function findUnlike(
  counts: ReturnType<typeof countLost>,
  paints: List<PaintIndex, Paint>,
  flagPixels: number,
): readonly Lost[] {
  const byLabel = [...counts].map(([label, colours]) => ({ label, colours, pixels: sumOf(colours) }));
  const [most] = byLabel.sort((a, b) => b.pixels - a.pixels);
  const pixels = byLabel.reduce((sum, each) => sum + each.pixels, 0);
  const share = pixels / Math.max(1, flagPixels, pixels);
  if (most === undefined || share <= mostUnlike) return [];
  const paint = paints[paintOf(most.label)];
  if (paint?.flat === false) return [{ paint: paint.key, share }];
  const [[code] = [nothing]] = [...most.colours].sort((a, b) => b[1] - a[1]);
  return [{ hex: code === nothing ? null : `#${code.toString(16).padStart(6, "0")}`, share }];
}

const sumOf = (counts: ReadonlyMap<number, number>): number =>
  [...counts.values()].reduce((sum, count) => sum + count, 0);

function createIsOther(hexes: List<PaintIndex, Hex>): IsOther {
  const measured = hexes.map(linearOf);
  const known = hexes.map(() => new Map<number, boolean>());
  return (seen, paint) => {
    const found = known[paint]?.get(seen);
    if (found !== undefined) return found;
    const isOther = measureDifference(linearOfCode(seen), measured[paint] as LinearRgb) >= unlikeFrom;
    known[paint]?.set(seen, isOther);
    return isOther;
  };
}

/**
 * Returns the error `study/colour-lost`. Which shape it is cannot be told: the file is its place. `isAfter`: it shows after
 * the change alone.
 */
export function tellLost(file: string, lost: Lost, isAfter = false): Problem {
  return report("study/colour-lost", file, isAfter ? afterChange(describeLost(lost)) : describeLost(lost));
}

function describeLost(lost: Lost): { readonly reason: string; readonly hint: string } {
  if ("thin" in lost)
    return {
      reason: `${formatShare(lost.thin)} of the flag is lines or dots thinner than a ${1 / thinPart}th of its height, which look as a mixture of their colours and would be measured as each.`,
      hint: "Draw each field of them as one shape, in the colour that it looks.",
    };
  if ("edges" in lost)
    return {
      reason: `${formatShare(lost.edges)} of the length of all edges lies beside a gradient, a pattern or a translucent shape that changes along it, and would be measured with one contrast.`,
      hint: "Draw each colour that shows there as a shape of its own, with a plain fill.",
    };
  const share = `${formatShare(lost.share)} of the flag looks otherwise than it would be measured: most of that`;
  if ("paint" in lost)
    return {
      reason: `${share} is in ${describePaint(lost.paint)}, which would be measured as one colour.`,
      hint: "Draw each colour that shows there as a shape of its own, with a plain fill.",
    };
  if (lost.hex === null)
    return {
      reason: `${share} shows nothing.`,
      hint: "Delete what cannot be seen, or give it a plain fill.",
    };
  return {
    reason: `${share} looks ${lost.hex}.`,
    hint: `Draw what looks so as a plain shape with fill="${lost.hex}", at full opacity and without a transform.`,
  };
}

const afterChange = ({ reason, hint }: ReturnType<typeof describeLost>) => ({
  reason: `After the change, ${reason}`,
  hint,
});

function describePaint(key: string): string {
  if (isJoined({ key })) return `the colours beyond the ${mostColours} that show most`;
  return key.startsWith("url(")
    ? `the gradient or pattern ${key.split(" ")[0]}`
    : `the translucent ${key.split("/")[0]}`;
}
