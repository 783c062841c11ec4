// Floor 8. The front page: the newest study, those before it as cards, and all of them with the ways to find one.

import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { Status } from "../../content/study/study.ts";
import type { Verdict } from "../../measure/comparison.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { describeVerdict, slugVerdict, type VerdictView, verdictIds } from "../../words/verdict.ts";
import { type Linker, linkFrom } from "../address.ts";
import { type Linked, linkList } from "../linklist.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { listPath, mostOnPage } from "../paging.ts";
import { recordGallery } from "../schemarecord.ts";
import { wordsFile } from "../searchwords.ts";
import { presentSeriesCards, type SeriesCard } from "../series/seriesplace.ts";
import { countStudies, type ShelfKind } from "../shelf/shelf.ts";
import { linkIndexes, linkShelves, type ShelfIndexLink } from "../shelf/shelfindex.ts";
import { formatStudyPath, presentStatus } from "../status.ts";
import { type AnswerView, presentNominate } from "../study/answerview.ts";
import { type Card, orderStudies, presentCard } from "./card.ts";
import { type GainView, presentGain, rankGains } from "./gainchart.ts";

export interface FrontPage {
  readonly frame: Frame;
  readonly title: string;
  readonly description: string;
  readonly count: string;
  /** The newest study, with the whole verdict. */
  readonly lead: { readonly card: Card; readonly verdict: VerdictView } | undefined;
  readonly series: readonly SeriesCard[];
  readonly cards: readonly Card[];
  readonly gain: GainView | undefined;
  /** Studies without an edge, and the way to those that are too many to name: the chart has no line for them. */
  readonly edgeless: readonly Linked[];
  readonly finder: Finder | undefined;
  /** The ways to the indexes of authors and tags. */
  readonly shelves: readonly ShelfIndexLink[];
  /** The way to name a flag; undefined where the gallery takes none. */
  readonly nominate: AnswerView | undefined;
}

/** What the list can be narrowed to; a choice that would narrow nothing is left out. */
export interface Finder {
  /** Where the words of all studies are, for a script. */
  readonly words: string;
  readonly choices: readonly {
    readonly name: "status" | "verdict" | "tag" | "author";
    readonly label: string;
    readonly options: readonly { readonly value: string; readonly text: string }[];
  }[];
  readonly orders: readonly { readonly value: string; readonly text: string }[];
  /** What is said of a narrowed list, `#` standing for its length. */
  readonly found: string;
}

/** Cards under the newest study, a row of them: the list below has all. */
const mostCards = 3;

/** Studies without an edge that one sentence names. Our own judgement. */
const mostEdgeless = 99;

/** Tags, and authors, that the list can be narrowed to. Our own judgement: others are found by words. */
const mostChoices = 200;

const statuses: readonly Status[] = ["draft", "open", "adopted", "declined", "withdrawn"];
const verdicts: readonly Verdict[] = ["clearer", "clearer, at a price", "mixed", "less clear", "no gain"];

/** The front page of a gallery. */
export function presentFront(result: GalleryResult, format: Format): FrontPage {
  const { gallery } = result;
  const studies = orderStudies(result.studies);
  const link = linkFrom("/");
  const count = countStudies(studies.length, format);
  const [newest, ...older] = studies;
  const gain = presentGain(rankGains(studies, format), link, format);
  const edgeless = studies.filter(({ comparison: { clarity } }) => clarity.includes(null));
  // The rows of the chart are the list that it narrows.
  const rows = new Set([...(gain?.rows ?? []), ...(gain?.rest ?? [])].map(({ slug }) => slug));
  const listed = studies.filter(({ study }) => rows.has(study.slug));
  return {
    frame: presentFrame(
      {
        path: "/",
        title: undefined,
        description: gallery.description,
        section: "studies",
        ...pictureFirst(studies, gallery, format),
        record: recordGallery(gallery),
      },
      gallery,
      format,
    ),
    title: gallery.title,
    description: gallery.description,
    count,
    lead: newest && {
      card: presentCard(newest, link, format),
      verdict: describeVerdict(newest.comparison, format),
    },
    series: presentSeriesCards(result, link, format),
    cards: older.slice(0, mostCards).map((study) => presentCard(study, link, format)),
    gain,
    edgeless: listEdgeless(edgeless, studies.length > mostOnPage, link, format),
    finder: listed.length < 2 ? undefined : presentFinder(listed, studies.length, link, format),
    shelves: linkIndexes(studies, link, format),
    nominate: presentNominate(gallery, format),
  };
}

/** `isListed`: there is a list of all studies, which has those that are not named. */
function listEdgeless(
  studies: readonly StudyResult[],
  isListed: boolean,
  link: Linker,
  format: Format,
): readonly Linked[] {
  const named = studies
    .slice(0, isListed ? mostEdgeless : mostOnPage)
    .map(({ study }) => ({ text: formatTitle(study, format), address: link(formatStudyPath(study.slug)) }));
  const count = studies.length - named.length;
  const more = count > 0 ? [{ text: format.say("front.more", { count }), address: link(listPath) }] : [];
  return linkList([...named, ...more], format);
}

function presentFinder(studies: readonly StudyResult[], all: number, link: Linker, format: Format): Finder {
  const { say } = format;
  const fromShelves = (kind: ShelfKind) =>
    linkShelves(studies, kind, mostChoices, link, format).links.map(({ slug, name }) => ({
      value: slug,
      text: name,
    }));
  const choices: Finder["choices"] = [
    {
      name: "status",
      label: say("finder.status"),
      options: statuses
        .filter((status) => studies.some(({ study }) => study.status === status))
        .map((status) => ({ value: status, text: presentStatus(status, format).word })),
    },
    {
      name: "verdict",
      label: say("finder.verdict"),
      options: verdicts
        .filter((verdict) => studies.some(({ comparison }) => comparison.verdict === verdict))
        .map((verdict) => ({ value: slugVerdict(verdict), text: format.say(verdictIds[verdict]) })),
    },
    { name: "tag", label: say("finder.tag"), options: fromShelves("tags") },
    { name: "author", label: say("finder.author"), options: fromShelves("authors") },
  ];
  return {
    words: link(wordsFile),
    choices: choices.filter(({ options }) => options.length > 1),
    orders: [
      { value: "", text: say("finder.mostGained") },
      { value: "new", text: say("finder.newest") },
      { value: "lost", text: say("finder.mostLost") },
      { value: "unclear", text: say("finder.leastClear") },
      { value: "title", text: say("finder.title") },
    ],
    found:
      studies.length === all
        ? say("finder.found", { found: "#", count: all })
        : say("finder.foundListed", { found: "#", listed: format.number(studies.length, 0) }),
  };
}
