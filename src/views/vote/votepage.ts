// Floor 8. The vote on a series: one question a flag, blind to the numbers, which follow beside one's own choice.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { type Series, studyOf } from "../../content/series/series.ts";
import type { Format } from "../../words/format.ts";
import { describePaints } from "../../words/paintname.ts";
import { describeVerdict } from "../../words/verdict.ts";
import { formatCanonical, type Linker, linkFrom } from "../address.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { type Plate, presentPair } from "../plate.ts";
import { formatSeriesPath, orderSeries } from "../series/seriespage.ts";
import { formatStudyPath } from "../status.ts";
import { type AnswerView, presentAnswer } from "../study/answerview.ts";
import { orderSides } from "./ballotsides.ts";
import { countQuestion, type QuestionCount } from "./votecount.ts";

export interface VotePage {
  readonly frame: Frame;
  readonly slug: string;
  readonly title: string;
  readonly back: string;
  readonly questions: readonly VoteQuestion[];
  /** The seed of the sides as the page has them without a script, and on paper. */
  readonly seed: string;
  /** The way to send a ballot: its line stands for {@link ballotLine} in the address. */
  readonly send: AnswerView | undefined;
  /** How many ballots came back. */
  readonly ballots: number;
}

export interface VoteQuestion {
  /** Its id on the page: `n1`. */
  readonly anchor: string;
  /** `1 of 6`. */
  readonly place: string;
  /** The slug of its first study: what its sides are ordered by. */
  readonly key: string;
  readonly flag: string;
  readonly sides: readonly VoteSide[];
  readonly count: QuestionCount | undefined;
}

/** One flag to choose. `letter` is that of its place, `side` and `study` what a ballot says of it. */
export interface VoteSide {
  readonly letter: string;
  readonly side: string;
  readonly study: string;
  /** Its words name no side: whoever cannot see the flags votes as blindly. */
  readonly plate: Plate;
  /** What it is, once the choice is made. */
  readonly name: string;
  readonly clarity: string;
  /** Of a redesign, with the way to its study. */
  readonly verdict: { readonly sentence: string; readonly address: string } | undefined;
}

/** Stands in the address that sends a ballot for its line of text. No slug has it, and a title that does loses it there. */
export const ballotLine = "~ballot~";

/** The site path of the vote on a series. */
export function formatVotePath(slug: string): string {
  return `${formatSeriesPath(slug)}vote/`;
}

/** The votes on all series that hold a study. */
export function presentVotes(result: GalleryResult, format: Format): readonly VotePage[] {
  const bySlug = new Map(result.studies.map((one) => [one.study.slug, one]));
  return orderSeries(result.series ?? []).flatMap((series) => {
    const questions = listQuestions(series, bySlug, result);
    return questions.length === 0 ? [] : presentVote(series, questions, result, format);
  });
}

/** Studies of a series in their order, those of one flag together where the first of them stands. */
function listQuestions(
  series: Series,
  bySlug: ReadonlyMap<string, StudyResult>,
  { survey }: GalleryResult,
): readonly (readonly StudyResult[])[] {
  const flagOf = new Map(
    survey?.entries.flatMap(({ flag, slugs }) => slugs.map((slug) => [slug, flag.file])),
  );
  const questions = new Map<string, StudyResult[]>();
  for (const slug of series.entries.flatMap((entry) => studyOf(entry) ?? [])) {
    const study = bySlug.get(slug);
    const key = flagOf.get(slug) ?? slug;
    if (study !== undefined) questions.set(key, [...(questions.get(key) ?? []), study]);
  }
  return [...questions.values()];
}

function presentVote(
  series: Series,
  questions: readonly (readonly StudyResult[])[],
  { gallery }: GalleryResult,
  format: Format,
): VotePage {
  const path = formatVotePath(series.slug);
  const link = linkFrom(path);
  const { ballots = [], slug, title } = series;
  const address = formatCanonical(gallery.address, path) ?? path;
  return {
    frame: presentFrame(
      {
        path,
        title: format.say("vote.title", { series: title }),
        description: format.say("vote.description", { series: title }),
        section: "studies",
        isArticle: true,
        ...pictureFirst(questions.flat(), gallery, format),
      },
      gallery,
      format,
    ),
    slug,
    title,
    back: link(formatSeriesPath(slug)),
    questions: questions.map((studies, index) =>
      presentQuestion(studies, { index, of: questions.length }, series, link, format),
    ),
    seed: slug,
    send: presentAnswer(
      gallery.answer,
      {
        title: format.say("vote.letter", { series: title.replaceAll(ballotLine, " ") }),
        edge: undefined,
        stamped: address,
        numbers: [ballotLine],
      },
      format,
    ),
    ballots: ballots.length,
  };
}

function presentQuestion(
  studies: readonly StudyResult[],
  { index, of }: { readonly index: number; readonly of: number },
  { slug, ballots = [], showWords = false }: Series,
  link: Linker,
  format: Format,
): VoteQuestion {
  const [first] = studies;
  if (first === undefined) throw new RangeError("a question without a study");
  const key = first.study.slug;
  const all = [
    presentOriginal(first, link, format),
    ...studies.map((one) => presentRedesign(one, studies, link, format)),
  ];
  const order = orderSides(
    slug,
    key,
    all.map(({ side }) => side),
  );
  const sides = order.flatMap((side, place) =>
    all.filter((one) => one.side === side).map((one) => ({ ...one, letter: letters[place] ?? "?" })),
  );
  const counted = [...all, { side: "neither", name: format.say("vote.neither") }].map(({ side, name }) => ({
    side,
    name,
  }));
  const number = format.number(index + 1, 0);
  const slugs = studies.map(({ study }) => study.slug);
  return {
    anchor: `n${index + 1}`,
    place: format.say("vote.place", { number, count: format.number(of, 0) }),
    key,
    // The title of a study says what it changes.
    flag: first.study.flag ?? format.say("vote.flag", { number }),
    sides,
    count: countQuestion(ballots, slugs, counted, format, showWords),
  };
}

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

function presentOriginal(result: StudyResult, link: Linker, format: Format): Omit<VoteSide, "letter"> {
  const { study, comparison } = result;
  return {
    side: "original",
    study: study.slug,
    plate: {
      ...presentPair(result, link, format)[0],
      alt: format.say("vote.alt", { paints: describePaints(comparison.before, format) }),
    },
    name: format.say("vote.original"),
    clarity: format.percent(comparison.clarity[0]),
    verdict: undefined,
  };
}

function presentRedesign(
  result: StudyResult,
  rivals: readonly StudyResult[],
  link: Linker,
  format: Format,
): Omit<VoteSide, "letter"> {
  const { study, comparison } = result;
  return {
    side: study.slug,
    study: study.slug,
    plate: {
      ...presentPair(result, link, format)[1],
      alt: format.say("vote.alt", { paints: describePaints(comparison.after, format) }),
    },
    name:
      rivals.length > 1 ? format.say("vote.redesignOf", { title: study.title }) : format.say("vote.redesign"),
    clarity: format.percent(comparison.clarity[1]),
    verdict: {
      sentence: describeVerdict(comparison, format).sentence,
      address: link(formatStudyPath(study.slug)),
    },
  };
}
