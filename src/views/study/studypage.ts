// Floor 8. A study page as finished values: the one view that its template prints.

import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { FigureKind } from "../../content/study/figurekind.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import { type Tongue, tongueOf } from "../../words/direction.ts";
import { type FimbriationView, presentFimbriations } from "../../words/fimbriationfact.ts";
import { describeViewing, type FocusView, presentFocus } from "../../words/focusfact.ts";
import type { Format } from "../../words/format.ts";
import { type LastingView, presentLasting } from "../../words/fromafar.ts";
import { findFallen } from "../../words/optionwords.ts";
import { findChanged, type Swatch } from "../../words/paintname.ts";
import { capitalise, formatNames } from "../../words/phrase.ts";
import { formatTitle } from "../../words/title.ts";
import { describeChange, describeVerdict, type VerdictView } from "../../words/verdict.ts";
import { type Linker, linkFrom } from "../address.ts";
import { listPlacedEdges, placeEdges } from "../edge/edgeaddress.ts";
import { presentRivalPlace, type RivalFlag, type RivalPlace } from "../flag/findrivals.ts";
import { type Gains, presentGain, rankGains } from "../front/gainchart.ts";
import { describePicture, type LinkPicture, linkFile, pictureStudy } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { type DrawnPlate, type MarkedPlate, type Plate, presentPair } from "../plate.ts";
import { type ProseBlock, renderProse } from "../renderprose.ts";
import { recordStudy } from "../schemarecord.ts";
import { presentPlaces, type SeriesIndex, type SeriesPlace } from "../series/seriesplace.ts";
import { formatMakerPath } from "../sheet/makerpage.ts";
import { formatChangesPath, formatStudyPath, presentStatus, type StatusView } from "../status.ts";
import { type AnswerView, presentAnswer } from "./answerview.ts";
import { type Byline, presentByline } from "./byline.ts";
import { presentRefer, type ReferView } from "./citation.ts";
import { type ColourRow, presentColours } from "./colours.ts";
import { presentRuler, type RulerView } from "./contrastruler.ts";
import { presentStrip, type StripView } from "./distancestrip.ts";
import { presentDetails } from "./edgedetail.ts";
import { type EdgeMapView, presentEdgeMap } from "./edgemap.ts";
import { type FactsView, presentFacts } from "./facts.ts";
import { type HistoryView, presentHistory } from "./historyview.ts";
import { type LikenessView, presentLikeness } from "./likenessfact.ts";
import { type MatrixView, presentMatrix } from "./matrixview.ts";
import { type Download, type NotesView, presentNotes } from "./notes.ts";
import { type OptionsLine, presentOptionsLine } from "./optionsview.ts";
import { createFigures, type ProseFigure } from "./prosefigure.ts";
import { type LadderView, presentLadder } from "./reflectanceladder.ts";
import { presentSaid, type SaidView } from "./saidview.ts";
import { presentSeen, type SeenView } from "./seenotherwise.ts";
import { presentSplit, type SplitView } from "./splitline.ts";
import { presentSizes, type SizeRow } from "./truesize.ts";

