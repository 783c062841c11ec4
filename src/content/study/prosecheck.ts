// Floor 5. The author's prose as Markdown tokens, with what stands in it that a study cannot show.
import MarkdownIt from "markdown-it";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import { findNearest } from "../../problem/knownword.ts";
import { locate } from "../../problem/locate.ts";
import { type Advice, type Located, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import {
  type AskedDrawing,
  type AskedFigure,
  canShow,
  figureKinds,
  findKind,
  mostFigures,
  readDrawingLine,
  readFigure,
  readKind,
  readStudyLine,
} from "./figurekind.ts";
import { checkEntity, dropEntities } from "./proseentity.ts";
import { findHtml } from "./prosehtml.ts";
import { dropLinks, findFalseLink } from "./proselink.ts";
import type { Study } from "./study.ts";

type Token = ReturnType<MarkdownIt["parse"]>[number];

/** Longest figure line that is looked at for what it was meant to be, in characters. */
const longestFigure = 200;

/**
 * Returns a reader of prose: CommonMark without HTML, and a token `figure` or `study` for each line `::figure{…}` or `::study{…}`. Of a link that may
 * lead nowhere only its text is there, and its address in the `meta` of the block; what cannot be seen is left out where it
 * is written as an entity, too.
 */
export function createMarkdown(): MarkdownIt {
  // The types leave out `maxNesting`, which caps how deep quotes and lists may go.
  const options = { html: false, linkify: false, maxNesting: 50 };
  const md = new MarkdownIt("commonmark", options);
  md.block.ruler.before(
    "paragraph",
    "figure",
    (state, startLine, _endLine, silent) => {
      const text = state.getLines(startLine, startLine + 1, 0, false).trim();
      const [, kind] = /^::(figure|study)/.exec(text) ?? [];
      if (state.level !== 0 || kind === undefined) return false;
      if (silent) return true;
      const token = state.push(kind, "", 0);
      token.content = text;
      token.map = [startLine, startLine + 1];
      state.line = startLine + 1;
      return true;
    },
    { alt: ["paragraph"] },
  );
  md.validateLink = () => true;
  md.core.ruler.before("text_join", "entity", ({ tokens }) => tokens.forEach(dropEntities));
  md.core.ruler.push("link", (state) => {
    for (const token of state.tokens) dropLinks(token, state);
  });
  // A host in letters that look like others is shown as it is written: xn--…
  md.normalizeLinkText = (text) => text;
  return md;
}

/**
 * Returns the edge of the original that `edge` names, the two colours in either order, or undefined where there is no
 * such edge. Names of colours have no `/` of their own.
 */
export function findNamedEdge(edge: string, edges: readonly ComparedEdge[]): ComparedEdge | undefined {
  const asked = edge.split("/").map((name) => name.trim().toLowerCase());
  if (asked.length !== 2) return undefined;
  return edges.find(({ names: [[a, b]], contrast: [before] }) => {
    const names = [a.toLowerCase(), b.toLowerCase()];
    return (
      before !== null && asked.every((name) => names.includes(name)) && names.every((n) => asked.includes(n))
    );
  });
}

/** What a comparison has for figures to show. */
export type Shown = Pick<Comparison, "edges"> & {
  readonly before: {
    readonly focus: { readonly source: string };
    readonly colours?: readonly { readonly id: string; readonly hex: string }[];
  };
};

/** Prose and where it stands. */
export type Writing = Pick<Study, "body" | "bodyLine" | "file" | "proseFile">;

/**
 * Returns what the page of a study will leave out of its prose. `shown` is its comparison; without it, as where the
 * drawing is wrong, no figure is asked for what it shows; where it is `none`, no figure can be shown at all, and where it is
 * `studies`, studies alone.
 *
 * Problems: those of `checkEntity`; warnings `study/figure` of a figure that cannot be drawn, `study/image` of an image, `study/html` of HTML,
 * `page/study` of a line that cannot show a study,
 * `study/prose-link` of a link that is none, and `study/link-text` of one whose text is another address.
 */
export function checkProse(study: Writing, shown?: Shown | "none" | "studies"): readonly Problem[] {
  const tokens = createMarkdown().parse(study.body, {});
  const prose = { study, lines: study.body.split("\n") };
  const figures = findFigures(tokens);
  const drawn = new Set(figures.slice(0, mostFigures));
  return tokens.flatMap((token) => [
    ...(drawn.has(token) ? (token.type === "study" ? checkStudyLine : checkFigure)(token, prose, shown) : []),
    ...(token === figures[mostFigures] ? [tooMany(token, figures.length, prose)] : []),
    ...checkStray(token, prose),
    ...checkImages(token, prose, shown === "studies"),
    ...checkLinks(token, prose, shown === "studies"),
    ...checkLinkText(token, prose),
    ...checkHtml(token, prose),
    ...checkEntity(token, study),
  ]);
}

function tooMany(token: Token, count: number, prose: Prose): Problem {
  return reportBlock(token, prose, "study/figure", {
    reason: `The prose has ${count} figures; the first ${mostFigures} are shown.`,
    hint: "Delete those that say nothing new, this one and those behind it first.",
  });
}

interface Prose {
  readonly study: Writing;
  readonly lines: readonly string[];
}

/** What a line asks for, with its place. */
type Asked<T> = T & { readonly at: ReturnType<typeof placeBlock> };

/** The studies that prose shows. */
export function findStudyLines(study: Writing): readonly Asked<{ readonly slug: string }>[] {
  return findLines(study, (line) => {
    const slug = readStudyLine(line);
    return slug === undefined ? undefined : { slug };
  });
}

/** The drawings that a page shows. */
export function findDrawingLines(page: Writing): readonly Asked<AskedDrawing>[] {
  return findLines(page, readDrawingLine);
}

function findLines<T extends object>(
  study: Writing,
  read: (line: string) => T | undefined,
): readonly Asked<T>[] {
  const prose = { study, lines: study.body.split("\n") };
  return findFigures(createMarkdown().parse(study.body, {}))
    .slice(0, mostFigures)
    .flatMap((token) => {
      const asked = read(token.content);
      return asked === undefined ? [] : [{ ...asked, at: placeBlock(token, prose) }];
    });
}

function findFigures(tokens: readonly Token[]): readonly Token[] {
  return tokens.filter(({ type }) => type === "figure" || type === "study");
}

function checkStudyLine(token: Token, prose: Prose, shown: unknown): Problem[] {
  const asked = readStudyLine(token.content);
  if (shown === "studies") {
    if (asked !== undefined) return [];
    const word = /([a-z0-9]+(?:-[a-z0-9]+)*)\W*$/.exec(token.content.slice("::study".length))?.[1];
    const reason = `The line ${quoteText(token.content.slice(0, longestFigure))} names no study.`;
    const hint = `Type: ::study{${word ?? "ferry"}}`;
    return [reportBlock(token, prose, "page/study", { reason, hint })];
  }
  const reason = "A study is shown here; studies are shown on the pages in the folder pages alone.";
  const hint = `Delete the line, or link to it: [its title](../${asked ?? "ferry"}/)`;
  return [reportBlock(token, prose, "page/study", { reason, hint })];
}

function checkFigure(token: Token, prose: Prose, shown: Shown | "none" | "studies" | undefined): Problem[] {
  if (shown === "studies") return checkDrawingLine(token, prose);
  if (shown === "none") {
    const reason =
      "A figure stands here; figures are of one study, and are shown in the prose of a study alone.";
    return [reportBlock(token, prose, "study/figure", { reason, hint: "Delete the line." })];
  }
  const asked = readFigure(token.content);
  const fault = asked === undefined ? describeUnread(token.content) : shown && describeMissing(asked, shown);
  return fault === undefined ? [] : [reportBlock(token, prose, "study/figure", fault)];
}

/** A page is of no study: what it shows are drawings. */
function checkDrawingLine(token: Token, prose: Prose): Problem[] {
  if (readDrawingLine(token.content) !== undefined) return [];
  const line = token.content.slice(0, longestFigure);
  const file = /[a-z0-9/-]{1,100}\.svg/i.exec(line)?.[0];
  const reason =
    file === undefined
      ? "A figure stands here; figures are of one study, and a page shows drawings and studies as a whole."
      : `The figure ${quoteText(line)} cannot be read.`;
  const begin = file === undefined ? "Show the study, by its folder: ::study{ferry}\n" : "";
  const hint = `${begin}${file === undefined ? "Or show a drawing" : "Type"}: ::figure{drawing="${file ?? "/flags/harbour.svg"}"}`;
  return [reportBlock(token, prose, "study/figure", { reason, hint })];
}

function describeUnread(line: string): Advice {
  const kind = readKind(line);
  if (kind === undefined)
    return { reason: `The figure ${quoteText(line)} cannot be read.`, hint: proposeFigure(line) };
  const near = findKind(kind);
  const begin = near === undefined ? "" : `Type: ::figure{kind="${near}"}\n`;
  return {
    reason: `There is no figure ${quoteText(kind)}.`,
    hint: `${begin}There are: ${figureKinds.join(", ")}, and each edge as edge="white / red".`,
  };
}

function describeMissing(asked: AskedFigure, { edges, before }: Shown): Advice | undefined {
  if (asked.kind === "edge") {
    if (findNamedEdge(asked.edge, edges) !== undefined) return undefined;
    const reason = `The figure asks for the edge ${quoteText(asked.edge)}, and the original has no such edge.`;
    return { reason, hint: listEdges(spellEdge(asked.edge, before.colours ?? [], edges), edges) };
  }
  const has = { edges: edges.length > 0, focus: before.focus.source !== "none" };
  if (canShow(asked.kind, has)) return undefined;
  return {
    reason: `The figure ${quoteText(asked.kind)} has nothing to show: the original has no ${has.edges ? "focus" : "edges"}.`,
    hint: "Delete the line.",
  };
}

/** The figure line as it should be, with the names that stand in the wrong one. */
function proposeFigure(whole: string): string {
  const line = whole.slice(0, longestFigure);
  const inside = /^::figure\W*(?:(?:kind|edge|\w+\s*=)\W*)?([\p{L} -]+?)\W*$/u.exec(line)?.[1];
  const kind = inside === undefined ? undefined : findKind(inside);
  if (kind !== undefined) return `Type: ::figure{kind="${kind}"}`;
  const names = /([\p{L}][\p{L} -]*?)\s*\/\s*([\p{L}][\p{L} -]*)/u.exec(
    line.replace(/^::figure|\bedge\b/g, " "),
  );
  const edge = names === null ? "white / red" : `${names[1]?.trim()} / ${names[2]?.trim()}`;
  return `Type: ::figure{edge="${edge}"}`;
}

/** Puts the names in the place of hex colours, as far as the edges have them. */
function spellEdge(
  asked: string,
  colours: readonly { readonly id: string; readonly hex: string }[],
  edges: readonly ComparedEdge[],
): string {
  return asked.replace(/#[0-9a-f]{6}/gi, (typed) => {
    const id = colours.find(({ hex }) => hex === typed.toLowerCase())?.id;
    const edge = edges.find(({ a, b }) => id !== undefined && (a === id || b === id));
    return edge?.names[0][edge.a === id ? 0 : 1] ?? typed;
  });
}

