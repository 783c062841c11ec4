// Floor 7. Paints of a comparison in words and as swatches.

import type { StudyResult } from "../analysis/result.ts";
import type { Hex } from "../colour/colour.ts";
import type { Comparison } from "../measure/comparison.ts";
import type { Measure, MeasuredColour } from "../measure/measurement.ts";
import type { Format } from "./format.ts";

/** A colour to be shown with its name beside it. */
export interface Swatch {
  readonly hex: Hex;
  readonly name: string;
}

/** The paint with `id`, or undefined where the drawing does not have it. */
export function findPaint(measure: Measure, id: string): MeasuredColour | undefined {
  return measure.colours.find((colour) => colour.id === id);
}

/** The one paint that the change replaces, before and after. That only a part of it is meant, `only` says. */
export function findChanged(result: StudyResult): readonly [Swatch, Swatch] {
  const { change, comparison } = result;
  const before = findReplaced(comparison, change.replace);
  const after = before && findPaint(comparison.after, before.id);
  const merged = comparison.after.colours.find((colour) => colour.hex === change.with);
  return [
    { hex: change.replace, name: before === undefined ? change.replace : nameWhole(before) },
    { hex: change.with, name: (after ?? merged)?.name ?? change.with },
  ];
}

/** The name of the paint that a selected part is of; any other name as it is. */
export function nameWhole({ name, part }: Pick<MeasuredColour, "name" | "part">): string {
  return part?.of ?? name;
}

/** Whether this paint is the one that the change replaces. */
export function isReplaced(comparison: Comparison, paint: MeasuredColour, replaced: Hex): boolean {
  return findReplaced(comparison, replaced)?.id === paint.id;
}

/** Says of which colours a drawing is made, largest first: `mostly dark blue, with red and white`. */
export function describePaints(measure: Measure, format: Format): string {
  const names = [
    ...new Set(measure.colours.filter((colour) => colour.share > 0.001).map(({ name }) => name)),
  ];
  const [first, ...rest] = names;
  if (first === undefined) return format.say("colour.empty");
  if (rest.length === 0) return format.say("colour.allOver", { colour: first });
  const share = measure.colours[0]?.share ?? 0;
  return share > 0.5
    ? format.say("colour.mostly", { colour: first, others: format.list(rest) })
    : format.list(names);
}

/** The paint of the original that a change replaces: with `only`, the selected part, which is a paint of its own. */
export function findReplaced(comparison: Comparison, replaced: Hex): MeasuredColour | undefined {
  const same = comparison.before.colours.filter((colour) => colour.hex === replaced);
  return same.find(({ part }) => part !== undefined) ?? same[0];
}
