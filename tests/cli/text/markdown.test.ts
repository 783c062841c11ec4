import fc from "fast-check";
import MarkdownIt from "markdown-it";
import { expect, test } from "vitest";
import { formatMarkdown } from "../../../src/cli/text/markdown.ts";
import type { Problem } from "../../../src/problem/problem.ts";

const problem: Problem = {
  rule: "study/unknown-key",
  severity: "error",
  file: "content/studies/ferry/study.md",
  place: { line: 3, column: 1, length: 7 },
  reason: "A study has no key “orignal”.",
  hint: "Type “original”.",
};
const format = (...changes: readonly Partial<Problem>[]) =>
  formatMarkdown(changes.map((change) => ({ ...problem, ...change })));

test("a table to paste", () => {
  expect(
    format(
      {},
      {
        severity: "warning",
        reason: "The tag “a_b” is odd.",
        hint: "One:\ntags: [a]",
        file: "content/studies/z/study.md",
      },
      { reason: "“replace” is “#7a1020”, which is no colour.", file: "content/studies/zz/study.md" },
    ),
  ).toBe(`\
| Where | What is wrong | What to type |
| --- | --- | --- |
| \`content/studies/ferry/study.md:3:1\` | A study has no key “orignal”. | \`Type “original”.\` |
| \`content/studies/z/study.md:3:1\` | (warning) The tag “\`a_b\`” is odd. | \`One:\` \`tags: [a]\` |
| \`content/studies/zz/study.md:3:1\` | “replace” is “\`#7a1020\`”, which is no colour. | \`Type “original”.\` |`);
});

test("nothing wrong", () => {
  expect(formatMarkdown([])).toBe("No problem was found.");
});

// A reader of its own: everything a site could act on, outside code, in what Markdown makes of the table.
const reader = new MarkdownIt({ html: true, linkify: true });
function findActive(markdown: string): readonly string[] {
  const tokens = reader.parse(markdown, {});
  const inline = tokens.flatMap((token) => token.children ?? []);
  const kinds = new Set([...tokens, ...inline].map(({ type }) => type));
  const known = /^(?:table|thead|tbody|tr|th|td)_(?:open|close)$|^(?:inline|text|code_inline|text_special)$/;
  const text = inline.filter(({ type }) => type === "text").map(({ content }) => content);
  return [
    ...[...kinds].filter((kind) => !known.test(kind)),
    ...text.filter((piece) => /[@#<>[\]!*_`~]|https?:|www\./.test(piece)),
  ];
}

const countCells = (markdown: string): number =>
  reader.parse(markdown, {}).filter(({ type }) => type === "td_open").length;

test.each([
  "@ines please merge",
  "![x](https://evil.example/x.png)",
  "<img src=x onerror=alert(1)>",
  "<!-- hidden",
  "[click](javascript:alert(1))",
  "https://evil.example www.evil.example ines@evil.example",
  "#1 GH-1 ines/flags#1",
  "a | b | c",
  "\\| \\\\| \\\\\\|",
  "`code` ``more`` ```most",
  "line\nbreak\r\n\n| a | b |\n|---|---|",
  "**bold** _it_ ~~gone~~ &lt; &#64;ines",
  "\u202eeman",
  "$x$ :tada: {{ x }} <% x %>",
])("a stranger's %j is mere text", (text) => {
  const table = format({ reason: `“x” is “${text}”.`, hint: text, file: text });
  expect(findActive(table)).toEqual([]);
  expect(countCells(table)).toBe(3);
});

// GitHub makes links of these where they stand in words, and not in code.
test.each([
  "a94a8fe5ccb19ba61c4c0873d391e987982fbbd3",
  "a94a8fe",
  "defaced",
  "FLAG-12",
  "GH-7",
  "“a94a8fe”",
  "(FLAG-1)",
])("a reference %s stands in code", (word) => {
  const cells = reader
    .parse(format({ reason: `See ${word} there.` }), {})
    .flatMap(({ children }) => children ?? []);
  expect(
    cells
      .filter(({ type }) => type === "text")
      .map(({ content }) => content)
      .join(""),
  ).not.toMatch(/\p{L}\d|\d\p{L}|-\d|defaced/u);
});

test("text at random is mere text", () => {
  const text = fc.string({ unit: fc.constantFrom(..."ab1 `|\\<>@#[]()!*_~:/.&\n“”'\"-") });
  fc.assert(
    fc.property(text, text, (reason, hint) => {
      const table = format({ reason, hint });
      expect(findActive(table)).toEqual([]);
      expect(countCells(table)).toBe(3);
    }),
    { numRuns: 2000 },
  );
});

test("what is to be typed is what was meant, letter for letter", () => {
  for (const hint of ['change: { replace: "#7a1020" }', "a | b", "`a` | b", "x \\\\| y"]) {
    const cells = reader.parse(format({ hint }), {}).flatMap(({ children }) => children ?? []);
    expect(cells.filter(({ type }) => type === "code_inline").at(-1)?.content).toBe(hint);
  }
});
