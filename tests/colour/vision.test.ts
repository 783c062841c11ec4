import { filterDeficiencyDeuter, filterDeficiencyProt, formatHex } from "culori";
import { describe, expect, test } from "vitest";
import { measureLuminance } from "../../src/colour/cloth.ts";
import { hexOf, linearOf, toHex } from "../../src/colour/colourtext.ts";
import { simulate, simulateMachado, visions } from "../../src/colour/vision.ts";
import { decode, encode } from "../reference/srgb.ts";
import { fractionalRows, seenRows } from "../reference/vision.ts";

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

describe("simulateMachado", () => {
  test.each(seenRows)("%s at full severity, tritan too", (hex, protan, deutan, _, tritan) => {
    expect(hexOf(simulateMachado(linearOf(hex), "protan", 1))).toBe(protan);
    expect(hexOf(simulateMachado(linearOf(hex), "deutan", 1))).toBe(deutan);
    expect(hexOf(simulateMachado(linearOf(hex), "tritan", 1))).toBe(tritan);
  });

  test.each(fractionalRows)("%s at %f: %j → %j", (deficiency, severity01, before, after) => {
    const [r, g, b] = before;
    const seen = simulateMachado(
      { linearR: decode(r), linearG: decode(g), linearB: decode(b) },
      deficiency,
      severity01,
    );
    const encoded = [encode(seen.linearR), encode(seen.linearG), encode(seen.linearB)];
    expect(encoded).toEqual(after.map((component) => expect.closeTo(component, 7)));
  });

  test("severity 0 changes nothing, and no severity changes a grey", () => {
    expect(simulateMachado(linearOf("#c8102e"), "deutan", 0)).toEqual(linearOf("#c8102e"));
    for (const severity01 of [0.05, 0.33, 0.5, 0.87, 1]) {
      for (const deficiency of ["protan", "deutan", "tritan"] as const) {
        const seen = greys.map((hex) => hexOf(simulateMachado(linearOf(hex), deficiency, severity01)));
        expect(seen).toEqual(greys);
      }
    }
  });

  // Source: mean of the published 0.856167 (0.1) and 0.734766 (0.2); extrapolating instead gives 0.7869875.
  test("between two published severities lies the mean, not a snap to one of them", () => {
    const red = linearOf("#ff0000");
    expect(simulateMachado(red, "protan", 0.15).linearR).toBeCloseTo(0.7954665, 12);
    const at = (severity01: number): number => simulateMachado(red, "protan", severity01).linearR;
    expect(at(0.84)).toBeCloseTo(0.259411 + 0.4 * (0.203876 - 0.259411), 12);
    expect(at(0.84)).not.toBe(at(0.8));
    expect(at(0.85)).not.toBe(at(0.9));
  });

  test("is clamped to sRGB", () => {
    // Unclamped: 1.255528 and −0.078411.
    const { linearR, linearG } = simulateMachado(linearOf("#ff0000"), "tritan", 1);
    expect([linearR, linearG]).toEqual([1, 0]);
  });

  test.each([Number.NaN, -0.1, 1.1, 100])("refuses the severity %f", (severity01) => {
    expect(() => simulateMachado(linearOf("#ff0000"), "protan", severity01)).toThrow(String(severity01));
  });
});
