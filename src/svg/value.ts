// Floor 2. Checks single attribute and property values: numbers, paths, references, paints.
import { limit } from "./limit.ts";

const number = String.raw`[+-]?(?:\d{1,60}(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,2})?`;
const unit = "(?:px|pt|pc|mm|cm|in|em|ex|rem|%)?";
const lengthPattern = new RegExp(`^\\s*${number}${unit}\\s*$`);
const lengthsPattern = new RegExp(`^(?:${number}${unit}(?:\\s*,\\s*|\\s+))*(?:${number}${unit})?$`);
const pointsPattern = /^[-+\d.eE,\s]*$/;
const pathPattern = /^[MmZzLlHhVvCcSsQqTtAa0-9eE+\-., \t\n]*$/;
const transformPattern =
  /^(?:[\s,]*(?:matrix|translate|scale|rotate|skewX|skewY)\s*\([-+.,\deE\s]*\))*[\s,]*$/;
const referencePattern = /^\s*url\(\s*(?:"#([^"\\]*)"\s*|'#([^'\\]*)'\s*|#([^()'"\\]*))\)/i;
/** One token of a plain value: blank, comma, slash, hex colour, number, word, colour function. */
const plainToken =
  /\s+|[,/]|#[\da-f]{3,8}(?![\w-])|[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d{1,2})?(?:%|[a-z]+)?(?![\w(-])|-?[a-z][\w-]*(?![\w(-])|(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color)\([-+\w\s.,%/]*\)/iy;

/** Whether `text` is one finite number with an optional unit. */
export function isLength(text: string): boolean {
  return lengthPattern.test(text);
}

/** Whether `text` is a list of finite lengths (`stroke-dasharray`), or empty. */
export function isLengthList(text: string): boolean {
  return lengthsPattern.test(text.trim());
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

/** Whether `text` holds nothing but a reference inside the drawing, words, numbers and colours. */
export function isPlainValue(text: string): boolean {
  const start = referencePattern.exec(text)?.[0].length ?? 0;
  plainToken.lastIndex = start;
  while (plainToken.lastIndex < text.length) if (!plainToken.test(text)) return false;
  return true;
}

/** Returns the name of the first function in `text` that no plain value has, such as `var`; undefined where there is none. */
export function findFunction(text: string): string | undefined {
  for (const [, name = ""] of text.matchAll(/(?<![\w-])([a-z][\w-]*)\(/gi)) {
    if (!/^(?:url|rgba?|hsla?|hwb|lab|lch|oklab|oklch|color)$/i.test(name)) return name.toLowerCase();
  }
  return undefined;
}

/**
 * Returns the id in a value that begins with `url(#id)`, or undefined where `text` has no url(); null for any other
 * url(), for one that stands elsewhere, and for a second one.
 */
export function findReference(text: string): string | null | undefined {
  if (!/url\s*\(/i.test(text)) return undefined;
  const match = referencePattern.exec(text);
  if (match === null || /url\s*\(/i.test(text.slice(match[0].length))) return null;
  return match[1] ?? match[2] ?? match[3]?.trimEnd() ?? null;
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

/** Exponents of three digits, or numbers with so many digits that they come to infinity. */
function hasHugeExponent(text: string): boolean {
  return /[eE][+-]?\d{3}|(?<![.\d])\d{61}/.test(text);
}
