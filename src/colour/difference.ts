// Floor 1. How different two colours look, hue and all, on CIELAB under D65: CIEDE2000, and the plain distance ΔE*ab.
import culori from "culori/require";
import type { LinearRgb } from "./colour.ts";
import { checkRange } from "./range.ts";
import { type Lab, labOf } from "./space.ts";

const { differenceCiede2000 } = culori;

const measureCiede2000 = differenceCiede2000();

/**
 * Colour difference ΔE00, from 0, of two linear-light sRGB colours, on their CIELAB under D65.
 *
 * Throws RangeError where a component is not 0 to 1. Example: black and white → 100.
 *
 * Source: as {@link measureLabDifference}.
 */
export function measureDifference(linearA: LinearRgb, linearB: LinearRgb): number {
  return measureLabDifference(labOf(linearA), labOf(linearB));
}

/**
 * Colour difference ΔE00, from 0, of two CIELAB colours under one white point (`l` 0 to 100), with all three weights 1.
 *
 * Throws RangeError where `l` is not 0 to 100 or `a`, `b` are not within ±1000.
 * Example: (50, 2.6772, −79.7751) and (50, 0, −82.7485) → 2.0425.
 *
 * Source: G. Sharma, W. Wu, E. N. Dalal, “The CIEDE2000 Color-Difference Formula”, Color Research and Application
 * 30(1), 2005, 21–30.
 */
export function measureLabDifference(labA: Lab, labB: Lab): number {
  // Mode `lab65` keeps culori from adapting the numbers from D50 first.
  return measureCiede2000({ mode: "lab65", ...checkLab(labA) }, { mode: "lab65", ...checkLab(labB) });
}

/**
 * Distance ΔE*ab, from 0, of two CIELAB colours under one white point.
 *
 * Example: (50, 0, 0) and (50, 3, 4) → 5. Source: CIE 15:2004, CIE 1976 L*a*b* colour difference.
 */
export function measureLabDistance(labA: Lab, labB: Lab): number {
  return Math.hypot(labA.l - labB.l, labA.a - labB.a, labA.b - labB.b);
}

function checkLab(lab: Lab): Lab {
  return {
    l: checkRange("CIELAB lightness", lab.l, 0, 100),
    a: checkRange("CIELAB a", lab.a, -1000, 1000),
    b: checkRange("CIELAB b", lab.b, -1000, 1000),
  };
}
