import { expect, test } from "vitest";
import { toEdgeLines } from "../../../src/analysis/drawing/tracededge.ts";
import type { EdgeTable, TablePaint } from "../../../src/measure/edgetable.ts";
import { measurePath } from "../../../src/regions/polyline.ts";
import type { Line } from "../../../src/regions/traceline.ts";
import { listed } from "../../../src/svg/paintnumber.ts";
import { nth } from "../../numbered.ts";

const paint = (id: string, group: number): TablePaint => ({
  id,
  share: 0.5,
  touchesBorder: true,
  vanishes: false,
  group: nth(group),
});
const lineOf = (a: number, b: number, points: readonly number[], focusShare: number): Line => ({
  a: nth(a),
  b: nth(b),
  points,
  length: measurePath(points),
  focusShare,
  outlineShares: [],
});
/** The second paint of the drawing is the larger one. */
const table: EdgeTable = {
  paints: listed([paint("p1", 1), paint("p2", 0)]),
  order: listed([nth(1), nth(0)]),
  edges: [],
  focus: { source: "none", share: 0, charges: [], steps: [] },
};

test("labels become ids, the larger paint first, and pixels become flag heights to a thousandth", () => {
  const lines = [lineOf(1, 2, [0, 100, 333, 100], 0.25)];
  expect(toEdgeLines(lines, table, { width: 400, height: 720, marks: undefined })).toEqual([
    { a: "p1", b: "p2", points: [0, 0.139, 0.463, 0.139], focusShare: 0.25 },
  ]);
});

test("a line of a paint that is not in the table is left out", () => {
  expect(
    toEdgeLines([lineOf(1, 3, [0, 0, 1, 1], 0)], table, {
      width: 400,
      height: 720,
      marks: undefined,
    }),
  ).toEqual([]);
});

test("a line with the focus beside one half is told in two pieces that meet where it ends", () => {
  const [width, height] = [100, 40];
  const marks = new Uint8Array(width * height);
  for (let x = 60; x < width; x += 1) for (let y = 10; y < 20; y += 1) marks[y * width + x] = 2;
  const lines = [lineOf(1, 2, [0, 20, 100, 20], 0.4)];
  const [before, within, ...rest] = toEdgeLines(lines, table, { width, height, marks });
  expect(rest).toEqual([]);
  expect(before).toMatchObject({ focusShare: 0, points: [0, 0.5, 1.5, 0.5] });
  expect(within).toMatchObject({ focusShare: 1, points: [1.5, 0.5, 2.5, 0.5] });
});
