import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findRegions } from "../../src/regions/component.ts";
import { findRuns } from "../../src/regions/runs.ts";
import { floodParts, sidesOf, smallMaps } from "./naive.ts";
import { readMap } from "./picture.ts";

const regionsOf = (...rows: readonly string[]) => findRegions(findRuns(readMap(...rows))).regions;
const listOf = (...rows: readonly string[]) =>
  regionsOf(...rows).map(({ label, pixels, touchesOutside }) => [label, pixels, touchesOutside]);

describe("findRegions", () => {
  test("parts of one label that do not touch are regions of their own", () => {
    expect(listOf("11111", "12121", "11111")).toEqual([
      [1, 13, true],
      [2, 1, false],
      [2, 1, false],
    ]);
  });

  test("pixels that touch at a corner only are not one region", () => {
    expect(listOf("1111", "1211", "1121", "1111")).toEqual([
      [1, 14, true],
      [2, 1, false],
      [2, 1, false],
    ]);
  });

  test("a shape that comes together further down is one region", () => {
    expect(listOf("2112", "2112", "2222")).toEqual([
      [2, 8, true],
      [1, 4, true],
    ]);
  });

  test("a spiral is one region", () => {
    const spiral = ["11111", "22221", "11121", "12221", "11111"];
    expect(listOf(...spiral).map(([label, pixels]) => [label, pixels])).toEqual([
      [1, 17],
      [2, 8],
    ]);
  });

  test("transparent parts are no region, and are outside", () => {
    expect(listOf("11111", "12011", "11111")).toEqual([
      [1, 13, true],
      [2, 1, true],
    ]);
  });

  test("neighbours share a side, both ways", () => {
    // 1 around 2 around 3; 3 does not touch 1.
    const regions = regionsOf("11111", "12221", "12321", "12221", "11111");
    expect(regions.map(({ neighbours }) => [...neighbours].sort())).toEqual([[1], [0, 2], [1]]);
  });
});

test("on any map the regions are the parts that a flood of paint finds", () => {
  fc.assert(
    fc.property(smallMaps(0), (map) => {
      const part = floodParts(map);
      const { regions, regionOf, runs } = findRegions(findRuns(map));
      const indexOf = new Array<number>(part.length).fill(-1);
      for (let run = 0; run < runs.count; run += 1)
        indexOf.fill(regionOf[run] ?? -1, runs.start[run], runs.start[run + 1]);
      // Both are numbered in reading order of their first pixels.
      expect(indexOf).toEqual(part);
      expect(regions).toHaveLength(1 + Math.max(-1, ...part));
      for (const [index, region] of regions.entries()) {
        const pixels = [...part.keys()].filter((at) => part[at] === index);
        const around = pixels.flatMap((at) => sidesOf(map, at));
        expect(region.label).toBe(map.labels[pixels[0] ?? -1]);
        expect(region.pixels).toBe(pixels.length);
        expect(region.touchesOutside).toBe(around.some((at) => at < 0 || map.labels[at] === 0));
        const neighbours = new Set(around.filter((at) => at >= 0).map((at) => part[at] ?? -1));
        neighbours.delete(-1);
        neighbours.delete(index);
        expect([...region.neighbours].sort()).toEqual([...neighbours].sort());
      }
    }),
    { numRuns: 300 },
  );
});
