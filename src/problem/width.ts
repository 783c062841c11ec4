// Floor 0. How many columns of a terminal a text takes, so that a caret stands under the character it means.

/**
 * Returns the number of terminal columns of `text`: 0 for marks that combine, 2 for wide East Asian characters
 * and emoji, 1 for the rest. Counts whole characters as a reader sees them.
 *
 * Example: `measureColumns("旗 é")` is 4.
 *
 * Source: Unicode Standard Annex 11 (East Asian Width, classes W and F, by block), Annex 29 (grapheme clusters).
 */
export function measureColumns(text: string): number {
  let columns = 0;
  for (const character of splitCharacters(text)) columns += isWide(character) ? 2 : isMark(character) ? 0 : 1;
  return columns;
}

/** Splits `text` into characters as a reader sees them (grapheme clusters). */
export function splitCharacters(text: string): string[] {
  return Array.from(segmenter.segment(text), (part) => part.segment);
}

const segmenter = new Intl.Segmenter("en", { granularity: "grapheme" });

function isMark(character: string): boolean {
  return /^[\p{Mn}\p{Me}\p{Cf}]+$/u.test(character);
}

function isWide(character: string): boolean {
  if (/^\p{Emoji_Presentation}/u.test(character) || /\ufe0f/u.test(character)) return true;
  const code = character.codePointAt(0) ?? 0;
  return wideBlocks.some(([first, last]) => code >= first && code <= last);
}

/** Blocks whose characters are of class W or F. Source: EastAsianWidth.txt of Unicode 15.1, joined by block. */
const wideBlocks: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f],
  [0x2e80, 0x303e],
  [0x3041, 0x33ff],
  [0x3400, 0x4dbf],
  [0x4e00, 0xa4cf],
  [0xa960, 0xa97f],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe30, 0xfe6f],
  [0xff00, 0xff60],
  [0xffe0, 0xffe6],
  [0x17000, 0x18cff],
  [0x1b000, 0x1b2ff],
  [0x1f300, 0x1f64f],
  [0x1f900, 0x1f9ff],
  [0x20000, 0x3fffd],
];
