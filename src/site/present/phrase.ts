// Floor 6. Names of paints as a sentence needs them: the new green and the old green, a darker green, the selected brown.
import type { Hex } from "../../colour/colour.ts";
import { measureDifference } from "../../colour/difference.ts";
import { linearOf } from "../../colour/parse.ts";
import { oklchOf } from "../../colour/space.ts";
import type { Swatch } from "./paint.ts";
import { nameWhole } from "./paint.ts";

/** OKLCH lightness by which two shades of one name must differ to be called lighter and darker (our own judgement). */
const seenStep = 0.03;
/** ΔE00 under which two colours are one to the eye (our own judgement). */
const sameColour = 5;

/** What a colour becomes, where its name alone would not tell: `a darker green`, `a different green`. */
export function nameNew(before: Swatch, after: Swatch): string {
  if (before.name !== after.name) return after.name;
  const [was, is] = [before.hex, after.hex].map(linearOf);
  if (was === undefined || is === undefined) throw new RangeError("a change has two colours");
  if (measureDifference(was, is) < sameColour) return `almost the same ${after.name}`;
  const step = lightnessOf(after.hex) - lightnessOf(before.hex);
  if (Math.abs(step) < seenStep) return `a different ${after.name}`;
  return `a ${step > 0 ? "lighter" : "darker"} ${after.name}`;
}

/** Both names of a paint that changes: where they are one, `the old green` and `the new green`. */
export function tellApart(before: string, after: string): readonly [string, string] {
  const [was, is] = [nameInText(before), nameInText(after)];
  return was === is ? [`the old ${was}`, `the new ${is}`] : [was, is];
}

/** The part that `only` selects is called `brown, selected part` in tables, and `the selected brown` in a sentence. */
export function nameInText(name: string): string {
  const whole = nameWhole(name);
  return whole === name ? name : `the selected ${whole}`;
}

/** A text with its first letter in upper case. */
export function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function lightnessOf(hex: Hex): number {
  return oklchOf(linearOf(hex)).lightness01;
}
