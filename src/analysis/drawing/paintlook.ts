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
  paints: readonly Paint[],
): Promise<Raster | undefined> {
  return paints.every((paint) => paint.flat) ? undefined : renderTrue(drawing, map);
}

/**
 * Returns what each of `paints` looks like in `picture`, the true rendering of a drawing whose geometry is that of `map`;
 * needed only where a paint is not flat. The label of paint i in the map is `labels[i]` (default i + 1). `declared` are
 * the flat colours after a change; default those of the paints.
 */
export function lookAt(
  picture: Raster | undefined,
  map: LabelMap,
  paints: readonly Paint[],
  labels: readonly number[] = paints.map((_, index) => index + 1),
  declared: readonly (Hex | null)[] = paints.map((paint) => paint.declared),
): readonly Ends[] {
  return paints.map((paint, index) => {
    const hex = declared[index] ?? null;
    return paint.flat && hex !== null ? { hex, uneven: null } : look(picture, map, labels[index] ?? 0, hex);
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

/**
 * Returns the looks with what uneven ones are along each of their lines. `labels[i]` is the label of look i, in the map
 * and in the lines; a paint that is met is named by its index in the same list.
 */
export function lookAlong(
  looks: readonly PaintLook[],
  labels: readonly number[],
  { picture, map, lines, reach }: Sight,
): readonly PaintLook[] {
  if (picture === undefined) return looks;
  const indexOf = new Map(labels.map((label, index) => [label, index]));
  return looks.map((whole, index) => {
    if (whole.uneven === null) return whole;
    const seen = measureBeside(picture, map, lines, labels[index] ?? 0, reach);
    const beside = new Map(
      [...seen].flatMap(([label, paint]) => {
        const other = indexOf.get(label);
        return other === undefined ? [] : [[other, endsOf(paint)] as const];
      }),
    );
    return { ...whole, beside };
  });
}

/** Returns the looks in another order: `order[i]` is the index of look i now. */
export function orderLooks(looks: readonly PaintLook[], order: readonly number[]): readonly PaintLook[] {
  const rankOf = new Map(order.map((index, rank) => [index, rank]));
  return order.map((index) => {
    const look = looks[index] as PaintLook;
    if (look.beside === undefined) return look;
    const beside = [...look.beside].map(([other, ends]) => [rankOf.get(other) ?? -1, ends] as const);
    return { ...look, beside: new Map(beside) };
  });
}

function look(picture: Raster | undefined, map: LabelMap, label: number, declared: Hex | null): Ends {
  const seen = picture === undefined ? null : measureSeen(picture, map, label);
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
  seen: readonly Ends[],
  paints: readonly Paint[],
  pixels: readonly number[],
  { names: given, change }: Pick<Viewing, "names" | "change">,
): readonly PaintLook[] {
  const hexes = seen.map(({ hex }) => hex);
  const names = nameColours(hexes, pixels, given);
  return seen.map((paint, index) => {
    const own = paints[index];
    const name = own !== undefined && isJoined(own) ? otherName : (names[index] ?? paint.hex);
    const called = change?.part;
    const hasTwin = paints.some(({ key }, at) => hexes[at] === paint.hex && `${key} s` === own?.key);
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
  before: readonly PaintLook[],
  after: readonly Ends[],
  { replace, with: next, called }: { readonly replace: Hex; readonly with: Hex; readonly called?: string },
): readonly PaintLook[] {
  const flag: NamedColour[] = before.map(({ hex, name, part }) => ({ hex, name: part?.of ?? name }));
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
