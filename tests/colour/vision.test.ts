import { filterDeficiencyDeuter, filterDeficiencyProt, formatHex } from "culori";
import { describe, expect, test } from "vitest";
import { measureLuminance } from "../../src/colour/cloth.ts";
import { hexOf, linearOf, toHex } from "../../src/colour/colourtext.ts";
import { simulate, visions } from "../../src/colour/vision.ts";
import { machadoRows, seenRows } from "../reference/vision.ts";

const greys = Array.from({ length: 256 }, (_, byte) =>
  toHex({ r: byte / 255, g: byte / 255, b: byte / 255 }),
);

test("the kinds of vision come in a fixed order", () => {
  expect(visions).toEqual(["protan", "deutan", "tritan", "grey"]);
});

describe("simulate", () => {
  test.each(seenRows)("%s is seen as %s, %s, %s", (hex, protan, deutan, tritan) => {
    expect(hexOf(simulate(linearOf(hex), "protan"))).toBe(protan);
    expect(hexOf(simulate(linearOf(hex), "deutan"))).toBe(deutan);
    expect(hexOf(simulate(linearOf(hex), "tritan"))).toBe(tritan);
  });

  test.each(visions)("%s leaves every grey as it is", (vision) => {
    expect(greys.map((hex) => hexOf(simulate(linearOf(hex), vision)))).toEqual(greys);
  });

  test("both half-planes of tritan are in use: yellow and blue fall on different sides", () => {
    // Worked out by hand from the published figures: 0.03901 − 0.02788 > 0 for yellow, −0.01113 < 0 for blue.
    // Yellow, first plane: 1.01277 + 0.13548 and 0.86812 − 0.01243 and 0.07589 + 0.805, clamped.
    const yellow = simulate(linearOf("#ffff00"), "tritan");
    expect(yellow.linearR).toBe(1);
    expect(yellow.linearG).toBeCloseTo(0.85569, 10);
    expect(yellow.linearB).toBeCloseTo(0.88089, 10);
    // Blue, second plane: −0.12657 clamped, 0.1232, 0.24796.
    const blue = simulate(linearOf("#0000ff"), "tritan");
    expect([blue.linearR, blue.linearG, blue.linearB]).toEqual([0, 0.1232, 0.24796]);
  });

  test("grey keeps luminance", () => {
    for (const [hex] of seenRows) {
      const seen = simulate(linearOf(hex), "grey");
      expect(seen.linearR).toBe(seen.linearG);
      expect(seen.linearG).toBe(seen.linearB);
      expect(measureLuminance(seen)).toBeCloseTo(measureLuminance(linearOf(hex)), 12);
    }
    // Luminance 0.2126 encodes to 127 of 255.
    expect(hexOf(simulate(linearOf("#ff0000"), "grey"))).toBe("#7f7f7f");
  });

  test.each(visions)("%s refuses what is not 0 to 1", (vision) => {
    expect(() => simulate({ linearR: Number.NaN, linearG: 0, linearB: 0 }, vision)).toThrow(RangeError);
    expect(() => simulate({ linearR: 0, linearG: 0, linearB: 1.5 }, vision)).toThrow("1.5");
  });

  // culori multiplies encoded sRGB: these are its answers, and they are wrong.
  test("culori's answers in encoded sRGB do not come out", () => {
    const red = { mode: "rgb", r: 1, g: 0, b: 0 } as const;
    expect(formatHex(filterDeficiencyProt(1)(red))).toBe("#271d00");
    expect(formatHex(filterDeficiencyDeuter(1)(red))).toBe("#5e4700");
    expect(hexOf(simulate(linearOf("#ff0000"), "protan"))).not.toBe("#271d00");
    expect(hexOf(simulate(linearOf("#ff0000"), "deutan"))).not.toBe("#5e4700");
  });
});

// The library's transcription, column by column of the primaries, against the authors' own table.
test.each(machadoRows)("%s has the matrix of severity 1 as published", (deficiency, rows) => {
  const filter = (deficiency === "protan" ? filterDeficiencyProt : filterDeficiencyDeuter)(1);
  const seen = [
    filter({ mode: "rgb", r: 1, g: 0, b: 0 }),
    filter({ mode: "rgb", r: 0, g: 1, b: 0 }),
    filter({ mode: "rgb", r: 0, g: 0, b: 1 }),
  ];
  expect(seen.map(({ r, g, b }) => [r, g, b])).toEqual(
    [0, 1, 2].map((column) => rows.map((row) => row[column])),
  );
});
