// Floor 7. Every word and sentence that a reader sees, by language. English is what the others are held against: one that a
// language lacks, or has too many, is an error of types; one with other values in it fails tests/words/catalogue.test.ts.

import { edges } from "./en/edges.ts";
import { entry } from "./en/entry.ts";
import { finder } from "./en/finder.ts";
import { flagPage } from "./en/flagpage.ts";
import { frame } from "./en/frame.ts";
import { front } from "./en/front.ts";
import { gain } from "./en/gain.ts";
import { near } from "./en/near.ts";
import { number } from "./en/number.ts";
import { ownPage } from "./en/ownpage.ts";
import { paging } from "./en/paging.ts";
import { picture } from "./en/picture.ts";
import { plate } from "./en/plate.ts";
import { rules } from "./en/rules.ts";
import { seriesPage } from "./en/seriespage.ts";
import { shelf } from "./en/shelf.ts";
import { status } from "./en/status.ts";
import { survey } from "./en/survey.ts";
import { surveyTable } from "./en/surveytable.ts";
import { verdict } from "./en/verdict.ts";
import { vote } from "./en/vote.ts";

/**
 * Messages as ICU has them: `{name}` is a value, `{count, plural, one {# edge} other {# edges}}` chooses by number, and
 * `<a>…</a>` is a part that a template makes a link of.
 *
 * Source: ICU, “Formatting Messages”, syntax of MessageFormat; Unicode CLDR, plural rules.
 */
export const english = {
  ...edges,
  ...entry,
  ...finder,
  ...flagPage,
  ...frame,
  ...front,
  ...gain,
  ...near,
  ...number,
  ...ownPage,
  ...paging,
  ...picture,
  ...plate,
  ...rules,
  ...seriesPage,
  ...shelf,
  ...status,
  ...survey,
  ...surveyTable,
  ...verdict,
  ...vote,
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
