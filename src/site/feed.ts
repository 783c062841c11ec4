// Floor 6. What is new, for readers of feeds: Atom and JSON Feed; and all addresses, for search.
import type { SiteView } from "./present/site.ts";

/** What a feed says of the gallery. Addresses are absolute. */
export interface FeedFacts {
  readonly title: string;
  readonly description: string;
  readonly language: string;
  readonly publisher: string;
  /** Returns the absolute address of a site path. */
  readonly address: (path: string) => string;
}

type Entry = SiteView["studies"][number];

/** A study without a date has no time: the feed asks for one, and it must not move from build to build. */
const noTime = "1970-01-01T00:00:00Z";

/** The Atom feed. Source: RFC 4287, sections 4.1.1 and 4.1.2 for what must be there. */
export function formatAtom(facts: FeedFacts, studies: readonly Entry[]): string {
  const home = facts.address("/");
  const dates = studies.map(timeOf).sort();
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeXml(facts.language)}">`,
    `<id>${escapeXml(home)}</id>`,
    `<title>${escapeXml(facts.title)}</title>`,
    `<subtitle>${escapeXml(facts.description)}</subtitle>`,
    `<updated>${dates.at(-1) ?? noTime}</updated>`,
    `<link rel="self" type="application/atom+xml" href="${escapeXml(facts.address("/feed.xml"))}"/>`,
    `<link rel="alternate" type="text/html" href="${escapeXml(home)}"/>`,
    `<author><name>${escapeXml(facts.publisher)}</name></author>`,
    "<generator>Counterchange</generator>",
    ...studies.map((study) => formatEntry(facts, study)),
    "</feed>",
  ];
  return `${lines.join("\n")}\n`;
}

function formatEntry({ address }: FeedFacts, study: Entry): string {
  const url = escapeXml(address(`/studies/${study.slug}/`));
  const authors = study.names.map((name) => `<author><name>${escapeXml(name)}</name></author>`);
  const tags = study.tags.map(({ text }) => `<category term="${escapeXml(text)}"/>`);
  const picture = escapeXml(address(`/${study.picture.file}`));
  return [
    "<entry>",
    `<id>${url}</id>`,
    `<title>${escapeXml(study.title)}</title>`,
    `<updated>${timeOf(study)}</updated>`,
    `<link rel="alternate" type="text/html" href="${url}"/>`,
    `<link rel="enclosure" type="image/png" href="${picture}"/>`,
    ...authors,
    ...tags,
    `<summary>${escapeXml(study.frame.description)}</summary>`,
    "</entry>",
  ].join("\n");
}

/** The JSON feed. Source: JSON Feed version 1.1, jsonfeed.org/version/1.1. */
export function formatJsonFeed(facts: FeedFacts, studies: readonly Entry[]): string {
  const feed = {
    version: "https://jsonfeed.org/version/1.1",
    title: facts.title,
    description: facts.description,
    home_page_url: facts.address("/"),
    feed_url: facts.address("/feed.json"),
    language: facts.language,
    authors: [{ name: facts.publisher }],
    items: studies.map((study) => ({
      id: facts.address(`/studies/${study.slug}/`),
      url: facts.address(`/studies/${study.slug}/`),
      title: study.title,
      content_text: study.frame.description,
      image: facts.address(`/${study.picture.file}`),
      ...(study.date === undefined ? {} : { date_published: `${study.date.iso}T00:00:00Z` }),
      ...(study.names.length === 0 ? {} : { authors: study.names.map((name) => ({ name })) }),
      ...(study.tags.length === 0 ? {} : { tags: study.tags.map(({ text }) => text) }),
    })),
  };
  return `${JSON.stringify(feed, null, 2)}\n`;
}

/** The sitemap. Source: sitemaps.org protocol 0.9. */
export function formatSitemap(pages: readonly { readonly url: string; readonly date?: string }[]): string {
  const urls = pages.map(
    ({ url, date }) =>
      `<url><loc>${escapeXml(url)}</loc>${date === undefined ? "" : `<lastmod>${date}</lastmod>`}</url>`,
  );
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...urls,
    "</urlset>\n",
  ].join("\n");
}

function timeOf({ date }: Entry): string {
  return date === undefined ? noTime : `${date.iso}T00:00:00Z`;
}

const xmlLetters: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Characters that XML cannot hold are left out. Source: XML 1.0, production 2, Char. */
function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, "")
    .replace(/[&<>"']/g, (letter) => xmlLetters[letter] ?? letter);
}
