import { expect, test } from "vitest";
import { findCrop } from "../../../src/views/edge/edgecrop.ts";

const level = { a: "p1", b: "p2", points: [0, 0.5, 1.5, 0.5], focusShare: 0 };
const far = { a: "p1", b: "p3", points: [0, 0.1, 1.5, 0.1], focusShare: 0 };

test("the line runs through the middle of the part, which stays on the flag", () => {
  const crop = findCrop([level, far], level, [2, 3]);
  if (crop === undefined) throw new Error("the line is there");
  expect(crop.y + crop.height / 2).toBeCloseTo(0.5, 5);
  expect(crop.width / crop.height).toBeCloseTo(1.5, 5);
  expect(crop.x).toBeGreaterThanOrEqual(0);
  expect(crop.x + crop.width).toBeLessThanOrEqual(1.5);
  // A line along the upper border: the part cannot go above it.
  expect(findCrop([level, far], far, [2, 3])?.y).toBe(0);
});

test("a place with little of other lines is better than one that is full of them", () => {
  const busy = Array.from({ length: 8 }, (_, index) => ({
    a: "p1",
    b: "p3",
    points: [0.05, 0.4 + index * 0.02, 0.6, 0.4 + index * 0.02],
    focusShare: 0,
  }));
  const crop = findCrop([level, ...busy], level, [2, 3]);
  expect(crop?.x).toBeGreaterThan(0.55);
});

test("on a very narrow flag the part is as wide as the flag", () => {
  const crop = findCrop([{ a: "p1", b: "p2", points: [0, 0.5, 0.2, 0.5], focusShare: 0 }], level, [5, 1]);
  expect(crop?.width).toBeCloseTo(0.2, 5);
  expect(crop?.x).toBeCloseTo(0, 5);
});

test("without a traced line there is no part to show", () => {
  expect(findCrop([far], level, [2, 3])).toBeUndefined();
});

const square = (x: number, y: number, side: number, focusShare: number) => ({
  a: "p1",
  b: "p2",
  points: [x, y, x + side, y, x + side, y + side, x, y + side, x, y],
  focusShare,
});

test("a shape is shown whole, in the middle, with as much free on either side", () => {
  const crop = findCrop([square(0.3, 0.4, 0.3, 1), square(1.2, 0.1, 0.1, 0)], level, [2, 3]);
  if (crop === undefined) throw new Error("the line is there");
  expect(crop.x + crop.width / 2).toBeCloseTo(0.45, 5);
  expect(crop.y + crop.height / 2).toBeCloseTo(0.55, 5);
  expect(crop.height).toBeGreaterThan(0.33);
});

test("what has to be seen is shown before a longer line that is not of it", () => {
  const crop = findCrop([square(0.05, 0.05, 0.8, 0), square(1.2, 0.7, 0.2, 1)], level, [2, 3]);
  if (crop === undefined) throw new Error("the line is there");
  expect(crop.x + crop.width).toBeGreaterThan(1.4);
  expect(crop.y + crop.height).toBeGreaterThan(0.9);
  expect(crop.height).toBeLessThan(0.5);
});
