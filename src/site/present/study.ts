// Floor 6. A study page as finished values: the one view that its template prints.
import type { Comparison } from "../../measure/comparison.ts";
import type { GalleryResult, StudyResult } from "../../study/result.ts";
import type { Gallery } from "../../study/study.ts";
import { type Linker, linkFrom } from "../address.ts";
import { type ProseBlock, renderProse } from "../prose.ts";
import { type AnswerView, presentAnswer } from "./answer.ts";
import { orderStudies } from "./card.ts";
import { type ColourRow, presentColours } from "./colours.ts";
import { type EdgeRow, presentEdges } from "./edge.ts";
import { placeEdges } from "./edgekey.ts";
import { type FactsView, presentFacts } from "./facts.ts";
import { createFigures, type ProseFigure } from "./figure.ts";
import { type FimbriationView, presentFimbriations } from "./fimbriation.ts";
import { describeViewing, type FocusView, presentFocus } from "./focus.ts";
import type { Format } from "./format.ts";
import { presentGain } from "./gain.ts";
import { type LikenessView, presentLikeness } from "./likeness.ts";
import { type EdgeMapView, presentEdgeMap } from "./lines.ts";
import { describePicture, type LinkPicture, linkFile, pictureStudy } from "./linkpicture.ts";
import { type NotesView, presentNotes } from "./notes.ts";
import { type OptionsView, presentOptions } from "./options.ts";
import { type Frame, presentFrame } from "./page.ts";
import { findChanged, type Swatch } from "./paint.ts";
import { capitalise } from "./phrase.ts";
import { type DrawnPlate, type Plate, presentPlate } from "./plate.ts";
import { formatReach, presentReads, type ReadsView } from "./reads.ts";
import { recordStudy } from "./record.ts";
import { presentRefer, type ReferView } from "./refer.ts";
import { presentScale, type ScaleView } from "./scale.ts";
import { presentSeen, type SeenView } from "./seen.ts";
import { formatShelfPath } from "./shelf.ts";
import { presentSizes, type SizeRow } from "./size.ts";
import { formatStudyPath, presentStatus, type StatusView } from "./status.ts";
import { presentStrip, type StripView } from "./strip.ts";
import { describeChange, describeVerdict, type VerdictView } from "./verdict.ts";
import { describeInWords } from "./words.ts";

export interface StudyPage {
  readonly slug: string;
  readonly frame: Frame;
  readonly picture: LinkPicture;
  readonly title: string;
  readonly status: StatusView;
  readonly date: { readonly iso: string; readonly text: string } | undefined;
  readonly authors: string | undefined;
  readonly names: readonly string[];
  /** The authors in pieces, each with the way to all their studies. */
  readonly people: readonly Linked[];
  readonly tags: readonly { readonly text: string; readonly address: string }[];
  readonly change: { readonly sentence: string; readonly swatches: readonly [Swatch, Swatch] };
  readonly verdict: VerdictView;
  readonly plates: readonly [Plate, Plate];
  readonly sizes: readonly [SizeRow, SizeRow];
  readonly refer: ReferView;
  readonly answer: AnswerView | undefined;
  readonly summary: readonly SummaryRow[];
  readonly words: readonly string[];
  readonly fimbriations: readonly FimbriationView[];
  readonly focus: FocusView;
  readonly reads: ReadsView | undefined;
  readonly measuredHow: string;
  readonly edges: readonly EdgeRow[];
  readonly scale: ScaleView;
  readonly edgeMap: EdgeMapView;
  readonly strip: StripView;
  readonly facts: FactsView;
  readonly links: Readonly<Record<"distance" | "facts" | "words" | "outcomes" | "numbers", string>>;
  readonly seen: readonly (SeenView & { readonly plates: readonly [DrawnPlate, DrawnPlate] })[];
  readonly colours: readonly ColourRow[];
  readonly prose: readonly ProseBlock<ProseFigure>[];
  readonly notes: NotesView;
  readonly options: OptionsView | undefined;
  readonly likeness: LikenessView | undefined;
}

/** A piece of text; what stands between two links has no address. */
export interface Linked {
  readonly text: string;
  readonly address: string | undefined;
}

export interface SummaryRow {
  readonly name: string;
  readonly before: string;
  readonly after: string;
}

