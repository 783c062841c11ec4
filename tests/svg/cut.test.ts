import { expect, test } from "vitest";
import { cut, splice } from "../../src/svg/cut.ts";

test("cut takes ranges out, in any order, overlapping or not", () => {
  expect(cut("abcdef", [])).toBe("abcdef");
  expect(
    cut("abcdef", [
      { start: 4, end: 5 },
      { start: 1, end: 2 },
    ]),
  ).toBe("acdf");
  expect(
    cut("abcdef", [
      { start: 1, end: 4 },
      { start: 2, end: 3 },
    ]),
  ).toBe("aef");
  expect(cut("abcdef", [{ start: 0, end: 6 }])).toBe("");
});

test("splice puts texts in, of any length, in any order", () => {
  expect(splice("abcdef", [])).toBe("abcdef");
  expect(
    splice("abcdef", [
      { start: 1, end: 2, text: "XYZ" },
      { start: 4, end: 6, text: "" },
    ]),
  ).toBe("aXYZcd");
  expect(splice("ab", [{ start: 1, end: 1, text: "-" }])).toBe("a-b");
});
