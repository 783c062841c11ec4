import { expect, test } from "vitest";
import { shrinkMap, shrinkMask } from "../../src/regions/shrink.ts";
import { drawMap, readMap } from "./picture.ts";

test("one pixel of every block; what is left over at the end goes", () => {
  const map = drawMap(7, 5, (x, y) => 1 + Math.floor(x / 2) + 3 * Math.floor(y / 2));
  const small = shrinkMap(map, 2);
  expect(small).toMatchObject({ width: 3, height: 2 });
  expect([...small.labels]).toEqual([1, 2, 3, 4, 5, 6]);
});

test("a mask shrinks like its map", () => {
  const map = readMap("1122", "1122");
  expect([...shrinkMask(Uint8Array.from([0, 0, 1, 1, 0, 0, 1, 1]), map, 2)]).toEqual([0, 1]);
});

test("by one it is the same; a map smaller than the block keeps a pixel", () => {
  const map = readMap("12", "12");
  expect(shrinkMap(map, 1)).toBe(map);
  expect(shrinkMap(drawMap(9, 9, () => 4), 8)).toMatchObject({ width: 1, height: 1, labels: Uint16Array.of(4) });
});
