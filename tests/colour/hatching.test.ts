import { expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { type Hatching, hatchingOf } from "../../src/colour/hatching.ts";

// Source: A. C. Fox-Davies, “A Complete Guide to Heraldry”, 1909, chapter VII: argent plain; or by dots; gules by
// perpendicular lines; azure by horizontal ones; vert by diagonal lines from dexter to sinister; purpure from sinister to
// dexter; sable by lines crossed. Dexter is on the viewer's left. The shades: our own choice, each far from any border.
test.each<[Hex, Hatching]>([
  ["#c8202f", { lines: ["vertical"] }],
  ["#701c2b", { lines: ["vertical"] }],
  ["#1f56a8", { lines: ["horizontal"] }],
  ["#6fb3e0", { lines: ["horizontal"] }],
  ["#2f8f46", { lines: ["down"] }],
  ["#5f2a7a", { lines: ["up"] }],
  ["#000000", { lines: ["horizontal", "vertical"] }],
  ["#f7c81e", { lines: [], isDotted: true }],
  ["#ffffff", { lines: [] }],
])("%s has the lines of its tincture", (hex, expected) => {
  expect(hatchingOf(hex)).toEqual(expected);
});

test("what has no lines in that convention has none of its signs", () => {
  const classic = (
    ["#c8202f", "#1f56a8", "#2f8f46", "#5f2a7a", "#000000", "#f7c81e", "#ffffff"] as const
  ).map(hatchingOf);
  for (const hex of ["#ee7a1a", "#6f4526", "#808080", "#ff9ec4"] as const)
    expect(classic).not.toContainEqual(hatchingOf(hex));
});
