import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cropMap, widenBox } from "../../src/regions/mapcrop.ts";
import { labelAt, smallMaps, xOf, yOf } from "./naive.ts";
import { readMap } from "./picture.ts";

const map = readMap("1111111", "1112111", "1122211", "1111111", "1111111");

describe("widenBox", () => {
  const box = { left: 2, top: 1, right: 5, bottom: 3 };

  test("wider by the margin, as far as the map goes", () => {
    expect(widenBox(box, map, 0)).toEqual(box);
    expect(widenBox(box, map, 1)).toEqual({ left: 1, top: 0, right: 6, bottom: 4 });
    expect(widenBox(box, map, 9)).toEqual({ left: 0, top: 0, right: 7, bottom: 5 });
  });
});

describe("cropMap", () => {
  test("what lies in the box, in its place", () => {
    const box = { left: 2, top: 1, right: 5, bottom: 4 };
    expect(cropMap(map, box)).toEqual(readMap("121", "222", "111"));
  });

  test("the whole of a map is the map", () => {
    expect(cropMap(map, { left: 0, top: 0, right: 7, bottom: 5 })).toEqual(map);
  });

  test("of any map and box, pixel by pixel", () => {
    fc.assert(
      fc.property(
        smallMaps(0),
        fc.array(fc.nat(), { minLength: 4, maxLength: 4 }),
        (any, [a = 0, b = 0, c = 0, d = 0]) => {
          const left = a % any.width;
          const top = b % any.height;
          const right = left + 1 + (c % (any.width - left));
          const bottom = top + 1 + (d % (any.height - top));
          const cropped = cropMap(any, { left, top, right, bottom });
          expect([cropped.width, cropped.height]).toEqual([right - left, bottom - top]);
          for (const [at, label] of cropped.labels.entries())
            expect(label).toBe(labelAt(any, left + xOf(cropped, at), top + yOf(cropped, at)));
        },
      ),
    );
  });
});
