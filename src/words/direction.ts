// Floor 7. Which way words run: of a language, and of a piece of text among others.

/** Scripts that run from right to left. Source: Unicode Standard Annex 9, strong types R and AL, by ISO 15924 code. */
const rightToLeft = ["Adlm", "Arab", "Hebr", "Mand", "Nkoo", "Rohg", "Samr", "Syrc", "Thaa"];
const letter = new RegExp(`[${rightToLeft.map((script) => `\\p{sc=${script}}`).join("")}]`, "u");

/** Letters that run from left to right, of the scripts that names among others are in. */
const leftToRight = /[\p{sc=Latn}\p{sc=Grek}\p{sc=Cyrl}]/u;

/** Whether a text has letters that run from right to left. */
export function hasRightToLeft(text: string): boolean {
  return letter.test(text);
}

/** The direction of pages in `language`, a BCP 47 tag; throws RangeError for any other text. */
export function directionOf(language: string): "ltr" | "rtl" {
  const script = new Intl.Locale(language).maximize().script ?? "Latn";
  // Nastaliq is Arabic in a hand of its own, and has a code but no letters of its own.
  return script === "Aran" || rightToLeft.includes(script) ? "rtl" : "ltr";
}

/** What a page says of a text that is not in its own language; nothing where it is. */
export interface Tongue {
  readonly lang?: string;
  readonly dir?: "ltr" | "rtl";
}

/** The language of a text on pages in another, both BCP 47 tags. */
export function tongueOf(text: string | undefined, page: string): Tongue {
  return text === undefined || text === page ? {} : { lang: text, dir: directionOf(text) };
}

/**
 * Returns a piece of text that keeps its own order between the rest, whichever way that runs: marked where it has letters
 * from right to left. Source: Unicode Standard Annex 9, FSI and PDI.
 */
export function isolate(text: string): string {
  return letter.test(text) ? `\u2068${text}\u2069` : text;
}

/**
 * The same for a piece with letters from left to right alone, in a text that runs from right to left. Before it stands a mark
 * of that direction, so that a text which begins with the piece runs that way too. An address is left as it is, to be followed.
 * Source: Unicode Standard Annex 9, RLM.
 */
export function isolateForeign(text: string): string {
  const isForeign = leftToRight.test(text) && !letter.test(text) && !text.includes("://");
  return isForeign ? markForeign(text) : text;
}

/** Marks such a piece, whatever is in it: a percentage in Arabic comes with marks that run to the right. */
export function markForeign(text: string): string {
  return `\u200f\u2068${text}\u2069`;
}

/** Returns the text without the marks of isolate and isolateForeign, for programs. */
export function withoutMarks(text: string): string {
  return text.replace(/[\u200f\u2068\u2069]/g, "");
}
