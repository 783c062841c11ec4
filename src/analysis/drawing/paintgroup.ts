// Floor 6. Which paints are one in the distance view: near-equal shades, and a paint with its selected part.

import type { LinearRgb } from "../../colour/colour.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { measureDifference } from "../../colour/difference.ts";
import type { PaintLook } from "../../measure/edgefigure.ts";
import { isSameColour } from "../../measure/outcome.ts";
import type { Areas } from "../../regions/area.ts";
import type { Paint } from "../../svg/paint.ts";
import { type List, listed, type PaintIndex } from "../../svg/paintnumber.ts";
import type { Viewing } from "./viewing.ts";

/** For each paint, the paint it is one with. */
export type Groups = List<PaintIndex, PaintIndex>;

/**
 * Returns, for each paint, the paint it is one with: itself, its whole (for a selected part), or, but for the
 * full drawing, the nearest larger paint under ΔE00 5 that is not joined to another itself; there a plain paint that looks
 * the same to the last digit.
 */
export function groupPaints(
  paints: List<PaintIndex, Paint>,
  areas: Areas,
  looks: List<PaintIndex, PaintLook>,
  { distance }: Viewing,
): Groups {
  return distance === 0
    ? paints.map((paint, index) => findWhole(paints, paint) ?? findTwin(paints, looks, index) ?? index)
    : joinNearEqual(paints, areas, looks);
}

function joinNearEqual(
  paints: List<PaintIndex, Paint>,
  areas: Areas,
  looks: List<PaintIndex, PaintLook>,
): Groups {
  const areaOf = (paint: PaintIndex): number => areas.pixels[paint] ?? 0;
  const bySize = [...paints.keys()].sort((a, b) => areaOf(b) - areaOf(a) || a - b);
  const heads = joinNear(
    bySize.map((paint) => (areaOf(paint) === 0 ? undefined : linearOf(looks[paint]?.hex ?? "#000000"))),
  );
  const groups = [...paints.keys()];
  for (const [at, paint] of bySize.entries()) groups[paint] = bySize[heads[at] ?? at] ?? paint;
  return listed(groups);
}

/**
 * Returns, for each of `colours`, largest first, the place of the nearest before it under ΔE00 5 that is not joined to another
 * itself; its own place where there is none, and for one that is undefined. Only the first `most` that others could be joined
 * to are compared.
 */
export function joinNear(
  colours: readonly (LinearRgb | undefined)[],
  most = colours.length,
): readonly number[] {
  const heads: { readonly at: number; readonly colour: LinearRgb }[] = [];
  return colours.map((colour, at) => {
    if (colour === undefined) return at;
    const [near] = heads
      .map((head) => ({ ...head, away: measureDifference(colour, head.colour) }))
      .filter(({ away }) => isSameColour(away))
      .sort((a, b) => a.away - b.away);
    if (near !== undefined) return near.at;
    if (heads.length < most) heads.push({ at, colour });
    return at;
  });
}

/** The plain paint that one looks like that is none: a pattern that paints nothing looks as what it lies on. */
function findTwin(
  paints: List<PaintIndex, Paint>,
  looks: List<PaintIndex, PaintLook>,
  index: PaintIndex,
): PaintIndex | undefined {
  if (paints[index]?.flat !== false) return undefined;
  const at = paints.findIndex(
    ({ flat, selected }, other) => flat && !selected && looks[other]?.hex === looks[index]?.hex,
  );
  return at < 0 ? undefined : at;
}

/** The same groups, but paints that the change treats differently stay apart. */
export function splitGroups(paints: List<PaintIndex, Paint>, groups: Groups, { change }: Viewing): Groups {
  if (change === undefined) return groups;
  const isChanged = (paint: Paint | undefined): boolean =>
    paint?.declared === change.replace && (change.only === undefined || paint.selected);
  const headOf = new Map<string, PaintIndex>();
  return paints.map((paint, index) => {
    const group = groups[index] ?? index;
    if (isChanged(paint) === isChanged(paints[group])) return group;
    const key = `${group} ${isChanged(paint)}`;
    const head = headOf.get(key) ?? index;
    headOf.set(key, head);
    return head;
  });
}

/** Returns the paint that `part` is the selected part of, or undefined where it is no part. */
export function findWhole(paints: List<PaintIndex, Paint>, part: Paint): PaintIndex | undefined {
  if (!part.selected) return undefined;
  const at = paints.findIndex((paint) => !paint.selected && `${paint.key} s` === part.key);
  return at < 0 ? undefined : at;
}
