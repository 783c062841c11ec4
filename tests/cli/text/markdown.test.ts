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
| Rule | Where | What is wrong | What to type |
| --- | --- | --- | --- |
| \`study/unknown-key\` 2 errors | \`content/studies/ferry/study.md:3:1\`, \`content/studies/zz/study.md:3:1\` | A study has no key “orignal”. (the first) | \`Type “original”.\` |
| \`study/unknown-key\` 1 warning | \`content/studies/z/study.md:3:1\` | The tag “\`a_b\`” is odd. | \`One:\` \`tags: [a]\` |`);
});

test("27 of one kind are one row, the rule leads to its entry, paths begin at the gallery", () => {
  const many = Array.from({ length: 21 }, (_, at): Problem => {
    const { hint: _hint, ...plain } = { ...problem, severity: "warning" as const, rule: "study/image" };
    return { ...plain, place: { line: at + 1, column: 1 } };
  });
  const [first] = many;
  const counted = { ...problem, rule: "study/image", severity: "warning" as const, more: 6 };
  const told = formatMarkdown([...many, counted, { ...first!, rule: "other/rule" }], {
    content: "content",
    address: "https://flags.example/a(b)|`c`",
  });
  const rows = told.split("\n").slice(2);
  expect(rows.find((row) => row.includes("image"))).toBe(
    "| [`study/image`](https://flags.example/a%28b%29%7C%60c%60/rules/#study-image) 27 warnings | `studies/ferry/study.md:1:1`, `studies/ferry/study.md:2:1`, `studies/ferry/study.md:3:1` and 24 more | A study has no key “orignal”. (the first) | `` |".replace(
      " | `` |",
      " |  |",
    ),
  );
  expect(rows.find((row) => row.includes("other"))).toMatch(/^\| `other\/rule` 1 warning \|/);
  expect(rows).toHaveLength(2);
});

test.each(["javascript:alert(1)//x", "http://localhost:8080", "", "ftp://flags.example"])(
  "the address %j is no link",
  (address) => {
    expect(formatMarkdown([problem], { content: "", address })).toContain("| `study/unknown-key` 1 error |");
  },
);

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
  expect(countCells(table)).toBe(4);
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
      expect(countCells(table)).toBe(4);
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
