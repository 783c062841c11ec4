// Floor 0. Makes text from an author safe and short enough to stand in a message.

/** Longest quoted value in a message, in characters. */
const longest = 60;

/**
 * Returns `text` in curly quotes, on one line, control and direction characters as escapes, cut to 60 characters.
 *
 * Example: `quoteText("a" + String.fromCharCode(0x202e))` is `“a\u202e”`, with the six signs of the escape.
 */
export function quoteText(text: string): string {
  const shown = [...showText(text)];
  return shown.length > longest ? `“${shown.slice(0, longest - 1).join("")}…”` : `“${shown.join("")}”`;
}

/**
 * Returns `text` with everything that could steer a terminal or reorder a line as an escape: C0 and C1 controls (a tab
 * becomes one space), line separators, and the direction controls U+202A–202E, U+2066–2069, U+200E, U+200F. The escapes
 * are those of JSON, so that text which is JSON says what it said.
 *
 * Source: Unicode Standard Annex 9, table of explicit directional formatting characters; RFC 8259, section 7.
 */
export function showText(text: string): string {
  return text.replace(/\t/g, " ").replace(unsafe, escapeCharacter);
}

function escapeCharacter(character: string): string {
  if (character === "\n") return "\\n";
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`;
}

const unsafe = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069\u200e\u200f]|\p{Surrogate}/gu;
