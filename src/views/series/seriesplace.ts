// Floor 8. Where a study stands in the series it belongs to: on its own page, and series on the front page.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { studyOf } from "../../content/series/series.ts";
import type { Format } from "../../words/format.ts";
import { countEntries, describePlace } from "../../words/seriesphrase.ts";
import type { Linker } from "../address.ts";
import { type Plate, presentPair } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { formatSeriesPath, listStudies, orderSeries } from "./seriespage.ts";

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

/** A series on the front page, with its first flags. */
export interface SeriesCard {
  readonly title: string;
  readonly address: string;
  readonly count: string;
  readonly authors: string | undefined;
  readonly plates: readonly Plate[];
}

/** Redesigns that a card shows: as many as one row holds. */
const mostPlates = 6;

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
  { series = [], studies }: GalleryResult,
  link: Linker,
  format: Format,
): readonly SeriesCard[] {
  const bySlug = new Map<string, StudyResult>(studies.map((one) => [one.study.slug, one]));
  return orderSeries(series).map((one) => {
    const found = listStudies(one, bySlug);
    const flags = one.entries.filter((entry) => studyOf(entry) === undefined).length;
    return {
      title: one.title,
      address: link(formatSeriesPath(one.slug)),
      count: countEntries(found.length, flags, format),
      authors: one.authors.length === 0 ? undefined : format.list(one.authors),
      plates: found.slice(0, mostPlates).map((study) => presentPair(study, link, format)[1]),
    };
  });
}
