// Floor 8. The author's prose: Markdown in, safe HTML out, with computed figures between the pieces.
import {
  type AskedDrawing,
  type AskedFigure,
  mostFigures,
  readDrawingLine,
  readFigure,
  readStudyLine,
} from "../content/study/figurekind.ts";
import { createMarkdown } from "../content/study/prosecheck.ts";

/** A piece of HTML that we wrote, or the place of a figure. */
export type ProseBlock<Figure> =
  | { readonly kind: "html"; readonly html: string }
  | { readonly kind: "figure"; readonly figure: Figure };

/** Returns the figure that a line asks for, or undefined where the study has none to show. Called in the order of the prose. */
export type FindFigure<Figure> = (asked: AskedFigure) => Figure | undefined;

type Token = ReturnType<ReturnType<typeof createMarkdown>["parse"]>[number];

/** Letters of typed text in a sentence that a line of a phone has room for. */
const mostWhole = 32;

const markdown = createRenderer();

/** What prose may be other than that of a study. */
export interface ProseKind<Figure> {
  /** Returns what stands in the place of a line that shows a study; nothing unless told otherwise. */
  readonly findStudy?: (slug: string) => Figure | undefined;
  /** The same for a line that shows a drawing. */
  readonly findDrawing?: (asked: AskedDrawing) => Figure | undefined;
  /** The highest heading an author may use; 3 unless told otherwise: above it stand the page's title and the section's. */
  readonly topHeading?: number;
  /** Is told each heading of that level, and returns its anchor; none has one unless told otherwise. */
  readonly nameSection?: (text: string) => string;
}

/**
 * Renders the prose of a study, or of another `kind`. HTML in it is shown as text, links to other sites carry `rel="nofollow noopener"`,
 * headings are set below those of the page. Images and figures that cannot be drawn are left out: `checkProse` names them.
 */
export function renderProse<Figure>(
  body: string,
  findFigure: FindFigure<Figure>,
  { findStudy, findDrawing, topHeading = 3, nameSection }: ProseKind<Figure> = {},
): readonly ProseBlock<Figure>[] {
  const env = {};
  const tokens = markdown.parse(body, env);
  setHeadings(tokens, topHeading);
  for (const [at, token] of tokens.entries()) {
    if (token.type !== "heading_open" || token.tag !== `h${topHeading}` || !nameSection) continue;
    token.attrSet("id", nameSection(readToken(tokens[at + 1] as Token)));
  }
  const blocks: ProseBlock<Figure>[] = [];
  let run: Token[] = [];
  let figures = 0;
  const endRun = () => {
    const html = markdown.renderer.render(run, markdown.options, env).trim();
    if (html !== "") blocks.push({ kind: "html", html });
    run = [];
  };
  for (const token of tokens) {
    if (token.type !== "figure" && token.type !== "study") {
      run.push(token);
      continue;
    }
    figures += 1;
    if (figures > mostFigures) continue;
    const [asked, slug] = [readFigure(token.content), readStudyLine(token.content)];
    const drawing = findDrawing && readDrawingLine(token.content);
    const other = drawing ? findDrawing?.(drawing) : asked && findFigure(asked);
    const figure = slug === undefined ? other : findStudy?.(slug);
    if (figure === undefined) continue;
    endRun();
    blocks.push({ kind: "figure", figure });
  }
  endRun();
  return blocks;
}

/** The first sentence of prose as plain text, or undefined where it has no paragraph. */
export function firstSentence(body: string, language: string): string | undefined {
  return firstSentences(body, language, 0);
}

/** As `firstSentence`, with the sentences behind it in the same paragraph as long as all have at most `most` characters. */
export function firstSentences(body: string, language: string, most: number): string | undefined {
  const tokens = markdown.parse(body, {});
  const opens = tokens.findIndex(({ type, level }) => type === "paragraph_open" && level === 0);
  const text = opens < 0 ? "" : readToken(tokens[opens + 1] as Token);
  const ends = [...new Intl.Segmenter(language, { granularity: "sentence" }).segment(text)].map(
    ({ index, segment }) => text.slice(0, index + segment.length).trim(),
  );
  return ends.findLast((end, at) => at === 0 || end.length <= most);
}

/** Prose in full as plain text in one line. */
export function readProse(body: string): string {
  const tokens = markdown.parse(body, {}).filter(({ type }) => type === "inline");
  return tokens.map(readToken).join(" ");
}

function readToken(token: Token): string {
  return (
    token.children?.map(readToken).join("") ?? (/^(?:soft|hard)break$/.test(token.type) ? " " : token.content)
  );
}

function createRenderer(): ReturnType<typeof createMarkdown> {
  const md = createMarkdown();
  // No line breaks behind the hyphens of an option.
  md.set({
    highlight: (text) =>
      md.utils.escapeHtml(text).replace(/--[a-z][a-z-]*/g, '<span class="option">$&</span>'),
  });
  md.renderer.rules.code_inline = (tokens, index) => {
    const text = tokens[index]?.content ?? "";
    return `<code${text.length > mostWhole ? ' class="long"' : ""}>${md.utils.escapeHtml(text)}</code>`;
  };
  md.renderer.rules.image = (tokens, index) => md.utils.escapeHtml(tokens[index]?.content ?? "");
  md.renderer.rules.link_open = (tokens, index, options, _env, self) => {
    const token = tokens[index];
    if (token && /^[a-z]+:/i.test(token.attrGet("href") ?? "")) {
      token.attrSet("rel", "nofollow noopener");
    }
    return self.renderToken(tokens, index, options);
  };
  return md;
}

/** Sets headings so that no level is skipped, whatever levels the author used. */
function setHeadings(tokens: readonly Token[], top: number): void {
  const open: number[] = [];
  for (const token of tokens) {
    if (token.type !== "heading_open" && token.type !== "heading_close") continue;
    const written = Number(token.tag.slice(1));
    if (token.type === "heading_open") {
      while (open.length > 0 && (open.at(-1) ?? 0) >= written) open.pop();
      open.push(written);
    }
    token.tag = `h${Math.min(6, top + open.length - 1)}`;
  }
}
