// Rows that repeat, of bytes and of larger numbers.
import { expect, test } from "vitest";
import { createRepeats } from "../../src/regions/repeatedrow.ts";

const rows = [1, 2, 1, 2, 1, 3];

test.each([
  ["bytes", Uint8Array.from(rows)],
  ["labels", Uint16Array.from([...rows].map((value) => value * 256))],
  ["pixels", Uint32Array.from([...rows].map((value) => value * 2 ** 24))],
])("of %s the first row repeats none, the second the first, the third none", (_, pixels) => {
  expect([0, 1, 2].map(createRepeats(pixels, 2))).toEqual([false, true, false]);
});

test("a part of a larger array is looked at from where it begins", () => {
  expect(createRepeats(Uint16Array.from([9, ...rows, 9]).subarray(1, 7), 2)(1)).toBe(true);
});
