import { describe, expect, test } from "vitest";
import { linearOf } from "../../src/colour/colourtext.ts";
import {
  gradeOf,
  isClear,
  isNearLine,
  measureContrast,
  measureContrastRatio,
} from "../../src/colour/contrast.ts";
import { contrastRatioRows, graphicalObjectRows, luminanceContrastRows } from "../reference/contrast.ts";
import { spanishLaw } from "../reference/law.ts";

describe("measureContrast", () => {
  test.each(luminanceContrastRows)("of %f and %f is %f percent", (a, b, percent) => {
    expect(Math.abs(measureContrast(a, b) - percent)).toBeLessThan(5e-5);
    expect(measureContrast(b, a)).toBe(measureContrast(a, b));
  });

  // Source: AS 1428.1-2021 Fig. B.1 as quoted by Access Architects, technical article 2: LRV 20 needs “approx. 7 or 41”.
  test("beside 20 percent, 30 percent contrast is reached at 7.4194 and at 40.5263", () => {
    expect(measureContrast(20, 7.4194)).toBeCloseTo(30, 3);
    expect(measureContrast(20, 40.5263)).toBeCloseTo(30, 3);
    expect(gradeOf(measureContrast(20, 8))).toBe("weak");
    expect(gradeOf(measureContrast(20, 41))).toBe("soft");
  });

  test("the lightness the law of Spain fixes gives the luminance it prints, and the same contrast", () => {
    // Y from CIELAB lightness: 100 · ((L + 16) / 116)³, CIE 15:2004.
    const luminance = (lightness: number): number => 100 * ((lightness + 16) / 116) ** 3;
    const { red, yellow } = spanishLaw;
    expect(Math.abs(luminance(red.lightness) - red.luminancePercent)).toBeLessThan(0.05);
    expect(Math.abs(luminance(yellow.lightness) - yellow.luminancePercent)).toBeLessThan(0.05);
    const contrast = measureContrast(luminance(red.lightness), luminance(yellow.lightness));
    // The printed Y are rounded to a tenth of a percent.
    expect(Math.abs(contrast - 64.693)).toBeLessThan(0.15);
    expect(gradeOf(contrast)).toBe("strong");
  });

  test.each([Number.NaN, -1, 100.1, Number.POSITIVE_INFINITY])("refuses the reflectance %f", (value) => {
    expect(() => measureContrast(value, 50)).toThrow(RangeError);
    expect(() => measureContrast(50, value)).toThrow(String(value));
  });
});

describe("gradeOf", () => {
  // Source: 30, 45 and 60 percent of AS 1428.1 and AS/NZS 1428.4.1; decided without rounding.
  test.each([
    [0, "weak"],
    [29.999, "weak"],
    [30, "soft"],
    [44.999, "soft"],
    [45, "clear"],
    [59.999, "clear"],
    [60, "strong"],
    [100, "strong"],
  ] as const)("%f percent is %s", (contrast, grade) => {
    expect(gradeOf(contrast)).toBe(grade);
  });

  test("clear and strong count as clear", () => {
    expect((["weak", "soft", "clear", "strong"] as const).map(isClear)).toEqual([false, false, true, true]);
  });

  test.each([Number.NaN, -1, 101])("refuses %f", (value) => {
    expect(() => gradeOf(value)).toThrow(String(value));
  });
});

describe("measureContrastRatio", () => {
  test.each(contrastRatioRows)("of %s and %s is %f", (first, second, ratio, printed) => {
    const measured = measureContrastRatio(linearOf(first), linearOf(second));
    expect(Math.abs(measured - ratio)).toBeLessThan(5e-5);
    expect(measureContrastRatio(linearOf(second), linearOf(first))).toBe(measured);
    if (printed !== null) expect(Math.abs(measured - printed)).toBeLessThan(0.05);
  });

  test.each(graphicalObjectRows)("%s on %s %s at 3:1", (first, second, verdict) => {
    const ratio = measureContrastRatio(linearOf(first), linearOf(second));
    expect(ratio >= 3 ? "passes" : "fails").toBe(verdict);
  });

  test("refuses what is not 0 to 1", () => {
    const white = linearOf("#ffffff");
    expect(() => measureContrastRatio(white, { ...white, linearG: Number.NaN })).toThrow(RangeError);
    expect(() => measureContrastRatio({ ...white, linearG: 3 }, white)).toThrow("3");
  });
});

describe("isNearLine", () => {
  const black = linearOf("#000000");
  const greyOf = (luminance: number) => ({ linearR: luminance, linearG: luminance, linearB: luminance });
  const cloth = { black: 5, white: 85 };

  // By hand. Luminance 0.2126 beside 0: 22.008 and 5, 125 · 17.008 / 52.008 = 40.88, soft; of 4 to 92: 22.709 and 4,
  // 125 · 18.709 / 51.709 = 45.23, clear.
  test("where the grade is another on cloth of 4 to 92", () => {
    expect(isNearLine(linearOf("#ff0000"), black, cloth)).toBe(true);
    expect(isNearLine(black, linearOf("#ff0000"), cloth)).toBe(true);
  });

  // 125 · 80 / 115 = 86.96 and 125 · 88 / 121 = 90.91, both strong. 0.3 beside 0: 125 · 24 / 59 = 50.85 and
  // 125 · 26.4 / 59.4 = 55.56, both clear.
  test("not where it holds on both", () => {
    expect(isNearLine(linearOf("#ffffff"), black, cloth)).toBe(false);
    expect(isNearLine(greyOf(0.3), black, cloth)).toBe(false);
    expect(isNearLine(black, black, cloth)).toBe(false);
  });

  // 0.26 beside 0: 125 · 26 / 51 = 63.73, strong; of 4 to 92: 125 · 22.88 / 55.88 = 51.18, clear.
  test("never where the colours are cloth values already; else as the gallery's cloth has it", () => {
    expect(isNearLine(greyOf(0.26), black, { black: 0, white: 100 })).toBe(false);
    expect(isNearLine(greyOf(0.26), black, { black: 0, white: 99.9 })).toBe(true);
    expect(isNearLine(linearOf("#ff0000"), black, { black: 4, white: 92 })).toBe(false);
  });

  test("refuses a cloth that is none", () => {
    expect(() => isNearLine(black, black, { black: 85, white: 5 })).toThrow(RangeError);
  });
});
