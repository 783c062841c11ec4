// Floor 5. A quote in a quoted text, which ends it there: the text in quotes that hold.
import { quoteText } from "../../problem/quote.ts";
import type { Slip } from "./brokenline.ts";

/**
 * Returns what is wrong where YAML stumbles in `column` (from 1) of `line` over what stands behind a quoted text, or
 * undefined where no quoted text ends right before.
 *
 * Example: for `title: "A "new" heron"` the hint is `Type: title: 'A "new" heron'`.
 */
export function findInnerQuote(line: string, column: number): Slip | undefined {
  const open = findOpening(line, column);
  if (open === undefined) return undefined;
  const close = endOf(line, open);
  const stray = /^\s*([;,.])\s*$/.exec(line.slice(close + 1))?.[1];
  if (stray !== undefined && !isInside(line, open)) return describeStray(line, close, stray);
  const end = findLast(line, open, close);
  const sign = line.charAt(open);
  const text = end === undefined ? line.slice(open).trimEnd() : line.slice(open + 1, end);
  const rest = end === undefined ? "" : line.slice(end + 1);
  return {
    column: close + 1,
    length: 1,
    reason: `The ${sign} ${whereIs(line, close)} ends the text.`,
    hint: `Type: ${`${line.slice(0, open)}${quoteAnew(dropSingle(text, sign))}${rest}`.trim()}`,
  };
}

/** The same for a text behind which another quote is opened, in `column`, and never closed. */
export function findOddQuote(line: string, column: number): Slip | undefined {
  const open = /^\s*(?:- +)?[\w-]+:\s+(?=["'])/.exec(line)?.[0].length;
  const close = open === undefined ? -1 : endOf(line, open);
  return close >= 0 && close + 1 < column ? findInnerQuote(line, close + 2) : undefined;
}

/** A sign behind the text, as other languages end a line. */
function describeStray(line: string, close: number, sign: string): Slip {
  const reason = `Behind the closing ${line.charAt(close)} stands ${quoteText(sign)}, and nothing may.`;
  return {
    column: line.lastIndexOf(sign) + 1,
    length: 1,
    reason,
    hint: `Type: ${line.slice(0, close + 1).trim()}`,
  };
}

function isQuoted(value: string): boolean {
  return /^["']/.test(value) && endOf(value, 0) === value.length - 1;
}

/** The index of the quote that opens the text behind which YAML stumbles. */
function findOpening(line: string, column: number): number | undefined {
  const starts = Array.from(
    line.matchAll(/(?:(?:^\s*|[:,-]\s+|[[{]\s*))(["'])/g),
    (match) => match.index + match[0].length - 1,
  );
  return starts.find((open) => {
    const close = endOf(line, open);
    return close > open && close < column && line.slice(close + 1, column - 1).trim() === "";
  });
}

/** The index of the quote that ends the text that is opened at `open`, or -1. */
function endOf(line: string, open: number): number {
  const text = line.charAt(open) === '"' ? /"(?:[^"\\]|\\.)*"/y : /'(?:[^']|'')*'(?!')/y;
  text.lastIndex = open;
  const found = text.exec(line)?.[0];
  return found === undefined ? -1 : open + found.length - 1;
}

/** The index of the quote that was meant to end it: in braces and brackets before a comma or their end, else the last. */
function findLast(line: string, open: number, close: number): number | undefined {
  const sign = line.charAt(open);
  if (!isInside(line, open)) {
    const last = line.trimEnd().length - 1;
    return last > close && line.charAt(last) === sign ? last : undefined;
  }
  for (let at = close + 1; at < line.length; at += 1)
    if (line.charAt(at) === sign && /^\s*(?:[,}\]]|$)/.test(line.slice(at + 1))) return at;
  return undefined;
}

function isInside(line: string, at: number): boolean {
  const before = line.slice(0, at);
  const [open, close] = ["[{", "]}"].map((signs) =>
    Math.max(...[...signs].map((sign) => before.lastIndexOf(sign))),
  );
  return (open ?? -1) > (close ?? -1);
}

/** A text that begins or ends with a quote that has no other belonging to it has one too many. */
function dropSingle(text: string, sign: string): string {
  // Two single quotes look like a double one.
  const doubled = sign === "'" ? /^'([^']*)'$/.exec(text)?.[1] : undefined;
  if (doubled !== undefined) return doubled;
  const plain = text.replace(sign + sign, sign);
  const at = plain.indexOf(sign);
  const isSingle = at >= 0 && at === plain.lastIndexOf(sign) && (at === 0 || at === plain.length - 1);
  return isSingle ? plain.replace(sign, "") : text;
}

/** Returns what to type for a line `key: value` whose value is meant as one plain text, else undefined. */
export function quoteValue(text: string): string | undefined {
  const [, key, value] = /^\s*(?:- )?([\w-]+):\s+(\S.*)$/.exec(text.trimEnd()) ?? [];
  if (key === undefined || value === undefined) return undefined;
  if (isQuoted(value) || /^[[{].*[\]}]$|^[|>][+-]?\d?$/.test(value)) return undefined;
  if (/^["']/.test(value)) return `If it is meant as text, put it in quotes: ${key}: ${quoteAnew(value)}`;
  const escaped = value.replace(/\\/g, "\\\\").replace(/"/g, '\\"');
  return `If it is meant as text, put it in quotes: ${key}: "${escaped}"`;
}

/** Returns `text` in the quotes that need the least change to it. */
export function quoteAnew(text: string): string {
  if (!text.includes("'") && text.includes('"')) return `'${text}'`;
  return JSON.stringify(text);
}

/** “in heron's”, “before new”, “behind A”. */
function whereIs(line: string, close: number): string {
  const sign = line.charAt(close);
  const [before = ""] =
    /(?<![\p{L}\p{N}])[\p{L}\p{N}]*$/u.exec(line.slice(Math.max(0, close - 40), close)) ?? [];
  const [after = ""] = /^[\p{L}\p{N}]*/u.exec(line.slice(close + 1, close + 41)) ?? [];
  if (before !== "" && after !== "") return `in ${before}${sign}${after}`;
  if (after !== "") return `before ${after}`;
  return before === "" ? "here" : `behind ${before}`;
}
