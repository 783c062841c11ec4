// Floor 1. How much light a colour gives back: relative luminance of the sRGB colour, reflectance of the cloth dyed in it.
import { checkLinear, checkRange } from "./check.ts";
import type { LinearRgb } from "./colour.ts";

/** Reflectance, in percent, of the blackest and of the whitest cloth there is. */
export interface Cloth {
  readonly black: number;
  readonly white: number;
}

/**
 * Cloth and paint never reach 0 or 100 percent: paint and cloth charts put black near 5 and white near 85.
 *
 * Source: from memory and common practice; a setting of the gallery.
 */
export const defaultCloth: Cloth = { black: 5, white: 85 };

/**
 * Cloth of another published range, for telling which grades hang on the range.
 *
 * Source: black and white of one paint maker's chart, second-hand.
 */
export const widerCloth: Cloth = { black: 4, white: 92 };

/**
 * Relative luminance, 0 to 1, of a linear-light sRGB colour: `0.2126 R + 0.7152 G + 0.0722 B`.
 *
 * Throws RangeError where a component is not 0 to 1. Example: `#ff0000` → 0.2126.
 *
 * Source: WCAG 2.2, definition of relative luminance.
 */
export function measureLuminance(linear: LinearRgb): number {
  const { linearR, linearG, linearB } = checkLinear(linear);
  return checkRange("luminance", 0.2126 * linearR + 0.7152 * linearG + 0.0722 * linearB, 0, 1);
}

/**
 * Reflectance, in percent, of `cloth` dyed in a colour: `black + (white − black) · luminance`.
 *
 * Throws RangeError where a component is not 0 to 1, or the cloth not 0 ≤ black < white ≤ 100.
 * Example: `#ff0000` on the default cloth → 5 + 80 · 0.2126 = 22.008.
 *
 * Source: common practice; no published source for the straight line between the two limits.
 */
export function measureReflectance(linear: LinearRgb, cloth: Cloth): number {
  const black = checkRange("reflectance of black cloth", cloth.black, 0, 100);
  const white = checkRange("reflectance of white cloth", cloth.white, 0, 100);
  if (white <= black) {
    throw new RangeError(`white cloth must reflect more than black cloth, got ${white} and ${black}`);
  }
  return black + (white - black) * measureLuminance(linear);
}
