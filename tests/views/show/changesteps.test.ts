import { expect, test } from "vitest";
import type { Matrix, MatrixCell } from "../../../src/analysis/options/optionmatrix.ts";
import { listSteps } from "../../../src/views/show/showsteps.ts";
import { createFormat } from "../../../src/words/format.ts";
import { matrix, noted, ranked } from "../../publish/ranked.ts";
import { gallery } from "../../publish/sample.ts";

const steps = (more: Parameters<typeof ranked>[0]) =>
  listSteps(ranked(more), gallery, "/studies/a-square/show/", createFormat("en"));

function show(drawn: Matrix) {
  const step = steps({ matrix: drawn }).find(({ name }) => name === "the-colours");
  return step?.picture.kind === "matrix" ? { says: step.says, ...step.picture } : undefined;
}

/** So many columns and rows of blues, of which the last column alone is best. */
function widen(columns: number, rows: number): Matrix {
  const hexOf = (at: number) => `#0000${(at + 16).toString(16)}` as const;
  const cell = (at: number): MatrixCell => ({
    with: hexOf(at),
    name: `blue ${at}`,
    clarity: at === columns - 1 ? 99 : 50,
    mergedOutline: 0,
    isRanked: true,
    merges: false,
    isBest: at === columns - 1,
  });
  return {
    ...matrix,
    columns: Array.from({ length: columns }, (_, at) => ({ hex: hexOf(at), name: `blue ${at}` })),
    rows: Array.from({ length: rows }, (_, at) => ({
      id: `p${at}`,
      hex: "#c8202f",
      name: "red",
      cells: Array.from({ length: columns }, (__, column) => cell(column)),
    })),
  };
}

test("the matrix is a step, with its picture and what is read in it", () => {
  const shown = show(matrix);
  expect(shown?.picture).toBe(matrix.picture);
  // The change of the sample study, red to straw, stands first.
  expect(shown?.matrix.columns[0]?.name).toBe("straw");
  expect(shown?.says).toBe(
    "Each row changes one colour. Under each flag stands its clarity, now 74%; the best of a row is underlined, what this study proposes is framed.",
  );
});

test("of a large matrix the first rows are shown, and of its columns what is best in them", () => {
  const shown = show(widen(18, 9));
  expect(shown?.matrix.rows.map(({ cells }) => cells.length)).toEqual([10, 10, 10, 10, 10]);
  expect(shown?.matrix.columns.map(({ name }) => name)).toEqual(
    [0, 1, 2, 3, 4, 5, 6, 7, 8, 17].map((at) => `blue ${at}`),
  );
  expect(shown?.matrix.rows[0]?.cells.at(-1)).toMatchObject({ isBest: true, clarity: "99%" });
  expect(shown?.says).not.toContain("framed");
});

test("where no change has a place there is no such step", () => {
  const unranked = widen(2, 1).rows.map((row) => ({
    ...row,
    cells: row.cells.map((cell) => cell && { ...cell, isRanked: false }),
  }));
  expect(show({ ...matrix, rows: unranked })).toBeUndefined();
});

test("what the author tried follows, a step each", () => {
  const told = steps({ matrix, noted: [noted({}), noted({ index: 1, note: "Too dark." })] });
  const at = told.findIndex(({ name }) => name === "the-colours");
  expect(told.slice(at, at + 4).map(({ name }) => name)).toEqual([
    "the-colours",
    "tried-1",
    "tried-2",
    "before",
  ]);
  expect(told[at + 2]).toMatchObject({
    heading: "Red becomes navy.",
    says: expect.stringMatching(/^Tried, an unofficial study\. Clarity 46%.* Too dark\.$/),
  });
});
