// Floor 1. How much light a colour gives back: relative luminance of the sRGB colour, reflectance of the cloth dyed in it.

import type { LinearRgb } from "./colour.ts";
import { checkLinear, checkRange } from "./range.ts";

/** Reflectance, in percent, of the blackest and of the whitest cloth there is. */
export interface Cloth {
  readonly black: number;
  readonly white: number;
}

/**
 * Cloth and paint never reach 0 or 100 percent: charts of building materials put the blackest black near 5 and the
 * whitest white near 85. A setting of the gallery.
 *
 * Source, second-hand: “average blackest black 5 %, whitest white 85 %”, on the pages about light reflectance values of a
 * supplier of tactile indicators (rtp.net.au, colour/lrv, quoting T. Sawaya) and of a maker of engraving plastics
 * (rowmark.com, guide to the ADA).
 */
export const defaultCloth: Cloth = { black: 5, white: 85 };

/** The widest range that is known of paint. Source, second-hand: one maker's reflectance of its black and its white. */
export const widestCloth: Cloth = { black: 4, white: 92 };

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
