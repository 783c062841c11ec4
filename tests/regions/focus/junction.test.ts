import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findRegions, type RegionMap } from "../../../src/regions/component.ts";
import { findJunctions, shareAround } from "../../../src/regions/focus/junction.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { nth } from "../../numbered.ts";
import { smallMaps } from "../naive.ts";
import { drawMap, readMap } from "../picture.ts";

/** The region of each pixel. */
function regionsOf({ runs, regionOf }: RegionMap): readonly number[] {
  const found = new Array<number>(runs.width * runs.height).fill(-1);
  for (let run = 0; run < runs.count; run += 1)
    found.fill(regionOf[run] as number, runs.start[run], runs.start[run + 1]);
  return found;
}

describe("findJunctions", () => {
  test("where a line ends at another, three regions meet", () => {
    const junctions = findJunctions(findRegions(findRuns(readMap("1122", "1122", "3333"))));
    expect(junctions.get(nth(0))).toEqual([{ x: 2, y: 2, regions: expect.arrayContaining([0, 1, 2]) }]);
    expect(junctions.get(nth(2))).toEqual(junctions.get(nth(0)));
  });

  test("two regions alone have none", () => {
    expect(findJunctions(findRegions(findRuns(readMap("111", "121", "111")))).size).toBe(0);
  });

  test("on any map they are the corners around which three regions or more lie", () => {
    fc.assert(
      fc.property(smallMaps(0), (map) => {
        const regions = findRegions(findRuns(map));
        const of = regionsOf(regions);
        const expected: string[] = [];
        for (let y = 1; y < map.height; y += 1)
          for (let x = 1; x < map.width; x += 1) {
            const at = y * map.width + x;
            const around = new Set([at, at - 1, at - map.width, at - map.width - 1].map((one) => of[one]));
            if (around.size > 2) expected.push(`${x} ${y} ${[...around].sort()}`);
          }
        const found = new Set([...findJunctions(regions).values()].flat());
        expect([...found].map(({ x, y, regions: all }) => `${x} ${y} ${[...all].sort()}`).sort()).toEqual(
          expected.sort(),
        );
      }),
    );
  });
});

describe("shareAround", () => {
  const tee = findRegions(findRuns(drawMap(60, 60, (x, y) => (y > 30 ? 3 : x < 30 ? 1 : 2))));

  test("what another line ends at has half, the others a quarter each", () => {
    const shares = shareAround(tee, { x: 30, y: 30, regions: [] }, 12);
    expect([0, 1, 2].map((index) => shares.get(nth(index)))).toEqual([
      expect.closeTo(0.25, 6),
      expect.closeTo(0.25, 6),
      expect.closeTo(0.5, 6),
    ]);
  });

  test("what lies beyond the picture is not counted", () => {
    const shares = shareAround(tee, { x: 0, y: 60, regions: [] }, 12);
    expect([...shares]).toEqual([[2, 1]]);
  });
});
