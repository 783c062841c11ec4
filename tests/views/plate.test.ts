import { expect, test } from "vitest";
import { linkFrom } from "../../src/views/address.ts";
import { presentPair, presentPlate } from "../../src/views/plate.ts";
import { createFormat } from "../../src/words/format.ts";
import { comparison, galleryResult } from "../publish/sample.ts";

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

test("each flag of a pair has its clarity in whole percent, and none where there is no edge", () => {
  const [result] = galleryResult.studies;
  if (result === undefined) throw new Error("the sample has a study");
  const tell = (clarity: readonly [number | null, number | null]) =>
    presentPair({ ...result, comparison: { ...comparison, clarity } }, linkFrom("/"), createFormat("en")).map(
      (side) => side.clarity,
    );
  expect(tell([56.8, 100])).toEqual(["57%", "100%"]);
  expect(tell([null, null])).toEqual([undefined, undefined]);
});
