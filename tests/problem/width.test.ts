import { expect, test } from "vitest";
import { measureColumns, splitCharacters } from "../../src/problem/width.ts";

// Source: EastAsianWidth.txt of Unicode 15.1 (W and F take two columns), Unicode Standard Annex 29 for the clusters.
test.each([
  ["", 0],
  ["abc", 3],
  ["旗の色", 6],
  ["ﾊﾀ", 2],
  ["Ａ", 2],
  ["한국", 4],
  ["e\u0301", 1],
  ["🏴", 2],
  ["👩‍🚀", 2],
  ["ש", 1],
  ["\u0301", 0],
])("%j takes %i columns", (text, columns) => {
  expect(measureColumns(text)).toBe(columns);
});

test("a letter with its accent, and an emoji of several parts, are one character", () => {
  expect(splitCharacters("e\u0301👩‍🚀x")).toEqual(["e\u0301", "👩‍🚀", "x"]);
});
