// Floor 8. The page of a series: an opening, its studies in order, and the question at the end.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { type Series, type SeriesEntry, subjectOf } from "../../content/series/series.ts";
import { slugOf } from "../../words/addressslug.ts";
import type { Format } from "../../words/format.ts";
import { countEntries } from "../../words/seriesphrase.ts";
import { describeVerdict, type VerdictView } from "../../words/verdict.ts";
import { type Linker, linkFrom } from "../address.ts";
import { type Card, presentCard } from "../front/card.ts";
import { type GainView, presentGain, rankGains } from "../front/gainchart.ts";
import type { Linked } from "../linklist.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { type Plate, presentPlate } from "../plate.ts";
import { renderProse } from "../renderprose.ts";
import { recordSeries } from "../schemarecord.ts";
import { formatStudyPath } from "../status.ts";
import { linkPeople } from "../study/byline.ts";
import { type CitationView, presentSeriesRefer } from "../study/citation.ts";
import { anchorOf, nameEntry, placeDrawing, surveyPath } from "../survey/flagname.ts";

export interface SeriesPage {
  readonly slug: string;
  readonly frame: Frame;
  readonly title: string;
  readonly names: readonly string[];
  readonly authors: string | undefined;
  readonly people: readonly Linked[];
  readonly date: { readonly iso: string; readonly text: string } | undefined;
  readonly count: string;
  /** HTML that we wrote. */
  readonly opening: readonly string[];
  readonly items: readonly SeriesItem[];
  /** All its flags small as they are, so that a vote is not answered before it is asked, each leading to its item; none where there is one alone. */
  readonly strip: readonly (Numbered & { readonly title: string; readonly plate: Plate })[];
  readonly closing: string | undefined;
  readonly refer: CitationView;
  /** The way to its vote; undefined where it holds no study. */
  readonly vote: string | undefined;
  /** Undefined where no study of it has an edge, or one alone. */
  readonly gain: GainView | undefined;
  /** The address of its sheets for a class. */
  readonly sheet: string;
  /** The address of its steps. */
  readonly show: string;
}

/** One step of a series. */
export type SeriesItem = Subject & Numbered;

/** `anchor` is its id on the page: `n1`. */
interface Numbered {
  readonly number: string;
  readonly anchor: string;
}

type Subject =
  | { readonly card: Card; readonly verdict: VerdictView }
  | {
      readonly plate: Plate;
      readonly name: string;
      readonly ask: string;
      /** What its speaker is reminded of. */
      readonly note: string | undefined;
      /** Where the survey tells of it. */
      readonly address: string;
    };

/** The site path of a series. Throws RangeError for a slug that could leave its folder. */
export function formatSeriesPath(slug: string): string {
  return formatStudyPath(slug).replace("/studies/", "/series/");
}

/** The pages of all series, the newest first, undated last. */
export function presentSeries(result: GalleryResult, format: Format): readonly SeriesPage[] {
  const bySlug = new Map(result.studies.map((one) => [one.study.slug, one]));
  return orderSeries(result.series ?? []).map((series) => presentOne(series, bySlug, result, format));
}

/** The newest first, undated last, then by slug. */
export function orderSeries(all: readonly Series[]): readonly Series[] {
  return [...all].sort(
    (a, b) => (b.date ?? "").localeCompare(a.date ?? "", "en") || (a.slug < b.slug ? -1 : 1),
  );
}

/** The studies of a series that are in the gallery, in its order. */
function listStudies({ entries }: Series, bySlug: ReadonlyMap<string, StudyResult>): readonly StudyResult[] {
  return entries.flatMap((entry) => bySlug.get(subjectOf(entry)) ?? []);
}

function presentOne(
  series: Series,
  bySlug: ReadonlyMap<string, StudyResult>,
  result: GalleryResult,
  format: Format,
): SeriesPage {
  const { gallery } = result;
  const path = formatSeriesPath(series.slug);
  const link = linkFrom(path);
  const studies = listStudies(series, bySlug);
  const items = presentItems(series, bySlug, result, link, format);
  const count = countEntries(studies.length, items.length - studies.length, format);
  const description =
    `${format.say("seriesPage.description", { entries: count })} ${series.closing ?? ""}`.trim();
  const gains = rankGains(studies, format);
  return {
    slug: series.slug,
    frame: presentFrame(
      {
        path,
        title: series.title,
        description,
        section: "studies",
        isArticle: true,
        ...pictureFirst(studies, gallery, format),
        record: recordSeries(series, gallery, description),
      },
      gallery,
      format,
    ),
    title: series.title,
    names: series.authors,
    authors: series.authors.length === 0 ? undefined : format.list(series.authors),
    people: linkPeople(series.authors, link, format, listAuthors(result)),
    date: series.date === undefined ? undefined : { iso: series.date, text: format.date(series.date) },
    count,
    opening: renderProse(series.body, () => undefined).flatMap((block) =>
      block.kind === "html" ? block.html : [],
    ),
    items,
    strip: items.length < 2 ? [] : items.map((item) => shorten(item, 0)),
    closing: series.closing,
    sheet: link(`${path}sheet/`),
    show: link(`${path}show/`),
    refer: presentSeriesRefer(series, gallery, format),
    vote: studies.length === 0 ? undefined : link(`${path}vote/`),
    gain: gains.ranked.length < 2 ? undefined : presentGain(gains, link, format),
  };
}

/** All that a series holds and the gallery has, in its order. */
export function presentItems(
  series: Series,
  bySlug: ReadonlyMap<string, StudyResult>,
  result: GalleryResult,
  link: Linker,
  format: Format,
): readonly SeriesItem[] {
  return series.entries
    .flatMap((entry) => presentEntry(entry, bySlug, result, link, format))
    .map((item, index) => ({ ...item, number: format.number(index + 1, 0), anchor: `n${index + 1}` }));
}

/** The redesign of a study, or with `side` 0 its original; of a flag without a study, the flag as it is. */
export function shorten(item: SeriesItem, side: 0 | 1 = 1): SeriesPage["strip"][number] {
  const { number, anchor } = item;
  return "card" in item
    ? { number, anchor, title: item.card.title, plate: item.card.plates[side] }
    : { number, anchor, title: item.name, plate: item.plate };
}

/** Slugs of those who have a study: they have a page. */
function listAuthors({ studies }: GalleryResult): ReadonlySet<string> {
  return new Set(studies.flatMap(({ study }) => study.authors.map(slugOf)));
}

function presentEntry(
  entry: SeriesEntry,
  bySlug: ReadonlyMap<string, StudyResult>,
  { studies, survey }: GalleryResult,
  link: Linker,
  format: Format,
): readonly Subject[] {
  if ("study" in entry) {
    const study = bySlug.get(entry.study);
    if (study === undefined) return [];
    return [{ card: presentCard(study, link, format), verdict: describeVerdict(study.comparison, format) }];
  }
  const surveyed = survey?.entries.find(({ flag }) => flag.file === entry.flag);
  if (surveyed === undefined) return [];
  return [
    {
      plate: presentPlate(format.say("plate.asItIs"), link(placeDrawing(surveyed)), surveyed.measure, format),
      name: entry.name ?? nameEntry(surveyed, studies),
      ask: entry.ask ?? format.say("seriesPage.ask"),
      note: entry.note,
      address: link(`${surveyPath}#${anchorOf(surveyed)}`),
    },
  ];
}
