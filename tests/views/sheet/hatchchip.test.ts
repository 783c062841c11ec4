import { expect, test } from "vitest";
import { presentChip } from "../../../src/views/sheet/hatchchip.ts";

/** The directions of all strokes of a sign, dx and dy. */
const strokesOf = (path: string): readonly string[] =>
  [...path.matchAll(/M(-?[\d.]+) (-?[\d.]+)(?:V([\d.]+)|H([\d.]+)|L(-?[\d.]+) ([\d.]+)|(h0))/g)].map(
    ([, x, y, v, h, toX, toY]) => {
      if (v !== undefined) return "down";
      if (h !== undefined) return "right";
      if (toX === undefined) return "dot";
      return Number(toX) > Number(x) === Number(toY) > Number(y) ? "to the lower right" : "to the lower left";
    },
  );

test.each([
  ["#c8202f", ["down"]],
  ["#1f56a8", ["right"]],
  ["#2f8f46", ["to the lower right"]],
  ["#5f2a7a", ["to the lower left"]],
  ["#000000", ["right", "down"]],
  ["#f7c81e", ["dot"]],
  ["#ffffff", []],
] as const)("the sign of %s is drawn %s", (hex, expected) => {
  expect([...new Set(strokesOf(presentChip(hex, "any").sign.path))]).toEqual(expected);
});

test("grey is toned and has no lines", () => {
  expect(presentChip("#808080", "grey").sign).toEqual({ path: "", isToned: true });
});
