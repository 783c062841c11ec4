// Floor 1. Linear-light sRGB in the spaces where distance and hue mean something: CIELAB under D65, OKLab, OKLCH.
import culori from "culori/require";
import type { LinearRgb } from "./colour.ts";
import { checkLinear, checkRange } from "./range.ts";

const { converter } = culori;

const convertToLab65 = converter("lab65");
const convertToOklab = converter("oklab");
const convertToLrgb = converter("lrgb");

/** CIELAB (`l` 0 to 100, white point D65) or OKLab (`l` 0 to 1): the function that returns it says which. */
export interface Lab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** OKLCH: `lightness01` 0 to 1, `chroma` from 0 (sRGB stays under 0.33), `hueDegrees` 0 to under 360, 0 for a grey. */
export interface Oklch {
  readonly lightness01: number;
  readonly chroma: number;
  readonly hueDegrees: number;
}

/**
 * CIELAB under D65 of a linear-light sRGB colour. Throws RangeError where a component is not 0 to 1.
 *
 * Source: CIE 15:2004; sRGB matrix and white point as in CSS Color Module Level 4, section 18.
 */
export function labOf(linear: LinearRgb): Lab {
  const { l, a, b } = convertToLab65(toLrgb(linear));
  return { l, a, b };
}

/** OKLab of a linear-light sRGB colour. Throws RangeError. Source: B. Ottosson, “A perceptual color space”, 2020. */
export function oklabOf(linear: LinearRgb): Lab {
  const { l, a, b } = convertToOklab(toLrgb(linear));
  return { l, a, b };
}

/** OKLCH of a linear-light sRGB colour: OKLab in polar form. Throws RangeError. Source: as {@link oklabOf}. */
export function oklchOf(linear: LinearRgb): Oklch {
  const { l, a, b } = oklabOf(linear);
  const chroma = Math.hypot(a, b);
  // The hue of a grey is what rounding left of it.
  if (chroma < 1e-6) return { lightness01: l, chroma: 0, hueDegrees: 0 };
  return { lightness01: l, chroma, hueDegrees: ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360 };
}

/** How far, in linear light, a component may lie outside sRGB and still be clipped unseen: a third of an 8-bit step. */
const unseenExcess = 1e-4;

/** In OKLCH chroma. Along one hue sRGB has gaps and tongues near blue, so the way down is walked and not halved. */
const chromaStep = 0.005;

/**
 * The sRGB colour of an OKLCH colour, in linear light. Outside sRGB the hue and the lightness are kept and the chroma
 * is lowered, only as far as sRGB forces (to within 1e-5).
 *
 * Throws RangeError where lightness is not 0 to 1, chroma not 0 to 1 or the hue not 0 to 360.
 */
export function linearOfOklch(oklch: Oklch): LinearRgb {
  const lightness01 = checkRange("OKLCH lightness", oklch.lightness01, 0, 1);
  const hueDegrees = checkRange("OKLCH hue", oklch.hueDegrees, 0, 360);
  let outside = checkRange("OKLCH chroma", oklch.chroma, 0, 1);
  let inside = outside;
  const isInside = (chroma: number): boolean => isInSrgb(toUnclipped({ lightness01, chroma, hueDegrees }));
  while (inside > 0 && !isInside(inside)) {
    outside = inside;
    inside = Math.max(0, inside - chromaStep);
  }
  while (outside - inside > 1e-5) {
    const middle = (inside + outside) / 2;
    if (isInside(middle)) inside = middle;
    else outside = middle;
  }
  const { linearR, linearG, linearB } = toUnclipped({ lightness01, chroma: inside, hueDegrees });
  return { linearR: clamp01(linearR), linearG: clamp01(linearG), linearB: clamp01(linearB) };
}

/** Not clipped: components may leave 0 to 1. */
function toUnclipped({ lightness01, chroma, hueDegrees }: Oklch): LinearRgb {
  const { r, g, b } = convertToLrgb({ mode: "oklch", l: lightness01, c: chroma, h: hueDegrees });
  return { linearR: r, linearG: g, linearB: b };
}

function isInSrgb({ linearR, linearG, linearB }: LinearRgb): boolean {
  const lowest = Math.min(linearR, linearG, linearB);
  return lowest >= -unseenExcess && Math.max(linearR, linearG, linearB) <= 1 + unseenExcess;
}

function toLrgb(linear: LinearRgb): { mode: "lrgb"; r: number; g: number; b: number } {
  const { linearR, linearG, linearB } = checkLinear(linear);
  return { mode: "lrgb", r: linearR, g: linearG, b: linearB };
}

function clamp01(component: number): number {
  return Math.min(1, Math.max(0, component));
}
