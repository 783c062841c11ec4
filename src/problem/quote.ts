// Floor 0. Makes text from an author safe and short enough to stand in a message.
import { replaceInvisible } from "./invisible.ts";

/** Longest quoted value in a message, in characters. */
const longest = 60;

/**
 * Returns `text` in curly quotes, on one line, control and invisible characters as escapes, cut to 60 characters.
 *
 * Example: `quoteText("a" + String.fromCharCode(0x202e))` is `“a\u202e”`, with the six signs of the escape.
 */
export function quoteText(text: string): string {
  const shown = [...showText(text)];
  return shown.length > longest ? `“${shown.slice(0, longest - 1).join("")}…”` : `“${shown.join("")}”`;
}

/**
 * Returns `text` with everything that could steer a terminal or reorder a line as an escape: C0 and C1 controls (a tab
 * becomes one space), line separators, halves of a pair, marks of direction, and what cannot be seen and is of no use
 * where it stands. The escapes are those of JSON, so that text which is JSON says what it said.
 *
 * Source: Unicode Standard Annex 9, tables of formatting characters; RFC 8259, section 7; invisible.ts for the others.
 */
export function showText(text: string): string {
  return replaceInvisible(text.replace(/\t/g, " ").replace(unsafe, escapeCharacter), escapeCharacter);
}

function escapeCharacter(character: string): string {
  if (character === "\n") return "\\n";
  const units = Array.from({ length: character.length }, (_, at) => character.charCodeAt(at));
  return units.map((unit) => `\\u${unit.toString(16).padStart(4, "0")}`).join("");
}

const unsafe = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]|\p{Surrogate}/gu;
