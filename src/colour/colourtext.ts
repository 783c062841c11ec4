// Floor 1. Colour text to sRGB and back: any CSS Color 4 colour goes in, one six-digit hex comes out.
// In one file in place of 151: a child starts sooner.
import culori from "culori/require";
import type { Hex, LinearRgb, Rgb } from "./colour.ts";
import { checkLinear, checkRange } from "./range.ts";
import { encodeByte, linearOfCode } from "./srgb.ts";

const { converter, getMode, parse } = culori;

const convertToRgb = converter("rgb");

/**
 * A name, `#` and hex digits, or one function with nothing nested. culori on its own also takes hex digits without `#`
 * and spaces that are not CSS Color 4, all of which have two hyphens (`color(--hsv …)`), and breaks on `color(`.
 */
const colourNotation = /^(?:#[0-9a-f]+|(?![0-9a-f]+$)[a-z]+|[a-z]+\((?!.*--)[^()]+\))$/s;

/** In characters. No colour is written this long, and long digit strings would keep the reader busy. */
const longestColour = 200;

/**
 * Reads a CSS Color 4 colour, whatever its case, with space around it allowed.
 *
 * `alpha01` is 0 to 1; `transparent` is black with alpha 0. A component `none` counts as 0. A colour outside sRGB
 * is clamped, component by component. Returns undefined for text that names no colour of its own: `none`,
 * `currentColor`, `url(…)`, system colours, and anything unknown or broken.
 *
 * Source: CSS Color Module Level 4, sections 4 to 10 (syntax), 4.4 (missing components).
 */
export function parseColour(text: string): { hex: Hex; alpha01: number } | undefined {
  const plain = text.trim().toLowerCase();
  if (!colourNotation.test(plain) || plain.length > longestColour) return undefined;
  const parsed = parse(plain);
  if (parsed === undefined) return undefined;
  const alpha01 = parsed.alpha ?? (/\/\s*none\s*\)$/.test(plain) ? 0 : 1);
  const { r, g, b } = convertToRgb(fillMissing(parsed));
  // Components near the largest double can end as infinity minus infinity.
  if (Number.isNaN(r) || Number.isNaN(g) || Number.isNaN(b)) return undefined;
  return { hex: toHex({ r: clamp01(r), g: clamp01(g), b: clamp01(b) }), alpha01 };
}

/** Encoded sRGB, each component 0 to 1, of a `#rrggbb`. Throws RangeError for any other text. */
export function toRgb(hex: Hex): Rgb {
  const bits = readCode(hex);
  return { r: (bits >> 16) / 255, g: ((bits >> 8) & 255) / 255, b: (bits & 255) / 255 };
}

/** The nearest 8-bit `#rrggbb`, lower case, of encoded sRGB 0 to 1. Throws RangeError outside that. */
export function toHex(rgb: Rgb): Hex {
  return `#${toByte("red", rgb.r)}${toByte("green", rgb.g)}${toByte("blue", rgb.b)}`;
}

/**
 * Linear-light sRGB, each component 0 to 1, of a `#rrggbb`: `c / 12.92` up to 0.04045, else
 * `((c + 0.055) / 1.055) ^ 2.4`. Throws RangeError for any other text. Example: `#808080` → 0.21586 three times.
 *
 * Source: IEC 61966-2-1; WCAG 2.2, definition of relative luminance.
 */
export function linearOf(hex: Hex): LinearRgb {
  return linearOfCode(readCode(hex));
}

/** The same as one number, 0xrrggbb. */
function readCode(hex: Hex): number {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new RangeError(`a colour must be written #rrggbb, got ${hex}`);
  return Number.parseInt(hex.slice(1), 16);
}

/** The nearest 8-bit `#rrggbb` of linear-light sRGB 0 to 1; the inverse of {@link linearOf}. Throws RangeError. */
export function hexOf(linear: LinearRgb): Hex {
  const { linearR, linearG, linearB } = checkLinear(linear);
  return toHex({ r: encodeByte(linearR) / 255, g: encodeByte(linearG) / 255, b: encodeByte(linearB) / 255 });
}

/** Gives 0 to each component a colour does not have: conversions would turn a missing one into NaN. */
function fillMissing(colour: NonNullable<ReturnType<typeof parse>>): NonNullable<ReturnType<typeof parse>> {
  // The types forget the channels of one space.
  const { channels } = getMode(colour.mode) as { readonly channels: readonly string[] };
  const zeros = channels.map((channel) => [channel, 0] as const);
  return { ...Object.fromEntries(zeros), ...colour };
}

function clamp01(component: number): number {
  return Math.min(1, Math.max(0, component));
}

function toByte(what: string, component01: number): string {
  const byte = Math.round(checkRange(what, component01, 0, 1) * 255);
  return byte.toString(16).padStart(2, "0");
}
