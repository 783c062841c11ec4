import { expect, test } from "vitest";
import { parseColour } from "../../../src/colour/colourtext.ts";
import { defaultPalette } from "../../../src/content/gallery/palette.ts";

test("the usual palette has twelve names, in the order of options", () => {
  expect([...defaultPalette.keys()]).toEqual([
    "white",
    "black",
    "red",
    "yellow",
    "green",
    "dark green",
    "blue",
    "dark blue",
    "light blue",
    "orange",
    "purple",
    "brown",
  ]);
});

test("every shade is an opaque colour, and no two are the same", () => {
  const shades = [...defaultPalette.values()].map((shade) => parseColour(shade));
  for (const shade of shades) expect(shade?.alpha01).toBe(1);
  expect(new Set(shades.map((shade) => shade?.hex)).size).toBe(12);
});
