import { expect, test } from "vitest";
import { findRegions } from "../../../src/regions/component.ts";
import { areaOf, findBoxes, heightOf, joinBoxes, widthOf } from "../../../src/regions/focus/box.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { readMap } from "../picture.ts";

test("the box of each region, in their order, with right and bottom exclusive", () => {
  const boxes = findBoxes(findRegions(findRuns(readMap("11111", "12131", "12211", "11111"))));
  expect(boxes).toEqual([
    { left: 0, top: 0, right: 5, bottom: 4 },
    { left: 1, top: 1, right: 3, bottom: 3 },
    { left: 3, top: 1, right: 4, bottom: 2 },
  ]);
  const both = joinBoxes([...boxes].slice(1));
  expect(both).toEqual({ left: 1, top: 1, right: 4, bottom: 3 });
  expect([widthOf(both), heightOf(both), areaOf(both)]).toEqual([3, 2, 6]);
});

test("what is transparent has none", () => {
  expect(findBoxes(findRegions(findRuns(readMap("000", "010"))))).toEqual([
    { left: 1, top: 1, right: 2, bottom: 2 },
  ]);
});
