import { describe, expect, test } from "vitest";
import { defaultCloth, measureLuminance, measureReflectance } from "../../src/colour/cloth.ts";
import { linearOf } from "../../src/colour/colourtext.ts";
import { gradeOf, isClear, measureContrast } from "../../src/colour/contrast.ts";
import { tradePairs } from "../reference/trade-pairs.ts";

describe("measureLuminance", () => {
  // Source: WCAG 2.2, relative luminance: the three weights, and their sum.
  test.each([
    ["#ff0000", 0.2126],
    ["#00ff00", 0.7152],
    ["#0000ff", 0.0722],
    ["#ffffff", 1],
    ["#000000", 0],
    ["#ffff00", 0.9278],
  ] as const)("%s has luminance %f", (hex, luminance) => {
    expect(measureLuminance(linearOf(hex))).toBeCloseTo(luminance, 12);
  });

  test("refuses what is not 0 to 1", () => {
    expect(() => measureLuminance({ linearR: 1.1, linearG: 0, linearB: 0 })).toThrow("1.1");
    expect(() => measureLuminance({ linearR: Number.NaN, linearG: 0, linearB: 0 })).toThrow(RangeError);
  });
});

describe("measureReflectance", () => {
  test("black and white reach the limits of the cloth", () => {
    expect(measureReflectance(linearOf("#000000"), defaultCloth)).toBe(5);
    expect(measureReflectance(linearOf("#ffffff"), defaultCloth)).toBe(85);
    expect(measureReflectance(linearOf("#ff0000"), { black: 0, white: 100 })).toBeCloseTo(21.26, 10);
    // 5 + 80 · 0.2126
    expect(measureReflectance(linearOf("#ff0000"), defaultCloth)).toBeCloseTo(22.008, 10);
  });

  test.each([
    [{ black: 50, white: 50 }, "50"],
    [{ black: 85, white: 5 }, "85"],
    [{ black: -1, white: 85 }, "-1"],
    [{ black: 5, white: 101 }, "101"],
    [{ black: Number.NaN, white: 85 }, "NaN"],
  ])("refuses the cloth %j", (cloth, quoted) => {
    const red = linearOf("#ff0000");
    expect(() => measureReflectance(red, cloth)).toThrow(RangeError);
    expect(() => measureReflectance(red, cloth)).toThrow(quoted);
  });
});

// Common practice, no source: what everyone who looks at flags says of these pairs.
describe("on the default cloth", () => {
  test.each(tradePairs)("%j and %j: %s", ([, first], [, second], reads) => {
    const contrast = measureContrast(
      measureReflectance(linearOf(first), defaultCloth),
      measureReflectance(linearOf(second), defaultCloth),
    );
    expect(isClear(gradeOf(contrast)) ? "clear" : "not clear").toBe(reads);
  });

  test("red on black, which the web ratio passes, is not clear", () => {
    const red = measureReflectance(linearOf("#ff0000"), defaultCloth);
    expect(measureContrast(red, defaultCloth.black)).toBeLessThan(45);
  });
});
