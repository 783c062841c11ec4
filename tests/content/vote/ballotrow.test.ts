import { expect, test } from "vitest";
import { findTableReader, isBallotLine, readLine } from "../../../src/content/vote/ballotrow.ts";

const head = "ballot,series,study,choice,why";
const raw = { ballot: "a", series: "quay", study: "ferry", choice: "neither", why: "" };
const read = (first: string, line: string) =>
  (findTableReader(first) ?? readLine)(line, 7)?.map((vote) => vote.raw);

test.each([
  [head, "a,quay,ferry,neither,"],
  [head.replaceAll(",", ";"), "a;quay;ferry;neither;"],
  [head.replaceAll(",", "\t"), "a\tquay\tferry\tneither\t"],
  ['"ballot","series","study","choice","why"', '"a","quay","ferry","neither",""'],
  ["ballot a quay ferry=neither", "ballot a quay ferry=neither"],
])("%j", (first, line) => {
  expect(read(first, line)).toEqual([raw]);
});

test("words keep their commas, quotes and equals signs", () => {
  const why = 'Gold, or "gold": a=b';
  expect(read(head, `a,quay,ferry,neither,"${why.replaceAll('"', '""')}"`)).toEqual([{ ...raw, why }]);
  expect(read("ballot a", `ballot a quay ferry=neither ${JSON.stringify(why)} wheel=original`)).toEqual([
    { ...raw, why },
    { ...raw, study: "wheel", choice: "original" },
  ]);
});

test.each([
  "a,quay,ferry,neither",
  "a,quay,ferry,neither,,",
  'a,quay,ferry,neither,"gold',
  'a,quay,ferry,neither,"gold" wheel',
  'a,quay,ferry,neither,gold"',
])("%s is no row", (line) => {
  expect(read(head, line)).toBeUndefined();
});

test.each([
  "ballot a quay",
  "ballot a quay ferry",
  "ballot a quay ferry=neither and more",
  "ballot  a quay f=neither",
])("%s is no ballot", (line) => {
  expect(read("ballot a quay", line)).toBeUndefined();
});

test.each(["", "study,choice", "ballot", "\u0089PNG", "ballot,series,study,choice"])(
  "%j begins no table",
  (first) => {
    expect(findTableReader(first)).toBeUndefined();
  },
);

test("a line is meant as a ballot behind marks of a reply, and where it is the rest of one", () => {
  expect(
    ["> > ballot a quay", "  ballot a", "wheel=neither", "Otto", "My ballot a", "a=b"].map(isBallotLine),
  ).toEqual([true, true, true, false, false, false]);
});

test("every value knows where it stands", () => {
  const line = 'ballot a quay ferry=neither "gold" wheel=original';
  const [, second] = readLine(line, 7) ?? [];
  expect(second?.places.study).toEqual({ line: 7, column: line.indexOf("wheel") + 1, length: 5 });
  expect(second?.places.choice).toEqual({ line: 7, column: line.indexOf("original") + 1, length: 8 });
  const [row] = findTableReader(head)?.('"a",quay,fery,neither,', 3) ?? [];
  expect(row?.places.study).toEqual({ line: 3, column: 10, length: 4 });
});
