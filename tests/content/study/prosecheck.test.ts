import { expect, test } from "vitest";
import { checkProse, findDrawingLines, findNamedEdge } from "../../../src/content/study/prosecheck.ts";
import { parseText, writeStudy } from "../../analysis/fixture.ts";

const { value: study } = parseText(writeStudy());
if (study === undefined) throw new Error("the study must be right");
const lines = (body: string) => ({ ...study, body, bodyLine: 20 });

const edge = (a: string, b: string, before: number | null) => ({
  a,
  b,
  names: [
    [a, b],
    [a, b],
  ] as const,
  length: 1,
  contrast: [before, 50] as const,
  outcome: "same" as const,
});
const edges = [edge("white", "dark red", 50), edge("white", "blue", null)];
const shown = { edges, before: { focus: { source: "none" } } };

test("an image is warned of, with its line", () => {
  expect(checkProse(lines("One.\n\n![a bell](https://flags.example/bell.png)\n"), shown)).toMatchObject([
    { rule: "study/image", severity: "warning", file: study.file, place: { line: 22, column: 1 } },
  ]);
});

test("a link that is none of the web, of mail or of the gallery is warned of, under its address", () => {
  const good =
    "[a](https://flags.example/) [b](../b/) [c](#d) <mailto:sec@flags.example> [e](HTTP://f.example)";
  expect(checkProse(lines(good), shown)).toEqual([]);
  expect(checkProse(lines("One\nof [two](ftp://flags.example/a) and <tel:5550100>."), shown)).toMatchObject([
    {
      rule: "study/prose-link",
      severity: "warning",
      place: { line: 21, column: 10, length: 21 },
      reason: expect.stringContaining("“ftp://flags.example/a”"),
    },
  ]);
  expect(checkProse(lines("[a](//flags.example/)"), shown)).toMatchObject([
    { rule: "study/prose-link", hint: "Type the whole address: https://flags.example/" },
  ]);
  expect(checkProse(lines("[a](/etc/passwd)"), shown)).toMatchObject([
    { rule: "study/prose-link", hint: "Type it from this page on, such as: ../../etc/passwd" },
  ]);
});

test("a figure of an edge that is not there is warned of, with the edges that are", () => {
  expect(checkProse(lines('One.\n\n::figure{edge="white / pink"}\n\nTwo.'), shown)).toEqual([
    {
      rule: "study/figure",
      severity: "warning",
      file: study.file,
      place: { line: 22, column: 1, length: 29 },
      sourceLine: '::figure{edge="white / pink"}',
      reason: "The figure asks for the edge “white / pink”, and the original has no such edge.",
      hint: "Its edges are: white / dark red.",
    },
  ]);
});

test("a figure that cannot be read is warned of; in code it is code", () => {
  expect(checkProse(lines("::figure{edge=white}\n"), shown)).toMatchObject([
    {
      rule: "study/figure",
      place: { line: 20 },
      reason: "The figure “::figure{edge=white}” cannot be read.",
    },
  ]);
  expect(checkProse(lines('```\n::figure{edge="no / such"}\n```\n'), shown)).toEqual([]);
});

test("without edges only what needs none is checked", () => {
  const problems = checkProse(lines('::figure{edge="white / pink"}\n\n![x](y)\n'));
  expect(problems.map(({ rule }) => rule)).toEqual(["study/image"]);
});

test("an edge is named in either order, in any case; one that the change makes is not of the original", () => {
  expect(findNamedEdge("Dark Red /white", edges)).toBe(edges[0]);
  for (const text of ["white / blue", "white", "white / white", "white / dark red / blue", ""])
    expect(findNamedEdge(text, edges)).toBeUndefined();
});

test("a figure of a kind that there is not, with the one that is meant", () => {
  expect(checkProse(lines('::figure{kind="reflectance"}\n'), shown)).toMatchObject([
    {
      rule: "study/figure",
      reason: "There is no figure “reflectance”.",
      hint: `Type: ::figure{kind="contrast ruler"}
There are: original, redesign, true size, edge map, contrast ruler, distance strip, lasts to, seen otherwise, matrix, gain chart, and each edge as edge="white / red".`,
    },
  ]);
  expect(checkProse(lines("::figure{edge map}\n"), shown)).toMatchObject([
    { hint: 'Type: ::figure{kind="edge map"}' },
  ]);
});

