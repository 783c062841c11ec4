// Test support. What the standards ask of feeds and sitemaps, written from their text. Each check returns what is wrong.
import { readHtml, readXml } from "./dom.ts";

const atom = "http://www.w3.org/2005/Atom";
const xmlNamespace = "http://www.w3.org/XML/1998/namespace";
/** Source: RFC 3339, section 5.6, date-time, as RFC 4287 section 3.3 narrows it. */
const dateTime = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[+-]\d\d:\d\d)$/;

/** Returns the elements directly inside `parent` that have the name. */
export function childrenOf(parent: Element, name: string): readonly Element[] {
  return [...parent.children].filter(({ localName }) => localName === name);
}

/** Source: RFC 4287; the section stands at each rule. */
export function checkAtom(text: string): readonly string[] {
  const feed = readXml(text).documentElement;
  const faults: string[] = [];
  const say = (isRight: boolean, fault: string) => {
    if (!isRight) faults.push(fault);
  };
  say(feed.localName === "feed" && feed.namespaceURI === atom, "2: the root is no atom:feed");
  say(isLanguage(feed.getAttributeNS(xmlNamespace, "lang")), "2: xml:lang is no language tag");
  for (const element of feed.querySelectorAll("*")) {
    const known = element.namespaceURI === atom && elementNames.has(element.localName);
    say(known, `1.2: ${element.localName} is no element of Atom`);
  }
  const entries = childrenOf(feed, "entry");
  checkOnce(feed, ["id", "title", "updated"], "4.1.1", say);
  checkAtMostOnce(feed, ["generator", "icon", "logo", "rights", "subtitle"], "4.1.1", say);
  for (const entry of entries) {
    checkOnce(entry, ["id", "title", "updated"], "4.1.2", say);
    checkAtMostOnce(entry, ["content", "published", "rights", "source", "summary"], "4.1.2", say);
    const authors = [...childrenOf(entry, "author"), ...childrenOf(feed, "author")];
    say(authors.length > 0, "4.1.2: an entry and its feed have no author");
    checkLinks(entry, say);
    checkContent(entry, say);
  }
  checkLinks(feed, say);
  const rels = childrenOf(feed, "link").map((link) => link.getAttribute("rel"));
  say(rels.includes("self"), "4.1.1: a feed should have a link rel=self");
  checkValues(feed, say);
  const ids = entries.flatMap((entry) => childrenOf(entry, "id").map(({ textContent }) => textContent));
  say(new Set(ids).size === ids.length, "4.2.6: ids of entries are not unique");
  return faults;
}

type Say = (isRight: boolean, fault: string) => void;

/** Source: RFC 4287, section 4. */
const elementNames = new Set(
  "feed entry content author category contributor generator icon id link logo published rights source subtitle summary title updated name uri email".split(
    " ",
  ),
);

function checkOnce(parent: Element, names: readonly string[], section: string, say: Say): void {
  for (const name of names) {
    const count = childrenOf(parent, name).length;
    say(count === 1, `${section}: ${parent.localName} has ${count} ${name}`);
  }
}

function checkAtMostOnce(parent: Element, names: readonly string[], section: string, say: Say): void {
  for (const name of names) {
    say(childrenOf(parent, name).length <= 1, `${section}: ${parent.localName} has several ${name}`);
  }
}

function checkLinks(parent: Element, say: Say): void {
  const links = childrenOf(parent, "link");
  const alternates = links
    .filter((link) => (link.getAttribute("rel") ?? "alternate") === "alternate")
    .map((link) => `${link.getAttribute("type")} ${link.getAttribute("hreflang")}`);
  say(alternates.length > 0, `4.1: ${parent.localName} has no link rel=alternate`);
  say(new Set(alternates).size === alternates.length, "4.1: two alternates of one type and language");
  for (const link of links) {
    say(isAbsolute(link.getAttribute("href")), `4.2.7.1: href ${link.getAttribute("href")}`);
    say(/^[\w.+-]+\/[\w.+-]+$/.test(link.getAttribute("type") ?? ""), "4.2.7.3: no media type");
  }
}

/** HTML as text: it parses, says something, runs nothing, and no address in it is relative. */
function checkContent(entry: Element, say: Say): void {
  for (const content of childrenOf(entry, "content")) {
    say(content.getAttribute("type") === "html", "4.1.3.1: content has no type");
    say(content.children.length === 0, "4.1.3.3: HTML content has child elements");
    for (const fault of checkHtml(content.textContent ?? "")) say(false, fault);
  }
}

/** What is wrong with a piece of HTML that stands far from its page. */
export function checkHtml(html: string): readonly string[] {
  const { body } = readHtml(html);
  const faults: string[] = [];
  if ((body.textContent ?? "").trim() === "") faults.push("HTML without a word");
  for (const element of body.querySelectorAll("*")) {
    if (/^(?:script|style|iframe|object|embed|form|link|meta|base)$/.test(element.localName))
      faults.push(`HTML with ${element.localName}`);
    for (const { name, value } of element.attributes) {
      if (name.startsWith("on") || name === "style") faults.push(`HTML with ${name}`);
      if (["href", "src", "srcset"].includes(name) && !isAbsolute(value)) faults.push(`relative ${value}`);
    }
    if (element.localName === "img" && !element.getAttribute("alt")) faults.push("an img without alt");
  }
  return faults;
}

