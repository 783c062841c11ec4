// Floor 8. A study, or a series of them, for a projector: steps with one idea each, every one at an address of its own.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { Series } from "../../content/series/series.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { describeChange } from "../../words/verdict.ts";
import { linkFrom } from "../address.ts";
import { indexRivals, listRivals, type RivalFlag } from "../flag/findrivals.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { firstSentence, firstSentences, readProse } from "../renderprose.ts";
import {
  formatSeriesPath,
  orderSeries,
  presentItems,
  type SeriesItem,
  shorten,
} from "../series/seriespage.ts";
import { formatStudyPath } from "../status.ts";
import type { Download } from "../study/notes.ts";
import { lessonFiles, nameStill, stillsFolder } from "./lessonfile.ts";
import { listSteps, type ShowStep } from "./showsteps.ts";

export interface ShowPage {
  readonly frame: Frame;
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly title: string;
  readonly back: { readonly address: string; readonly text: string };
  readonly steps: readonly ShowStep[];
}

/** Of each study a series shows no more than these. */
const shortRun: readonly string[] = ["the-flag", "the-weakest-edge", "before", "after", "the-price"];

/** What tells of the flag alone, which is left out where another study of the series has shown it. */
const aboutFlag: readonly string[] = ["the-flag", "the-weakest-edge"];

/** Most characters of an opening on a projector (our own judgement: some two lines). */
const mostOpening = 200;

/** The site path of a study's show. */
export function formatShowPath(slug: string): string {
  return `${formatStudyPath(slug)}show/`;
}

/** The show of one study. */
export function presentShow(result: StudyResult, gallery: Gallery, format: Format): ShowPage {
  const { study } = result;
  const path = formatShowPath(study.slug);
  const title = formatTitle(study);
  return {
    frame: presentFrame(
      {
        path,
        title: `${title}, step by step`,
        description: `Unofficial redesign study. ${describeChange(result)}`,
        section: "studies",
        isArticle: true,
        ...pictureFirst([result], gallery, format),
      },
      gallery,
      format,
    ),
    folder: path.slice(1, -1),
    title,
    back: { address: linkFrom(path)(formatStudyPath(study.slug)), text: "The study" },
    steps: listSteps(result, gallery, path, format),
  };
}

/** The shows of all series, in the order of their pages. */
export function presentSeriesShows(result: GalleryResult, format: Format): readonly ShowPage[] {
  const bySlug = new Map(result.studies.map((one) => [one.study.slug, one]));
  const rivals = indexRivals(listRivals(result));
  return orderSeries(result.series ?? []).map((series) => presentOne(series, bySlug, rivals, result, format));
}

function presentOne(
  series: Series,
  bySlug: ReadonlyMap<string, StudyResult>,
  rivals: ReadonlyMap<string, RivalFlag>,
  result: GalleryResult,
  format: Format,
): ShowPage {
  const { gallery } = result;
  const path = `${formatSeriesPath(series.slug)}show/`;
  const link = linkFrom(path);
  const items = presentItems(series, bySlug, result, link, format);
  const studies = series.entries.flatMap((entry) =>
    "study" in entry ? (bySlug.get(entry.study) ?? []) : [],
  );
  const flags = items.map((item) => ("card" in item ? rivals.get(item.card.search.slug) : undefined));
  // Of a flag with several studies, all but the first.
  const again = flags.map((flag, at) => (flags.indexOf(flag) < at ? flag : undefined));
  const shown = items.filter((_, at) => again[at] === undefined);
  const strip = { kind: "strip", plates: shown.map((item) => shorten(item, 0).plate) } as const;
  const closing = series.closing ?? "What would you change?";
  const by = series.authors.length === 0 ? [] : [format.list(series.authors)];
  const opening = firstSentences(series.body, gallery.language, mostOpening) ?? [];
  return {
    frame: presentFrame(
      {
        path,
        title: `${series.title}, step by step`,
        description: `Unofficial redesign studies, step by step. ${closing}`,
        section: "studies",
        isArticle: true,
        ...pictureFirst(studies, gallery, format),
      },
      gallery,
      format,
    ),
    folder: path.slice(1, -1),
    title: series.title,
    back: { address: link(formatSeriesPath(series.slug)), text: "The series" },
    steps: [
      {
        anchor: "the-opening",
        name: "the-opening",
        heading: series.title,
        says: [...by, opening].flat().join(": ") || undefined,
        picture: strip,
        speech: `${series.title}. ${readProse(series.body)}`.trim(),
        note: undefined,
      },
      ...items.flatMap((item, at) => listItem(item, at + 1, again[at], bySlug, result, path, format)),
      {
        anchor: "the-closing",
        name: "the-closing",
        heading: closing,
        says: "Redesigns are unofficial studies",
        picture: { kind: "strip", plates: items.map((item) => shorten(item).plate) },
        speech: closing,
        note: undefined,
      },
    ],
  };
}