export interface StudyPage extends Byline {
  readonly slug: string;
  readonly frame: Frame;
  readonly picture: LinkPicture;
  readonly title: string;
  readonly flag: string | undefined;
  /** Of what its author wrote. */
  readonly tongue: Tongue;
  readonly status: StatusView;
  readonly change: { readonly sentence: string; readonly swatches: readonly [Swatch, Swatch] };
  readonly verdict: VerdictView;
  readonly plates: readonly [MarkedPlate, MarkedPlate];
  readonly split: SplitView;
  readonly contents: readonly { readonly anchor: string; readonly text: string }[];
  readonly sizes: readonly [SizeRow, SizeRow];
  readonly refer: ReferView;
  readonly answer: AnswerView | undefined;
  readonly summary: readonly SummaryRow[];
  readonly fimbriations: readonly FimbriationView[];
  /** Undefined where there is something that has to be seen. */
  readonly focus: FocusView | undefined;
  readonly lasting: LastingView | undefined;
  readonly measuredHow: string;
  /** Which edges have pages of their own, where not all have. */
  readonly edgePages: string | undefined;
  /** What became of each edge, and the reflectances behind it; undefined where there is no edge. */
  readonly ruler: RulerView | undefined;
  readonly ladder: LadderView;
  readonly edgeMap: EdgeMapView;
  /** Over the ruler, or over the map alone where the prose shows the ruler. */
  readonly edgesHeading: string;
  readonly strip: StripView;
  readonly facts: FactsView;
  readonly links: Readonly<
    Record<"distance" | "lasting" | "facts" | "words" | "outcomes" | "numbers" | "nearLine", string>
  >;
  readonly seen: readonly (SeenView & { readonly plates: readonly [DrawnPlate, DrawnPlate] })[];
  readonly colours: readonly ColourRow[];
  readonly prose: readonly ProseBlock<ProseFigure>[];
  /** The anchors of figures that the prose shows in their place: none stands on the page again. */
  readonly inProse: Partial<Record<FigureKind, string>>;
  /** Whether the prose in two columns fits a window. */
  readonly isShort: boolean;
  readonly notes: NotesView;
  /** What others said. */
  readonly said: readonly SaidView[];
  readonly options: OptionsLine | undefined;
  /** Shown where the prose asks for it. */
  readonly matrix: MatrixView | undefined;
  readonly likeness: LikenessView | undefined;
  readonly history: HistoryView | undefined;
  /** Undefined where it is the only study of its flag. */
  readonly rivals: RivalPlace | undefined;
  /** The series that it is in. */
  readonly series: readonly SeriesPlace[];
  /** The addresses of its steps, and of its sheets for a class. */
  readonly show: string;
  readonly sheet: string;
  /** The address of its sheet for makers; undefined where it is not adopted. */
  readonly maker: string | undefined;
  /** Their pictures, where the author offers them. */
  readonly lesson: readonly Download[];
}

/**
 * `means` says what is measured; `of` what it is measured of, where that is not the whole flag; `isShared`: no colour
 * changes it.
 */
export interface SummaryRow {
  readonly name: string;
  readonly means?: string;
  readonly before: string;
  readonly after: string;
  readonly of?: readonly [string, string];
  readonly isShared?: true;
}

/** Letters of prose that in two columns are no higher than a common window (our own judgement). */
const mostInColumns = 3000;

/** The page of one study. `all`: the gallery around it, for the flags it looks like. */
export function presentStudy(
  result: StudyResult,
  gallery: Gallery,
  format: Format,
  all: Pick<GalleryResult, "studies" | "survey"> & {
    readonly gains: Gains;
    readonly series?: SeriesIndex;
    readonly rivals?: ReadonlyMap<string, RivalFlag>;
    readonly lesson?: (result: StudyResult) => readonly Download[];
  } = {
    studies: [result],
    gains: rankGains([result], format),
  },
): StudyPage {
  const { study, comparison } = result;
  const path = formatStudyPath(study.slug);
  const link = linkFrom(path);
  const placeEdge = placeEdges(study.slug, comparison);
  const linkEdge = (edge: { readonly a: string; readonly b: string }) => link(placeEdge(edge));
  const shown = presentFigures(result, gallery, link, format);
  const matrix = presentMatrix(result, link, format);
  const gain = () => presentGain(all.gains, link, format, study.slug);
  const prose = renderProse(
    study.body,
    createFigures({ ...shown, matrix }, comparison, format, {
      address: linkEdge,
      details: (edge) => presentDetails(result, edge, link),
      gain,
    }),
  );
  const inProse = findInProse(prose);
  const maker = formatMakerPath(study);
  const edgesHeading = nameEdges(comparison, inProse["contrast ruler"] !== undefined, format);
  return {
    slug: study.slug,
    title: study.title,
    flag: study.flag,
    tongue: tongueOf(study.language, format.language),
    status: presentStatus(study.status, format),
    ...presentByline(study, link, format, all.studies),
    ...presentCase(result, gallery, format),
    ...shown,
    contents: listContents(result, gallery, edgesHeading, format),
    edgesHeading,
    fimbriations: presentFimbriations(comparison, format),
    focus: presentFocus(comparison, format, result.focusToName),
    measuredHow: describeViewing(comparison, format),
    edgePages: describePaged(listPlacedEdges(study.slug, comparison).length, comparison.edges.length, format),
    facts: presentFacts(comparison, format, gallery.terms),
    links: linkMethod(link),
    colours: presentColours(result, format),
    prose,
    inProse,
    isShort: study.body.length <= mostInColumns,
    said: presentSaid(result, linkEdge, link(formatChangesPath(study.slug)), format),
    notes: presentNotes(result, gallery, link, path, format),
    options: presentOptionsLine(result, link, format),
    matrix,
    history: presentHistory(study, all.studies, link, format),
    likeness: presentLikeness(result, { ...all, gallery }, link, format),
    show: link(`${path}show/`),
    rivals: presentRivalPlace(all.rivals?.get(study.slug), link, format),
    sheet: link(`${path}sheet/`),
    maker: maker && link(maker),
    lesson: all.lesson?.(result) ?? [],
    series: presentPlaces(study.slug, all.series ?? new Map(), link, format),
  };
}

