import { expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { SwatchBook } from "../../src/measure/colourcache.ts";
import { contrastOf } from "../../src/measure/edgefigure.ts";
import { edgeMetrics, measureMetrics } from "../../src/measure/edgemetric.ts";
import { contrast, difference } from "./oracle.ts";

const measure = (one: Hex, other: Hex) => {
  const book = new SwatchBook({ black: 5, white: 85 });
  const looks = [one, other].map((hex) => ({ hex, uneven: null })) as [
    { hex: Hex; uneven: null },
    { hex: Hex; uneven: null },
  ];
  const { contrast: seen, pair: worst } = contrastOf(...looks, book);
  const deltaE00 = book.differenceOf(one, other);
  return measureMetrics({
    looks,
    wholes: [one, other],
    contrast: seen,
    worst,
    deltaE00,
    book,
    cloth: book.cloth,
  });
};

// WCAG 2.2: black and white have the highest contrast ratio, 21. CIEDE2000 of the two is 100.
test("every metric of black beside white, by its id", () => {
  const figures = measure("#000000", "#ffffff");
  expect(Object.keys(figures)).toEqual(edgeMetrics.map(({ id }) => id));
  expect(figures).toMatchObject({ grade: "strong", nearLine: false, hueOnly: false, tincture: null });
  expect(figures.contrast).toBeCloseTo(contrast("#000000", "#ffffff"), 6);
  expect(figures.contrastRatio).toBeCloseTo(21, 9);
  expect(figures.deltaE00).toBeCloseTo(100, 4);
  expect(figures.vision.grey.deltaE00).toBeCloseTo(100, 4);
});

test("red beside green: told apart by hue, both colours, and alike to a protan eye", () => {
  const { hueOnly, tincture, grade, deltaE00, vision } = measure("#c8202f", "#0b7a3b");
  expect({ hueOnly, tincture, grade }).toEqual({ hueOnly: true, tincture: "both colours", grade: "weak" });
  expect(deltaE00).toBeCloseTo(difference("#c8202f", "#0b7a3b"), 1);
  expect(vision.protan.deltaE00).toBeLessThan(deltaE00 / 2);
});
