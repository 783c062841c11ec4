import { expect, test } from "vitest";
import { presentPlate } from "../../src/views/plate.ts";
import { createFormat } from "../../src/words/format.ts";
import { comparison } from "../publish/sample.ts";

const plate = (proportions: readonly [number, number]) =>
  presentPlate("Original", "original.svg", { ...comparison.before, proportions }, createFormat("en"));

test("keeps the proportions, height to width, and says what is shown", () => {
  expect(plate([2, 3])).toEqual({
    label: "Original",
    src: "original.svg",
    alt: "Original: mostly dark blue, with red and white",
    width: 1200,
    height: 800,
    fit: "wide",
  });
  expect(plate([11, 18]).height).toBe(733);
});

test("a square flag, and one higher than wide, fills the mat by its height", () => {
  expect([plate([1, 1]).fit, plate([5, 4]).fit, plate([1, 2]).fit]).toEqual(["tall", "tall", "wide"]);
});