function checkValues(feed: Element, say: Say): void {
  for (const element of feed.querySelectorAll("*")) {
    const text = element.textContent ?? "";
    const { localName } = element;
    if (["updated", "published"].includes(localName))
      say(dateTime.test(text) && !Number.isNaN(Date.parse(text)), `3.3: ${text} is no date`);
    if (["id", "icon", "logo", "uri"].includes(localName)) say(isAbsolute(text), `${localName} ${text}`);
    if (localName === "name") say(text.trim() !== "", "3.2.1: a person without a name");
    if (localName !== "category") continue;
    say(Boolean(element.getAttribute("term")), "4.2.2.1: a category without a term");
    const scheme = element.getAttribute("scheme");
    say(scheme === null || isAbsolute(scheme), `4.2.2.2: scheme ${scheme}`);
  }
}

const feedKeys =
  "version title home_page_url feed_url description user_comment next_url icon favicon authors language expired hubs items";
const itemKeys =
  "id url external_url title content_html content_text summary image banner_image date_published date_modified authors tags language attachments";

/** Source: JSON Feed, version 1.1, jsonfeed.org/version/1.1, “Top-level”, “Items”, “Authors”. */
export function checkJsonFeed(text: string): readonly string[] {
  const feed: Readonly<Record<string, unknown>> = JSON.parse(text);
  const faults = checkKeys(feed, feedKeys);
  const say: Say = (isRight, fault) => {
    if (!isRight) faults.push(fault);
  };
  say(feed.version === "https://jsonfeed.org/version/1.1", "version");
  say(isText(feed.title), "title");
  for (const key of ["home_page_url", "feed_url", "icon", "favicon", "next_url"])
    say(feed[key] === undefined || isAbsolute(feed[key]), `${key} ${feed[key]}`);
  say(feed.language === undefined || isLanguage(feed.language), "language");
  for (const fault of checkAuthors(feed.authors)) say(false, fault);
  const items = Array.isArray(feed.items) ? feed.items : [];
  say(Array.isArray(feed.items), "items");
  for (const item of items) faults.push(...checkItem(item));
  say(new Set(items.map(({ id }) => id)).size === items.length, "ids are not unique");
  return faults;
}

function checkItem(item: Readonly<Record<string, unknown>>): readonly string[] {
  const faults = checkKeys(item, itemKeys);
  const { id, content_html: html, content_text: text, tags } = item;
  if (!isText(id)) faults.push("an item without an id");
  if (html === undefined && text === undefined) faults.push("an item without content");
  if (html !== undefined) faults.push(...(isText(html) ? checkHtml(html) : ["content_html"]));
  for (const key of ["url", "external_url", "image", "banner_image"])
    if (item[key] !== undefined && !isAbsolute(item[key])) faults.push(`${key} ${item[key]}`);
  for (const key of ["date_published", "date_modified"])
    if (item[key] !== undefined && !dateTime.test(String(item[key]))) faults.push(`${key} ${item[key]}`);
  for (const key of ["title", "summary"])
    if (item[key] !== undefined && !isText(item[key])) faults.push(`${key} ${item[key]}`);
  if (tags !== undefined && !(Array.isArray(tags) && tags.every(isText))) faults.push("tags");
  return [...faults, ...checkAuthors(item.authors)];
}

function checkAuthors(authors: unknown): readonly string[] {
  if (authors === undefined) return [];
  if (!Array.isArray(authors) || authors.length === 0) return ["authors"];
  return authors.flatMap((author) => {
    const faults = checkKeys(author, "name url avatar");
    if (!isText(author.name) && !isText(author.url)) faults.push("an author without name or url");
    if (author.url !== undefined && !isAbsolute(author.url)) faults.push(`author ${author.url}`);
    return faults;
  });
}

function checkKeys(object: Readonly<Record<string, unknown>>, keys: string): string[] {
  const known = new Set(keys.split(" "));
  return Object.keys(object)
    .filter((key) => !known.has(key) && !key.startsWith("_"))
    .map((key) => `${key} is no key`);
}

/** The addresses of a sitemap with what is wrong with it. Source: sitemaps.org, protocol 0.9. */
export function checkSitemap(
  text: string,
  own: string,
): { readonly urls: readonly string[]; readonly faults: readonly string[] } {
  const root = readXml(text).documentElement;
  const faults: string[] = [];
  const isIndex = root.localName === "sitemapindex";
  if (root.namespaceURI !== "http://www.sitemaps.org/schemas/sitemap/0.9") faults.push("namespace");
  if (!isIndex && root.localName !== "urlset") faults.push(root.localName);
  if (Buffer.byteLength(text) > 50 * 1024 * 1024) faults.push("over 50 MB");
  if (root.children.length > 50_000) faults.push("over 50,000 addresses");
  const urls = [...root.children].map((entry) => {
    if (entry.localName !== (isIndex ? "sitemap" : "url")) faults.push(entry.localName);
    const [loc = ""] = childrenOf(entry, "loc").map(({ textContent }) => textContent ?? "");
    const [lastmod] = childrenOf(entry, "lastmod").map(({ textContent }) => textContent ?? "");
    if (childrenOf(entry, "loc").length !== 1) faults.push("not one loc");
    // “Sitemap file location”: only addresses in the sitemap's own folder or below it.
    if (!loc.startsWith(new URL(".", own).href) || loc.length >= 2048) faults.push(loc);
    const isDate = lastmod === undefined || /^\d{4}-\d\d-\d\d$/.test(lastmod);
    if (!isDate || (lastmod && Number.isNaN(Date.parse(lastmod)))) faults.push(`lastmod ${lastmod}`);
    return loc;
  });
  if (new Set(urls).size !== urls.length) faults.push("an address twice");
  return { urls, faults };
}

function isAbsolute(value: unknown): boolean {
  return typeof value === "string" && /^https?:\/\/[^\s]+$/.test(value) && URL.canParse(value);
}

function isLanguage(value: unknown): boolean {
  return typeof value === "string" && value !== "" && Intl.getCanonicalLocales(value).length === 1;
}

function isText(value: unknown): value is string {
  return typeof value === "string" && value !== "";
}
