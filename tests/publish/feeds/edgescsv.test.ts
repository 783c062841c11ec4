import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { formatEdgesTable } from "../../../src/publish/feeds/edgescsv.ts";
import { oddGallery } from "../../browser/gallery.ts";
import { comparison, studyResult } from "../sample.ts";
import { readCsv } from "../schemas.ts";

const [oneColour, outcomes] = oddGallery.studies;
if (!oneColour || !outcomes) throw new Error("two odd studies");

/** The rows by column name. */
function read(result: StudyResult): readonly Readonly<Record<string, string | undefined>>[] {
  const [head = [], ...rows] = readCsv(formatEdgesTable(result));
  return rows.map((row) => Object.fromEntries(head.map((name, index) => [name, row[index]])));
}

test("a row for each edge, with the numbers of both sides", () => {
  expect(read(studyResult)).toMatchObject([
    {
      study: "a-square",
      edge: "12235c-ffffff",
      outcome: "same",
      contrastBefore: "84.2",
      contrastAfter: "84.2",
    },
    {
      edge: "12235c-c8202f",
      namesBefore: "dark blue / red",
      namesAfter: "dark blue / yellow",
      length: "2",
      contrastBefore: "24.6",
      contrastAfter: "67.2",
      gradeBefore: "weak",
      gradeAfter: "strong",
      nearLineBefore: "false",
      nearLineAfter: "false",
      tinctureBefore: "none",
      greyDeltaE00Before: "14",
      greyDeltaE00After: "55",
    },
  ]);
});

test("an edge that merged says so; one that was not there before has empty cells", () => {
  const [parted, merged] = read(outcomes);
  expect(parted).toMatchObject({ outcome: "parted", contrastBefore: "", gradeBefore: "" });
  expect(merged).toMatchObject({ outcome: "merged", contrastAfter: "0", gradeAfter: "merged" });
});

test("a cell is empty only where there is no such edge", () => {
  for (const row of read(studyResult)) expect(Object.values(row)).not.toContain("");
});

test("one colour: the head alone", () => {
  expect(formatEdgesTable(oneColour).trim().split("\r\n")).toHaveLength(1);
});

// Source: RFC 4180, section 2, rules 1, 2, 5, 6 and 7.
test("every line ends in CR LF; quotes, commas and breaks are quoted", () => {
  const name = 'a "b", c\r\nd';
  const edges = comparison.edges.map((edge) => ({
    ...edge,
    names: [
      [name, "x"],
      ["y", "z"],
    ] as const,
  }));
  const text = formatEdgesTable({ ...studyResult, comparison: { ...comparison, edges } });
  expect(text.endsWith("\r\n")).toBe(true);
  expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  expect(readCsv(text)[1]?.[2]).toBe(`${name} / x`);
});

// Source: OWASP, “CSV Injection”: = + - @, tab, carriage return.
test.each(["=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx"])("%j is no formula to a spreadsheet", (name) => {
  const edges = comparison.edges.map((edge) => ({
    ...edge,
    names: [
      [name, "x"],
      ["y", "z"],
    ] as const,
  }));
  const rows = readCsv(formatEdgesTable({ ...studyResult, comparison: { ...comparison, edges } }));
  expect(rows[1]?.[2]).toBe(`'${name} / x`);
});

test.each(["a,b\nc,d\r\n", 'a"b\r\n', "a,b\r\nc\r\n", '"a\r\n'])("the reader refuses %j", (text) => {
  expect(() => readCsv(text)).toThrow();
});
