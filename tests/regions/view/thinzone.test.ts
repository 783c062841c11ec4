import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { findZone, type Zone } from "../../../src/regions/view/thinzone.ts";
import { openByDisc, slopedMaps, smallMaps, xOf, yOf } from "../naive.ts";
import { drawMap } from "../picture.ts";

const blockOf = (map: LabelMap, { bits, columns }: Zone, at: number): number =>
  (yOf(map, at) >> bits) * columns + (xOf(map, at) >> bits);

describe("findZone", () => {
  test("every part that is thinner lies in the near zone, whatever its slope", () => {
    fc.assert(
      fc.property(fc.oneof(slopedMaps, smallMaps(0)), fc.integer({ min: 2, max: 9 }), (map, n) => {
        const zone = findZone(findRuns(map), n);
        const gone = openByDisc(map, n);
        expect(gone.filter((at) => zone.near[blockOf(map, zone, at)] !== 1)).toEqual([]);
        if (zone.isEmpty) expect(gone).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test("the wide zone holds the near one and the blocks around it, and a block is wider than n", () => {
    fc.assert(
      fc.property(slopedMaps, fc.integer({ min: 1, max: 40 }), (map, n) => {
        const { near, wide, bits, columns } = findZone(findRuns(map), n);
        expect(2 ** bits).toBeGreaterThan(n);
        expect(wide).toHaveLength(near.length);
        for (const [block, is] of near.entries()) {
          if (is !== 1) continue;
          for (const row of [-1, 0, 1]) {
            for (const column of [-1, 0, 1]) {
              const x = (block % columns) + column;
              const y = Math.floor(block / columns) + row;
              if (x >= 0 && x < columns && y >= 0 && y * columns + x < wide.length)
                expect(wide[y * columns + x]).toBe(1);
            }
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  test("a flag of wide stripes has nothing thin in it", () => {
    const map = drawMap(300, 200, (_, y) => 1 + (Math.floor(y / 66.7) % 3));
    expect(findZone(findRuns(map), 8).isEmpty).toBe(true);
  });

  test("a thin stripe and what lies far from it", () => {
    const map = drawMap(300, 200, (_, y) => (y > 20 && y < 25 ? 2 : 1));
    const zone = findZone(findRuns(map), 8);
    expect(zone.isEmpty).toBe(false);
    expect(zone.near[blockOf(map, zone, 22 * 300 + 150)]).toBe(1);
    expect(zone.wide[blockOf(map, zone, 150 * 300 + 150)]).toBe(0);
  });

  test.each([
    ["at the top", (_: number, y: number) => y < 4],
    ["at the bottom", (_: number, y: number) => y > 196],
    ["at the hoist", (x: number) => x < 4],
    ["at the fly", (x: number) => x > 296],
    ["slanted", (x: number, y: number) => Math.abs(0.8 * (y - 100) - 0.6 * (x - 150)) < 2],
  ])("a thin stripe %s is found", (_, isStripe) => {
    const map = drawMap(300, 200, (x, y) => (isStripe(x, y) ? 2 : 1));
    const zone = findZone(findRuns(map), 8);
    for (const [at, label] of map.labels.entries()) {
      if (label === 2) expect(zone.near[blockOf(map, zone, at)]).toBe(1);
    }
  });

  test("a thin gap, transparent, is no part: but what lies between two gaps is", () => {
    const gap = drawMap(300, 200, (_, y) => (y > 100 && y < 104 ? 0 : 1));
    expect(findZone(findRuns(gap), 8).isEmpty).toBe(true);
    const island = drawMap(300, 200, (_, y) => (y > 60 && y < 140 && !(y > 100 && y < 104) ? 0 : 1));
    expect(findZone(findRuns(island), 8).isEmpty).toBe(false);
  });
});
