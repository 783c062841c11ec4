import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { findRim } from "../../../src/regions/view/rim.ts";
import type { Zone } from "../../../src/regions/view/thinzone.ts";
import { sidesOf, slopedMaps, smallMaps, xOf, yOf } from "../naive.ts";
import { drawMap, readMap } from "../picture.ts";

const rimIn = (map: LabelMap, zone: Zone): readonly number[] =>
  [...findRim(map, findRuns(map), zone)].sort((a, b) => a - b);

/** A zone of blocks of 16 pixels that is wide where `isWide` says so. */
function zoneOf({ width, height }: LabelMap, isWide: (column: number, row: number) => boolean): Zone {
  const columns = (width >> 4) + 1;
  const wide = Uint8Array.from({ length: columns * ((height >> 4) + 1) }, (_, block) =>
    isWide(block % columns, Math.floor(block / columns)) ? 1 : 0,
  );
  return { bits: 4, columns, near: wide, wide, isEmpty: false };
}

const rimOf = (map: LabelMap): readonly number[] =>
  rimIn(
    map,
    zoneOf(map, () => true),
  );

describe("findRim", () => {
  test("the pixels on either side of a line, and none else", () => {
    expect(rimOf(readMap("1111", "1111", "2222", "2222"))).toEqual([4, 5, 6, 7, 8, 9, 10, 11]);
    expect(rimOf(readMap("11122", "11122"))).toEqual([2, 3, 7, 8]);
  });

  test("the border is no line; a transparent part is one", () => {
    expect(rimOf(readMap("111", "111"))).toEqual([]);
    expect(rimOf(readMap("1110"))).toEqual([2, 3]);
  });

  test("pixels that meet at a corner only are not beside each other, but their neighbours are", () => {
    expect(rimOf(readMap("1112", "1111", "1111"))).toEqual([2, 3, 7]);
  });

  test("each once: the pixels with a neighbour of another label, on any map", () => {
    fc.assert(
      fc.property(smallMaps(0), (map) => {
        const naive = [...map.labels.keys()].filter((at) =>
          sidesOf(map, at).some((next) => next >= 0 && map.labels[next] !== map.labels[at]),
        );
        expect(rimOf(map)).toEqual(naive);
      }),
    );
  });

  test("outside of the wide zone nothing is looked at", () => {
    const map = drawMap(64, 32, (_, y) => (y < 8 ? 1 : 2));
    const [rows, columns] = [[7, 8], Array.from({ length: 16 }, (_, x) => 16 + x)];
    expect(
      rimIn(
        map,
        zoneOf(map, (column) => column === 1),
      ),
    ).toEqual(rows.flatMap((y) => columns.map((x) => 64 * y + x)));
    expect(
      rimIn(
        map,
        zoneOf(map, () => false),
      ),
    ).toEqual([]);
  });

  test("within the wide zone nothing is missed", () => {
    fc.assert(
      fc.property(slopedMaps, fc.integer({ min: 1, max: 7 }), (map, every) => {
        const isWide = (column: number, row: number): boolean => (column + row) % every === 0;
        const rim = new Set(rimIn(map, zoneOf(map, isWide)));
        for (const at of map.labels.keys()) {
          if (!isWide(xOf(map, at) >> 4, yOf(map, at) >> 4)) continue;
          const isRim = sidesOf(map, at).some(
            (next) =>
              next >= 0 &&
              map.labels[next] !== map.labels[at] &&
              isWide(xOf(map, next) >> 4, yOf(map, next) >> 4),
          );
          if (isRim) expect(rim.has(at)).toBe(true);
        }
      }),
      { numRuns: 30 },
    );
  });
});
