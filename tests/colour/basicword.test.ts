import { expect, test } from "vitest";
import { anchors } from "../../src/colour/basicword.ts";
import type { Hex } from "../../src/colour/colour.ts";
import { linearOf } from "../../src/colour/colourtext.ts";
import { oklabOf } from "../../src/colour/space.ts";

function wordAt(hex: Hex): string | undefined {
  const { l, a, b } = oklabOf(linearOf(hex));
  return anchors.find(({ oklab }) => oklab.l === l && oklab.a === a && oklab.b === b)?.word;
}

// Source: xkcd colour survey, rgb.txt (CC0): red, green, blue, purple, pink, brown, orange, yellow, grey, light blue.
test.each([
  ["#e50000", "red"],
  ["#15b01a", "green"],
  ["#0343df", "blue"],
  ["#7e1e9c", "purple"],
  ["#ff81c0", "pink"],
  ["#653700", "brown"],
  ["#f97306", "orange"],
  ["#ffff14", "yellow"],
  ["#929591", "grey"],
  ["#95d0fc", "blue"],
  ["#000000", "black"],
  ["#ffffff", "white"],
] as const)("the survey's %s is an anchor for %s", (hex, word) => {
  expect(wordAt(hex)).toBe(word);
});

test("misleading survey names are left out", () => {
  // very light pink (an off-white), pale grey (nearly white), light blue grey
  for (const hex of ["#fff4f2", "#fdfdfe", "#b7c9e2"] as const) expect(wordAt(hex)).toBeUndefined();
});

test("survey names that end in no basic word are left out", () => {
  // teal, magenta, navy
  for (const hex of ["#029386", "#c20078", "#01153e"] as const) expect(wordAt(hex)).toBeUndefined();
});

test("every anchor is a finite place in OKLab, and no place carries two words", () => {
  const words = new Map<string, string>();
  for (const { word, oklab } of anchors) {
    expect(Number.isFinite(oklab.l + oklab.a + oklab.b)).toBe(true);
    const place = `${oklab.l} ${oklab.a} ${oklab.b}`;
    expect(words.get(place) ?? word).toBe(word);
    words.set(place, word);
  }
});