/** The steps of a study whose flag was shown already, with how its author begins. */
function tellRival(
  steps: readonly ShowStep[],
  { name }: RivalFlag,
  own: string | undefined,
): readonly ShowStep[] {
  const heading = `Another proposal for ${name.replace(/^The /, "the ")}`;
  const [first, ...rest] = steps.filter((one) => !aboutFlag.includes(one.name));
  if (first === undefined) return [];
  const said = first.name === "before" ? [] : [first.speech];
  return [
    {
      ...first,
      ...(first.name === "before" && { heading }),
      speech: [`${heading}.`, ...(own === undefined ? [] : [own]), ...said].join(" "),
    },
    ...rest,
  ];
}

/** The short run of a study, or the one step of a flag without a study; of the flag `again` only what is new. */
function listItem(
  item: SeriesItem,
  number: number,
  again: RivalFlag | undefined,
  bySlug: ReadonlyMap<string, StudyResult>,
  { gallery }: GalleryResult,
  path: string,
  format: Format,
): readonly ShowStep[] {
  if ("card" in item) {
    const study = bySlug.get(item.card.search.slug);
    if (study === undefined) return [];
    const steps = listSteps(study, gallery, path, format, `${item.card.search.slug}-`);
    const short = steps.filter(({ name }) => shortRun.includes(name));
    return again === undefined
      ? short
      : tellRival(short, again, firstSentence(study.study.body, gallery.language));
  }
  const anchor = `flag-${number}`;
  const picture = { kind: "flag", plate: item.plate } as const;
  return [
    {
      anchor,
      name: "the-flag",
      heading: item.ask,
      says: item.name,
      picture,
      speech: item.ask,
      note: undefined,
    },
  ];
}

/** What the page of a study offers of it: nothing unless its author says so. */
export function presentLesson(result: StudyResult, gallery: Gallery, format: Format): readonly Download[] {
  const { study, comparison, ranking } = result;
  if (study.downloads !== true) return [];
  const path = formatStudyPath(study.slug);
  const link = linkFrom(path);
  const offer = (file: string, text: string): Download => ({
    address: link(`${path}${stillsFolder}${file}`),
    file: `${study.slug}-${file}`,
    text,
  });
  const hasEdges = comparison.edges.length > 0;
  return [
    ...listSteps(result, gallery, path, format).map(({ anchor, heading }, index) =>
      offer(nameStill(index, anchor), `${format.number(index + 1, 0)}. ${heading.replace(/\.$/, "")}`),
    ),
    offer(lessonFiles.swap, "The swap, WebP"),
    offer(lessonFiles.thumbnail, "Thumbnail"),
    ...(hasEdges ? [offer(lessonFiles.map, "Edge map, SVG"), offer(lessonFiles.ruler, "Ruler, SVG")] : []),
    ...(ranking?.matrix === undefined ? [] : [offer(lessonFiles.matrix, "Matrix, SVG")]),
    offer(lessonFiles.script, "What to say, Markdown"),
  ];
}
