import { expect, test } from "vitest";
import { cutPieces, isClosed, measureLength, weigh } from "../../../src/views/edge/linepiece.ts";

const level = { a: "p1", b: "p2", points: [0, 0.5, 1.5, 0.5], focusShare: 0 };
const upright = { a: "p1", b: "p3", points: [0.75, 0, 0.75, 1], focusShare: 0 };

test("a part weighs what lies in it, by whose it is, and counts where it cuts a line", () => {
  const pieces = [...cutPieces(level, true), ...cutPieces(upright, false)];
  const { own, other, middle, cut } = weigh({ x: 0.5, y: 0.25, width: 0.75, height: 0.5 }, pieces);
  expect(own).toBeCloseTo(0.75, 1);
  expect(other).toBeCloseTo(0.5, 1);
  expect(middle[0]).toBeCloseTo(0.875, 1);
  expect(middle[1]).toBeCloseTo(0.5, 5);
  expect(cut).toBe(4);
});

test("a line is as long as its pieces, and closed where it ends at its beginning", () => {
  expect(measureLength(level)).toBeCloseTo(1.5, 9);
  expect(isClosed(level)).toBe(false);
  expect(isClosed({ ...level, points: [0, 0, 1, 0, 1, 1, 0, 0] })).toBe(true);
});
