// Floor 0. Makes text from an author safe and short enough to stand in a message.
import { replaceInvisible } from "./invisible.ts";

/** Longest quoted value in a message, in characters. */
const longest = 60;

/**
 * Returns `text` in curly quotes, on one line, without control or invisible characters, cut to 60 characters.
 *
 * Example: `quoteText("a\u202eb")` is `“a�b”`.
 */
export function quoteText(text: string): string {
  const shown = [...showText(text)];
  return shown.length > longest ? `“${shown.slice(0, longest - 1).join("")}…”` : `“${shown.join("")}”`;
}

/**
 * Returns `text` with everything that could steer a terminal or reorder a line shown as U+FFFD: C0 and C1 controls
 * (a tab becomes one space), halves of a pair, marks of direction, and what cannot be seen and is of no use where it stands.
 *
 * Source: Unicode Standard Annex 9, table of implicit directional marks; invisible.ts for the others.
 */
export function showText(text: string): string {
  return replaceInvisible(text.replace(/\t/g, " ").replace(unsafe, "\ufffd"), () => "\ufffd");
}

const unsafe = /[\p{Cc}\u200e\u200f\u061c]|\p{Surrogate}/gu;