function listEdges(asked: string, edges: readonly ComparedEdge[]): string {
  const names = edges.flatMap(({ names: [[a, b]], contrast: [before] }) =>
    before === null ? [] : [`${a} / ${b}`],
  );
  if (names.length === 0) return "The original has one colour and no edge: delete the line.";
  const near = findNamedEdge(asked, edges)?.names[0].join(" / ") ?? findNearest(asked, names);
  const begin = near === undefined ? "" : `Type: ::figure{edge="${near}"}\n`;
  return `${begin}Its edges are: ${names.slice(0, 12).join(", ")}${names.length > 12 ? ", and others" : ""}.`;
}

/** A figure that is none: among other words, in a list or a quotation, or begun with fewer colons. */
function checkStray(token: Token, prose: Prose): Problem[] {
  const found = (token.children ?? [])
    .filter((child) => child.type === "text")
    .map(({ content }) => /(?<!:):+\s?figure\s?\{\s*(?:edge|kind|drawing)\b[^}]*\}?/i.exec(content)?.[0])
    .find((text) => text !== undefined);
  if (found === undefined) return [];
  const line = found.replace(/^:+\s?figure\s?/i, "::figure");
  const right =
    readFigure(line) || readKind(line) || readDrawingLine(line)
      ? line
      : proposeFigure(line).replace("Type: ", "");
  const hint = `${howToType(found, token, prose)}: ${right}`;
  const reason = `${quoteText(found)} does not stand for a figure here, and is shown letter for letter.`;
  return [reportBlock(token, prose, "study/figure", { reason, hint }, found)];
}

