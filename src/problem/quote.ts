// Floor 0. Makes text from an author safe and short enough to stand in a message.

/** Longest quoted value in a message, in characters. */
const longest = 60;

/**
 * Returns `text` in curly quotes, on one line, without control or direction characters, cut to 60 characters.
 *
 * Example: `quoteText("a\u202eb")` is `“a�b”`.
 */
export function quoteText(text: string): string {
  const shown = [...showText(text)];
  return shown.length > longest ? `“${shown.slice(0, longest - 1).join("")}…”` : `“${shown.join("")}”`;
}

/**
 * Returns `text` with everything that could steer a terminal or reorder a line shown as U+FFFD: C0 and C1 controls
 * (a tab becomes one space), line separators, and the direction controls U+202A–202E, U+2066–2069, U+200E, U+200F.
 *
 * Source: Unicode Standard Annex 9, table of explicit directional formatting characters.
 */
export function showText(text: string): string {
  return text.replace(/\t/g, " ").replace(unsafe, "\ufffd");
}

const unsafe = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069\u200e\u200f]|\p{Surrogate}/gu;
