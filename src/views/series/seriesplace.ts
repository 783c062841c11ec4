// Floor 8. Where a study stands in the series it belongs to: on its own page, and series on the front page.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { studyOf } from "../../content/series/series.ts";
import type { Format } from "../../words/format.ts";
import { countEntries, describePlace } from "../../words/seriesphrase.ts";
import type { Linker } from "../address.ts";
import type { Plate } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { formatSeriesPath, orderSeries, presentItems, shorten } from "./seriespage.ts";

/** One series that a study is in. */
export interface SeriesPlace {
  /** `3 of 8 in`. */
  readonly place: string;
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

/** A series as its studies see it, made once for a gallery. */
export interface SeriesOrder {
  readonly slug: string;
  readonly title: string;
  /** Each with its number among all that the series holds, from 1. */
  readonly studies: readonly { readonly slug: string; readonly title: string; readonly number: number }[];
  readonly of: number;
}

/** All series, each with the studies that are published. */
export function listOrders({ series = [], studies }: GalleryResult): readonly SeriesOrder[] {
  const bySlug = new Map(studies.map((one) => [one.study.slug, one]));
  return orderSeries(series).map((one) => ({
    slug: one.slug,
    title: one.title,
    studies: one.entries.flatMap((entry, index) => {
      const study = bySlug.get(studyOf(entry) ?? "")?.study;
      return study === undefined ? [] : [{ slug: study.slug, title: study.title, number: index + 1 }];
    }),
    of: one.entries.length,
  }));
}

/** Every series that the study `slug` is in. */
export function presentPlaces(
  slug: string,
  orders: readonly SeriesOrder[],
  link: Linker,
  format: Format,
): readonly SeriesPlace[] {
  return orders.flatMap(({ slug: series, title, studies, of }) => {
    const at = studies.findIndex((study) => study.slug === slug);
    const own = studies[at];
    if (own === undefined) return [];
    const neighbour = (index: number) => {
      const study = studies[index];
      return study && { title: study.title, address: link(formatStudyPath(study.slug)) };
    };
    return [
      {
        place: describePlace(own.number, of, format),
        title,
        address: link(formatSeriesPath(series)),
        previous: neighbour(at - 1),
        next: neighbour(at + 1),
      },
    ];
  });
}

/** The series of a gallery for its front page. */
export function presentSeriesCards(
  result: GalleryResult,
  link: Linker,
  format: Format,
): readonly SeriesCard[] {
  const { series = [], studies } = result;
  const bySlug = new Map<string, StudyResult>(studies.map((one) => [one.study.slug, one]));
  return orderSeries(series).map((one) => {
    const items = presentItems(one, bySlug, result, link, format);
    const found = items.filter((item) => "card" in item).length;
    const count = countEntries(found, items.length - found, format);
    return {
      title: one.title,
      address: link(formatSeriesPath(one.slug)),
      count: items.length > mostPlates ? `${count}, the first ${format.number(mostPlates, 0)} shown` : count,
      authors: one.authors.length === 0 ? undefined : format.list(one.authors),
      plates: items.slice(0, mostPlates).map((item) => shorten(item).plate),
    };
  });
}
