// Floor 6. The author's prose: Markdown in, safe HTML out, with computed figures between the pieces.
import MarkdownIt from "markdown-it";
import type { Problem } from "../problem/problem.ts";
import type { Study } from "../study/study.ts";

/** A piece of HTML that we wrote, or the place of a figure. */
export type ProseBlock<Figure> =
  | { readonly kind: "html"; readonly html: string }
  | { readonly kind: "figure"; readonly figure: Figure };

/** Returns the figure for `edge="…"`, or undefined where the study has no such edge. */
export type FindFigure<Figure> = (edge: string) => Figure | undefined;

type Token = ReturnType<MarkdownIt["parse"]>[number];

/** The highest heading an author may use: above it stand the page's title and the section's. */
const topLevel = 3;

const figureLine = /^::figure\{edge="([^"]+)"\}$/;

const markdown = createMarkdown();

/**
 * Renders the prose of a study. HTML in it is shown as text, images are refused, links to other sites carry
 * `rel="nofollow noopener"`, headings are set below the section's own.
 *
 * Warns with `study/figure` of a figure that cannot be drawn and `study/image` of an image; both are left out.
 */
export function renderProse<Figure>(
  study: Study,
  findFigure: FindFigure<Figure>,
): { readonly blocks: readonly ProseBlock<Figure>[]; readonly problems: readonly Problem[] } {
  const env = {};
  const tokens = markdown.parse(study.body, env);
  setHeadings(tokens);
  const problems: Problem[] = findImages(tokens, study);
  const blocks: ProseBlock<Figure>[] = [];
  let run: Token[] = [];
  const endRun = () => {
    const html = markdown.renderer.render(run, markdown.options, env).trim();
    if (html !== "") blocks.push({ kind: "html", html });
    run = [];
  };
  for (const token of tokens) {
    if (token.type !== "figure") {
      run.push(token);
      continue;
    }
    const figure = findFigure(figureLine.exec(token.content)?.[1] ?? "");
    if (figure === undefined) problems.push(reportFigure(token, study));
    else {
      endRun();
      blocks.push({ kind: "figure", figure });
    }
  }
  endRun();
  return { blocks, problems };
}

function createMarkdown(): MarkdownIt {
  // The types leave out `maxNesting`, which caps how deep quotes and lists may go.
  const options = { html: false, linkify: false, maxNesting: 50 };
  const md = new MarkdownIt("commonmark", options);
  md.block.ruler.before(
    "paragraph",
    "figure",
    (state, startLine, _endLine, silent) => {
      const text = state.getLines(startLine, startLine + 1, 0, false).trim();
      if (state.level !== 0 || !text.startsWith("::figure")) return false;
      if (silent) return true;
      const token = state.push("figure", "", 0);
      token.content = text;
      token.map = [startLine, startLine + 1];
      state.line = startLine + 1;
      return true;
    },
    { alt: ["paragraph"] },
  );
  md.renderer.rules.image = (tokens, index) => md.utils.escapeHtml(tokens[index]?.content ?? "");
  md.renderer.rules.link_open = (tokens, index, options, _env, self) => {
    const token = tokens[index];
    if (token && /^[a-z][a-z0-9+.-]*:|^\/\//i.test(token.attrGet("href") ?? "")) {
      token.attrSet("rel", "nofollow noopener");
    }
    return self.renderToken(tokens, index, options);
  };
  return md;
}

/** Sets headings so that no level is skipped, whatever levels the author used. */
function setHeadings(tokens: readonly Token[]): void {
  const open: number[] = [];
  for (const token of tokens) {
    if (token.type !== "heading_open" && token.type !== "heading_close") continue;
    const written = Number(token.tag.slice(1));
    if (token.type === "heading_open") {
      while (open.length > 0 && (open.at(-1) ?? 0) >= written) open.pop();
      open.push(written);
    }
    token.tag = `h${Math.min(6, topLevel + open.length - 1)}`;
  }
}

function findImages(tokens: readonly Token[], study: Study): Problem[] {
  return tokens.flatMap((token) =>
    (token.children ?? []).some((child) => child.type === "image")
      ? [
          report(
            token,
            study,
            "study/image",
            "An image stands in the prose; studies show no pictures but the flags.",
            {
              hint: "Leave it out. Its text is shown in its place.",
            },
          ),
        ]
      : [],
  );
}

function reportFigure(token: Token, study: Study): Problem {
  const edge = figureLine.exec(token.content)?.[1];
  const reason =
    edge === undefined
      ? `The figure ${token.content} cannot be read.`
      : `The figure asks for the edge ${edge}, and the original has no such edge.`;
  return report(token, study, "study/figure", reason, {
    hint: 'Write ::figure{edge="white / red"} with two colour names as the edge table of the page shows them.',
  });
}

function report(
  token: Token,
  study: Study,
  rule: string,
  reason: string,
  { hint }: { hint: string },
): Problem {
  const line = study.bodyLine + (token.map?.[0] ?? 0);
  const sourceLine = study.body.split("\n")[token.map?.[0] ?? 0] ?? "";
  return {
    rule,
    severity: "warning",
    file: study.file,
    place: { line, column: 1, length: Math.max(1, sourceLine.length) },
    sourceLine,
    reason,
    hint,
  };
}
