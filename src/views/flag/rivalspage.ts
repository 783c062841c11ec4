// Floor 8. `/flags/<slug>/`: all studies of one flag beside its original and beside each other, and who named it; and two of
// its studies alone.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { ComparedEdge } from "../../measure/comparison.ts";
import type { Format } from "../../words/format.ts";
import { findReplaced } from "../../words/paintname.ts";
import { capitalise, formatNames } from "../../words/phrase.ts";
import { countRivals, describeClearest } from "../../words/rivalphrase.ts";
import { describeVerdict, type VerdictView } from "../../words/verdict.ts";
import { type Linker, linkFrom } from "../address.ts";
import { listPlacedEdges } from "../edge/edgeaddress.ts";
import { type Card, presentCard } from "../front/card.ts";
import { type Linked, linkList } from "../linklist.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { type Plate, presentPlate } from "../plate.ts";
import { firstSentence } from "../renderprose.ts";
import { recordList } from "../schemarecord.ts";
import { presentChosen, type RulerView } from "../study/contrastruler.ts";
import { presentLikeness } from "../study/likenessfact.ts";
import { anchorOf, placeDrawing, surveyPath } from "../survey/flagname.ts";
import { describeSurveyPicture, pictureSurvey } from "../survey/surveylinkview.ts";
import { formatFlagPath, listRivals, type RivalFlag, sayNominated } from "./findrivals.ts";

export interface RivalsPage {
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly frame: Frame;
  readonly title: string;
  readonly count: string;
  /** Which is the clearest; undefined where there are not two. */
  readonly lead: string | undefined;
  /** The way back to all of them, where these are two. */
  readonly all: string | undefined;
  /** Who named it, and why; none where two of its studies stand alone. */
  readonly nominated: readonly string[];
  /** Its row in the survey. */
  readonly survey: string;
  /** The original, which is not among them where two stand alone, and each redesign: all at one scale. */
  readonly plates: readonly NumberedPlate[];
  readonly proposals: readonly Proposal[];
  /** Undefined where the flag has no edge. */
  readonly ruler: RulerView | undefined;
  /** The pages of two of them, and what stands between; none where they are two. */
  readonly pairs: readonly Linked[];
}

export interface NumberedPlate {
  readonly plate: Plate;
  readonly caption: string;
  readonly clarity: string;
  /** Where its study is; undefined for the original. */
  readonly address: string | undefined;
}

/** One of the redesigns. */
export interface Proposal {
  readonly number: string;
  readonly card: Card;
  readonly verdict: VerdictView;
  /** The first sentence of the argument. */
  readonly argument: string | undefined;
  readonly focusClarity: { readonly before: string; readonly after: string } | undefined;
  /** Share of the flag that changes. */
  readonly share: string;
  /** What it could be taken for. */
  readonly likeness: string | undefined;
}

/** Rivals that the page of a flag shows: more are no comparison (our own judgement). `count` says so. */
const mostShown = 24;
/** Up to so many rivals each two of them have a page, which are fifteen. */
const mostPaired = 6;

/** A study with the number it has on all pages of its flag, from 1. */
interface Numbered {
  readonly result: StudyResult;
  readonly number: string;
}

/** The pages of every flag with rivals or a nomination: one of all, and one of each two. */
export function presentRivals(result: GalleryResult, format: Format): readonly RivalsPage[] {
  return listRivals(result).flatMap((flag) => {
    const all = flag.studies
      .slice(0, mostShown)
      .map((one, at) => ({ result: one, number: format.number(at + 1, 0) }));
    const twos = all.length > 2 && all.length <= mostPaired ? pairUp(all) : [];
    const pairs = twos.map((two) => ({ two, path: formatPairPath(flag, two) }));
    const path = formatFlagPath(flag.slug);
    return [
      presentOne(flag, all, path, result, format, pairs),
      ...pairs.map((pair) => presentOne(flag, pair.two, pair.path, result, format)),
    ];
  });
}

function pairUp(all: readonly Numbered[]): readonly (readonly [Numbered, Numbered])[] {
  return all.flatMap((one, at) => all.slice(at + 1).map((other) => [one, other] as const));
}

function formatPairPath({ slug }: RivalFlag, two: readonly [Numbered, Numbered]): string {
  return `${formatFlagPath(slug)}${two.map(({ result }) => result.study.slug).join("/")}/`;
}

