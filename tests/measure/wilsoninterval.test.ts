import { expect, test } from "vitest";
import { wilsonInterval } from "../../src/measure/wilsoninterval.ts";

// R. G. Newcombe, “Two-sided confidence intervals for the single proportion: comparison of seven methods”, Statistics in
// Medicine 17 (1998), 857–872, table I, method 3. Quoted from memory.
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])("%i of %i as Newcombe has it", (count, total, low, high) => {
  const [lower, upper] = wilsonInterval(count, total);
  expect(lower).toBeCloseTo(low, 4);
  expect(upper).toBeCloseTo(high, 4);
});

// What prop.test(x, n, correct = FALSE) of R gives, as recorded by the tests of the R package cicalc
// (GSK-Biostatistics/cicalc, tests/testthat/_snaps/prop_ci.md).
test.each([
  [32, 32, 0.8928208, 1],
  [0, 32, 0, 0.1071792],
])("%i of %i as R has it", (count, total, low, high) => {
  const [lower, upper] = wilsonInterval(count, total);
  expect(lower).toBeCloseTo(low, 7);
  expect(upper).toBeCloseTo(high, 7);
});

test.each([
  [1, 0],
  [-1, 3],
  [4, 3],
  [Number.NaN, 3],
])("%d of %d is no count", (count, total) => {
  expect(() => wilsonInterval(count, total)).toThrow(RangeError);
});
