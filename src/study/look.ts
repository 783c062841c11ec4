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

/**
 * Returns what each of `paints` looks like in `drawing`, whose geometry is that of `map`; the label of paint i in the
 * map is `labels[i]` (default i + 1). `declared` are the flat colours after a change; default those of the paints.
 */
export async function lookAt(
  drawing: Drawing,
  map: LabelMap,
  paints: readonly Paint[],
  labels: readonly number[] = paints.map((_, index) => index + 1),
  declared: readonly (Hex | null)[] = paints.map((paint) => paint.declared),
): Promise<readonly PaintLook[]> {
  const needsPicture = paints.some((paint) => !paint.flat);
  const picture = needsPicture ? await renderSvg(writeSized(drawing, map.width, map.height)) : undefined;
  const seen = paints.map((paint, index) => {
    const hex = declared[index] ?? null;
    return paint.flat && hex !== null ? { hex, uneven: null } : look(picture, map, labels[index] ?? 0, hex);
  });
  const pixels = paints.map((_, index) => countPixels(map, labels[index] ?? 0));
  return nameLooks(seen, paints, pixels);
}

function countPixels({ labels }: LabelMap, label: number): number {
  return labels.reduce((sum, at) => sum + (at === label ? 1 : 0), 0);
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
function nameLooks(
  seen: readonly Omit<PaintLook, "name">[],
  paints: readonly Paint[],
  pixels: readonly number[],
): readonly PaintLook[] {
  const names = nameColours(
    seen.map(({ hex }) => hex),
    pixels,
  );
  return seen.map((paint, index) => {
    const name = names[index] ?? paint.hex;
    const key = paints[index]?.key ?? "";
    const hasTwin =
      paints[index]?.selected === true &&
      seen.some((other, at) => other.hex === paint.hex && `${paints[at]?.key} s` === key);
    return { ...paint, name: hasTwin ? `${name}, selected part` : name };
  });
}
