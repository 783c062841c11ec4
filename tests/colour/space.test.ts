import { describe, expect, test } from "vitest";
import type { LinearRgb } from "../../src/colour/colour.ts";
import { hexOf, linearOf } from "../../src/colour/colourtext.ts";
import { labOf, linearOfOklch, oklabOf, oklchOf } from "../../src/colour/space.ts";
import { labFromXyz, oklabFromXyz, oklabRows, xyzOf } from "../reference/srgb.ts";

const shades = [
  "#ff0000",
  "#00ff00",
  "#0000ff",
  "#008000",
  "#c8102e",
  "#12235c",
  "#f7b718",
  "#010101",
  "#808080",
] as const;

function tripleOf(linear: LinearRgb): readonly [number, number, number] {
  return [linear.linearR, linear.linearG, linear.linearB];
}

function expectNear(got: readonly number[], wanted: readonly number[], tolerance: number): void {
  expect(got.length).toBe(wanted.length);
  got.forEach((value, index) => {
    expect(Math.abs(value - (wanted[index] ?? Number.NaN))).toBeLessThan(tolerance);
  });
}

test.each(oklabRows)("the OKLab of the reference sums reproduces Ottosson's row %j → %j", (xyz, oklab) => {
  expectNear(oklabFromXyz(xyz), oklab, 1e-3);
});

describe("labOf", () => {
  // The two write the white point and the matrix with different numbers of digits.
  test.each(shades)("%s is what the fractions of CSS Color 4 give, within 0.01", (hex) => {
    const { l, a, b } = labOf(linearOf(hex));
    expectNear([l, a, b], labFromXyz(xyzOf(tripleOf(linearOf(hex)))), 0.01);
  });

  // Source: widely printed for sRGB under D65, here from memory, to one decimal.
  test("#ff0000 is 53.2, 80.1, 67.2 and #0000ff 32.3, 79.2, −107.9", () => {
    const red = labOf(linearOf("#ff0000"));
    expectNear([red.l, red.a, red.b], [53.24, 80.09, 67.2], 0.02);
    const blue = labOf(linearOf("#0000ff"));
    expectNear([blue.l, blue.a, blue.b], [32.3, 79.19, -107.86], 0.02);
  });

  // Source: web-platform-tests css/css-color/lab-001: lab(46.277 −47.562 48.583), which is under D50.
  test("is under D65, and so not what CSS lab() writes", () => {
    const { a } = labOf(linearOf("#008000"));
    expect(Math.abs(a - -47.562)).toBeGreaterThan(1);
  });
});

describe("oklabOf and oklchOf", () => {
  test.each(shades)("%s is what Ottosson's matrices give, within 5e-4", (hex) => {
    const { l, a, b } = oklabOf(linearOf(hex));
    expectNear([l, a, b], oklabFromXyz(xyzOf(tripleOf(linearOf(hex)))), 5e-4);
  });

  // Source: web-platform-tests css/css-color/oklab-001 and oklch-001.
  test("#008000 is oklab(51.975% −0.1403 0.10768) and oklch(51.975% 0.17686 142.495)", () => {
    const { l, a, b } = oklabOf(linearOf("#008000"));
    expectNear([l, a, b], [0.51975, -0.1403, 0.10768], 1e-5);
    const { lightness01, chroma, hueDegrees } = oklchOf(linearOf("#008000"));
    expectNear([lightness01, chroma], [0.51975, 0.17686], 1e-5);
    expect(Math.abs(hueDegrees - 142.495)).toBeLessThan(5e-3);
  });

  test.each(["#000000", "#808080", "#ffffff"] as const)("the grey %s has chroma 0 and hue 0", (hex) => {
    expect(oklchOf(linearOf(hex))).toMatchObject({ chroma: 0, hueDegrees: 0 });
  });
});

describe("linearOfOklch", () => {
  test.each(shades)("brings %s back", (hex) => {
    expect(hexOf(linearOfOklch(oklchOf(linearOf(hex))))).toBe(hex);
  });

  test("lowers only chroma, and no further than it must", () => {
    const asked = { lightness01: 0.5, chroma: 0.4, hueDegrees: 142 };
    const linear = linearOfOklch(asked);
    const got = oklchOf(linear);
    expect(Math.abs(got.lightness01 - 0.5)).toBeLessThan(1e-3);
    expect(Math.abs(got.hueDegrees - 142)).toBeLessThan(0.5);
    expect(got.chroma).toBeLessThan(0.4);
    // At the edge of sRGB some component is at its limit.
    const components = tripleOf(linear);
    expect(Math.min(...components.map((component) => Math.min(component, 1 - component)))).toBeLessThan(1e-3);
  });

  // Pure blue is the tip of a tongue: the slightest excess must not fall to the next duller blue of that hue.
  test("a rounding excess beside pure blue stays pure blue", () => {
    const blue = oklchOf(linearOf("#0000ff"));
    expect(hexOf(linearOfOklch({ ...blue, chroma: blue.chroma + 1e-6 }))).toBe("#0000ff");
  });

  test("the ends of lightness are black and white", () => {
    expect(hexOf(linearOfOklch({ lightness01: 0, chroma: 0.1, hueDegrees: 30 }))).toBe("#000000");
    expect(hexOf(linearOfOklch({ lightness01: 1, chroma: 0.1, hueDegrees: 30 }))).toBe("#ffffff");
  });

  test.each([
    { lightness01: Number.NaN, chroma: 0, hueDegrees: 0 },
    { lightness01: 1.5, chroma: 0, hueDegrees: 0 },
    { lightness01: 0.5, chroma: -0.1, hueDegrees: 0 },
    { lightness01: 0.5, chroma: 0.1, hueDegrees: Number.NaN },
  ])("refuses %j", (oklch) => {
    expect(() => linearOfOklch(oklch)).toThrow(RangeError);
  });
});

test("every conversion refuses what is not 0 to 1", () => {
  for (const convert of [labOf, oklabOf, oklchOf]) {
    expect(() => convert({ linearR: Number.NaN, linearG: 0, linearB: 0 })).toThrow("NaN");
    expect(() => convert({ linearR: 0, linearG: 1.2, linearB: 0 })).toThrow("1.2");
  }
});
