// Floor 5. What each paint looks like: as declared where it is flat, as rendered where it is not.
import type { Hex } from "../colour/colour.ts";
import { measureDifference } from "../colour/difference.ts";
import { nameColours } from "../colour/name.ts";
import { hexOf } from "../colour/parse.ts";
import type { PaintLook } from "../measure/figures.ts";
import type { LabelMap } from "../regions/label.ts";
import { measureSeen } from "../regions/mean.ts";
import { type Raster, renderSvg } from "../regions/raster.ts";
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

function look(
  picture: Raster | undefined,
  map: LabelMap,
  label: number,
  declared: Hex | null,
): Omit<PaintLook, "name"> {
  const seen = picture === undefined ? null : measureSeen(picture, map, label);
  if (seen === null) return { hex: declared ?? "#000000", uneven: null };
  const isUneven = measureDifference(seen.lightest, seen.darkest) > unevenFrom;
  return {
    hex: hexOf(seen.mean),
    uneven: isUneven ? { lightest: hexOf(seen.lightest), darkest: hexOf(seen.darkest) } : null,
  };
}

/** Names are unique in a flag; the selected part of a paint is called after its paint while it looks the same. */
function nameLooks(seen: readonly Omit<PaintLook, "name">[], paints: readonly Paint[]): readonly PaintLook[] {
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
