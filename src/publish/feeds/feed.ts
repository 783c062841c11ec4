// Floor 9. What is new, for readers of feeds: Atom and JSON Feed. Both say the same, and the same at every build.

import { compareText } from "../../problem/problem.ts";
import { formatSeriesPath } from "../../views/series/seriespage.ts";
import { decisionsPath, formatShelfPath } from "../../views/shelf/shelf.ts";
import type { SiteView } from "../../views/siteview.ts";
import { formatStudyPath } from "../../views/status.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { formatContent, formatDecisionContent, formatSeriesContent } from "./feedcontent.ts";
import { escapeMarkup } from "./markup.ts";

/** What a feed says of the gallery. */
export interface FeedFacts {
  readonly title: string;
  readonly description: string;
  readonly format: Format;
  readonly publisher: string;
  /** Returns the absolute address of a site path: readers keep what they read far from the site. */
  readonly address: (path: string) => string;
}

type Study = SiteView["studies"][number];
type Series = SiteView["series"][number];
type DecidedCard = SiteView["shelves"][number]["cards"][number];

/** What is new: a study or a series. Paths are site paths. */
interface Item {
  readonly path: string;
  readonly title: string;
  readonly summary: string;
  readonly content: string;
  readonly image: string | undefined;
  readonly date: string | undefined;
  readonly names: readonly string[];
  /** Authors without a study have no page. */
  readonly hasPages: boolean;
  readonly tags: readonly string[];
  readonly rights: string | undefined;
}

/** Feeds tell what is new; `studies.json` has all. Our own judgement. */
export const feedLength = 100;

/** A study without a date has no time, Atom asks for one, and it must not move from build to build. */
const noTime = "1970-01-01T00:00:00Z";

/**
 * The Atom feed, of the {@link feedLength} newest studies and series. The id of an entry is the address of its page.
 *
 * Source: RFC 4287; sections 4.1.1 and 4.1.2 for what must be there, 3.1.1.3 and 4.1.3 for HTML as text, 4.2.6 for ids.
 */
export function formatAtom(
  facts: FeedFacts,
  studies: readonly Study[],
  series: readonly Series[] = [],
): string {
  return writeAtom(facts, "/feed.xml", facts.title, "/", listItems(facts, studies, series));
}

/**
 * The Atom feed of the {@link feedLength} latest decisions, from the cards of their list. An entry has the day of the decision,
 * that of the study where it is not known, and the address of the decision on the study's page.
 */
export function formatDecisions(facts: FeedFacts, decided: readonly DecidedCard[]): string {
  const items = decided.slice(0, feedLength).map((card): Item => {
    const { search, status, decision = "" } = card;
    return {
      path: `${formatStudyPath(search.slug)}#decision`,
      title: facts.format.say("feed.decision", {
        status: status.word,
        title: formatTitle(card, facts.format),
      }),
      summary: decision,
      content: formatDecisionContent(card, facts),
      image: undefined,
      date: card.decided ?? card.date?.iso,
      names: [],
      hasPages: true,
      tags: [],
      rights: undefined,
    };
  });
  const title = facts.format.say("feed.decisions", { title: facts.title });
  return writeAtom(facts, "/decisions.xml", title, decisionsPath, items);
}

function writeAtom(
  { description, format, publisher, address }: FeedFacts,
  self: string,
  title: string,
  page: string,
  shown: readonly Item[],
): string {
  const home = address(page);
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeMarkup(format.language)}">`,
    element("id", home),
    element("title", title),
    element("subtitle", description),
    element("updated", shown.map(timeOf).sort().at(-1) ?? noTime),
    linkElement("self", "application/atom+xml", address(self)),
    linkElement("alternate", "text/html", home),
    person(publisher),
    element("generator", "Counterchange"),
    element("icon", address("/assets/icon.png")),
    ...shown.map((item) => formatEntry(address, item)),
    "</feed>",
  ];
  return `${lines.join("\n")}\n`;
}

/** The newest first, as both are given; what has no date comes last. */
function listItems(facts: FeedFacts, studies: readonly Study[], series: readonly Series[]): readonly Item[] {
  const all = [
    ...series.map((one) => itemOfSeries(one, facts)),
    ...studies.map((one) => itemOfStudy(one, facts)),
  ];
  return all.sort((a, b) => compareText(b.date ?? "", a.date ?? "")).slice(0, feedLength);
}

function itemOfStudy(study: Study, facts: FeedFacts): Item {
  const { credit } = study.notes;
  return {
    path: formatStudyPath(study.slug),
    title: formatTitle(study, facts.format),
    summary: study.frame.description,
    content: formatContent(study, facts),
    image: `/${study.picture.file}`,
    date: study.date?.iso,
    names: study.names,
    hasPages: true,
    tags: study.tags.map(({ text }) => text),
    rights: credit && facts.format.say("record.rights", { credit: credit.sentence, licence: credit.licence }),
  };
}

function itemOfSeries(series: Series, facts: FeedFacts): Item {
  return {
    path: formatSeriesPath(series.slug),
    title: series.title,
    summary: series.frame.description,
    content: formatSeriesContent(series, facts),
    image: undefined,
    date: series.date?.iso,
    names: series.names,
    hasPages: false,
    tags: [],
    rights: undefined,
  };
}

function formatEntry(address: FeedFacts["address"], item: Item): string {
  const url = address(item.path);
  const lines = [
    "<entry>",
    element("id", url),
    element("title", item.title),
    ...(item.date === undefined ? [] : [element("published", timeOf(item))]),
    element("updated", timeOf(item)),
    linkElement("alternate", "text/html", url),
    ...item.names.map((name) =>
      person(name, item.hasPages ? address(formatShelfPath("authors", name)) : undefined),
    ),
    ...item.tags.map(
      (text) =>
        `<category term="${escapeMarkup(text)}" scheme="${escapeMarkup(address("/tags/"))}" label="${escapeMarkup(text)}"/>`,
    ),
    ...(item.rights === undefined ? [] : [element("rights", item.rights)]),
    element("summary", item.summary),
    `<content type="html">${escapeMarkup(item.content)}</content>`,
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

/** The JSON feed, of the same. Source: JSON Feed version 1.1, jsonfeed.org/version/1.1. */
export function formatJsonFeed(
  facts: FeedFacts,
  studies: readonly Study[],
  series: readonly Series[] = [],
): string {
  const { address } = facts;
  const feed = {
    version: "https://jsonfeed.org/version/1.1",
    title: facts.title,
    description: facts.description,
    home_page_url: address("/"),
    feed_url: address("/feed.json"),
    favicon: address("/assets/icon.png"),
    language: facts.format.language,
    authors: [{ name: facts.publisher }],
    items: listItems(facts, studies, series).map((item) => formatItem(facts, item)),
  };
  return `${JSON.stringify(feed, null, 2)}\n`;
}

function formatItem({ address }: FeedFacts, item: Item) {
  const url = address(item.path);
  const people = item.names.map((name) => ({
    name,
    ...(item.hasPages ? { url: address(formatShelfPath("authors", name)) } : {}),
  }));
  return {
    id: url,
    url,
    title: item.title,
    summary: item.summary,
    content_html: item.content,
    ...(item.image === undefined ? {} : { image: address(item.image) }),
    ...(item.date === undefined ? {} : { date_published: timeOf(item) }),
    ...(people.length === 0 ? {} : { authors: people }),
    ...(item.tags.length === 0 ? {} : { tags: item.tags }),
  };
}

function timeOf({ date }: Pick<Item, "date">): string {
  return date === undefined ? noTime : `${date}T00:00:00Z`;
}
