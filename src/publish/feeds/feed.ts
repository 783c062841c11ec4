// Floor 9. What is new, for readers of feeds: Atom and JSON Feed. Both say the same, and the same at every build.

import { formatShelfPath } from "../../views/shelf/shelf.ts";
import type { SiteView } from "../../views/siteview.ts";
import { formatStudyPath } from "../../views/status.ts";
import { formatTitle } from "../../words/title.ts";
import { formatContent } from "./feedcontent.ts";
import { escapeMarkup } from "./markup.ts";

/** What a feed says of the gallery. */
export interface FeedFacts {
  readonly title: string;
  readonly description: string;
  readonly language: string;
  readonly direction: "ltr" | "rtl";
  readonly publisher: string;
  /** Returns the absolute address of a site path: readers keep what they read far from the site. */
  readonly address: (path: string) => string;
}

type Entry = SiteView["studies"][number];

/** Feeds tell what is new; `studies.json` has all. Our own judgement. */
export const feedLength = 100;

/** A study without a date has no time, Atom asks for one, and it must not move from build to build. */
const noTime = "1970-01-01T00:00:00Z";

/**
 * The Atom feed, of the first {@link feedLength} studies. The id of an entry is the address of its page.
 *
 * Source: RFC 4287; sections 4.1.1 and 4.1.2 for what must be there, 3.1.1.3 and 4.1.3 for HTML as text, 4.2.6 for ids.
 */
export function formatAtom(facts: FeedFacts, studies: readonly Entry[]): string {
  const { title, description, language, publisher, address } = facts;
  const shown = studies.slice(0, feedLength);
  const home = address("/");
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeMarkup(language)}">`,
    element("id", home),
    element("title", title),
    element("subtitle", description),
    element("updated", shown.map(timeOf).sort().at(-1) ?? noTime),
    linkElement("self", "application/atom+xml", address("/feed.xml")),
    linkElement("alternate", "text/html", home),
    person(publisher),
    element("generator", "Counterchange"),
    element("icon", address("/assets/icon.png")),
    ...shown.map((study) => formatEntry(facts, study)),
    "</feed>",
  ];
  return `${lines.join("\n")}\n`;
}

function formatEntry(facts: FeedFacts, study: Entry): string {
  const { address } = facts;
  const { credit } = study.notes;
  const url = address(formatStudyPath(study.slug));
  const lines = [
    "<entry>",
    element("id", url),
    element("title", formatTitle(study)),
    ...(study.date === undefined ? [] : [element("published", timeOf(study))]),
    element("updated", timeOf(study)),
    linkElement("alternate", "text/html", url),
    ...study.names.map((name) => person(name, address(formatShelfPath("authors", name)))),
    ...study.tags.map(
      ({ text }) =>
        `<category term="${escapeMarkup(text)}" scheme="${escapeMarkup(address("/tags/"))}" label="${escapeMarkup(text)}"/>`,
    ),
    ...(credit === undefined ? [] : [element("rights", `${credit.sentence}, ${credit.licence}`)]),
    element("summary", study.frame.description),
    `<content type="html">${escapeMarkup(formatContent(study, facts))}</content>`,
    "</entry>",
  ];
  return lines.join("\n");
}

function element(name: string, text: string): string {
  return `<${name}>${escapeMarkup(text)}</${name}>`;
}

function linkElement(rel: string, type: string, href: string): string {
  return `<link rel="${rel}" type="${type}" href="${escapeMarkup(href)}"/>`;
}

function person(name: string, uri?: string): string {
  return `<author>${element("name", name)}${uri === undefined ? "" : element("uri", uri)}</author>`;
}

/** The JSON feed, of the first {@link feedLength} studies. Source: JSON Feed version 1.1, jsonfeed.org/version/1.1. */
export function formatJsonFeed(facts: FeedFacts, studies: readonly Entry[]): string {
  const { address } = facts;
  const feed = {
    version: "https://jsonfeed.org/version/1.1",
    title: facts.title,
    description: facts.description,
    home_page_url: address("/"),
    feed_url: address("/feed.json"),
    favicon: address("/assets/icon.png"),
    language: facts.language,
    authors: [{ name: facts.publisher }],
    items: studies.slice(0, feedLength).map((study) => formatItem(facts, study)),
  };
  return `${JSON.stringify(feed, null, 2)}\n`;
}

function formatItem(facts: FeedFacts, study: Entry) {
  const { address } = facts;
  const url = address(formatStudyPath(study.slug));
  return {
    id: url,
    url,
    title: formatTitle(study),
    summary: study.frame.description,
    content_html: formatContent(study, facts),
    image: address(`/${study.picture.file}`),
    ...(study.date === undefined ? {} : { date_published: timeOf(study) }),
    ...(study.names.length === 0
      ? {}
      : {
          authors: study.names.map((name) => ({
            name,
            url: address(formatShelfPath("authors", name)),
          })),
        }),
    ...(study.tags.length === 0 ? {} : { tags: study.tags.map(({ text }) => text) }),
  };
}

function timeOf({ date }: Entry): string {
  return date === undefined ? noTime : `${date.iso}T00:00:00Z`;
}
