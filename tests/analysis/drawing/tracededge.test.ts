import { expect, test } from "vitest";
import { toEdgeLines } from "../../../src/analysis/drawing/tracededge.ts";
import type { EdgeTable } from "../../../src/measure/edgetable.ts";

const paint = (id: string, group: number) => ({
  id,
  share: 0.5,
  touchesBorder: true,
  vanishes: false,
  group,
});
/** The second paint of the drawing is the larger one. */
const table: EdgeTable = {
  paints: [paint("p1", 1), paint("p2", 0)],
  order: [1, 0],
  edges: [],
  focus: { source: "none", share: 0, charges: [], steps: [] },
};

test("labels become ids, the larger paint first, and pixels become flag heights to a thousandth", () => {
  const lines = [
    { a: 1, b: 2, points: [0, 100, 333, 100], length: 333, focusShare: 0.25, outlineShares: [] },
  ];
  expect(toEdgeLines(lines, table, 720)).toEqual([
    { a: "p1", b: "p2", points: [0, 0.139, 0.463, 0.139], focusShare: 0.25 },
  ]);
});

test("a line of a paint that is not in the table is left out", () => {
  expect(
    toEdgeLines(
      [{ a: 1, b: 3, points: [0, 0, 1, 1], length: 1, focusShare: 0, outlineShares: [] }],
      table,
      720,
    ),
  ).toEqual([]);
});
