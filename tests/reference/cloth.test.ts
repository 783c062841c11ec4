import { describe, expect, test } from "vitest";
import { defaultCloth, measureReflectance, widestCloth } from "../../src/colour/cloth.ts";
import { linearOf } from "../../src/colour/colourtext.ts";
import { measureContrast } from "../../src/colour/contrast.ts";
import { labOf } from "../../src/colour/space.ts";
import { finestPart } from "../../src/words/focusfact.ts";
import { clothSpread, optotype, publishedRanges } from "./cloth.ts";
import { lawContrastRows, spanishLaw, thaiLaw, thaiScreen } from "./law.ts";

/** A grey of a luminance in percent. */
const greyOf = (percent: number) => ({
  linearR: percent / 100,
  linearG: percent / 100,
  linearB: percent / 100,
});

test("the ranges of cloth are the published ones", () => {
  expect([defaultCloth, widestCloth]).toEqual([publishedRanges.materials, publishedRanges.paint]);
});

describe("on cloth of 0 to 100 the colours are cloth values already", () => {
  const cloth = { black: 0, white: 100 };
  test.each(lawContrastRows)("%s: %f and %f have a contrast of %f", (_, darker, lighter, contrast) => {
    const [a, b] = [measureReflectance(greyOf(darker), cloth), measureReflectance(greyOf(lighter), cloth)];
    expect([a, b].map((value) => Math.round(value * 1e6) / 1e6)).toEqual([darker, lighter]);
    // The contrasts are given to a tenth.
    expect(Math.abs(measureContrast(a, b) - contrast)).toBeLessThan(0.05);
  });
});

describe("lightness and luminance agree", () => {
  // Luminance is given to a tenth of a percent.
  test.each([
    ["Spain, red", spanishLaw.red.lightness, spanishLaw.red.luminancePercent],
    ["Spain, yellow", spanishLaw.yellow.lightness, spanishLaw.yellow.luminancePercent],
    ["Thailand, white", thaiLaw.white.l, 91.5],
    ["Thailand, blue", thaiLaw.blue.l, 2.7],
  ])("%s: L* %f is Y %f", (_, lightness, luminance) => {
    // CIE 15:2004, for L* over 8.
    const percent = 100 * ((lightness + 16) / 116) ** 3;
    expect(Math.abs(percent - luminance)).toBeLessThan(0.05);
    // Our own conversion, the other way round.
    expect(labOf(greyOf(percent)).l).toBeCloseTo(lightness, 6);
  });

  // Both forms in which the law of Spain gives its colours: hue, chroma, lightness → x, y, Y.
  test.each([spanishLaw.red, spanishLaw.yellow])("of CIELAB under illuminant C: %j", (law) => {
    const [a, b] = [Math.cos, Math.sin].map((part) => law.chroma * part((law.hueDegrees * Math.PI) / 180));
    const f = (law.lightness + 16) / 116;
    const cube = (t: number) => (t > 6 / 29 ? t ** 3 : 3 * (6 / 29) ** 2 * (t - 4 / 29));
    // Illuminant C, 2°: ASTM E308.
    const [x, y, z] = [98.074 * cube(f + (a ?? 0) / 500), 100 * cube(f), 118.232 * cube(f - (b ?? 0) / 200)];
    expect(Math.abs(x / (x + y + z) - law.x)).toBeLessThan(0.0005);
    expect(Math.abs(y / (x + y + z) - law.y)).toBeLessThan(0.0005);
    expect(Math.abs(y - law.luminancePercent)).toBeLessThan(0.05);
  });

  test("colours that are published for screens are within the proposed tolerance of their law", () => {
    for (const name of ["red", "white", "blue"] as const) {
      const [law, screen] = [thaiLaw[name], labOf(linearOf(thaiScreen[name]))];
      const distance = Math.hypot(law.l - screen.l, law.a - screen.a, law.b - screen.b);
      expect(distance, name).toBeLessThan(clothSpread.proposedTolerance);
    }
  });
});

test("five of the finest parts are the letter that 20/20 sight reads", () => {
  const { arcminutes, detailArcminutes, distanceMetres, heightMillimetres } = optotype;
  const height = 1000 * finestPart(distanceMetres) * (arcminutes / detailArcminutes);
  expect(Math.abs(height - heightMillimetres)).toBeLessThan(0.005);
});
