// Floor 1. How far apart two colours are in light alone: the contrast that decides, its grade, and the web's ratio beside it.

import { type Cloth, measureLuminance, measureReflectance, widestCloth } from "./cloth.ts";
import type { LinearRgb } from "./colour.ts";
import { checkRange } from "./range.ts";

export type Grade = "weak" | "soft" | "clear" | "strong";

/** Contrasts, in percent, from which an edge is soft, clear and strong. Source: as {@link gradeOf}. */
export const softFrom = 30;
export const clearFrom = 45;
export const strongFrom = 60;

/**
 * Luminance contrast, 0 to 100 percent, of two reflectances in percent:
 * `125 · (higher − lower) / (higher + lower + 25)`. Either may come first.
 *
 * Throws RangeError where a reflectance is not 0 to 100. Example: 62 and 20 → 49.0654.
 *
 * Source: Bowman–Sapolinski formula, AS 1428.1:2009 Appendix B.
 */
export function measureContrast(reflectanceA: number, reflectanceB: number): number {
  const a = checkRange("reflectance", reflectanceA, 0, 100);
  const b = checkRange("reflectance", reflectanceB, 0, 100);
  return (125 * Math.abs(a - b)) / (a + b + 25);
}

/**
 * The grade of a contrast in percent: `weak` under 30, `soft` under 45, `clear` under 60, `strong` from 60.
 *
 * Decided on the unrounded number. Throws RangeError where it is not 0 to 100.
 *
 * Source: AS 1428.1 and AS/NZS 1428.4.1 ask for 30 % of building elements, 45 % of small separate objects, 60 % of
 * small objects in two colours. A charge is a small separate object: clear starts at 45.
 */
export function gradeOf(contrast: number): Grade {
  const percent = checkRange("contrast", contrast, 0, 100);
  if (percent < softFrom) return "weak";
  if (percent < clearFrom) return "soft";
  return percent < strongFrom ? "clear" : "strong";
}

/**
 * Returns whether two colours are near the line between two grades: whether their grade on `cloth` is another on cloth
 * of 4 to 92 percent. Never on cloth of 0 to 100, which says that the colours are cloth values already.
 *
 * Throws RangeError where a component is not 0 to 1, or the cloth not 0 ≤ black < white ≤ 100. Example: `#ff0000` and
 * black on the default cloth have 40.9, soft, and on the other 45.2, clear: near the line.
 *
 * Source: the range as of {@link widestCloth}; that a grade which does not hold over both is marked is our own judgement.
 */
export function isNearLine(linearA: LinearRgb, linearB: LinearRgb, cloth: Cloth): boolean {
  const gradeOn = (limits: Cloth): Grade =>
    gradeOf(measureContrast(measureReflectance(linearA, limits), measureReflectance(linearB, limits)));
  if (cloth.black === 0 && cloth.white === 100) return false;
  return gradeOn(cloth) !== gradeOn(widestCloth);
}

/** Returns whether a grade counts as clear: `clear` or `strong`. */
export function isClear(grade: Grade): boolean {
  return grade === "clear" || grade === "strong";
}

/**
 * Contrast ratio, 1 to 21, of two sRGB colours: `(lighter + 0.05) / (darker + 0.05)` of their luminances.
 *
 * Never rounded. Throws RangeError where a component is not 0 to 1. Example: `#ff0000` and white → 3.9985.
 *
 * Source: WCAG 2.2, definition of contrast ratio.
 */
export function measureContrastRatio(linearA: LinearRgb, linearB: LinearRgb): number {
  const a = measureLuminance(linearA);
  const b = measureLuminance(linearB);
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}
