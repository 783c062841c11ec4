import { expect, test } from "vitest";
import { checkLinear, checkRange } from "../../src/colour/range.ts";

test("a value inside its range comes back as it is, both limits included", () => {
  for (const value of [0, 0.25, 1]) expect(checkRange("share", value, 0, 1)).toBe(value);
});

test("a value outside by rounding alone is moved onto the limit", () => {
  expect(checkRange("share", 1 + 2e-16, 0, 1)).toBe(1);
  expect(checkRange("share", -1e-12, 0, 1)).toBe(0);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -0.001, 1.001])(
  "%s is refused, and the message quotes it",
  (value) => {
    expect(() => checkRange("share", value, 0, 1)).toThrow(RangeError);
    expect(() => checkRange("share", value, 0, 1)).toThrow(
      `share must be a number from 0 to 1, got ${value}`,
    );
  },
);

test("each component of a linear colour is checked and named", () => {
  const good = { linearR: 0, linearG: 0.5, linearB: 1 };
  expect(checkLinear(good)).toEqual(good);
  expect(() => checkLinear({ ...good, linearR: 2 })).toThrow(
    "linear red must be a number from 0 to 1, got 2",
  );
  expect(() => checkLinear({ ...good, linearG: -1 })).toThrow("linear green");
  expect(() => checkLinear({ ...good, linearB: Number.NaN })).toThrow("linear blue");
});
