// Floor 7. English: all messages, which the other languages are held against. One that a language lacks, or has too many,
// is an error of types; one with other values in it fails tests/words/catalogue.test.ts.

import { answer } from "./answer.ts";
import { colour } from "./colour.ts";
import { colours } from "./colours.ts";
import { doubt } from "./doubt.ts";
import { edge } from "./edge.ts";
import { edgefigure } from "./edgefigure.ts";
import { edgepage } from "./edgepage.ts";
import { edges } from "./edges.ts";
import { edgeSaid } from "./edgesaid.ts";
import { entry } from "./entry.ts";
import { facts } from "./facts.ts";
import { feed } from "./feed.ts";
import { fimbriation } from "./fimbriation.ts";
import { finder } from "./finder.ts";
import { flagPage } from "./flagpage.ts";
import { focus } from "./focus.ts";
import { frame } from "./frame.ts";
import { front } from "./front.ts";
import { gain } from "./gain.ts";
import { grade } from "./grade.ts";
import { history } from "./history.ts";
import { ladder } from "./ladder.ts";
import { lasting } from "./lasting.ts";
import { length } from "./length.ts";
import { likeness } from "./likeness.ts";
import { list } from "./list.ts";
import { maker } from "./maker.ts";
import { map } from "./map.ts";
import { mark } from "./mark.ts";
import { matrix } from "./matrix.ts";
import { method } from "./method.ts";
import { methodBeyond } from "./methodbeyond.ts";
import { methodGrade } from "./methodgrade.ts";
import { methodSight } from "./methodsight.ts";
import { methodTerm } from "./methodterm.ts";
import { metric } from "./metric.ts";
import { move } from "./move.ts";
import { moved } from "./moved.ts";
import { near } from "./near.ts";
import { number } from "./number.ts";
import { options } from "./options.ts";
import { otherChange } from "./otherchange.ts";
import { outcome } from "./outcome.ts";
import { ownPage } from "./ownpage.ts";
import { paging } from "./paging.ts";
import { pair } from "./pair.ts";
import { part } from "./part.ts";
import { picture } from "./picture.ts";
import { plate } from "./plate.ts";
import { price } from "./price.ts";
import { proposal } from "./proposal.ts";
import { question } from "./question.ts";
import { record } from "./record.ts";
import { refer } from "./refer.ts";
import { ruler } from "./ruler.ts";
import { rules } from "./rules.ts";
import { said } from "./said.ts";
import { seen } from "./seen.ts";
import { seriesPage } from "./seriespage.ts";
import { sheet } from "./sheet.ts";
import { shelf } from "./shelf.ts";
import { show } from "./show.ts";
import { sight } from "./sight.ts";
import { sizes } from "./sizes.ts";
import { spoken } from "./spoken.ts";
import { status } from "./status.ts";
import { still } from "./still.ts";
import { strip } from "./strip.ts";
import { study } from "./study.ts";
import { summary } from "./summary.ts";
import { survey } from "./survey.ts";
import { surveyTable } from "./surveytable.ts";
import { verdict } from "./verdict.ts";
import { vote } from "./vote.ts";

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
