// Floor 5. One wrong sign in the frame of a line of YAML, which is all that is wrong with it: the line as it should be typed.
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { nameCharacter } from "../text/cleantext.ts";

/**
 * What is wrong in a line, and what to type. `column` from 1, in UTF-16 units as everywhere; `line` where it is another than
 * the one that was looked at, `key` where another was meant than YAML reads.
 */
export interface Slip extends Advice {
  readonly column: number;
  readonly length: number;
  readonly line?: number;
  readonly key?: string;
}

/** Spaces that YAML takes for letters. Source: Unicode, general category Z, and the characters of no width. */
const oddSpace = "[^\\P{Z} ]|[\\u200b\\u2060\\ufeff]";

/** Signs that look like a colon. Source: Unicode, confusables of U+003A that keyboards and word processors make. */
const oddColon = "[\\uff1a\\ufe55\\ufe13\\u02d0\\u2236\\ua789]";

/** Marks that word processors put before the items of a list. */
const oddHyphens = "\\u2010-\\u2015\\u2022\\u2212\\u00b7";
const oddHyphen = `[${oddHyphens}]`;

/** What an item of a list begins with, the hyphen of YAML among them; as the source of a pattern. */
export const itemMark = `[-${oddHyphens}]`;

/** Returns the space, colon or hyphen in `line` that is none, or undefined where all of them are plain. */
export function findSlip(line: string): Slip | undefined {
  return findColon(line) ?? findSpace(line) ?? findHyphen(line);
}

/** Returns the item of a list that is begun as YAML does not know it, `-Tobin` or `– Tobin`, or undefined. */
export function findHyphen(line: string): Slip | undefined {
  const [, lead = "", item] = /^(\s*)-([^\s-].*)$/.exec(line) ?? [];
  if (item !== undefined) {
    const reason = "After the hyphen comes a space.";
    return { column: lead.length + 1, length: 1, reason, hint: `Type: ${writeItem(item)}` };
  }
  const [, before = "", mark, rest] = new RegExp(`^(\\s*)(${oddHyphen})\\s+(\\S.*)$`).exec(line) ?? [];
  if (mark === undefined || rest === undefined) return undefined;
  const reason = `${quoteText(mark)} is not a hyphen, with which an item of a list begins.`;
  return { column: before.length + 1, length: 1, reason, hint: `Type: ${writeItem(rest)}` };
}

/** Returns an item of a list as a line of its own. */
export function writeItem(text: string): string {
  return `- ${text.trim().startsWith("#") ? JSON.stringify(text.trim()) : text.trim()}`;
}

/** Behind the key of a line, or of a group in braces. */
function findColon(line: string): Slip | undefined {
  const pattern = new RegExp(`(^\\s*(?:- +)?|[{,]\\s*)([\\w-]+)\\s*(${oddColon})\\s*`, "g");
  const found = pattern.exec(line);
  const sign = found?.[3];
  if (found === null || sign === undefined) return undefined;
  const plain = line.replace(pattern, (_, before: string, key: string) => `${before}${key}: `);
  return {
    column: found.index + found[0].indexOf(sign) + 1,
    length: 1,
    reason: `${quoteText(sign)} is not a colon.`,
    hint: `Type: ${plain.trim()}`,
  };
}

/** Before a key, behind it, or behind its colon; behind the hyphen of an item. */
function findSpace(line: string): Slip | undefined {
  const odd = new RegExp(oddSpace, "u");
  const frame = `(?:[ \\t]|${oddSpace})*(?:-(?:[ \\t]|${oddSpace})+)?(?:[\\w-]+(?:[ \\t]|${oddSpace})*:(?:[ \\t]|${oddSpace})*)?`;
  const inBraces = new RegExp(`[{,]((?:[ \\t]|${oddSpace})*[\\w-]+:(?:[ \\t]|${oddSpace})*)`, "gu");
  const whole = new RegExp(`^${frame}`, "u").exec(line)?.[0] ?? "";
  const parts = [
    { at: 0, text: whole },
    ...Array.from(line.matchAll(inBraces), (match) => ({ at: match.index + 1, text: match[1] ?? "" })),
  ];
  const part = parts.find(({ text }) => odd.test(text));
  if (part === undefined) return undefined;
  const column = part.at + part.text.search(odd) + 1;
  const plain = parts.reduceRight(
    (text, { at, text: own }) => text.slice(0, at) + straighten(own) + text.slice(at + own.length),
    line,
  );
  const sign = line.charAt(column - 1);
  if (plain.trim() === "") return { column, length: 1, ...describeBlank(sign) };
  const reason = `The space ${whereIs(line, column)} is ${nameSpace(sign)} (${nameCharacter(sign)}).`;
  return { column, length: 1, reason, hint: `Type: ${plain.trim()}` };
}

function describeBlank(sign: string): Advice {
  const reason = `The line looks empty and holds ${nameSpace(sign)} (${nameCharacter(sign)}).`;
  return { reason, hint: "Delete the line." };
}

function straighten(frame: string): string {
  const plain = frame.replace(new RegExp(oddSpace, "gu"), " ");
  return plain.replace(/([\w-]) +:/g, "$1:").replace(/: +$/, ": ");
}

function whereIs(line: string, column: number): string {
  const before = line.slice(Math.max(0, column - 60), column - 1).trimEnd();
  const key = /(?<![\w-])[\w-]+:?$/.exec(before)?.[0];
  if (key === "-") return "after the hyphen";
  if (key !== undefined) return `after ${key}`;
  const next = /[\w-]+/.exec(line.slice(column - 1))?.[0];
  return next === undefined || next === "-" ? "at the beginning of the line" : `before ${next}`;
}

function nameSpace(sign: string): string {
  if (sign === "\u00a0") return "a no-break space";
  if (sign === "\u202f") return "a narrow no-break space";
  if (sign === "\u3000") return "a full-width space";
  return /[\u200b\u2060\ufeff]/.test(sign) ? "a character that cannot be seen" : "no plain space";
}
