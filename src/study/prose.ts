// Floor 5. The author's prose as Markdown tokens, with what stands in it that a study cannot show.
import MarkdownIt from "markdown-it";
import type { ComparedEdge } from "../measure/comparison.ts";
import type { Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import type { Study } from "./study.ts";

type Token = ReturnType<MarkdownIt["parse"]>[number];

const figureLine = /^::figure\{edge="([^"]+)"\}$/;

/** Returns a reader of prose: CommonMark without HTML, and a token `figure` for each line `::figure{…}`. */
export function createMarkdown(): MarkdownIt {
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
  return md;
}

/** Returns the edge that a figure line asks for, `white / red`, or undefined where the line cannot be read. */
export function readFigure(line: string): string | undefined {
  return figureLine.exec(line)?.[1];
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

/**
 * Returns what the page of a study will leave out of its prose. `edges` are those of its comparison; without them, as
 * where the drawing is wrong, no figure is asked for its edge.
 *
 * Problems: warnings `study/figure` of a figure that cannot be drawn and `study/image` of an image.
 */
export function checkProse(study: Study, edges?: readonly ComparedEdge[]): readonly Problem[] {
  const tokens = createMarkdown().parse(study.body, {});
  return tokens.flatMap((token) => [
    ...(token.type === "figure" ? checkFigure(token, study, edges) : []),
    ...checkImages(token, study),
  ]);
}

function checkFigure(token: Token, study: Study, edges: readonly ComparedEdge[] | undefined): Problem[] {
  const edge = readFigure(token.content);
  const hint =
    'Write ::figure{edge="white / red"} with two colour names as the edge table of the page shows them.';
  if (edge === undefined) {
    const reason = `The figure ${quoteText(token.content)} cannot be read.`;
    return [report(token, study, "study/figure", reason, hint)];
  }
  if (edges === undefined || findNamedEdge(edge, edges) !== undefined) return [];
  const reason = `The figure asks for the edge ${quoteText(edge)}, and the original has no such edge.`;
  const names = edges.flatMap(({ names: [[a, b]], contrast: [before] }) =>
    before === null ? [] : [`${a} / ${b}`],
  );
  const list = names.length === 0 ? hint : `Its edges are: ${names.slice(0, 12).join(", ")}.`;
  return [report(token, study, "study/figure", reason, list)];
}

function checkImages(token: Token, study: Study): Problem[] {
  if (!(token.children ?? []).some((child) => child.type === "image")) return [];
  const reason = "An image stands in the prose; studies show no pictures but the flags.";
  return [report(token, study, "study/image", reason, "Leave it out. Its text is shown in its place.")];
}

function report(token: Token, study: Study, rule: string, reason: string, hint: string): Problem {
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