/** The page of one study. `all`: the gallery around it, for the flags it looks like. */
export function presentStudy(
  result: StudyResult,
  gallery: Gallery,
  format: Format,
  all: Pick<GalleryResult, "studies" | "survey"> = { studies: [result] },
): StudyPage {
  const { study, comparison } = result;
  const path = formatStudyPath(study.slug);
  const link = linkFrom(path);
  const placeEdge = placeEdges(study.slug, comparison);
  const linkEdge = (edge: { readonly a: string; readonly b: string }) => link(placeEdge(edge));
  const verdict = describeVerdict(comparison, format);
  const change = describeChange(result);
  const description = `Unofficial redesign study. ${change} ${verdict.word}. ${verdict.sentence}`;
  const picture = pictureStudy(result, gallery, format);
  const refer = presentRefer(result, gallery, format);
  const summary = presentSummary(comparison, format);
  const shown = presentFigures(result, gallery, link, format);
  return {
    slug: study.slug,
    frame: presentFrame(
      {
        path,
        title: study.title,
        description,
        section: "studies",
        picture: { path: `${path}${linkFile}`, alt: describePicture(picture) },
        isArticle: true,
        record: recordStudy(study, gallery, description),
      },
      gallery,
      format,
    ),
    picture,
    title: study.title,
    status: presentStatus(study.status),
    date: study.date === undefined ? undefined : { iso: study.date, text: format.date(study.date) },
    authors: study.authors.length === 0 ? undefined : format.list(study.authors),
    names: study.authors,
    people: format.listParts(study.authors).map(({ text, at }) => ({
      text,
      address: at === undefined ? undefined : link(formatShelfPath("authors", study.authors[at] ?? text)),
    })),
    tags: study.tags.map((tag) => ({ text: tag, address: link(formatShelfPath("tags", tag)) })),
    change: { sentence: change, swatches: findChanged(result) },
    verdict,
    ...shown,
    refer,
    answer: presentAnswer(gallery.answer, {
      title: study.title,
      edge: undefined,
      stamped: refer.stamped,
      numbers: [
        `${change} ${verdict.word}.`,
        ...summary.map(({ name, before, after }) => `${name}: ${before} → ${after}`),
      ],
    }),
    summary,
    words: describeInWords(comparison, format),
    fimbriations: presentFimbriations(comparison, format),
    focus: presentFocus(comparison, study.focus, format),
    measuredHow: describeViewing(comparison, format),
    edges: presentEdges(comparison, format, linkEdge),
    facts: presentFacts(comparison, format),
    links: {
      distance: link("/method/#distance"),
      facts: link("/method/#facts"),
      words: link("/method/#words"),
      outcomes: link("/method/#outcomes"),
      numbers: link("/method/#numbers"),
    },
    colours: presentColours(result, format),
    prose: renderProse(
      study.body,
      createFigures(shown, comparison, format, {
        address: linkEdge,
        gain: () => presentGain(orderStudies(all.studies), link, format, study.slug),
      }),
    ),
    notes: presentNotes(study, gallery, link, path),
    options: presentOptions(result, link, format),
    likeness: presentLikeness(result, all, link, format),
  };
}

/** All that can be looked at: the page shows each in its place, and the prose may show it again. */
function presentFigures(result: StudyResult, gallery: Gallery, link: Linker, format: Format) {
  const { comparison } = result;
  const path = formatStudyPath(result.study.slug);
  const src = (file: string) => link(`${path}${file}.svg`);
  const plates: readonly [Plate, Plate] = [
    presentPlate("Original", src("original"), comparison.before, format),
    presentPlate("Redesign", src("redesign"), comparison.after, format),
  ];
  return {
    plates,
    sizes: presentSizes(comparison.before.proportions, link, path),
    reads: presentReads(comparison, format),
    scale: presentScale(comparison, gallery.cloth, format),
    edgeMap: presentEdgeMap(result, link, path, format),
    strip: presentStrip(comparison, link, path, format),
    seen: presentSeen(comparison, format).map((seen) => ({
      ...seen,
      plates: presentSeenPair(seen, plates, src),
    })),
  };
}

function presentSeenPair(
  { vision, heading, looks }: SeenView,
  [original, redesign]: readonly [Plate, Plate],
  src: (file: string) => string,
): readonly [DrawnPlate, DrawnPlate] {
  const label = (name: string) =>
    vision === "grey" ? `${name} in grey` : `${name} as seen by ${heading.toLowerCase()} eyes`;
  const plate = ({ alt: _, ...whole }: Plate, name: string, look: string): DrawnPlate => ({
    ...whole,
    label: label(whole.label),
    src: src(`seen-${vision}-${name}`),
    description: `${capitalise(look)}.`,
  });
  return [plate(original, "original", looks[0]), plate(redesign, "redesign", looks[1])];
}

function presentSummary(comparison: Comparison, format: Format): readonly SummaryRow[] {
  const [shareBefore, shareAfter] = comparison.clearEdgeShare;
  const [clarityBefore, clarityAfter] = comparison.clarity;
  const weakest = (measure: Comparison["before"]) =>
    measure.weakestEdge === null ? "no edges" : format.contrast(measure.weakestEdge.contrast);
  return [
    { name: "Clear-edge share", before: format.share(shareBefore), after: format.share(shareAfter) },
    { name: "Clarity", before: format.percent(clarityBefore), after: format.percent(clarityAfter) },
    { name: "Weakest edge", before: weakest(comparison.before), after: weakest(comparison.after) },
    {
      name: "Focus reads to",
      before: formatReach(comparison.before.focus, format),
      after: formatReach(comparison.after.focus, format),
    },
  ];
}
