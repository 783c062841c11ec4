import fc from "fast-check";
import { expect, test } from "vitest";
import { identity, type Matrix, matricesOf, multiply, stretchOf } from "../../src/svg/matrix.ts";

const put = (transform: string, x: number, y: number): readonly [number, number] => {
  const [a, b, c, d, e, f] = matricesOf(transform).reduce(multiply, identity);
  return [a * x + c * y + e, b * x + d * y + f];
};

// Worked by hand from SVG 2, section 8.4 and SVG 1.1, section 7.6: y points down, so 90 degrees bring x to y.
test.each([
  ["translate(3 4)", [1, 2], [4, 6]],
  ["translate(3)", [1, 2], [4, 2]],
  ["scale(2)", [1, 2], [2, 4]],
  ["scale(2 -1)", [1, 2], [2, -2]],
  ["rotate(90)", [1, 0], [0, 1]],
  ["rotate(180 10 10)", [0, 0], [20, 20]],
  ["skewX(45)", [0, 1], [1, 1]],
  ["skewY(45)", [1, 0], [1, 1]],
  ["matrix(1 2 3 4 5 6)", [1, 1], [9, 12]],
  ["translate(10 0) scale(2)", [1, 1], [12, 2]],
  ["scale(2) translate(10 0)", [1, 1], [22, 2]],
  ["", [1, 2], [1, 2]],
] as const)("%s brings %j to %j", (transform, [x, y], to) => {
  const [toX, toY] = put(transform, x, y);
  expect(toX).toBeCloseTo(to[0], 12);
  expect(toY).toBeCloseTo(to[1], 12);
});

test("nothing is stretched by more than stretchOf says, and something by that", () => {
  // Numbers so small that half of their digits are gone are no matrix of a drawing.
  const number = fc
    .double({ noNaN: true, min: -100, max: 100 })
    .map((one) => (Math.abs(one) < 1e-9 ? 0 : one));
  fc.assert(
    fc.property(number, number, number, number, (a, b, c, d) => {
      const matrix: Matrix = [a, b, c, d, 7, 7];
      const lengths = Array.from({ length: 720 }, (_, step) => {
        const [x, y] = [Math.cos((step * Math.PI) / 360), Math.sin((step * Math.PI) / 360)];
        return Math.hypot(a * x + c * y, b * x + d * y);
      });
      const most = Math.max(...lengths);
      expect(stretchOf(matrix)).toBeGreaterThanOrEqual(most * (1 - 1e-9));
      expect(stretchOf(matrix)).toBeLessThanOrEqual(most * 1.0001 + 1e-9);
    }),
  );
});
