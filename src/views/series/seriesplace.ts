// Floor 8. Where a study stands in the series it belongs to: on its own page, and series on the front page.
import type { GalleryResult } from "../../analysis/result.ts";
import { type Series, subjectOf } from "../../content/series/series.ts";
import type { Format } from "../../words/format.ts";
import { countEntries } from "../../words/seriesphrase.ts";
import type { Linker } from "../address.ts";
import type { Plate } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { formatSeriesPath, orderSeries, presentItems, shorten } from "./seriespage.ts";

/** One series that a study is in. */
export interface SeriesPlace {
  /** Its number among all that the series holds, and how many these are. */
  readonly number: string;
  readonly count: string;
  readonly title: string;
  readonly address: string;
  readonly previous: Neighbour | undefined;
  readonly next: Neighbour | undefined;
}

interface Neighbour {
  readonly title: string;
  readonly address: string;
}

/** A series on the front page, with its flags. */
export interface SeriesCard {
  readonly title: string;
  readonly address: string;
  readonly count: string;
  readonly authors: string | undefined;
  readonly plates: readonly Plate[];
}

/** Flags that a card shows: as many as two rows hold. `count` says so where there are more. */
const mostPlates = 16;

/** A study in a series, with its number among all that the series holds, from 1. */
interface Member {
  readonly slug: string;
  readonly title: string;
  readonly number: number;
}

/** Where a study stands among the studies of one series. */
interface Standing {
  readonly series: Series;
  readonly members: readonly Member[];
  readonly at: number;
}

/** Slug of a study → its places in all series, the newest series first: made once for a gallery. */
export type SeriesIndex = ReadonlyMap<string, readonly Standing[]>;

/** All series, each with the studies that are published. */
export function indexSeries({ series = [], studies }: GalleryResult): SeriesIndex {
  const bySlug = new Map(studies.map((one) => [one.study.slug, one]));
  const index = new Map<string, Standing[]>();
  for (const one of orderSeries(series)) {
    const members = one.entries.flatMap((entry, place): readonly Member[] => {
      const study = bySlug.get(subjectOf(entry))?.study;
      return study === undefined ? [] : [{ slug: study.slug, title: study.title, number: place + 1 }];
    });
    for (const [at, { slug }] of members.entries())
      index.set(slug, [...(index.get(slug) ?? []), { series: one, members, at }]);
  }
  return index;
}

/** Every series that the study `slug` is in. */
export function presentPlaces(
  slug: string,
  index: SeriesIndex,
  link: Linker,
  format: Format,
): readonly SeriesPlace[] {
  return (index.get(slug) ?? []).map(({ series, members, at }) => {
    const neighbour = (place: number) => {
      const study = members[place];
      return study && { title: study.title, address: link(formatStudyPath(study.slug)) };
    };
    return {
      number: format.number(members[at]?.number ?? 0, 0),
      count: format.number(series.entries.length, 0),
      title: series.title,
      address: link(formatSeriesPath(series.slug)),
      previous: neighbour(at - 1),
      next: neighbour(at + 1),
    };
  });
}

/** The series of a gallery for its front page. */
export function presentSeriesCards(
  result: GalleryResult,
  link: Linker,
  format: Format,
): readonly SeriesCard[] {
  const { series = [], studies } = result;
  const bySlug = new Map(studies.map((one) => [one.study.slug, one]));
  return orderSeries(series).map((one) => {
    const items = presentItems(one, bySlug, result, link, format);
    const found = items.filter((item) => "card" in item).length;
    const count = countEntries(found, items.length - found, format);
    return {
      title: one.title,
      address: link(formatSeriesPath(one.slug)),
      count:
        items.length > mostPlates
          ? format.say("seriesPage.firstShown", { entries: count, number: format.number(mostPlates, 0) })
          : count,
      authors: one.authors.length === 0 ? undefined : format.list(one.authors),
      plates: items.slice(0, mostPlates).map((item) => shorten(item).plate),
    };
  });
}
