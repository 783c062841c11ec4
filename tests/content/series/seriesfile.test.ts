import { expect, test } from "vitest";
import { studyOf } from "../../../src/content/series/series.ts";
import { parseSeries } from "../../../src/content/series/seriesfile.ts";
import { rightSeries } from "../mistakes.ts";

const parse = (text: string) => parseSeries("quay", "series/quay.md", Buffer.from(text));

test("a series as it was written, studies and flags in their order", () => {
  const { value, problems } = parse(
    rightSeries.replace("[ferry]", "[ferry, { flag: /flags/a.svg, ask: Why? }, wheel]"),
  );
  expect(problems).toEqual([]);
  expect(value).toMatchObject({
    slug: "quay",
    title: "From the quay",
    authors: ["Ines Valcourt"],
    date: "2026-06-24",
    closing: "Which of these changes would you make?",
    body: "Look at each from the door.\n",
    bodyLine: 8,
  });
  expect(value?.entries).toEqual([
    { study: "ferry" },
    { flag: "flags/a.svg", ask: "Why?" },
    { study: "wheel" },
  ]);
  expect(value?.entries.map(studyOf)).toEqual(["ferry", undefined, "wheel"]);
  expect(value?.places.map((at) => at?.place)).toMatchObject([
    { line: 5, column: 11 },
    { line: 5, column: 18 },
    { line: 5, column: 53 },
  ]);
});

test.each([
  ["studies: [ferry, ferry]", "series/study-twice"],
  ["studies: [{ flag: /flags/a.svg }, { flag: /flags/a.svg, name: A }]", "series/study-twice"],
  ["studies: [{ flag: ../a.svg }]", "series/flag-path"],
  ["studies: [{ flag: a.svg }]", "series/flag-path"],
  ["studies: [{ ask: Why? }]", "study/missing-key"],
  ["studies: [7]", "study/wrong-type"],
  ["date: 31 May", "study/wrong-date"],
])("%s: %s, with its place", (line, rule) => {
  const text = rightSeries.replace(line.startsWith("date") ? "date: 2026-06-24" : "studies: [ferry]", line);
  const { value, problems } = parse(text);
  expect(value).toBeUndefined();
  expect(problems.map((problem) => problem.rule)).toContain(rule);
  for (const { place, hint } of problems)
    expect([place?.line, hint]).toEqual([expect.any(Number), expect.any(String)]);
});

test("HTML in the opening is a warning, and the series stays", () => {
  const { value, problems } = parse(`${rightSeries}\n<b>Look</b>\n`);
  expect(value).toBeDefined();
  expect(problems.map(({ rule, severity }) => [rule, severity])).toEqual([["study/html", "warning"]]);
});
