// Floor 5. A key that YAML reads and nobody meant: with a space of another kind, or with its value in it as there is no colon.
import { quoteText } from "../../problem/quote.ts";
import { findSlip, type Slip } from "./brokenline.ts";

/** Longest line that is looked at, in characters. */
const longest = 1000;

/** Words that begin no text in a group, so that a text behind them is their value. */
const words = "replace|with|only|note|select|colour|author|source|licence";
const groupKey = new RegExp(`^(${words})\\s+\\S`);

/**
 * Returns what is wrong with the key `name`, which stands in `line`, with the key that was meant, or undefined. `isAlone` says that it has no value.
 *
 * Example: in `change: { replace "#7a1020", with: white }` YAML reads a key `replace "#7a1020"`.
 */
export function findKeySlip(line: string, name: string, isAlone: boolean): Slip | undefined {
  if (line.length > longest) return undefined;
  const trimmed = name.replace(
    /^[\s\u200b\u2060\ufeff]+|(?<![\s\u200b\u2060\ufeff])[\s\u200b\u2060\ufeff]+$/gu,
    "",
  );
  const key = isAlone ? /^([\w-]+) *:?[^\x20-\x7e]/u.exec(trimmed)?.[1] : undefined;
  const meant = trimmed === name ? key : trimmed;
  const slip = meant === undefined ? undefined : findSlip(line);
  if (meant !== undefined && slip !== undefined) return { ...slip, key: meant };
  return isAlone ? findColonless(line, name) : undefined;
}

function findColonless(line: string, name: string): Slip | undefined {
  const key = /^([A-Za-z]+)(?:\s*=\s*\S|:[^\s/]|\s*["'])/.exec(name)?.[1] ?? groupKey.exec(name)?.[1];
  const column = line.indexOf(name) + 1;
  if (key === undefined || column === 0) return undefined;
  const hasColon = name.startsWith(`${key}:`);
  const reason = hasColon
    ? "After the colon of a key comes a space."
    : `Behind ${quoteText(key)} comes a colon.`;
  return { key, column, length: name.length, reason, hint: `Type: ${addColons(line).trim()}` };
}

/** Gives every key of a group its colon and its space. */
function addColons(line: string): string {
  const type = (_: string, before: string, key: string) => `${before}${key}: `;
  return line
    .replace(/([{,]\s*)([A-Za-z]+)(?:\s*=\s*|:(?=[^\s/])|\s*(?=["']))/g, type)
    .replace(new RegExp(`([{,]\\s*)(${words})\\s+(?=[^\\s:=])`, "g"), type)
    .replace(/(: )(#[^\s#,{}[\]"']+)/g, '$1"$2"');
}