test("a figure that has nothing to show is warned of, the others are not", () => {
  const ask = (kind: string, around: typeof shown) =>
    checkProse(lines(`::figure{kind="${kind}"}\n`), around).map(({ reason }) => reason);
  expect(ask("lasts to", shown)).toEqual([
    "The figure “lasts to” has nothing to show: the original has no focus.",
  ]);
  expect(ask("lasts to", { edges, before: { focus: { source: "found" } } })).toEqual([]);
  expect(ask("edge map", shown)).toEqual([]);
  expect(ask("edge map", { ...shown, edges: [] })).toEqual([
    "The figure “edge map” has nothing to show: the original has no edges.",
  ]);
  expect(ask("redesign", { ...shown, edges: [] })).toEqual([]);
});

test.each([
  [
    'See ::figure{edge="white / dark red"} here.',
    'Type it on a line of its own, outside lists and quotations: ::figure{edge="white / dark red"}',
  ],
  [
    '- ::figure{kind="edge map"}',
    'Type it on a line of its own, outside lists and quotations: ::figure{kind="edge map"}',
  ],
  [
    ':figure{kind="edge map"}',
    'Type it with two colons, on a line of its own, outside lists and quotations: ::figure{kind="edge map"}',
  ],
  [
    '::: figure {edge="white / dark red"}',
    'Type it with two colons, on a line of its own, outside lists and quotations: ::figure{edge="white / dark red"}',
  ],
])("%s shows no figure", (text, hint) => {
  expect(checkProse(lines(`${text}\n`), shown)).toMatchObject([{ rule: "study/figure", hint }]);
});

test.each(["A figure {of speech} and figure: that.", '`::figure{edge="a / b"}` is how it is typed.'])(
  "%s is prose",
  (text) => expect(checkProse(lines(`${text}\n`), shown)).toEqual([]),
);

test("beyond twenty figures one warning says how many there are, at the first that is not shown", () => {
  const figure = '::figure{edge="white / dark red"}\n\n';
  expect(checkProse(lines(figure.repeat(20)), shown)).toEqual([]);
  expect(checkProse(lines(`${figure.repeat(30)}::figure{kind="nonsense"}\n`), shown)).toMatchObject([
    {
      rule: "study/figure",
      severity: "warning",
      place: { line: 60, column: 1 },
      reason: "The prose has 31 figures; the first 20 are shown.",
    },
  ]);
});

test.each([
  ['::figure{drawing="/flags/a.svg" caption="A"}', undefined],
  ["::figure{drawing=flags/a.svg}", 'Type: ::figure{drawing="flags/a.svg"}'],
  ['::figure{"b.svg"}', 'Type: ::figure{drawing="b.svg"}'],
  [
    '::figure{kind="edge map"}',
    'Show the study, by its folder: ::study{ferry}\nOr show a drawing: ::figure{drawing="/flags/harbour.svg"}',
  ],
])("on a page %s: what to type", (line, hint) => {
  const problems = checkProse(lines(line), "studies");
  expect(problems.map((one) => [one.rule, one.hint])).toEqual(
    hint === undefined ? [] : [["study/figure", hint]],
  );
});

test("a drawing among other words is no figure, and one in a study is none of it", () => {
  const [stray] = checkProse(lines('See ::figure{drawing="a.svg"} here.'), "studies");
  expect(stray?.hint).toContain(': ::figure{drawing="a.svg"}');
  expect(checkProse(lines('::figure{drawing="a.svg"}'), shown)).toMatchObject([{ rule: "study/figure" }]);
});

test("drawings that a page shows, with their places, as far as figures are shown", () => {
  const body = 'One.\n\n::figure{drawing="a.svg"}\n\n::study{ferry}\n\n';
  expect(findDrawingLines(lines(body))).toMatchObject([{ drawing: "a.svg", at: { place: { line: 22 } } }]);
  expect(findDrawingLines(lines(body.repeat(300)))).toHaveLength(10);
});
