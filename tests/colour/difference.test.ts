import { differenceCiede2000 } from "culori";
import { describe, expect, test } from "vitest";
import { linearOf } from "../../src/colour/colourtext.ts";
import { measureDifference, measureLabDifference } from "../../src/colour/difference.ts";
import { ciede2000Pairs } from "../reference/ciede2000.ts";

describe("measureLabDifference", () => {
  test("the table is whole", () => {
    expect(ciede2000Pairs.map(([pair]) => pair)).toEqual(Array.from({ length: 34 }, (_, index) => index + 1));
  });

  // Sharma, Wu, Dalal 2005, Table 1: four decimals, so within 5e-5, both ways round.
  test.each(ciede2000Pairs)("pair %i", (_, [l1, a1, b1], [l2, a2, b2], deltaE00) => {
    const first = { l: l1, a: a1, b: b1 };
    const second = { l: l2, a: a2, b: b2 };
    expect(Math.abs(measureLabDifference(first, second) - deltaE00)).toBeLessThan(5e-5);
    expect(Math.abs(measureLabDifference(second, first) - deltaE00)).toBeLessThan(5e-5);
  });

  test("no pair comes out as culori's D50 Lab would have it", () => {
    const measureD50 = differenceCiede2000();
    for (const [, [l1, a1, b1], [l2, a2, b2], deltaE00] of ciede2000Pairs) {
      const trap = measureD50({ mode: "lab", l: l1, a: a1, b: b1 }, { mode: "lab", l: l2, a: a2, b: b2 });
      expect(Math.abs(trap - deltaE00)).toBeGreaterThan(5e-5);
    }
  });

  test.each([
    [{ l: Number.NaN, a: 0, b: 0 }, "NaN"],
    [{ l: 101, a: 0, b: 0 }, "101"],
    [{ l: -1, a: 0, b: 0 }, "-1"],
    [{ l: 50, a: Number.POSITIVE_INFINITY, b: 0 }, "Infinity"],
    [{ l: 50, a: 0, b: Number.NaN }, "NaN"],
  ])("refuses %j", (lab, quoted) => {
    const grey = { l: 50, a: 0, b: 0 };
    expect(() => measureLabDifference(lab, grey)).toThrow(RangeError);
    expect(() => measureLabDifference(grey, lab)).toThrow(quoted);
  });
});

describe("measureDifference", () => {
  test("black and white are 100 apart, a colour is 0 from itself", () => {
    // At L 0 and 100 the weight of lightness is 1: the difference is that of lightness (CIEDE2000, S_L at L 50).
    expect(measureDifference(linearOf("#000000"), linearOf("#ffffff"))).toBeCloseTo(100, 6);
    expect(measureDifference(linearOf("#c8102e"), linearOf("#c8102e"))).toBe(0);
  });

  test("refuses what is not 0 to 1", () => {
    const red = linearOf("#ff0000");
    expect(() => measureDifference(red, { ...red, linearB: Number.NaN })).toThrow(RangeError);
  });
});
