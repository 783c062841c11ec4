// Floor 9. A study as readers of feeds show it: one piece of HTML that needs no page, no style and no script around it.

import { linkSize } from "../../views/linkview.ts";
import type { SiteView } from "../../views/siteview.ts";
import { formatStudyPath } from "../../views/status.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { escapeMarkup } from "./markup.ts";

type Entry = SiteView["studies"][number];

type Series = SiteView["series"][number];

/** What the content is set in, and how it finds the site. */
export interface ContentFacts {
  readonly format: Format;
  /** Returns the absolute address of a site path. */
  readonly address: (path: string) => string;
}

/**
 * Returns the picture of a study, its change and verdict, the decision, the prose, and what a redesign is, as HTML.
 * Every address in it is absolute: a reader shows it far from the page. A figure of the prose becomes what it says.
 */
export function formatContent(study: Entry, { format, address }: ContentFacts): string {
  const page = address(`/studies/${study.slug}/`);
  const picture = escapeMarkup(address(`/${study.picture.file}`));
  const alt = escapeMarkup(study.frame.share?.picture?.alt ?? "");
  const { width, height } = linkSize;
  const { status, change, verdict, notes } = study;
  const stands = { status: status.word, meaning: status.meaning };
  const told =
    notes.decision === undefined
      ? format.say("feed.status", stands)
      : format.say("feed.statusDecided", { ...stands, decision: notes.decision });
  const pieces = [
    `<p><img src="${picture}" width="${width}" height="${height}" alt="${alt}"></p>`,
    paragraph(`${change.sentence} ${verdict.word}. ${verdict.sentence}`),
    paragraph(told),
    ...study.prose.map((block) =>
      block.kind === "html" ? absolute(block.html, page) : paragraph(block.figure.says),
    ),
    ...(notes.symbolism === undefined ? [] : [paragraph(notes.symbolism)]),
    paragraph(notes.unofficial),
  ];
  return wrap(pieces, format);
}

/** Returns a series the same way: its opening, its studies in order with their verdicts, and the question at the end. */
export function formatSeriesContent(series: Series, facts: ContentFacts): string {
  const page = facts.address(`/series/${series.slug}/`);
  const items = series.items.map((item) => {
    const [address, name, said] =
      "card" in item
        ? [
            item.card.address,
            formatTitle(item.card, facts.format),
            `${item.card.change} ${item.verdict.word}.`,
          ]
        : [item.address, item.name, item.ask];
    const href = escapeMarkup(new URL(address, page).href);
    return `<li><a href="${href}">${escapeMarkup(name)}</a>. ${escapeMarkup(said)}</li>`;
  });
  const pieces = [
    ...series.opening.map((html) => absolute(html, page)),
    `<ol>${items.join("")}</ol>`,
    ...(series.closing === undefined ? [] : [paragraph(series.closing)]),
    paragraph(facts.format.say("feed.redesigns")),
  ];
  return wrap(pieces, facts.format);
}

/** Returns a decision the same way: what was proposed, what it would do, and what became of it. */
export function formatDecisionContent(
  { search, change, verdict, clarity, decision = "" }: SiteView["shelves"][number]["cards"][number],
  { format, address }: ContentFacts,
): string {
  const page = escapeMarkup(address(formatStudyPath(search.slug)));
  const proposed = escapeMarkup(
    format.say("feed.proposed", {
      change,
      verdict,
      before: clarity.before ?? "",
      after: clarity.after ?? "",
    }),
  );
  return wrap([paragraph(decision), `<p><a href="${page}">${proposed}</a></p>`], format);
}

function wrap(pieces: readonly string[], { language, direction }: Format): string {
  return `<div lang="${escapeMarkup(language)}" dir="${direction}">${pieces.join("\n")}</div>`;
}

function paragraph(text: string): string {
  return `<p>${escapeMarkup(text)}</p>`;
}

/** Writes the links of our own prose in full: `renderProse` writes each as ` href="…"`, escaped. */
function absolute(html: string, page: string): string {
  return html.replace(/ href="([^"]*)"/g, (whole, href: string) => {
    const plain = href
      .replace(/&quot;/g, '"')
      .replace(/&lt;/g, "<")
      .replace(/&gt;/g, ">")
      .replace(/&amp;/g, "&");
    return URL.canParse(plain, page) ? ` href="${escapeMarkup(new URL(plain, page).href)}"` : whole;
  });
}
