// Floor 6. What each paint looks like: as declared where it is flat, as rendered where it is not; and what it is called.
import type { Hex } from "../../colour/colour.ts";
import { type NamedColour, nameColours, nameReplacement } from "../../colour/colourname.ts";
import { hexOf } from "../../colour/colourtext.ts";
import { measureDifference } from "../../colour/difference.ts";
import type { Ends, PaintLook } from "../../measure/edgefigure.ts";
import { colourLimits } from "../../measure/limit.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { measureBeside } from "../../regions/linecolour.ts";
import { type Raster, renderSvg } from "../../regions/raster.ts";
import { measureSeen, type SeenPaint } from "../../regions/seencolour.ts";
import type { Line } from "../../regions/traceline.ts";
import type { Paint } from "../../svg/paint.ts";
import {
  type Label,
  type List,
  listed,
  type PaintIndex,
  type Rank,
  transparent,
} from "../../svg/paintnumber.ts";
import type { Drawing } from "../../svg/tree.ts";
import { writeSized } from "../../svg/writesvg.ts";
import { isJoined, otherName } from "./smallcolour.ts";
import type { Viewing } from "./viewing.ts";

/** Renders `drawing` as it is, in the size of `map`. */
export function renderTrue(drawing: Drawing, { width, height }: LabelMap): Promise<Raster> {
  return renderSvg(writeSized(drawing, width, height));
}

/** The same where some of `paints` has to be looked at, else undefined. */
export async function renderNeeded(
  drawing: Drawing,
  map: LabelMap,
  paints: List<Rank, Paint> | List<PaintIndex, Paint>,
): Promise<Raster | undefined> {
  return paints.every((paint) => paint.flat) ? undefined : renderTrue(drawing, map);
}

/**
 * Returns what each of `paints` looks like in `picture`, the true rendering of a drawing whose geometry is that of `map`;
 * needed only where a paint is not flat. `labels` are theirs in the map. `declared` are
 * the flat colours after a change; default those of the paints.
 */
export function lookAt<N extends number>(
  picture: Raster | undefined,
  map: LabelMap,
  paints: List<N, Paint>,
  labels: List<N, Label>,
  declared: List<N, Hex | null> = paints.map((paint) => paint.declared),
): List<N, Ends> {
  return paints.map((paint, at) => {
    const hex = declared[at] ?? null;
    return paint.flat && hex !== null ? { hex, uneven: null } : look(picture, map, labels[at], hex);
  });
}

/** How far from a line its paints may lie, in pixels, where what is thinner than `thinnest` between them vanished. */
export function reachOf(thinnest: number): number {
  return thinnest + 3;
}

/** Where paints that are not flat are looked at along their lines. `reach` in pixels, as for measureBeside. */
export interface Sight {
  readonly picture: Raster | undefined;
  readonly map: LabelMap;
  readonly lines: readonly Line[];
  readonly reach: number;
}

/** Returns the looks with what uneven ones are along each of their lines. `labels` are theirs, in the map and in the lines. */
export function lookAlong(
  looks: List<Rank, PaintLook>,
  labels: List<Rank, Label>,
  { picture, map, lines, reach }: Sight,
): List<Rank, PaintLook> {
  if (picture === undefined) return looks;
  const rankOf = new Map(labels.map((label, rank) => [label, rank] as const));
  return looks.map((whole, rank) => {
    if (whole.uneven === null) return whole;
    const seen = measureBeside(picture, map, lines, labels[rank] ?? transparent, reach);
    const beside = new Map(
      [...seen].flatMap(([label, paint]) => {
        const other = rankOf.get(label);
        return other === undefined ? [] : [[other, endsOf(paint)] as const];
      }),
    );
    return { ...whole, beside };
  });
}

function look(
  picture: Raster | undefined,
  map: LabelMap,
  label: Label | undefined,
  declared: Hex | null,
): Ends {
  const seen = picture === undefined || label === undefined ? null : measureSeen(picture, map, label);
  return seen === null ? { hex: declared ?? "#000000", uneven: null } : endsOf(seen);
}

function endsOf({ mean, lightest, darkest }: SeenPaint): Ends {
  const isUneven = measureDifference(lightest, darkest) > colourLimits.same;
  return {
    hex: hexOf(mean),
    uneven: isUneven ? { lightest: hexOf(lightest), darkest: hexOf(darkest) } : null,
  };
}

/**
 * Names the paints of a flag as it is: `names` of the viewing are settled, and of those that would share a name the one
 * with the most `pixels` has it plain. One colour has one name, but the part that a limited change selects has its own.
 */
export function nameLooks(
  seen: List<PaintIndex, Ends>,
  paints: List<PaintIndex, Paint>,
  pixels: List<PaintIndex, number>,
  { names: given, change }: Pick<Viewing, "names" | "change">,
): List<PaintIndex, PaintLook> {
  const hexes = seen.map(({ hex }) => hex);
  const names = listed<PaintIndex, string>(nameColours([...hexes], [...pixels], given));
  return seen.map((paint, at) => {
    const own = paints[at];
    const name = own !== undefined && isJoined(own) ? otherName : (names[at] ?? paint.hex);
    const called = change?.part;
    const hasTwin = paints.some(({ key }, other) => hexes[other] === paint.hex && `${key} s` === own?.key);
    if (own?.selected !== true || (!hasTwin && called === undefined)) return { ...paint, name };
    return called === undefined
      ? { ...paint, name: `${name}, selected part`, part: { of: name } }
      : { ...paint, name: called, part: { of: name, called } };
  });
}

/**
 * Names the paints of a flag after a change. What the change leaves alone keeps its name; `called` is what the author
 * calls the colour that takes the place of `replace`, if they have a word for it.
 */
export function nameChanged(
  before: List<Rank, PaintLook>,
  after: List<Rank, Ends>,
  { replace, with: next, called }: { readonly replace: Hex; readonly with: Hex; readonly called?: string },
): List<Rank, PaintLook> {
  const flag: NamedColour[] = [...before].map(({ hex, name, part }) => ({ hex, name: part?.of ?? name }));
  const nameNew = (hex: Hex, today: NamedColour, word?: string): string => {
    const name = nameReplacement(hex, today, flag, word);
    flag.push({ hex, name });
    return name;
  };
  const replaced = flag.find(({ hex }) => hex === replace);
  if (replaced !== undefined && after.some(({ hex }) => hex === next)) nameNew(next, replaced, called);
  return before.map((was, index) => {
    const { hex, uneven } = after[index] ?? was;
    const { beside: _, ...whole } = was;
    return hex === was.hex ? { ...whole, uneven } : { hex, uneven, name: nameNew(hex, flag[index] ?? was) };
  });
}
