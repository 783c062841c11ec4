import { expect, test } from "vitest";
import { traceOutline } from "../../../src/views/study/focusoutline.ts";

const square = [0.2, 0.2, 0.8, 0.2, 0.8, 0.8, 0.2, 0.8, 0.2, 0.2];
const hole = [0.4, 0.4, 0.6, 0.4, 0.6, 0.6, 0.4, 0.4];
const beside = [1.2, 0.2, 1.4, 0.2, 1.4, 0.4, 1.2, 0.2];

test("a ring within another is left out, one beside it stays", () => {
  const rings = traceOutline([hole, square, beside]);
  expect(rings.map((ring) => Math.max(...ring))).toEqual([1.4, 0.8]);
});

test("lines of several edges join where their ends meet, whichever way they run", () => {
  const rings = traceOutline([
    [0.2, 0.5, 0.2, 0.2, 0.8, 0.2, 0.8, 0.5],
    [0.81, 0.5, 0.8, 0.8],
    [0.2, 0.51, 0.2, 0.8, 0.8, 0.8],
  ]);
  expect(rings).toHaveLength(1);
  const [ring = []] = rings;
  expect(ring).toHaveLength(18);
  // Nowhere across: the sides of a rectangle.
  const sides = ring.flatMap((x, at) =>
    at % 2 === 0 && at > 0 ? [[x, ring[at - 2], ring[at + 1], ring[at - 1]]] : [],
  );
  for (const [x = 0, lastX = 0, y = 0, lastY = 0] of sides)
    expect(Math.min(Math.abs(x - lastX), Math.abs(y - lastY))).toBeLessThan(0.03);
});

test("lines with nothing near stay as they are", () => {
  expect(traceOutline([[0, 0, 0.2, 0.2]])).toHaveLength(1);
  expect(traceOutline([[0.5, 0.5]])).toEqual([]);
});
