import { expect, test } from "vitest";
import { presentSizes, sizeFrom } from "../../../src/views/study/truesize.ts";
import { createFormat } from "../../../src/words/format.ts";

const link = (to: string) => `..${to}`;
const format = createFormat("en");

// By hand: 600 mm / 40 is 15 mm, at 3.7795 pixels to a millimetre 56.7 pixels; half of it from twice as far.
test.each([
  [20, 113],
  [40, 57],
  [80, 28],
  [160, 14],
  [320, 7],
])("from %i flag heights a flag is as large as one of %i pixels at arm's length", (distance, height) => {
  expect(sizeFrom(distance)).toBe(height);
});

test("two rows of three sizes, those of the strip, each in the flag's proportions and with the distance it stands for", () => {
  const [original, redesign] = presentSizes([2, 3], link, "/studies/a/", format);
  // 3/2 of 113, 28 and 7, by hand.
  expect(original.pictures.map(({ width, height, distance }) => [width, height, distance])).toEqual([
    [170, 113, "20 flag heights"],
    [42, 28, "80 flag heights"],
    [11, 7, "320 flag heights"],
  ]);
  expect(original.pictures.map(({ src }) => src)).toEqual(Array(3).fill("../studies/a/original.svg"));
  expect(redesign.pictures.map(({ src }) => src)).toEqual(Array(3).fill("../studies/a/redesign.svg"));
  expect([original.label, redesign.label]).toEqual(["Original", "Redesign"]);
  expect(redesign.pictures[0]?.alt).toBe("Redesign, as large as from 20 flag heights");
});

test("widths are whole pixels, and never none", () => {
  const [tall] = presentSizes([40, 1], link, "/", format);
  expect(tall.pictures.map(({ width }) => width)).toEqual([3, 1, 1]);
});
