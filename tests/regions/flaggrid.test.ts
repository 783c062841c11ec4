import { describe, expect, test } from "vitest";
import { gridColumns, gridRows, measureGrid } from "../../src/regions/flaggrid.ts";
import { listed } from "../../src/svg/paintnumber.ts";
import { drawMap } from "./picture.ts";

const black = { linearR: 0, linearG: 0, linearB: 0 };
const white = { linearR: 1, linearG: 1, linearB: 1 };
const red = { linearR: 0.6, linearG: 0, linearB: 0.1 };

describe("measureGrid", () => {
  test.each([
    [24, 16],
    [240, 160],
    [1440, 720],
    [97, 61],
    [5, 3],
  ])("stretches a flag of %i × %i pixels to one size", (width, height) => {
    const cells = measureGrid(
      drawMap(width, height, (x) => (x < width / 2 ? 1 : 2)),
      listed([red, white]),
    );
    expect(cells).toHaveLength(gridColumns * gridRows);
    for (let row = 0; row < gridRows; row += 1) {
      expect(cells[row * gridColumns]).toEqual({
        linearR: expect.closeTo(0.6, 9),
        linearG: 0,
        linearB: expect.closeTo(0.1, 9),
      });
      expect(cells[row * gridColumns + gridColumns - 1]).toEqual({
        linearR: expect.closeTo(1, 9),
        linearG: expect.closeTo(1, 9),
        linearB: expect.closeTo(1, 9),
      });
    }
  });

  test("a cell is the mean, in linear light, of what it holds", () => {
    // Ten pixels a cell; the upper seven of the first row of cells are white.
    const [first, , ...rest] = measureGrid(
      drawMap(240, 160, (_, y) => (y < 7 ? 2 : 1)),
      listed([black, white]),
    );
    expect(first?.linearG).toBeCloseTo(0.7, 9);
    expect(rest.at(-1)).toEqual(black);
  });

  test("rows run from the top, and columns from the hoist", () => {
    const cells = measureGrid(
      drawMap(240, 160, (x, y) => (x < 10 && y >= 150 ? 2 : 1)),
      listed([black, white]),
    );
    expect(cells.flatMap((cell, at) => (cell?.linearR === 0 ? [] : [at]))).toEqual([
      (gridRows - 1) * gridColumns,
    ]);
  });

  test("what is transparent counts for nothing, and a cell that is mostly so is none", () => {
    const cells = measureGrid(
      drawMap(240, 160, (x) => (x < 4 ? 0 : x < 10 ? 2 : x < 16 ? 0 : 1)),
      listed([black, white]),
    );
    expect(cells[0]?.linearR).toBeCloseTo(1, 9);
    expect(cells[1]).toBeNull();
    expect(cells[2]).toEqual(black);
  });

  test("a label without a colour is refused", () => {
    expect(() =>
      measureGrid(
        drawMap(24, 16, () => 2),
        listed([black]),
      ),
    ).toThrow(RangeError);
  });
});
