// Floor 7. Every word and sentence that a reader sees, by language. English is what the others are held against: one that a
// language lacks, or has too many, is an error of types; one with other values in it fails tests/words/catalogue.test.ts.

import { edges } from "./en/edges.ts";
import { feed } from "./en/feed.ts";
import { frame } from "./en/frame.ts";
import { grade } from "./en/grade.ts";
import { maker } from "./en/maker.ts";
import { method } from "./en/method.ts";
import { methodBeyond } from "./en/methodbeyond.ts";
import { methodGrade } from "./en/methodgrade.ts";
import { methodSight } from "./en/methodsight.ts";
import { methodTerm } from "./en/methodterm.ts";
import { number } from "./en/number.ts";
import { outcome } from "./en/outcome.ts";
import { part } from "./en/part.ts";
import { sheet } from "./en/sheet.ts";
import { show } from "./en/show.ts";
import { still } from "./en/still.ts";
import { verdict } from "./en/verdict.ts";

/**
 * Messages as ICU has them: `{name}` is a value, `{count, plural, one {# edge} other {# edges}}` chooses by number, and
 * `<a>…</a>` is a part that a template makes a link of.
 *
 * Source: ICU, “Formatting Messages”, syntax of MessageFormat; Unicode CLDR, plural rules.
 */
export const english = {
  ...edges,
  ...feed,
  ...frame,
  ...grade,
  ...maker,
  ...method,
  ...methodBeyond,
  ...methodGrade,
  ...methodSight,
  ...methodTerm,
  ...number,
  ...outcome,
  ...part,
  ...sheet,
  ...show,
  ...still,
  ...verdict,
};

export type WordId = keyof typeof english;

/** All messages in one language. */
export type Catalogue = Readonly<Record<WordId, string>>;

/** The messages of one file in another language: `export const frame: In<typeof english> = …`. */
export type In<English> = Readonly<Record<keyof English, string>>;

const catalogues: Readonly<Record<string, Catalogue>> = { en: english };

/** The languages that all messages are written in, as BCP 47 tags. */
export const languages: readonly string[] = Object.keys(catalogues);

/** The messages in `language`, a BCP 47 tag, or in English where there are none: `de-AT` has those of `de`. */
export function findCatalogue(language: string): Catalogue {
  return catalogues[new Intl.Locale(language).language] ?? english;
}
