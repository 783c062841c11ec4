import { expect, test } from "vitest";
import { areWhole, divideHeight } from "../../src/measure/wholepart.ts";

test.each([
  [[[1.5], [0.5, 0.25]], 4],
  [[[5 / 3], [1 / 3, 0.25]], 12],
  // 300 by 180 with a ring of 91 over 69 parts.
  [[[300 / 180], [150 / 180, 0.5, 182 / 360, 138 / 360]], 180],
  // The golden ratio and what is rounded to four digits go into no parts; what comes behind does.
  [[[1.618033988749], [0.3333], [0.125]], 8],
  // Each alone would do: 1,199 is a prime.
  [[[1 / 1199], [0.5]], 1199],
  [[[2], [1]], 1],
])("%j has %i parts", (groups, parts) => {
  expect(divideHeight(groups)).toBe(parts);
});

test("lengths are whole or not", () => {
  expect(areWhole([0.25, 1.5], 4)).toBe(true);
  expect(areWhole([0.25, 0.3333], 12)).toBe(false);
});
