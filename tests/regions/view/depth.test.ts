import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { measureDepth } from "../../../src/regions/view/depth.ts";
import { labelAt, slopedMaps, smallMaps, xOf, yOf } from "../naive.ts";
import { drawMap, readMap } from "../picture.ts";

/** The squared distance of a pixel to the nearest of another label, all others and a frame around them looked at. */
function searchDepth(map: LabelMap, at: number): number {
  const [x, y] = [xOf(map, at), yOf(map, at)];
  let nearest = Number.POSITIVE_INFINITY;
  for (let v = -1; v <= map.height; v += 1)
    for (let u = -1; u <= map.width; u += 1)
      if (labelAt(map, u, v) !== map.labels[at]) nearest = Math.min(nearest, (u - x) ** 2 + (v - y) ** 2);
  return nearest;
}

describe("measureDepth", () => {
  test("one paint: to the border, beyond which there is none", () => {
    expect([...measureDepth(readMap("111", "111", "111"))]).toEqual([1, 1, 1, 1, 4, 1, 1, 1, 1]);
  });

  test("to a corner as Pythagoras says", () => {
    // The lone 2 is 3 across and 4 down from the pixel in the corner of the inner square: 25.
    const map = drawMap(21, 21, (x, y) => (x < 11 && x > 10 && y < 11 && y > 10 ? 2 : 1));
    const depth = measureDepth(map);
    expect(depth[6 * 21 + 7]).toBe(25);
    expect(depth[10 * 21 + 10]).toBe(1);
  });

  test("transparent pixels are others like any", () => {
    expect([...measureDepth(readMap("11101", "11111", "11111"))].slice(0, 5)).toEqual([1, 1, 1, 1, 1]);
    expect(measureDepth(readMap("11111", "11111", "11011", "11111", "11111"))[6]).toBe(2);
  });

  test("on any small map, with transparent parts and without, it is what a search of all pixels finds", () => {
    for (const least of [0, 1] as const)
      fc.assert(
        fc.property(smallMaps(least), (map) => {
          expect([...measureDepth(map)]).toEqual([...map.labels.keys()].map((at) => searchDepth(map, at)));
        }),
        { numRuns: 150, seed: 3 },
      );
  });

  test("on maps of wedges and strips too, pixel by pixel where they are drawn at random", () => {
    fc.assert(
      fc.property(
        slopedMaps,
        fc.array(fc.nat(130 * 90 - 1), { minLength: 20, maxLength: 20 }),
        (map, places) => {
          const depth = measureDepth(map);
          for (const at of places) expect(depth[at]).toBe(searchDepth(map, at));
        },
      ),
      { numRuns: 20, seed: 4 },
    );
  });
});
