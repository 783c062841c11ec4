// Floor 5. What each paint looks like: as declared where it is flat, as rendered where it is not; and what it is called.
import type { Hex } from "../colour/colour.ts";
import { measureDifference } from "../colour/difference.ts";
import { type NamedColour, nameColours, nameReplacement } from "../colour/name.ts";
import { hexOf } from "../colour/parse.ts";
import type { PaintLook } from "../measure/figures.ts";
import type { LabelMap } from "../regions/label.ts";
import { measureSeen } from "../regions/mean.ts";
import { type Raster, renderSvg } from "../regions/raster.ts";
import type { Paint } from "../svg/paint.ts";
import type { Drawing } from "../svg/tree.ts";
import { writeSized } from "../svg/write.ts";
import type { Viewing } from "./viewing.ts";

/** A paint that is looked at and not named yet. */
export type Look = Pick<PaintLook, "hex" | "uneven">;

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
): Promise<readonly Look[]> {
  const needsPicture = paints.some((paint) => !paint.flat);
  const picture = needsPicture ? await renderSvg(writeSized(drawing, map.width, map.height)) : undefined;
  return paints.map((paint, index) => {
    const hex = declared[index] ?? null;
    return paint.flat && hex !== null ? { hex, uneven: null } : look(picture, map, labels[index] ?? 0, hex);
  });
}

function look(picture: Raster | undefined, map: LabelMap, label: number, declared: Hex | null): Look {
  const seen = picture === undefined ? null : measureSeen(picture, map, label);
  if (seen === null) return { hex: declared ?? "#000000", uneven: null };
  const isUneven = measureDifference(seen.lightest, seen.darkest) > unevenFrom;
  return {
    hex: hexOf(seen.mean),
    uneven: isUneven ? { lightest: hexOf(seen.lightest), darkest: hexOf(seen.darkest) } : null,
  };
}

/**
 * Names the paints of a flag as it is: `names` of the viewing are settled, and of those that would share a name the one
 * with the most `pixels` has it plain. One colour has one name, but the part that a limited change selects has its own.
 */
export function nameLooks(
  seen: readonly Look[],
  paints: readonly Paint[],
  pixels: readonly number[],
  { names: given, change }: Pick<Viewing, "names" | "change">,
): readonly PaintLook[] {
  const hexes = seen.map(({ hex }) => hex);
  const names = nameColours(hexes, pixels, given);
  return seen.map((paint, index) => {
    const name = names[index] ?? paint.hex;
    const called = change?.part;
    const hasTwin = paints.some(
      ({ key }, at) => hexes[at] === paint.hex && `${key} s` === paints[index]?.key,
    );
    if (paints[index]?.selected !== true || (!hasTwin && called === undefined)) return { ...paint, name };
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
  after: readonly Look[],
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
    return hex === was.hex ? { ...was, uneven } : { hex, uneven, name: nameNew(hex, flag[index] ?? was) };
  });
}
