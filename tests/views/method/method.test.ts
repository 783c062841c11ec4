import { expect, test } from "vitest";
import { presentMethod } from "../../../src/views/method/method.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult } from "../../publish/sample.ts";
import { lawContrastRows } from "../../reference/law.ts";

const method = presentMethod(galleryResult, createFormat("en"));

test("the computed example agrees with the published one", () => {
  // Printed as 49 with the formula; by hand 125 · 42 / 107 = 49.065.
  expect(method.published.published).toMatch(/^49%?$/);
  expect(Number.parseFloat(method.published.computed)).toBe(49.07);
  expect(method.published.reflectances).toBe("62% and 20%");
});

test("red on black is near the line: weak on usual cloth, soft on the widest", () => {
  // Y 0.135 by hand, as below: (15.8 − 5) · 125 / 45.8 = 29.5; (15.88 − 4) · 125 / 44.88 = 33.1.
  expect([method.near.grade, method.near.widest.grade]).toEqual(["weak", "soft"]);
  expect(method.near.x).toBeCloseTo(29.5, 1);
  expect(method.near.widest.x).toBeCloseTo(33.1, 1);
});

test("the walk of red on black ends where common practice says: not clear", () => {
  // Luminance of #c8202f by hand from the WCAG definition: 0.2126·0.5776 + 0.7152·0.0144 + 0.0722·0.0284 = 0.135.
  expect(method.walk).toMatchObject({
    luminances: ["0.135", "0.000"],
    reflectances: ["15.8", "5.0"],
    grade: "weak",
  });
});

test("the pairs are graded as common practice has it", () => {
  const clear = new Set(["clear", "strong"]);
  const read = method.pairs.filter((pair) => clear.has(pair.grade)).map((pair) => pair.names.join(" / "));
  expect(read).toEqual(["white / dark blue", "yellow / green", "red / white", "yellow / mid green"]);
});

test("says from where flags are measured, or that they are not from a distance", () => {
  expect(method.viewing).toEqual({
    distance: 40,
    // 40 · tan(1′), from the definition: one arcminute is 0.000290888.
    finest: "0.0116",
  });
  const near = { ...galleryResult, gallery: { ...galleryResult.gallery, viewingDistance: 0 } };
  expect(presentMethod(near, createFormat("en")).viewing).toBeUndefined();
});

test("what a distance makes of a flag follows from the angle it fills", () => {
  // From 10 flag heights: 2 · atan(1/20) = 343.5′; 10 · tan(1′) = 0.29 %; half an arcminute of 343.5 is 0.15 %.
  expect(method.steps[0]).toEqual({ distance: "10", finest: "0.3%", blur: "0.1%" });
  // From 320: 10.743′; 9.3 %; 4.65 %.
  expect(method.steps.at(-1)).toEqual({ distance: "320", finest: "9.3%", blur: "4.7%" });
});

test("the ranges of cloth, and what laws that fix it come to", () => {
  expect(method.ranges).toEqual({
    black: "5",
    white: "85%",
    paintBlack: "4",
    paintWhite: "92%",
  });
  const said = lawContrastRows.map(([, darker, lighter, contrast]) => [darker, lighter, contrast]);
  const laws = method.laws.split("; ");
  const shown = laws.map((text) => text.match(/[\d.]+/g)?.map(Number));
  expect(shown).toEqual(said);
  expect(laws.map((text) => /\w+$/.exec(text)?.[0])).toEqual(["strong", "clear", "strong"]);
  expect(laws[0]).toMatch(/^red 9.5% on yellow 56.7% /);
});

test("colours of pairs and of laws have their names in the language of the page", () => {
  const german = presentMethod(galleryResult, createFormat("de"));
  expect(german.walk.names).toEqual(["Rot", "Schwarz"]);
  expect(german.pairs.map(({ key }) => key)).toEqual(method.pairs.map(({ key }) => key));
  expect(german.laws).toMatch(/^Rot 9,5\s% auf Gelb 56,7\s% .*; Orange .* Weiß .*; Blau /);
});
