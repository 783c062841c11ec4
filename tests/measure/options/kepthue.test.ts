import { converter } from "culori";
import { describe, expect, test } from "vitest";
import type { Hex } from "../../../src/colour/colour.ts";
import { findShade, type Neighbour } from "../../../src/measure/options/kepthue.ts";
import { contrast, difference, reflectance } from "../oracle.ts";

const cloth = { black: 5, white: 85 };
const beside = (...hexes: readonly string[]): readonly Neighbour[] =>
  hexes.map((hex) => ({ name: hex, reflectances: [reflectance(hex)] }));

const toOklch = converter("oklch");
const toRgb = converter("rgb");

/** What a new shade must reach beside `other`: 50 where it is not clear today, else the grade it has. */
const demanded = (hex: string, other: string): number => {
  const today = contrast(hex, other);
  return today < 45 ? 50 : today < 60 ? 45 : 60;
};

/**
 * Every lightness from 0 to 1 in steps of 1/4000: hue kept, chroma halved down into sRGB, rounded to 8 bits. Returns the
 * least departure of a lighter and of a darker shade with what is demanded beside all of `others`.
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
    if (others.some((other) => contrast(shade, other) < demanded(hex, other))) continue;
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
      for (const other of others)
        expect(contrast(shade.hex, other)).toBeGreaterThanOrEqual(demanded(hex, other) - 1e-6);
      expect(shade.contrast).toBeCloseTo(Math.min(...others.map((other) => contrast(shade.hex, other))), 6);
      expect(shade.deltaE00).toBeCloseTo(difference(hex, shade.hex), 1);
    }
    const inFamily = [found.darker, found.lighter].filter((shade) => shade?.isFamily === true);
    expect(found.least?.deltaE00 ?? null).toEqual(
      inFamily.length === 0 ? null : Math.min(...inFamily.map((shade) => shade?.deltaE00 ?? 0)),
    );
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
    // Blue reflects 10.776: on black 17.7, so 50 is asked; white on it 76.8, strong, so 60 is kept.
    // 125 (y − 5) = 50 (y + 30) → y = 2125 / 75; 125 (85 − y) = 60 (y + 110) → y = 4025 / 185.
    expect(findShade("#0000ff", beside("#000000", "#ffffff"), cloth).demands).toEqual([
      { name: "#000000", atMost: null, atLeast: expect.closeTo(2125 / 75, 9) },
      { name: "#ffffff", atMost: expect.closeTo(4025 / 185, 9), atLeast: null },
    ]);
  });

  test("beside black and white no blue keeps both; beside black and mid grey a lighter one does", () => {
    // 28.3 or more, 21.8 or less.
    expect(findShade("#0000ff", beside("#000000", "#ffffff"), cloth)).toMatchObject({
      isClear: false,
      least: null,
      lighter: null,
      darker: null,
    });
    // #ff0000 on black 40.9, on #ffff00 56.7, clear: 50 from black, 45 kept from yellow: 28.33 to (80 · 79.224 − 1125) /
    // 170 = 30.66.
    const red = findShade("#ff0000", beside("#000000", "#ffff00"), cloth);
    expect(reflectance(red.lighter?.hex ?? "")).toBeGreaterThanOrEqual(2125 / 75);
    expect(reflectance(red.lighter?.hex ?? "")).toBeLessThanOrEqual(30.67);
  });

  test("a red that would have to be pink is not offered as a red", () => {
    // Black asks for 28.33 of #c8202f (15.8). Reflecting that much, in its hue, it is pink: sRGB has no red so light.
    const found = findShade("#c8202f", beside("#000000"), cloth);
    expect(found.lighter?.isFamily).toBe(false);
    expect(found.least).toBeNull();
    // A blue stays a blue.
    expect(findShade("#1f56a8", beside("#000000"), cloth)).toMatchObject({
      lighter: { isFamily: true },
      least: { isFamily: true },
    });
  });

  test("an uneven neighbour is cleared at both ends", () => {
    const neighbour = { name: "sky", reflectances: [20, 30, 12] };
    const { lighter, darker } = findShade("#1f56a8", [neighbour], cloth);
    // The blue reflects 12.2, next to nothing from 12: 50 is asked of it. (175 · 20 + 1250) / 75 = 63.3 clears 20 and 12,
    // but (175 · 30 + 1250) / 75 is more than cloth reflects; (75 · 12 − 1250) / 175 is under black cloth.
    expect([darker, lighter]).toEqual([null, null]);
    const without = findShade("#1f56a8", [{ name: "sky", reflectances: [20, 12] }], cloth);
    expect(reflectance(without.lighter?.hex ?? "")).toBeGreaterThanOrEqual((175 * 20 + 1250) / 75);
  });

  test("figures that are none are refused", () => {
    expect(() => findShade("#12" as Hex, beside("#000000"), cloth)).toThrow(RangeError);
    expect(() => findShade("#123456", [{ name: "a", reflectances: [Number.NaN] }], cloth)).toThrow(
      RangeError,
    );
    expect(() => findShade("#123456", beside("#000000"), { black: 50, white: 20 })).toThrow(RangeError);
  });
});
