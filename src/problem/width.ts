// Floor 0. How many columns of a terminal a text takes, so that a caret stands under the character it means.
import stringWidth from "string-width";

/**
 * Returns the number of terminal columns of `text`: 0 for marks that combine, 2 for wide East Asian characters
 * and emoji, 1 for the rest. Counts whole characters as a reader sees them.
 *
 * Example: `measureColumns("旗 é")` is 4.
 */
export function measureColumns(text: string): number {
  return stringWidth(text, { countAnsiEscapeCodes: true });
}

/** Splits `text` into characters as a reader sees them (grapheme clusters). */
export function splitCharacters(text: string): string[] {
  return Array.from(segmenter.segment(text), (part) => part.segment);
}

const segmenter = new Intl.Segmenter("en", { granularity: "grapheme" });