function presentOne(
  flag: RivalFlag,
  chosen: readonly Numbered[],
  path: string,
  all: GalleryResult,
  format: Format,
  pairs?: readonly { readonly two: readonly [Numbered, Numbered]; readonly path: string }[],
): RivalsPage {
  const link = linkFrom(path);
  const count = countRivals(chosen.length, pairs === undefined ? chosen.length : flag.studies.length, format);
  const proposals = chosen.map((one) => presentProposal(one, all, link, format));
  const changes = proposals.map(({ number, card }) => `${number}. ${card.change}`);
  const title =
    pairs === undefined ? format.say("flagPage.two", { flag: flag.name, ...nameTwo(chosen) }) : flag.name;
  const nominated = pairs === undefined ? [] : sayNominated(flag, format);
  const named = nominated.length > 0 ? [format.say("flagPage.namedShort")] : [];
  const description = [`${capitalise(count)}.`, ...changes, ...named].join(" ");
  return {
    folder: path.slice(1, -1),
    frame: presentFrame(
      {
        path,
        title,
        description,
        section: "studies",
        ...pictureFlag(chosen, all, format),
        record: recordList(title, description, all.gallery),
      },
      all.gallery,
      format,
    ),
    title: flag.name,
    count: capitalise(count),
    lead: describeClearest(
      chosen.map(({ result: { comparison }, number }) => ({ ...comparison, number })),
      format,
    ),
    nominated,
    survey: link(`${surveyPath}#${anchorOf(flag.entry)}`),
    all: pairs === undefined ? link(formatFlagPath(flag.slug)) : undefined,
    plates: [
      ...(pairs === undefined ? [] : [presentOriginal(flag, link, format)]),
      ...proposals.map(({ number, card }) => ({
        plate: { ...card.plates[1], label: format.say("flagPage.proposal", { number }) },
        caption: card.change,
        clarity: card.clarity.after,
        address: card.address,
      })),
    ],
    proposals,
    ruler: presentRivalRuler(chosen, link, format),
    pairs: linkList(
      (pairs ?? []).map(({ two, path: at }) => ({
        text: format.say("flagPage.pair", nameTwo(two)),
        address: link(at),
      })),
      format,
      "unit",
    ),
  };
}

/** The numbers of two, for a message. */
function nameTwo([one, other]: readonly Numbered[]): { readonly one: string; readonly other: string } {
  return { one: one?.number ?? "", other: other?.number ?? "" };
}

/** The link picture of its first study; of a flag without one that of the survey, on which it stands. */
function pictureFlag(
  chosen: readonly Numbered[],
  { gallery, survey }: GalleryResult,
  format: Format,
): ReturnType<typeof pictureFirst> {
  if (chosen.length > 0)
    return pictureFirst(
      chosen.map(({ result }) => result),
      gallery,
      format,
    );
  const picture = survey && pictureSurvey(survey, gallery, format);
  return picture
    ? { picture: { path: `/${picture.file}`, alt: describeSurveyPicture(picture, format) } }
    : {};
}

function presentOriginal({ entry, studies }: RivalFlag, link: Linker, format: Format): NumberedPlate {
  const label = format.say(studies.length === 0 ? "plate.asItIs" : "plate.original");
  const plate = presentPlate(label, link(placeDrawing(entry)), entry.measure, format);
  const { clarity, weakestEdge } = entry.measure;
  return {
    plate,
    caption: weakestEdge
      ? format.say("flagPage.weakest", { contrast: format.contrast(weakestEdge.contrast) })
      : "",
    clarity: format.percent(clarity),
    address: undefined,
  };
}

function presentProposal(
  { result, number }: Numbered,
  all: GalleryResult,
  link: Linker,
  format: Format,
): Proposal {
  const { comparison } = result;
  const { before, after } = comparison;
  const likeness = presentLikeness(result, all, link, format);
  return {
    number,
    card: presentCard(result, link, format),
    verdict: describeVerdict(comparison, format),
    argument: firstSentence(result.study.body, all.gallery.language),
    focusClarity:
      before.focus.source === "none"
        ? undefined
        : { before: format.percent(before.focus.clarity), after: format.percent(after.focus.clarity) },
    share: format.share(findReplaced(comparison, result.change.replace)?.share ?? 0),
    likeness: likeness?.isNear ? likeness.sentence : undefined,
  };
}

/** Every edge that one of them moves, the longest first, with the line of each of them under one another. */
function presentRivalRuler(chosen: readonly Numbered[], link: Linker, format: Format): RulerView | undefined {
  const lines = chosen.flatMap(({ result, number }) => {
    const paths = new Map(
      listPlacedEdges(result.study.slug, result.comparison).map(({ edge, path }) => [edge, path]),
    );
    return result.comparison.edges.map((edge) => ({ result, edge, number, path: paths.get(edge) }));
  });
  const moved = new Set(lines.filter(({ edge }) => edge.outcome !== "same").map(({ edge }) => keyOf(edge)));
  const shown = lines
    .filter(({ edge }) => moved.has(keyOf(edge)))
    .sort((a, b) => b.edge.length - a.edge.length || keyOf(a.edge).localeCompare(keyOf(b.edge), "en"));
  if (shown.length === 0) return undefined;
  const rows = shown.map(({ result, edge, number, path }, at) => ({
    result,
    edge,
    called: `${number} ${nameNew(edge, format)}`,
    ...(keyOf(edge) === keyOf(shown[at - 1]?.edge) ? {} : { group: formatNames(edge.names[0], format) }),
    ...(path === undefined ? {} : { address: link(path) }),
  }));
  return presentChosen(rows, link, format);
}

/** What stands where it meets in the redesign, of that what the original does not have. */
function nameNew({ names: [was, is] }: ComparedEdge, format: Format): string {
  const [one, other] = is.filter((name) => !was.includes(name));
  return one !== undefined && other === undefined ? one : formatNames(is, format);
}

/** Rivals share the paints of one drawing. */
function keyOf(edge: ComparedEdge | undefined): string {
  return edge === undefined ? "" : `${edge.a}-${edge.b}`;
}
