import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { Thickness } from "../../../src/regions/view/thickness.ts";
import { openByDisc, slopedMaps, smallMaps } from "../naive.ts";
import { drawMap } from "../picture.ts";

const findThinner = (map: LabelMap, n: number, greatest = Math.max(20, n)): readonly number[] =>
  [...new Thickness(map, findRuns(map), greatest).findThinner(n)].sort((a, b) => a - b);
/** Thicknesses in quarters of a pixel. */
const quarters = (min: number, max: number) => fc.integer({ min, max }).map((count) => count / 4);

const thinner = (map: LabelMap, n: number): number => findThinner(map, n).length;

describe("findThinner", () => {
  test("on small maps it is an opening by a disc, done pixel by pixel", () => {
    fc.assert(
      fc.property(smallMaps(0), quarters(4, 44), (map, n) => {
        expect(findThinner(map, n)).toEqual(openByDisc(map, n));
      }),
      { numRuns: 400 },
    );
  });

  test("on maps large enough to have parts that need not be looked at, with wedges and strips at any angle", () => {
    fc.assert(
      fc.property(slopedMaps, quarters(5, 36), fc.integer({ min: 0, max: 3 }), (map, n, more) => {
        expect(findThinner(map, n, n + more)).toEqual(openByDisc(map, n));
      }),
      { numRuns: 60 },
    );
  });

  test("one object answers for every thickness, in any order", () => {
    fc.assert(
      fc.property(
        smallMaps(0),
        fc.array(quarters(3, 36), {
          minLength: 2,
          maxLength: 5,
        }),
        (map, thicknesses) => {
          const all = new Thickness(map, findRuns(map), 9);
          for (const n of thicknesses) {
            expect([...all.findThinner(n)].sort((a, b) => a - b)).toEqual(openByDisc(map, n));
          }
        },
      ),
    );
  });

  test.each([2, 3, 4, 5, 6, 9, 10, 15])(
    "a stripe of %i is no thinner than that, and thinner than one more",
    (n) => {
      for (const isUpright of [false, true]) {
        const map = drawMap(80, 80, (x, y) => {
          const across = isUpright ? x : y;
          return across >= 25 && across < 25 + n ? 2 : 1;
        });
        expect(thinner(map, n)).toBe(0);
        for (const more of [0.2, 0.5, 1]) expect(thinner(map, n + more)).toBe(80 * n);
        expect(thinner(map, n - 0.4)).toBe(0);
      }
    },
  );

  test.each([
    ["top", (_: number, y: number) => y < 5, 80],
    ["bottom", (_: number, y: number) => y > 55, 80],
    ["hoist", (x: number) => x < 5, 60],
    ["fly", (x: number) => x > 75, 60],
  ])("the border bounds a paint: a stripe along the %s is as thick as it shows", (_, isStripe, length) => {
    const map = drawMap(80, 60, (x, y) => (isStripe(x, y) ? 2 : 1));
    expect(thinner(map, 5)).toBe(0);
    expect(thinner(map, 6)).toBe(5 * length);
  });

  test("so do transparent parts", () => {
    const map = drawMap(80, 60, (_, y) => (y < 20 ? 0 : y < 25 ? 2 : 1));
    expect(thinner(map, 6)).toBe(80 * 5);
  });

  // Wherever its centre lies between the pixels: two less, and one more, than it is wide.
  test.each([
    [40, 30],
    [40.5, 30.5],
    [40.3, 30.2],
  ])("a disc about (%f, %f) is as thick as it is wide, to two pixels", (cx, cy) => {
    const map = drawMap(80, 60, (x, y) => (Math.hypot(x - cx, y - cy) < 6 ? 2 : 1));
    expect(thinner(map, 10)).toBe(0);
    expect(thinner(map, 13)).toBe(map.labels.filter((label) => label === 2).length);
  });

  test.each([
    [40, 30, 10],
    [40.5, 30.5, 10],
    [40, 30, 6],
    [40.3, 30.6, 9],
  ])("what is thinner than n is thinner than n + 1: a disc about (%f, %f) of radius %i", (cx, cy, radius) => {
    const map = drawMap(80, 60, (x, y) => (Math.hypot(x - cx, y - cy) < radius ? 2 : 1));
    const counts = Array.from({ length: 18 }, (_, index) => thinner(map, index + 2));
    // The rim of a disc is a staircase: a few single pixels of it may go at n and come back at n + 1.
    for (const [index, count] of counts.entries())
      expect(count).toBeLessThanOrEqual((counts[index + 1] ?? count) + 8);
  });

  test("the waist of an hourglass is thin, its ends are not", () => {
    const map = drawMap(80, 60, (x, y) => (Math.abs(y - 30) < 3 + Math.abs(x - 40) / 2 ? 2 : 1));
    // Along the middle row, away from the sharp corners that its ends have at the border.
    const columns = findThinner(map, 16)
      .filter((at) => Math.floor(at / 80) === 30)
      .map((at) => at % 80);
    expect(Math.min(...columns)).toBeGreaterThan(20);
    expect(Math.max(...columns)).toBeLessThan(60);
    expect(columns).toContain(40);
  });

  test("two parts of one paint do not lend each other room", () => {
    // A block of 12, and 2 pixels beside it a stripe of 3 in the same paint: the stripe goes.
    const map = drawMap(60, 40, (x, y) =>
      y > 10 && y < 30 && ((x > 10 && x < 30) || (x > 32 && x < 35)) ? 2 : 1,
    );
    const gone = findThinner(map, 6).filter((at) => map.labels[at] === 2);
    expect(gone.length).toBeGreaterThan(0);
    expect(gone.every((at) => at % 60 >= 32)).toBe(true);
  });

  test("nothing is thinner than one pixel", () => {
    expect(
      thinner(
        drawMap(9, 9, (x) => 1 + (Math.floor(x) % 2)),
        1,
      ),
    ).toBe(0);
  });

  // From 1,000 flag heights, the furthest that is allowed, a picture of 720 pixels: 1000 · tan 1′ · 720 = 209.4.
  test.each([209, 230])("a stripe of %i, as thick as anybody asks", (n) => {
    const map = drawMap(720, 720, (_, y) => (y < 240 || y >= 240 + n ? 1 : 2));
    const gone = (thickness: number): number => thinner(map, thickness);
    expect(gone(n)).toBe(0);
    expect(gone(n + 1)).toBe(720 * n);
  });
});
