import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareGrids, type FlagGrid, prepareGrid } from "../../src/measure/gridlikeness.ts";
import { findNearest } from "../../src/measure/nearestflag.ts";

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

  test("a grid that several flags share gives each what a grid of its own gives", () => {
    const few = fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(cells, fc.array(cells, { minLength: 4, maxLength: 4 }), few, (own, kinds, order) => {
        const shared = kinds.map(gridOf);
        const list = (grid: (kind: number) => FlagGrid | undefined) =>
          order.flatMap((kind, at) => {
            const found = grid(kind);
            return found === undefined ? [] : [{ file: `${at}.svg`, grid: found }];
          });
        const separate = list((kind) => gridOf(kinds[kind] ?? []));
        expect(
          findNearest(
            gridOf(own),
            list((kind) => shared[kind]),
          ),
        ).toEqual(findNearest(gridOf(own), separate));
      }),
    );
  });

  test("is what comparing everything with everything finds", () => {
    fc.assert(
      fc.property(cells, fc.array(cells, { minLength: 0, maxLength: 9 }), (own, others) => {
        const grid = gridOf(own);
        const index = others.map((other, at) => ({ file: `${at}.svg`, grid: gridOf(other) }));
        const all = index.map(({ file, grid: other }, at) => {
          const [asIs, ...turned] = (["as it is", "mirrored", "upside down"] as const).map((orientation) => ({
            orientation,
            deltaE00: compareGrids(grid, other, orientation),
          }));
          if (asIs === undefined) throw new Error("there is a first of three");
          const least = turned.reduce((best, way) => (way.deltaE00 < best.deltaE00 ? way : best));
          const best = least.deltaE00 <= asIs.deltaE00 - 1 ? least : asIs;
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

  test("a flag that is as good as alike both ways round is not called turned", () => {
    const greens = Array.from({ length: columns * rows }, (_, at) => (at < columns ? 6 : 4));
    const other = gridOf(greens);
    const nearly = gridOf(greens.map((green, at) => (at === 0 ? 5 : green)));
    const turned = gridOf(greens.map((_, at) => (at < columns * (rows - 1) ? 4 : 6)));
    expect(findNearest(nearly, [{ file: "a", grid: other }])[0]?.orientation).toBe("as it is");
    expect(findNearest(turned, [{ file: "a", grid: other }])).toEqual([
      { file: "a", deltaE00: 0, orientation: "upside down" },
    ]);
    // Two cells of 24 differ as it is, none upside down: twice the difference of one cell over 24 is under a point.
    const [top, foot] = [0, columns * (rows - 1)].map((corner) =>
      gridOf(greens.map((_, at) => (at === corner ? 6 : 4))),
    );
    if (top === undefined || foot === undefined) throw new Error("there are two");
    expect(compareGrids(top, foot, "upside down")).toBe(0);
    expect(compareGrids(top, foot)).toBeLessThan(1);
    expect(findNearest(foot, [{ file: "a", grid: top }])[0]?.orientation).toBe("as it is");
  });

  test("nothing to compare with", () =>
    expect(findNearest(gridOf(Array.from({ length: columns * rows }, () => 1)), [])).toEqual([]));
});
