import { expect, test } from "vitest";
import { presentSizes } from "../../../src/site/present/size.ts";

const link = (to: string) => `..${to}`;

test("two rows of five heights, each in the flag's proportions", () => {
  const [original, redesign] = presentSizes([2, 3], link, "/studies/a/");
  // 3/2 of 16, 24, 32, 64 and 128, by hand.
  expect(original.pictures.map(({ width, height }) => [width, height])).toEqual([
    [24, 16],
    [36, 24],
    [48, 32],
    [96, 64],
    [192, 128],
  ]);
  expect(original.pictures.map(({ src }) => src)).toEqual(Array(5).fill("../studies/a/original.svg"));
  expect(redesign.pictures.map(({ src }) => src)).toEqual(Array(5).fill("../studies/a/redesign.svg"));
  expect([original.label, redesign.label]).toEqual(["Original", "Redesign"]);
  expect(redesign.pictures[0]?.alt).toBe("Redesign, 16 pixels high");
});

test("widths are whole pixels, and never none", () => {
  const [tall] = presentSizes([40, 1], link, "/");
  expect(tall.pictures.map(({ width }) => width)).toEqual([1, 1, 1, 2, 3]);
});
