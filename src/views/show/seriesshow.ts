// Floor 8. A series for a projector: its opening, of each study a few steps, and its question.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { Series } from "../../content/series/series.ts";
import type { Format } from "../../words/format.ts";
import { linkFrom } from "../address.ts";
import { indexRivals, listRivals, type RivalFlag } from "../flag/findrivals.ts";
import { pictureFirst } from "../linkview.ts";
import { presentFrame } from "../pageframe.ts";
import { firstSentence } from "../renderprose.ts";
import { formatSeriesPath, orderSeries, presentItems, type SeriesItem } from "../series/seriespage.ts";
import { tellClosing, tellOpening } from "./seriesends.ts";
import type { ShowPage } from "./showpage.ts";
import { listSteps } from "./showsteps.ts";
import type { ShowStep } from "./step.ts";

/** Of each study a series shows no more than these. */
const shortRun: readonly string[] = ["the-flag", "the-weakest-edge", "before", "after", "the-price"];

/** What tells of the flag alone, which is left out where another study of the series has shown it. */
const aboutFlag: readonly string[] = ["the-flag", "the-weakest-edge"];

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
  const studies = items.flatMap((item) => ("card" in item ? (bySlug.get(item.card.search.slug) ?? []) : []));
  const flags = items.map((item) => ("card" in item ? rivals.get(item.card.search.slug) : undefined));
  // Of a flag with several studies, all but the first.
  const again = flags.map((flag, at) => (flags.indexOf(flag) < at ? flag : undefined));
  const shown = items.filter((_, at) => again[at] === undefined);
  const closing = tellClosing(series, items, format);
  return {
    frame: presentFrame(
      {
        path,
        title: format.say("show.title", { title: series.title }),
        description: `${format.say("show.seriesDescription")} ${closing.heading}`,
        section: "studies",
        isArticle: true,
        ...pictureFirst(studies, gallery, format),
      },
      gallery,
      format,
    ),
    folder: path.slice(1, -1),
    title: series.title,
    back: { address: link(formatSeriesPath(series.slug)), text: format.say("show.toSeries") },
    steps: [
      tellOpening(series, shown, gallery, format),
      ...items.flatMap((item, at) => listItem(item, at + 1, again[at], bySlug, result, path, format)),
      closing,
    ],
  };
}

/** The steps of a study whose flag was shown already, with how its author begins. */
function tellRival(
  steps: readonly ShowStep[],
  { name }: RivalFlag,
  own: string | undefined,
  { say }: Format,
): readonly ShowStep[] {
  const heading = say("show.another", { name });
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
      : tellRival(short, again, firstSentence(study.study.body, gallery.language), format);
  }
  return [
    {
      anchor: `flag-${number}`,
      name: "the-flag",
      heading: item.ask,
      says: item.name,
      picture: { kind: "flag", plate: item.plate },
      speech: item.ask,
      note: item.note,
    },
  ];
}
