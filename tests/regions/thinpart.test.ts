// What is thin is counted by the pixel, along rows and columns.
import { expect, test } from "vitest";
import { countThin } from "../../src/regions/thinpart.ts";
import { drawMap, readMap } from "./picture.ts";

test("a stretch is thin along its row or its column, whichever is shorter", () => {
  // 2 in the middle is 2 wide; 1 on both sides is 4 wide and as high as the map.
  const upright = readMap("1111221111", "1111221111", "1111221111", "1111221111");
  expect(countThin(upright, 1)).toBe(0);
  expect(countThin(upright, 2)).toBe(8);
  expect(countThin(upright, 4)).toBe(40);
  // One pixel, and around it the pieces of its row and column that it cuts off: 1 and 2 pixels long.
  expect(countThin(readMap("1111", "1211", "1111", "1111"), 1)).toBe(3);
});

test("what has no label is none, and where nothing is left out a field of lines is all thin", () => {
  expect(countThin(readMap("0000", "1111", "0000"), 1)).toBe(4);
  expect(
    countThin(
      drawMap(20, 20, (x) => 1 + (Math.floor(x / 2) % 2)),
      2,
    ),
  ).toBe(400);
});
