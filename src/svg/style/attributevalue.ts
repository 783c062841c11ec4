// Floor 2. Checks single attribute and property values: numbers, paths, references, paints.
import { limit } from "../gate/drawinglimit.ts";

/** Exponents of three digits, as some programs write them for small numbers, begin with 0. */
const number = String.raw`[+-]?(?:\d{1,60}(?:\.\d+)?|\.\d+)(?:[eE][+-]?0?\d{1,2})?`;
const lengthPattern = new RegExp(`^(${number})([a-z]{1,8}|%)?$`, "i");
const referencePattern = /^\s*url\(\s*(?:"#([^"\\]*)"\s*|'#([^'\\]*)'\s*|#([^()'"\\]*))\)/i;
/** CSS pixels of a unit (CSS Values 4, section 6.2). The measuring renderer takes an inch for 72 pixels, so it sees none. */
const pixels: Readonly<Record<string, number>> = {
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
};

/**
 * Returns one finite number, in user units, or percentage as it is written, or undefined for anything else and for what is
 * under `least`. Example: `1pt` → `1.333333333`.
 */
export function readLength(text: string, least = Number.NEGATIVE_INFINITY): string | undefined {
  const [, digits = "", unit = ""] = lengthPattern.exec(text.trim()) ?? [];
  if (digits === "" || Number(digits) < least) return undefined;
  if (unit === "" || unit === "%") return `${digits}${unit}`;
  const factor = pixels[unit.toLowerCase()];
  if (factor === undefined) return undefined;
  return factor === 1 ? digits : String(Number((Number(digits) * factor).toPrecision(10)));
}

/** Returns the unit that depends on a font or a window, or that nobody knows, in a length or list of them. */
export function findUnit(text: string): string | undefined {
  for (const part of text.trim().split(/[\s,]+/)) {
    const unit = lengthPattern.exec(part)?.[2]?.toLowerCase();
    if (unit !== undefined && unit !== "%" && pixels[unit] === undefined) return unit;
  }
  return undefined;
}

/** Returns `text` without the blanks of SVG and CSS around it; `trim` takes others too. */
export function trimBlanks(text: string): string {
  const isBlank = (at: number): boolean => " \t\n\r\f".includes(text[at] ?? "x");
  let [start, end] = [0, text.length];
  while (start < end && isBlank(start)) start += 1;
  while (end > start && isBlank(end - 1)) end -= 1;
  return text.slice(start, end);
}

/** Whether a blank stands in `text` that is none in SVG and CSS: one that does not break, say. */
export function hasOddBlank(text: string): boolean {
  return /[^\S \t\n\r\f]/.test(text);
}

/** Returns a number with a point in place of a comma, which much of the world writes; undefined for anything else. */
export function mendNumber(text: string): string | undefined {
  return /^-?\d+,\d+(?:px)?$/.test(text.trim()) ? text.trim().replace(",", ".") : undefined;
}

/** Returns a plain number as it is written, or undefined for anything else and for what is under `least`. */
export function readNumber(text: string, least?: number): string | undefined {
  const length = readLength(text, least);
  return length === undefined || length.endsWith("%") || hasUnit(text) ? undefined : length;
}

function hasUnit(text: string): boolean {
  return /[a-z]/i.test(text.replace(/e[+-]?\d/i, ""));
}

/** Returns a share as a number from 0 to 1, from a number or a percentage. */
export function readShare(text: string): string | undefined {
  const length = readLength(text);
  if (length === undefined || hasUnit(text)) return undefined;
  const value = Number.parseFloat(length) / (length.endsWith("%") ? 100 : 1);
  return value >= 0 && value <= 1 && !length.endsWith("%") ? length : String(Math.min(1, Math.max(0, value)));
}

/** Returns a dash pattern as it is written: lengths of 0 or more with one blank between. */
export function readDashes(text: string): string | undefined {
  if (/^none$/i.test(text)) return "none";
  const parts = text.split(",").flatMap((part) =>
    part
      .trim()
      .split(/\s+/)
      .map((one) => readLength(one, 0)),
  );
  return parts.includes(undefined) ? undefined : parts.join(" ");
}

/**
 * Returns the id in a value that begins with `url(#id)`, or undefined where `text` has no url(); null for any other
 * url(), for one that stands elsewhere, and for a second one.
 */
export function findReference(text: string): string | null | undefined {
  const split = splitReference(text);
  return split === null || split === undefined ? split : split.id;
}

/** A reference with what stands behind it; undefined and null as for {@link findReference}. */
export function splitReference(
  text: string,
): { readonly id: string; readonly url: string; readonly rest: string } | null | undefined {
  if (!/url\s*\(/i.test(text)) return undefined;
  const match = referencePattern.exec(text);
  const id = match?.[1] ?? match?.[2] ?? match?.[3]?.trimEnd();
  if (match === null || id === undefined) return null;
  const rest = text.slice(match[0].length).trim();
  return /url\s*\(/i.test(rest) ? null : { id, url: match[0].trim(), rest };
}

/** Whether a dash pattern is so fine against `diagonal` (user units) that drawing it costs more than it shows. */
export function isDashTooFine(text: string, diagonal: number): boolean {
  const dashes = text
    .split(/[\s,]+/)
    .map(Number.parseFloat)
    .filter(Number.isFinite);
  const period = dashes.reduce((sum, dash) => sum + dash, 0);
  return period > 0 && diagonal / (period / dashes.length) > limit.dashesPerDiagonal;
}
