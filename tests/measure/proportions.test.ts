import { describe, expect, test } from "vitest";
import { findProportions } from "../../src/measure/proportions.ts";

describe("findProportions", () => {
  // Height first, as laws write it.
  test.each([
    [900, 600, [2, 3]],
    [2, 1, [1, 2]],
    [32, 32, [1, 1]],
    [16, 10, [5, 8]],
    [8.5, 7, [14, 17]],
    [25, 18, [18, 25]],
    [1000, 526.3157, [10, 19]],
    [9, 11, [11, 9]],
    // 0.81967: 9 : 11 is 0.18 % off, 41 : 50 is 0.04 %.
    [100, 122, [50, 41]],
    // Within 0.1 %: 1.4992 is 2 : 3.
    [1499.2, 1000, [2, 3]],
  ] as const)("%f by %f", (width, height, proportions) => {
    expect(findProportions(width, height)).toEqual(proportions);
  });

  test("the smallest whole numbers, not larger ones that are closer", () => {
    // 1.6666 is 3 : 5 within 0.1 %; 30 : 50 would be no closer.
    expect(findProportions(1.6666, 1)).toEqual([3, 5]);
  });

  test("a ratio that is none: of the golden one 21 : 13 is 0.16 % off and 34 : 21 is 0.06 %", () => {
    expect(findProportions((1 + Math.sqrt(5)) / 2, 1)).toEqual([21, 34]);
  });

  test("where no whole numbers are near, the width over the height", () => {
    // Longer than 50 to 1 there are no whole numbers up to 50.
    expect(findProportions(60, 1)).toEqual([1, 60]);
  });
});
