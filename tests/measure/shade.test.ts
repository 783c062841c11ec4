import { converter } from "culori";
import { describe, expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { findShade, type Neighbour } from "../../src/measure/shade.ts";
import { contrast, difference, reflectance } from "./oracle.ts";

const cloth = { black: 5, white: 85 };
const beside = (...hexes: readonly string[]): readonly Neighbour[] =>
  hexes.map((hex) => ({ name: hex, reflectances: [reflectance(hex)] }));

const toOklch = converter("oklch");
const toRgb = converter("rgb");

/**
 * Every lightness from 0 to 1 in steps of 1/4000: hue kept, chroma halved down into sRGB, rounded to 8 bits. Returns the
 * least departure of a lighter and of a darker shade with a contrast of 45 against all of `others`.
 */
function searchAll(
  hex: string,
  others: readonly string[],
): { lighter: number | null; darker: number | null } {
  const { l, c, h = 0 } = toOklch(hex) ?? { l: 0, c: 0 };
  const fits = (chroma: number, lightness: number) => {
    const { r, g, b } = toRgb({ mode: "oklch", l: lightness, c: chroma, h });
    return Math.min(r, g, b) >= -1e-3 && Math.max(r, g, b) <= 1 + 1e-3;
  };
  const found: { lighter: number | null; darker: number | null } = { lighter: null, darker: null };
  for (let step = 0; step <= 4000; step += 1) {
    const lightness = step / 4000;
    let chroma = c;
    while (chroma > 0 && !fits(chroma, lightness)) chroma = Math.max(0, chroma - 0.001);
    const { r, g, b } = toRgb({ mode: "oklch", l: lightness, c: chroma, h });
    const byte = (value: number) =>
      Math.round(Math.min(1, Math.max(0, value)) * 255)
        .toString(16)
        .padStart(2, "0");
    const shade = `#${byte(r)}${byte(g)}${byte(b)}`;
    if (others.some((other) => contrast(shade, other) < 45)) continue;
    const side = lightness >= l ? "lighter" : "darker";
    const departure = difference(hex, shade);
    if (found[side] === null || departure < (found[side] ?? 0)) found[side] = departure;
  }
  return found;
}

describe("findShade against every lightness tried", () => {
  test.each<[Hex, ...string[]]>([
    ["#1f56a8", "#000000"],
    ["#1f56a8", "#ffffff"],
    ["#6fb3e0", "#ffffff"],
    ["#c8202f", "#000000"],
    ["#c8202f", "#0b7a3b"],
    ["#f7c81e", "#ffffff"],
    ["#2f8f46", "#f7c81e", "#ffffff"],
    ["#2f8f46", "#c8202f"],
    ["#0000ff", "#000000"],
    ["#ff00ff", "#ffffff"],
    ["#8f9499", "#000000", "#ffffff"],
    ["#5f2a7a", "#000000", "#ffffff"],
    ["#ee7a1a", "#8f9499"],
    ["#141414", "#1f56a8"],
  ])("%s beside %s %s", (hex, ...others) => {
    const found = findShade(hex, beside(...others.filter((other) => other !== undefined)), cloth);
    const all = searchAll(hex, others);
    expect(found.isClear).toBe(others.every((other) => contrast(hex, other) >= 45));
    if (found.isClear) return;
    for (const side of ["lighter", "darker"] as const) {
      const shade = found[side];
      const least = all[side];
      expect(shade === null).toBe(least === null);
      if (shade === null || least === null) continue;
      // Eight bits a channel: the neighbouring shade is up to about half a ΔE00 away.
      expect(Math.abs(shade.deltaE00 - least)).toBeLessThan(0.5);
      for (const other of others) expect(contrast(shade.hex, other)).toBeGreaterThanOrEqual(45);
      expect(shade.contrast).toBeCloseTo(Math.min(...others.map((other) => contrast(shade.hex, other))), 6);
      expect(shade.deltaE00).toBeCloseTo(difference(hex, shade.hex), 1);
    }
    const departures = [all.lighter, all.darker].filter((departure) => departure !== null);
    expect(found.least === null).toBe(departures.length === 0);
    if (found.least !== null)
      expect(Math.abs(found.least.deltaE00 - Math.min(...departures))).toBeLessThan(0.5);
  });
});

describe("findShade", () => {
  test("keeps the hue, to within what 8 bits allow", () => {
    const { least } = findShade("#1f56a8", beside("#000000"), cloth);
    const [was, is] = [toOklch("#1f56a8"), toOklch(least?.hex ?? "")];
    expect(Math.abs((was?.h ?? 0) - (is?.h ?? 90))).toBeLessThan(1);
  });

  test("a colour that is clear is its own nearest shade", () => {
    expect(findShade("#ffffff", beside("#000000"), cloth)).toMatchObject({
      isClear: true,
      least: null,
      lighter: null,
      darker: null,
    });
    expect(findShade("#1f56a8", [], cloth).isClear).toBe(true);
  });

  test("both limits are reported: what each neighbour asks", () => {
    // 125 (y − 5) = 45 (y + 30) → y = 1975 / 80; 125 (85 − y) = 45 (y + 110) → y = 5675 / 170.
    expect(findShade("#0000ff", beside("#000000", "#ffffff"), cloth).demands).toEqual([
      { name: "#000000", atMost: null, atLeast: expect.closeTo(1975 / 80, 9) },
      { name: "#ffffff", atMost: expect.closeTo(5675 / 170, 9), atLeast: null },
    ]);
  });

  test("between black and white there is a shade; between black and yellow there is none", () => {
    const middle = findShade("#0000ff", beside("#000000", "#ffffff"), cloth).least;
    expect(reflectance(middle?.hex ?? "")).toBeGreaterThan(1975 / 80);
    expect(reflectance(middle?.hex ?? "")).toBeLessThan(5675 / 170);
    expect(findShade("#0000ff", beside("#000000", "#f7c81e"), cloth)).toMatchObject({
      isClear: false,
      least: null,
    });
  });

  test("an uneven neighbour is cleared at both ends", () => {
    const neighbour = { name: "sky", reflectances: [20, 30, 12] };
    const { lighter, darker } = findShade("#1f56a8", [neighbour], cloth);
    // (170 · 30 + 1125) / 80 = 77.8; (80 · 12 − 1125) / 170 is under black cloth.
    expect(darker).toBeNull();
    expect(reflectance(lighter?.hex ?? "")).toBeGreaterThanOrEqual((170 * 30 + 1125) / 80);
  });

  test("figures that are none are refused", () => {
    expect(() => findShade("#12" as Hex, beside("#000000"), cloth)).toThrow(RangeError);
    expect(() => findShade("#123456", [{ name: "a", reflectances: [Number.NaN] }], cloth)).toThrow(
      RangeError,
    );
    expect(() => findShade("#123456", beside("#000000"), { black: 50, white: 20 })).toThrow(RangeError);
  });
});
