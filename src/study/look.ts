// Floor 5. What each paint looks like: as declared where it is flat, as rendered where it is not.
import type { Hex } from "../colour/colour.ts";
import { measureDifference } from "../colour/difference.ts";
import { nameColours } from "../colour/name.ts";
import { hexOf } from "../colour/parse.ts";
import type { Ends, PaintLook } from "../measure/figures.ts";
import { measureBeside } from "../regions/beside.ts";
import type { LabelMap } from "../regions/label.ts";
import { measureSeen, type SeenPaint } from "../regions/mean.ts";
import { type Raster, renderSvg } from "../regions/raster.ts";
import type { Line } from "../regions/trace.ts";
import type { Paint } from "../svg/paint.ts";
import type { Drawing } from "../svg/tree.ts";
import { writeSized } from "../svg/write.ts";

/** ΔE00 between the ends of a paint from which it is flagged uneven (our own judgement). */
const unevenFrom = 5;

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
): readonly PaintLook[] {
  const seen = paints.map((paint, index) => {
    const hex = declared[index] ?? null;
    return paint.flat && hex !== null ? { hex, uneven: null } : look(picture, map, labels[index] ?? 0, hex);
  });
  return nameLooks(seen, paints);
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
  const isUneven = measureDifference(lightest, darkest) > unevenFrom;
  return {
    hex: hexOf(mean),
    uneven: isUneven ? { lightest: hexOf(lightest), darkest: hexOf(darkest) } : null,
  };
}

/** Names are unique in a flag; the selected part of a paint is called after its paint while it looks the same. */
function nameLooks(seen: readonly Ends[], paints: readonly Paint[]): readonly PaintLook[] {
  const hexes = [...new Set(seen.map((paint) => paint.hex))];
  const names = new Map(nameColours(hexes).map((name, index) => [hexes[index], name]));
  return seen.map((paint, index) => {
    const name = names.get(paint.hex) ?? paint.hex;
    const key = paints[index]?.key ?? "";
    const hasTwin =
      paints[index]?.selected === true &&
      seen.some((other, at) => other.hex === paint.hex && `${paints[at]?.key} s` === key);
    return { ...paint, name: hasTwin ? `${name}, selected part` : name };
  });
}