/** Change and verdict with its numbers, and all that carries them away: head, picture, reference, answer. */
function presentCase(result: StudyResult, gallery: Gallery, format: Format) {
  const { study, comparison } = result;
  const path = formatStudyPath(study.slug);
  const verdict = describeVerdict(comparison, format);
  const sentence = describeChange(result, format);
  const description = `${format.say("study.unofficialLead")} ${sentence} ${verdict.word}. ${verdict.sentence}`;
  const picture = pictureStudy(result, gallery, format);
  const refer = presentRefer(result, gallery, format);
  const summary = presentSummary(comparison, format);
  const share = { path: `${path}${linkFile}`, alt: describePicture(picture, format) };
  const record = recordStudy(study, gallery, description, format);
  const head = {
    path,
    title: formatTitle(study, format),
    description,
    picture: share,
    isArticle: true,
    record,
  };
  const numbers = summary.map(({ name, before, after }) => format.say("move.row", { name, before, after }));
  return {
    frame: presentFrame({ ...head, section: "studies" }, gallery, format),
    picture,
    change: { sentence, swatches: findChanged(result) },
    verdict,
    split: presentSplit(result, format),
    refer,
    answer: presentAnswer(
      gallery.answer,
      {
        isFiled: true,
        title: formatTitle(study, format),
        edge: undefined,
        stamped: refer.stamped,
        numbers: [`${sentence} ${verdict.word}.`, ...numbers],
      },
      format,
    ),
    summary,
  };
}

/** The headings of the page, as far as the study has something under them. */
function listContents(
  { study, comparison, likeness }: StudyResult,
  { terms }: Gallery,
  edgesHeading: string,
  { say }: Format,
): StudyPage["contents"] {
  const hasEdges = comparison.edges.length > 0;
  const all = [
    { anchor: "#argument", text: say("study.argument"), isThere: hasArgument(study, terms) },
    { anchor: "#answers", text: say("said.heading"), isThere: (study.answers ?? []).length > 0 },
    { anchor: "#edges", text: edgesHeading, isThere: hasEdges },
    { anchor: "#distance", text: say("study.afar"), isThere: hasEdges },
    { anchor: "#seen", text: say("study.seen"), isThere: true },
    {
      anchor: "#likeness",
      text: say("study.likeness"),
      isThere: likeness !== undefined && terms?.likeness !== false,
    },
    { anchor: "#record", text: say("record.heading"), isThere: true },
  ];
  return all.filter(({ isThere }) => isThere).map(({ anchor, text }) => ({ anchor, text }));
}

function nameEdges({ edges }: Comparison, isRulerInProse: boolean, { say }: Format): string {
  if (isRulerInProse) return say("edges.where");
  return say(edges.every(({ outcome }) => outcome === "same") ? "edges.every" : "edges.betterAndWorse");
}

function hasArgument({ body, decision, symbolism }: StudyResult["study"], terms: Gallery["terms"]): boolean {
  const hasMeaning = symbolism !== undefined && terms?.symbolism !== false;
  return body.trim() !== "" || decision !== undefined || hasMeaning;
}

/** The first figure of each kind in the prose. */
function findInProse(prose: StudyPage["prose"]): StudyPage["inProse"] {
  const figures = prose.flatMap((block) => (block.kind === "figure" ? [block.figure] : []));
  return Object.fromEntries(figures.reverse().map(({ kind, id }) => [kind, id]));
}

function describePaged(paged: number, all: number, format: Format): string | undefined {
  if (paged === all) return undefined;
  return format.say("edges.paged", { paged, all });
}

function linkMethod(link: Linker): StudyPage["links"] {
  return {
    distance: link("/method/#distance"),
    lasting: link("/method/#lasting"),
    facts: link("/method/#facts"),
    words: link("/method/#words"),
    outcomes: link("/method/#outcomes"),
    numbers: link("/method/#numbers"),
    nearLine: link("/method/#near-the-line"),
  };
}