/** Where it has a line of its own, only what is wrong with the word itself is said. */
function howToType(found: string, token: Token, { lines }: Prose): string {
  const isAlone = token.level === 1 && lines.includes(found);
  const spelling = [
    ...(found.includes("F") ? ["with a small f"] : []),
    ...(/^:+\s|figure\s/i.test(found) ? ["without a space"] : []),
  ];
  const colons = /^::(?!:)/.test(found) ? [] : ["with two colons"];
  if (isAlone && colons.length === 0 && spelling.length > 0) return `Type it ${spelling.join(" and ")}`;
  const how = colons.length === 0 ? "Type it" : "Type it with two colons,";
  return `${how} on a line of its own, outside lists and quotations`;
}

function checkImages(token: Token, prose: Prose, isPage: boolean): Problem[] {
  if (!(token.children ?? []).some((child) => child.type === "image")) return [];
  const reason = `A picture stands in the prose; a ${isPage ? "page" : "study"} shows no pictures but the flags.`;
  const other = isPage ? `Show a drawing: ::figure{drawing="/flags/harbour.svg"}` : "Leave it out";
  const hint = `${other}; until then its text stands in its place.`;
  return [reportBlock(token, prose, "study/image", { reason, hint })];
}

function checkLinks(token: Token, prose: Prose, isPage: boolean): Problem[] {
  const address: unknown = token.meta;
  if (typeof address !== "string") return [];
  const reason = `The link to ${quoteText(address)} is left out: links lead to pages of the web and the gallery, and to mail addresses.`;
  const [, scheme = "", rest = ""] = /^(https?:)[/\\]*(.*)$/i.exec(address) ?? [];
  const user = /^[^/\\?#]*@/.exec(rest)?.[0];
  const hint = user
    ? `Leave out what stands before the host: ${user}`
    : scheme !== ""
      ? `Type the whole address: ${scheme.toLowerCase()}//${rest}`
      : address.startsWith("//")
        ? `Type the whole address: https:${address}`
        : address.startsWith("/")
          ? `Type it from this page on, such as: ${isPage ? ".." : "../.."}${address}${isPage ? "; with one more ../ for each folder of pages that this file lies in." : ""}`
          : "Begin its address with https:// or mailto:; until then its text stands in its place.";
  const word = prose.study.body.includes(address) ? address : undefined;
  return [reportBlock(token, prose, "study/prose-link", { reason, hint }, word)];
}

function checkLinkText(token: Token, prose: Prose): Problem[] {
  const found = findFalseLink(token);
  if (found === undefined) return [];
  const reason = `The text of a link is ${quoteText(found.said)}, and it leads to ${quoteText(found.leads)}, which is shown behind it.`;
  const hint = "Type words for its text, or the address that it leads to.";
  return [reportBlock(token, prose, "study/link-text", { reason, hint }, found.said)];
}

function checkHtml(token: Token, prose: Prose): Problem[] {
  const html = (token.children ?? [])
    .filter((child) => child.type === "text")
    .map(({ content }) => findHtml(content))
    .find((found) => found !== undefined);
  if (html === undefined) return [];
  const reason = `${quoteText(html.tag)} is HTML, and is shown letter for letter.`;
  return [reportBlock(token, prose, "study/html", { reason, hint: html.hint }, html.tag)];
}

/** With `word`, the caret goes under the first place in the block where it stands. */
function reportBlock(token: Token, prose: Prose, rule: string, advice: Advice, word?: string): Problem {
  return report(rule, placeBlock(token, prose, word), advice, "warning");
}

function placeBlock(
  token: Token,
  { study, lines }: Prose,
  word?: string,
): Located & { readonly file: string } {
  const [first = 0, end = first + 1] = token.map ?? [];
  const index =
    word === undefined
      ? -1
      : lines.slice(first, Math.max(end, first + 1)).findIndex((line) => line.includes(word));
  const at = first + Math.max(0, index);
  const line = lines[at] ?? "";
  const isFound = index >= 0 && word !== undefined;
  const column = isFound ? line.indexOf(word) + 1 : 1;
  const length = isFound ? word.length : Math.max(1, line.length);
  const place = { line: study.bodyLine + at, column, length };
  return { file: study.proseFile ?? study.file, ...locate(line, place) };
}
