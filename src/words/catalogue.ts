// Floor 7. Every word and sentence that a reader sees, by language. English is what the others are held against: one that a
// language lacks, or has too many, is an error of types; one with other values in it fails tests/words/catalogue.test.ts.

import { arabic } from "./ar/all.ts";
import { german } from "./de/all.ts";
import { answer } from "./en/answer.ts";
import { colour } from "./en/colour.ts";
import { colours } from "./en/colours.ts";
import { doubt } from "./en/doubt.ts";
import { edge } from "./en/edge.ts";
import { edgefigure } from "./en/edgefigure.ts";
import { edgepage } from "./en/edgepage.ts";
import { edges } from "./en/edges.ts";
import { edgeSaid } from "./en/edgesaid.ts";
import { entry } from "./en/entry.ts";
import { facts } from "./en/facts.ts";
import { feed } from "./en/feed.ts";
import { fimbriation } from "./en/fimbriation.ts";
import { finder } from "./en/finder.ts";
import { flagPage } from "./en/flagpage.ts";
import { focus } from "./en/focus.ts";
import { frame } from "./en/frame.ts";
import { front } from "./en/front.ts";
import { gain } from "./en/gain.ts";
import { grade } from "./en/grade.ts";
import { history } from "./en/history.ts";
import { ladder } from "./en/ladder.ts";
import { lasting } from "./en/lasting.ts";
import { length } from "./en/length.ts";
import { likeness } from "./en/likeness.ts";
import { list } from "./en/list.ts";
import { maker } from "./en/maker.ts";
import { map } from "./en/map.ts";
import { mark } from "./en/mark.ts";
import { matrix } from "./en/matrix.ts";
import { method } from "./en/method.ts";
import { methodBeyond } from "./en/methodbeyond.ts";
import { methodGrade } from "./en/methodgrade.ts";
import { methodSight } from "./en/methodsight.ts";
import { methodTerm } from "./en/methodterm.ts";
import { metric } from "./en/metric.ts";
import { move } from "./en/move.ts";
import { moved } from "./en/moved.ts";
import { near } from "./en/near.ts";
import { number } from "./en/number.ts";
import { options } from "./en/options.ts";
import { otherChange } from "./en/otherchange.ts";
import { outcome } from "./en/outcome.ts";
import { ownPage } from "./en/ownpage.ts";
import { paging } from "./en/paging.ts";
import { pair } from "./en/pair.ts";
import { part } from "./en/part.ts";
import { picture } from "./en/picture.ts";
import { plate } from "./en/plate.ts";
import { price } from "./en/price.ts";
import { proposal } from "./en/proposal.ts";
import { question } from "./en/question.ts";
import { record } from "./en/record.ts";
import { refer } from "./en/refer.ts";
import { ruler } from "./en/ruler.ts";
import { rules } from "./en/rules.ts";
import { said } from "./en/said.ts";
import { seen } from "./en/seen.ts";
import { seriesPage } from "./en/seriespage.ts";
import { sheet } from "./en/sheet.ts";
import { shelf } from "./en/shelf.ts";
import { show } from "./en/show.ts";
import { sight } from "./en/sight.ts";
import { sizes } from "./en/sizes.ts";
import { spoken } from "./en/spoken.ts";
import { status } from "./en/status.ts";
import { still } from "./en/still.ts";
import { strip } from "./en/strip.ts";
import { study } from "./en/study.ts";
import { summary } from "./en/summary.ts";
import { survey } from "./en/survey.ts";
import { surveyTable } from "./en/surveytable.ts";
import { verdict } from "./en/verdict.ts";
import { vote } from "./en/vote.ts";
import { spanish } from "./es/all.ts";
import { french } from "./fr/all.ts";

/**
 * Messages as ICU has them: `{name}` is a value, `{count, plural, one {# edge} other {# edges}}` chooses by number, and
 * `<a>…</a>` is a part that a template makes a link of.
 *
 * Source: ICU, “Formatting Messages”, syntax of MessageFormat; Unicode CLDR, plural rules.
 */
export const english = {
  ...answer,
  ...colour,
  ...colours,
  ...doubt,
  ...edge,
  ...edgefigure,
  ...edgepage,
  ...edges,
  ...edgeSaid,
  ...entry,
  ...facts,
  ...feed,
  ...fimbriation,
  ...finder,
  ...flagPage,
  ...focus,
  ...frame,
  ...front,
  ...gain,
  ...grade,
  ...history,
  ...ladder,
  ...lasting,
  ...length,
  ...likeness,
  ...list,
  ...maker,
  ...map,
  ...mark,
  ...matrix,
  ...method,
  ...methodBeyond,
  ...methodGrade,
  ...methodSight,
  ...methodTerm,
  ...metric,
  ...move,
  ...moved,
  ...near,
  ...number,
  ...options,
  ...otherChange,
  ...outcome,
  ...ownPage,
  ...paging,
  ...pair,
  ...part,
  ...picture,
  ...plate,
  ...price,
  ...proposal,
  ...question,
  ...record,
  ...refer,
  ...ruler,
  ...rules,
  ...said,
  ...seen,
  ...seriesPage,
  ...sheet,
  ...shelf,
  ...show,
  ...sight,
  ...sizes,
  ...spoken,
  ...status,
  ...still,
  ...strip,
  ...study,
  ...summary,
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

const catalogues: Readonly<Record<string, Catalogue>> = {
  en: english,
  ar: arabic,
  de: german,
  es: spanish,
  fr: french,
};

/** The languages that all messages are written in, as BCP 47 tags. */
export const languages: readonly string[] = Object.keys(catalogues);

/** The messages in `language`, a BCP 47 tag, or in English where there are none: `de-AT` has those of `de`. */
export function findCatalogue(language: string): Catalogue {
  return catalogues[new Intl.Locale(language).language] ?? english;
}
