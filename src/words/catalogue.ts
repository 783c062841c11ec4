// Floor 7. Every word and sentence that a reader sees, by language. English is what the others are held against: one that a
// language lacks, or has too many, is an error of types; one with other values in it fails tests/words/catalogue.test.ts.

import { colour } from "./en/colour.ts";
import { doubt } from "./en/doubt.ts";
import { edges } from "./en/edges.ts";
import { edgeSaid } from "./en/edgesaid.ts";
import { fimbriation } from "./en/fimbriation.ts";
import { focus } from "./en/focus.ts";
import { frame } from "./en/frame.ts";
import { grade } from "./en/grade.ts";
import { list } from "./en/list.ts";
import { metric } from "./en/metric.ts";
import { moved } from "./en/moved.ts";
import { number } from "./en/number.ts";
import { otherChange } from "./en/otherchange.ts";
import { outcome } from "./en/outcome.ts";
import { price } from "./en/price.ts";
import { proposal } from "./en/proposal.ts";
import { question } from "./en/question.ts";
import { spoken } from "./en/spoken.ts";
import { verdict } from "./en/verdict.ts";

/**
 * Messages as ICU has them: `{name}` is a value, `{count, plural, one {# edge} other {# edges}}` chooses by number, and
 * `<a>…</a>` is a part that a template makes a link of.
 *
 * Source: ICU, “Formatting Messages”, syntax of MessageFormat; Unicode CLDR, plural rules.
 */
export const english = {
  ...colour,
  ...doubt,
  ...edges,
  ...edgeSaid,
  ...fimbriation,
  ...focus,
  ...frame,
  ...grade,
  ...list,
  ...metric,
  ...moved,
  ...number,
  ...otherChange,
  ...outcome,
  ...price,
  ...proposal,
  ...question,
  ...spoken,
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
