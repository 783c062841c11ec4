import fc from "fast-check";
import { expect, test } from "vitest";
import { compareProblems, compareText, hasError, type Problem } from "../../src/problem/problem.ts";

const at = (file: string, line?: number, column = 1, rule = "a/b"): Problem => ({
  rule,
  severity: "error",
  file,
  reason: "",
  ...(line === undefined ? {} : { place: { line, column } }),
});

test("a warning alone is no error", () => {
  expect(hasError([])).toBe(false);
  expect(hasError([{ ...at("a"), severity: "warning" }])).toBe(false);
  expect(hasError([{ ...at("a"), severity: "warning" }, at("b")])).toBe(true);
});

test("problems go by file, then line, then column, then rule; one without a place comes first", () => {
  const sorted = [at("B", 9), at("a"), at("a", 2, 7), at("a", 2, 9), at("a", 10), at("a", 10, 1, "a/c")];
  fc.assert(
    fc.property(fc.shuffledSubarray(sorted, { minLength: sorted.length }), (shuffled) => {
      expect([...shuffled].sort(compareProblems)).toEqual(sorted);
    }),
  );
});

test("the order is that of the code units", () => {
  expect(["b", "a", "Z", "é"].sort(compareText)).toEqual(["Z", "a", "b", "é"]);
});
