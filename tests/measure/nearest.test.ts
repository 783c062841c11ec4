import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareGrids, type FlagGrid, prepareGrid } from "../../src/measure/likeness.ts";
import { findNearest } from "../../src/measure/nearest.ts";

const cloth = { black: 5, white: 85 };
const [columns, rows] = [6, 4];
const gridOf = (greens: readonly number[]): FlagGrid =>
  prepareGrid(
    columns,
    rows,
    greens.map((green) => (green === 9 ? null : { linearR: 0.3, linearG: green / 10, linearB: 0.1 })),
    cloth,
  );

describe("findNearest", () => {
  const cells = fc.array(fc.integer({ min: 0, max: 9 }), {
    minLength: columns * rows,
    maxLength: columns * rows,
  });

  test("is what comparing everything with everything finds", () => {
    fc.assert(
      fc.property(cells, fc.array(cells, { minLength: 0, maxLength: 9 }), (own, others) => {
        const grid = gridOf(own);
        const index = others.map((other, at) => ({ file: `${at}.svg`, grid: gridOf(other) }));
        const all = index.map(({ file, grid: other }, at) => {
          const ways = (["as it is", "mirrored", "upside down"] as const).map((orientation) => ({
            orientation,
            deltaE00: compareGrids(grid, other, orientation),
          }));
          const best = ways.reduce((least, way) => (way.deltaE00 < least.deltaE00 ? way : least));
          return { at, file, ...best };
        });
        const expected = all
          .sort((x, y) => x.deltaE00 - y.deltaE00 || x.at - y.at)
          .slice(0, 3)
          .map(({ at: _, ...likeness }) => likeness);
        expect(findNearest(grid, index)).toEqual(expected);
      }),
      { numRuns: 80, seed: 11 },
    );
  });

  test("equals come in the order of the index, turned as little as possible", () => {
    const plain = gridOf(Array.from({ length: columns * rows }, () => 4));
    const index = ["a", "b", "c", "d"].map((file) => ({ file, grid: plain }));
    expect(findNearest(plain, index, 2)).toEqual([
      { file: "a", deltaE00: 0, orientation: "as it is" },
      { file: "b", deltaE00: 0, orientation: "as it is" },
    ]);
  });

  test("nothing to compare with", () =>
    expect(findNearest(gridOf(Array.from({ length: columns * rows }, () => 1)), [])).toEqual([]));
});
