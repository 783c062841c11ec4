import { describe, expect, test } from "vitest";
import { formatJson, roundFigure } from "../../src/measure/roundnumber.ts";

/** The next number that a double can hold. Source: IEEE 754-2019, section 5.3.1, nextUp, for positive numbers. */
function nextUp(value: number): number {
  const bytes = new DataView(new ArrayBuffer(8));
  bytes.setFloat64(0, value);
  bytes.setBigUint64(0, bytes.getBigUint64(0) + 1n);
  return bytes.getFloat64(0);
}

describe("a figure", () => {
  test("is the same where an engine's last digit is another", () => {
    for (const value of [0.1 + 0.2, 58.333333333333336, 7.123456789012345e-5, 21, 1 / 3, 99.99999999999999]) {
      expect(nextUp(value)).not.toBe(value);
      expect(roundFigure(nextUp(value))).toBe(roundFigure(value));
    }
  });

  test("has eight digits, and what is whole stays whole", () => {
    expect([100 / 7, 100 / 3, 1e-17, -2e-12, 45 + 1e-13, 720, 123456789].map(roundFigure)).toEqual([
      14.285714, 33.333333, 0, 0, 45, 720, 123456789,
    ]);
  });

  test("is not made whole: a contrast just under 45 is not clear, and a share just under 1 is not all", () => {
    expect([44.999999999, 0.9999999999, 1.0000000001].map(roundFigure)).toEqual([
      44.999999999, 0.9999999999, 1.0000000001,
    ]);
  });
});

test("JSON has every figure rounded, wherever it stands, and all else as it is", () => {
  expect(formatJson({ a: [1 / 3, { b: 2 / 3 }], c: "0.33333333333", d: null, e: true })).toBe(
    '{\n  "a": [\n    0.33333333,\n    {\n      "b": 0.66666667\n    }\n  ],\n  "c": "0.33333333333",\n  "d": null,\n  "e": true\n}',
  );
});
