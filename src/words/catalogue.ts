// Floor 7. Every word and sentence that a reader sees, by language. English is what the others are held against: one that a
// language lacks, or has too many, is an error of types; one with other values in it fails tests/words/catalogue.test.ts.

import { answer } from "./en/answer.ts";
import { colours } from "./en/colours.ts";
import { edge } from "./en/edge.ts";
import { edgefigure } from "./en/edgefigure.ts";
import { edgepage } from "./en/edgepage.ts";
import { edges } from "./en/edges.ts";
import { facts } from "./en/facts.ts";
import { frame } from "./en/frame.ts";
import { front } from "./en/front.ts";
import { grade } from "./en/grade.ts";
import { history } from "./en/history.ts";
import { ladder } from "./en/ladder.ts";
import { lasting } from "./en/lasting.ts";
import { length } from "./en/length.ts";
import { likeness } from "./en/likeness.ts";
import { map } from "./en/map.ts";
import { mark } from "./en/mark.ts";
import { matrix } from "./en/matrix.ts";
import { move } from "./en/move.ts";
import { number } from "./en/number.ts";
import { options } from "./en/options.ts";
import { outcome } from "./en/outcome.ts";
import { pair } from "./en/pair.ts";
import { plate } from "./en/plate.ts";
import { record } from "./en/record.ts";
import { refer } from "./en/refer.ts";
import { ruler } from "./en/ruler.ts";
import { said } from "./en/said.ts";
import { seen } from "./en/seen.ts";
import { sight } from "./en/sight.ts";
import { sizes } from "./en/sizes.ts";
import { strip } from "./en/strip.ts";
import { study } from "./en/study.ts";
import { summary } from "./en/summary.ts";
import { verdict } from "./en/verdict.ts";

/**
 * Messages as ICU has them: `{name}` is a value, `{count, plural, one {# edge} other {# edges}}` chooses by number, and
 * `<a>…</a>` is a part that a template makes a link of.
 *
 * Source: ICU, “Formatting Messages”, syntax of MessageFormat; Unicode CLDR, plural rules.
 */
export const english = {
  ...answer,
  ...colours,
  ...edge,
  ...edgefigure,
  ...edgepage,
  ...edges,
  ...facts,
  ...frame,
  ...front,
  ...grade,
  ...history,
  ...ladder,
  ...lasting,
  ...length,
  ...likeness,
  ...map,
  ...mark,
  ...matrix,
  ...move,
  ...number,
  ...options,
  ...outcome,
  ...pair,
  ...plate,
  ...record,
  ...refer,
  ...ruler,
  ...said,
  ...seen,
  ...sight,
  ...sizes,
  ...strip,
  ...study,
  ...summary,
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