/** All that can be looked at: the page shows each in its place, and the prose may show it again. */
export function presentFigures(result: StudyResult, gallery: Gallery, link: Linker, format: Format) {
  const { comparison } = result;
  const path = formatStudyPath(result.study.slug);
  const src = (file: string) => link(`${path}${file}.svg`);
  const plates = presentPair(result, link, format);
  return {
    plates,
    sizes: presentSizes(comparison.before.proportions, link, path, format),
    lasting: presentLasting(comparison, format),
    ruler: presentRuler(result, link, format),
    ladder: presentLadder(result, gallery.cloth, format),
    edgeMap: presentEdgeMap(result, link, path, format),
    strip: presentStrip(comparison, link, path, format),
    seen: presentSeen(comparison, format).map((seen) => ({
      ...seen,
      plates: presentSeenPair(seen, plates, src, format),
    })),
  };
}

/** What a flag is called as one kind of sight has it. */
const sideIds = {
  protan: "seen.byProtan",
  deutan: "seen.byDeutan",
  tritan: "seen.byTritan",
  grey: "seen.inGrey",
} as const;

function presentSeenPair(
  { vision, looks }: SeenView,
  [original, redesign]: readonly [Plate, Plate],
  src: (file: string) => string,
  { say }: Format,
): readonly [DrawnPlate, DrawnPlate] {
  const label = (name: string) => say(sideIds[vision], { name });
  const plate = ({ alt: _, ...whole }: Plate, name: string, look: string): DrawnPlate => ({
    ...whole,
    label: label(whole.label),
    src: src(`seen-${vision}-${name}`),
    description: `${capitalise(look)}.`,
  });
  return [plate(original, "original", looks[0]), plate(redesign, "redesign", looks[1])];
}

/** Its marks before and after the change; where that is clearer at a price also the longest edge that falls. */
export function presentSummary(comparison: Comparison, format: Format): readonly SummaryRow[] {
  const { before, after, clarity, edges, verdict, price } = comparison;
  const focusClarity = ({ focus }: Comparison["before"]) =>
    focus.source === "none" ? format.say("number.noEmblem") : format.percent(focus.clarity);
  const weakest = (measure: Comparison["before"]) =>
    measure.weakestEdge === null
      ? format.say("number.noEdges")
      : format.contrast(measure.weakestEdge.contrast);
  const pair = ({ weakestEdge }: Comparison["before"], side: 0 | 1) => {
    const edge = edges.find(({ a, b }) => a === weakestEdge?.a && b === weakestEdge.b);
    return edge === undefined ? "" : formatNames(edge.names[side], format);
  };
  const fallen = verdict === "clearer, at a price" ? findFallen(price) : undefined;
  return [
    {
      name: format.say("mark.clarity"),
      means: format.say("mark.clarityMeans"),
      before: format.percent(clarity[0]),
      after: format.percent(clarity[1]),
    },
    {
      name: format.say("mark.focusClarity"),
      ...(before.focus.source !== "none" && { means: format.say("mark.focusMeans") }),
      before: focusClarity(before),
      after: focusClarity(after),
    },
    {
      name: format.say("mark.weakest"),
      means: format.say("mark.weakestMeans"),
      before: weakest(before),
      after: weakest(after),
      of: [pair(before, 0), pair(after, 1)],
    },
    ...(fallen === undefined ? [] : [presentPrice(fallen, comparison, format)]),
  ];
}

/** Where the edge is the weakest one, which stands above, its colours are not named again. */
function presentPrice(
  { a, b, names, contrast }: ComparedEdge,
  comparison: Comparison,
  format: Format,
): SummaryRow {
  const [before, after] = contrast;
  const nameOn = (side: "before" | "after", pair: readonly [string, string]) => {
    const { weakestEdge } = comparison[side];
    return weakestEdge?.a === a && weakestEdge.b === b
      ? format.say("mark.sameEdge")
      : formatNames(pair, format);
  };
  return {
    name: format.say("mark.price"),
    means: format.say("mark.weakestMeans"),
    before: before === null ? format.say("number.noEdges") : format.contrast(before),
    after: format.contrast(after),
    of: [nameOn("before", names[0]), nameOn("after", names[1])],
  };
}
