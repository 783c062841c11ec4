// Floor 2. Checks single attribute and property values: numbers, paths, references, paints.
import { limit } from "./limit.ts";

const number = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,2})?`;
const unit = "(?:px|pt|pc|mm|cm|in|em|ex|rem|%)?";
const lengthPattern = new RegExp(`^\\s*${number}${unit}\\s*$`);
const lengthsPattern = new RegExp(`^\\s*(?:${number}${unit}(?:\\s*,\\s*|\\s+|$))*\\s*$`);
const pointsPattern = new RegExp(`^\\s*(?:${number}(?:\\s*,\\s*|\\s*))*$`);
const pathPattern = /^[MmZzLlHhVvCcSsQqTtAa0-9eE+\-., \t\n]*$/;
const transformPattern = /^(?:[\s,]*(?:matrix|translate|scale|rotate|skewX|skewY)\s*\(\s*[-+.,\deE\s]*\))*[\s,]*$/;
const plainPattern = /^[-\w\s#%.,()'"+/]*$/;
const referencePattern = /url\(\s*(?:"#([^"]*)"|'#([^']*)'|#([^)'"]*?))\s*\)/i;

/** Whether `text` is one finite number with an optional unit. */
export function isLength(text: string): boolean {
  return lengthPattern.test(text);
}

/** Whether `text` is a list of finite lengths (`stroke-dasharray`), or empty. */
export function isLengthList(text: string): boolean {
  return lengthsPattern.test(text);
}

/** Whether `text` holds nothing but coordinates. */
export function isPointList(text: string): boolean {
  return !hasHugeExponent(text) && pointsPattern.test(text);
}

/** Whether `text` holds nothing but path commands and finite numbers. */
export function isPathData(text: string): boolean {
  return pathPattern.test(text) && !hasHugeExponent(text);
}

/** Whether `text` is a list of SVG transform functions. */
export function isTransform(text: string): boolean {
  return transformPattern.test(text) && !hasHugeExponent(text);
}

/** Whether `text` is made of the characters that plain property values need: no escapes, no markup. */
export function isPlainValue(text: string): boolean {
  return plainPattern.test(text) && !/expression|javascript/i.test(text);
}

/** Returns the id in `url(#id)`, or undefined where `text` has no url(); null for a url() that is not `#id`. */
export function findReference(text: string): string | null | undefined {
  if (!/url\s*\(/i.test(text)) return undefined;
  const match = referencePattern.exec(text);
  return match?.[1] ?? match?.[2] ?? match?.[3] ?? null;
}

/** Whether a dash pattern is so fine against `diagonal` (user units) that drawing it costs more than it shows. */
export function isDashTooFine(text: string, diagonal: number): boolean {
  const dashes = text.split(/[\s,]+/).map(Number.parseFloat).filter(Number.isFinite);
  const period = dashes.reduce((sum, dash) => sum + dash, 0);
  return period > 0 && diagonal / (period / dashes.length) > limit.dashesPerDiagonal;
}

function hasHugeExponent(text: string): boolean {
  return /[eE][+-]?\d{3,}/.test(text);
}
