// Floor 0. Characters of a text that nobody sees: which of them a script or a picture needs where it stands, and which could
// only hide something.

/** Letters of scripts in which a joiner between letters is spelling. Source: UAX 31, section 2.3, and its table 4. */
const joined =
  "\\p{scx=Arab}\\p{scx=Syrc}\\p{scx=Nkoo}\\p{scx=Mong}\\p{scx=Deva}\\p{scx=Beng}\\p{scx=Guru}\\p{scx=Gujr}\\p{scx=Orya}\\p{scx=Taml}\\p{scx=Telu}\\p{scx=Knda}\\p{scx=Mlym}\\p{scx=Sinh}\\p{scx=Khmr}\\p{scx=Mymr}\\p{scx=Tibt}\\p{scx=Thaa}";

/** Letters that are read from right to left. Source: UAX 9, table 4, classes R and AL, by script. */
const rightToLeft =
  /(?=\p{L})[\p{sc=Hebr}\p{sc=Arab}\p{sc=Syrc}\p{sc=Thaa}\p{sc=Nkoo}\p{sc=Adlm}\p{sc=Samr}\p{sc=Mand}\p{sc=Rohg}]/u;

/**
 * What is invisible by itself and has its use. Sources: UTS 51, ED-9 to ED-17, for sequences of emoji, among them flags of
 * regions; UAX 31, section 2.3, for joiners; Unicode's StandardizedVariants.txt and UTS 37 for variants of letters; the
 * Unicode Standard, section 23.2, for the grapheme joiner between marks.
 */
const needed = [
  "(?<=\\u{1F3F4})[\\u{E0030}-\\u{E0039}\\u{E0061}-\\u{E007A}]{3,6}\\u{E007F}",
  "(?<=\\p{Extended_Pictographic})[\\ufe0e\\ufe0f]",
  "(?<=[0-9#*])\\ufe0f(?=\\u20e3)",
  "(?<=[\\p{Extended_Pictographic}\\p{Emoji_Modifier}\\ufe0f])\\u200d(?=\\p{Extended_Pictographic})",
  `(?<=[${joined}])\\u200d`,
  `(?<=[${joined}])\\u200c(?=[${joined}])`,
  "(?<=\\p{Unified_Ideograph})[\\ufe00-\\ufe02\\u{E0100}-\\u{E01EF}]",
  "(?<=[\\u1820-\\u18aa])[\\u180b-\\u180f]",
  "(?<=\\p{M})\\u034f(?=\\p{M})",
].join("|");

/**
 * What shows nothing: by property, and the letters, signs and ends of lines that are blank or that no renderer shows.
 * Sources: Unicode's DerivedCoreProperties.txt and PropList.txt; UAX 14, class BK; the Unicode Standard, sections 21.2
 * (U+1D159), 23.8 (U+FFF9) and the chart of U+2800.
 */
const invisible =
  "[\\p{Default_Ignorable_Code_Point}\\p{Bidi_Control}\\u2028\\u2029\\u2800\\u{1D159}\\ufff9-\\ufffb]";

const pattern = new RegExp(`(?<needed>${needed})|${invisible}`, "gu");

/** Marks that say in which direction a neutral sign belongs. */
const marks = /[\u200e\u200f\u061c]/;

/**
 * Returns `text` with `by` in the place of each character that cannot be seen and is of no use where it stands. Marks of
 * direction have their use in a text with letters that are read from right to left.
 *
 * Example: the joiner of a Persian word, and those of a family of emoji, stay; in `ferry` there is none to join.
 */
export function replaceInvisible(text: string, by: (character: string, at: number) => string): string {
  const hasMarks = rightToLeft.test(text);
  return text.replace(pattern, (found: string, use: string | undefined, at: number) =>
    use !== undefined || (hasMarks && marks.test(found)) ? found : by(found, at),
  );
}

/** Where a line may break, and which way a sign reads: a text has use for these, and a value has none. */
const usedInText = /[\u00ad\u200b\u2060\u200e\u200f\u061c]/;

/** As {@link replaceInvisible}, for prose. */
export function replaceInText(text: string, by: (character: string, at: number) => string): string {
  return replaceInvisible(text, (character, at) =>
    usedInText.test(character) ? character : by(character, at),
  );
}

/** Returns the first such character and its index, or undefined. */
export function findInvisible(text: string): { readonly character: string; readonly at: number } | undefined {
  let first: { readonly character: string; readonly at: number } | undefined;
  replaceInvisible(text, (character, at) => {
    first ??= { character, at };
    return "";
  });
  return first;
}

/** Returns whether nothing of `text` is seen: spaces, marks without a letter, and what is invisible. */
export function isBlank(text: string): boolean {
  return !visible.test(text);
}

const visible = new RegExp(`(?!${invisible})[\\p{L}\\p{N}\\p{P}\\p{S}\\p{Co}]`, "u");
