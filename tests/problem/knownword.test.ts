import { expect, test } from "vitest";
import { findNearest } from "../../src/problem/knownword.ts";

test.each([
  ["orignal", ["options", "original"], "original"],
  ["color", ["select", "colour"], "colour"],
  ["License", ["author", "licence"], "licence"],
  ["lihgt-blue", ["blue", "light blue"], "light blue"],
  ["STATUS", ["status"], "status"],
  ["mesure", ["build", "measure"], "measure"],
  ["ab", ["ba", "cd"], undefined],
  ["permalink", ["original", "symbolism"], undefined],
  ["x", ["y"], undefined],
  ["", ["y"], undefined],
  ["anything", [], undefined],
])("%j among %j is %j", (word, known, nearest) => {
  expect(findNearest(word, known)).toBe(nearest);
});

test("the first of equals wins", () => {
  expect(findNearest("redd", ["reda", "redb"])).toBe("reda");
  expect(findNearest("r".repeat(101), ["r".repeat(100)])).toBeUndefined();
});
