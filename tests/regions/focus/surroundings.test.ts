import { expect, test } from "vitest";
import { findRegions, type RegionIndex } from "../../../src/regions/component.ts";
import { Surroundings } from "../../../src/regions/focus/surroundings.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { nth } from "../../numbered.ts";
import { readMap } from "../picture.ts";

// 0: field, 1 and 2: a ring and what it holds, 3: a piece apart.
const around = new Surroundings(
  findRegions(findRuns(readMap("1111111", "1222141", "1232111", "1222111", "1111111"))),
  35,
);

test("a group's pixels, box and rim", () => {
  const ring = around.split(new Set([nth<RegionIndex>(1), nth<RegionIndex>(3)])).flat();
  expect(ring).toHaveLength(2);
  const { regions } = around.map;
  const group = [...regions.keys()].filter((index) => [2, 3].includes(regions[index]?.label ?? 0));
  expect(around.pixelsOf(group)).toBe(9);
  expect(around.boxOf(group)).toEqual({ left: 1, top: 1, right: 4, bottom: 4 });
  expect(around.rimOf(group).map((index) => regions[index]?.label)).toEqual([2]);
});

test("what does not hang together is split", () => {
  const { regions } = around.map;
  const inner = [...regions.keys()].filter((index) => regions[index]?.touchesOutside === false);
  expect(around.split(new Set(inner)).map((group) => group.length)).toEqual([2, 1]);
});
