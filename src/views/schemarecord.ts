// Floor 8. The gallery, a study and an edge as schema.org has them, for search: what it is, whose it is, which licence.
import { type Series, studyOf } from "../content/series/series.ts";
import { findLicenceAddress } from "../content/study/licence.ts";
import type { Credit, Gallery, Study } from "../content/study/study.ts";
import type { Format } from "../words/format.ts";
import { formatTitle } from "../words/title.ts";
import { formatCanonical } from "./address.ts";
import { formatStudyPath } from "./status.ts";

/** One description as JSON data. Source: schema.org, CreativeWork and its properties. */
export type SchemaRecord = Readonly<Record<string, unknown>>;

/** The record of the gallery, on its front page. */
export function recordGallery(gallery: Gallery): SchemaRecord {
  return {
    ...recordSite(gallery),
    description: gallery.description,
    inLanguage: gallery.language,
    ...recordPublisher(gallery),
  };
}

/** The record of a page that lists studies: of an author, of a tag. */
export function recordList(name: string, description: string, gallery: Gallery): SchemaRecord {
  return {
    "@type": "CollectionPage",
    name,
    description,
    inLanguage: gallery.language,
    isPartOf: recordSite(gallery),
  };
}

/** The record of a series, with its studies in order. Source: schema.org, `CreativeWork`, `hasPart`, `position`. */
export function recordSeries(series: Series, gallery: Gallery, description: string): SchemaRecord {
  const parts = series.entries.flatMap((entry) => studyOf(entry) ?? []);
  return {
    "@type": "CreativeWork",
    name: series.title,
    description,
    inLanguage: gallery.language,
    ...recordAuthors(series),
    ...(series.date === undefined ? {} : { datePublished: series.date }),
    ...recordPublisher(gallery),
    isPartOf: recordSite(gallery),
    hasPart: parts.map((slug, index) => ({
      "@type": "CreativeWork",
      position: index + 1,
      url: formatCanonical(gallery.address, formatStudyPath(slug)),
    })),
  };
}

/** The record of a study. `description` is that of its page. */
export function recordStudy(
  study: Study,
  gallery: Gallery,
  description: string,
  { say }: Format,
): SchemaRecord {
  return {
    "@type": "CreativeWork",
    name: study.title,
    ...(study.flag === undefined ? {} : { about: { "@type": "Thing", name: study.flag } }),
    description,
    genre: say("picture.genre"),
    creativeWorkStatus: study.status,
    inLanguage: gallery.language,
    ...recordAuthors(study),
    ...(study.date === undefined ? {} : { datePublished: study.date }),
    ...(study.tags.length === 0 ? {} : { keywords: study.tags.join(", ") }),
    ...recordPublisher(gallery),
    isPartOf: recordSite(gallery),
    ...(study.credit === undefined ? {} : { isBasedOn: recordCredit(study.credit) }),
  };
}

/** The record of one edge, a part of its study at `studyUrl`. */
export function recordEdge(
  study: Study,
  gallery: Gallery,
  title: string,
  description: string,
  studyUrl: string | undefined,
  { say }: Format,
): SchemaRecord {
  return {
    "@type": "CreativeWork",
    name: say("picture.within", { title, study: formatTitle(study, { say }) }),
    description,
    inLanguage: gallery.language,
    ...recordAuthors(study),
    ...recordPublisher(gallery),
    isPartOf: {
      "@type": "CreativeWork",
      name: study.title,
      ...(studyUrl === undefined ? {} : { url: studyUrl }),
    },
    ...(study.credit === undefined ? {} : { isBasedOn: recordCredit(study.credit) }),
  };
}

function recordSite({ title, address }: Gallery): SchemaRecord {
  const url = formatCanonical(address, "/");
  return { "@type": "WebSite", name: title, ...(url === undefined ? {} : { url }) };
}

function recordAuthors({ authors }: Pick<Study, "authors">): SchemaRecord {
  return authors.length === 0 ? {} : { author: authors.map((name) => ({ "@type": "Person", name })) };
}

function recordPublisher({ society, title }: Gallery): SchemaRecord {
  return { publisher: { "@type": "Organization", name: society ?? title } };
}

/** The original drawing. A licence whose address we do not know is a work with a name: it may not be bare text. */
function recordCredit({ title, author, source, licence }: Credit): SchemaRecord {
  return {
    "@type": "CreativeWork",
    ...(title === undefined ? {} : { name: title }),
    ...(author === undefined ? {} : { creator: { "@type": "Person", name: author }, creditText: author }),
    ...(source === undefined ? {} : /^https?:\/\//.test(source) ? { url: source } : { citation: source }),
    license: findLicenceAddress(licence) ?? { "@type": "CreativeWork", name: licence },
  };
}
