// Floor 5. Takes out of an author's text what a reader cannot see but a page would obey.

/** A cleaned text. `directions` names the characters that were taken out, `U+202E`, one entry each. */
export interface CleanText {
  readonly text: string;
  readonly directions: readonly string[];
  /** How many control characters became U+FFFD. */
  readonly controls: number;
}

/**
 * Returns `text` normalised to NFC, without the direction controls U+202A–202E and U+2066–2069, and with every
 * control character but tab and newline as U+FFFD.
 *
 * Source: Unicode Standard Annex 9 (explicit directional formatting); CommonMark 0.31, section 2.3 (U+0000).
 */
export function cleanText(text: string): CleanText {
  const directions = Array.from(text.matchAll(directionControl), ([character]) => nameCharacter(character));
  let controls = 0;
  const cleaned = text
    .normalize("NFC")
    .replace(directionControl, "")
    .replace(control, () => {
      controls += 1;
      return "\ufffd";
    });
  return { text: cleaned, directions, controls };
}

/** What to do about a character that nobody typed. */
export const typeAgain = "Type the text again by hand; copying brought the character along.";

/** Returns the code point of a character as Unicode writes it: `U+202E`. */
export function nameCharacter(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
}

/**
 * A letter with more marks than any script puts on one, which would be drawn over the lines around it.
 *
 * Source: our own judgement; the Unicode Standard, section 3.13, stream-safe format, allows thirty.
 */
export const stacked = /\p{M}{6}/u;

const directionControl = /[\u202a-\u202e\u2066-\u2069]/g;

/** Every control character but tab and newline. */
export const control = /[^\P{Cc}\t\n]/gu;
