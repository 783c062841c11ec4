import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cropMap, cropMask, findBox } from "../../src/regions/mapcrop.ts";
import { labelAt, smallMaps, xOf, yOf } from "./naive.ts";
import { readMap } from "./picture.ts";

const map = readMap("1111111", "1112111", "1122211", "1111111", "1111111");
const mask = Uint8Array.from(map.labels, (label) => (label === 2 ? 1 : 0));

describe("findBox", () => {
  test("the rectangle around what is set; right and bottom lie one further", () => {
    expect(findBox(mask, map, 0)).toEqual({ left: 2, top: 1, right: 5, bottom: 3 });
  });

  test("wider by the margin, as far as the map goes", () => {
    expect(findBox(mask, map, 1)).toEqual({ left: 1, top: 0, right: 6, bottom: 4 });
    expect(findBox(mask, map, 9)).toEqual({ left: 0, top: 0, right: 7, bottom: 5 });
  });

  test("of any mask: every set pixel lies inside, and no side could be nearer", () => {
    fc.assert(
      fc.property(smallMaps(0), fc.integer({ min: 0, max: 5 }), (any, margin) => {
        const set = [...any.labels.keys()].filter((at) => any.labels[at] === 2);
        fc.pre(set.length > 0);
        const [xs, ys] = [set.map((at) => xOf(any, at)), set.map((at) => yOf(any, at))];
        expect(
          findBox(
            Uint8Array.from(any.labels, (label) => (label === 2 ? 1 : 0)),
            any,
            margin,
          ),
        ).toEqual({
          left: Math.max(0, Math.min(...xs) - margin),
          top: Math.max(0, Math.min(...ys) - margin),
          right: Math.min(any.width, Math.max(...xs) + 1 + margin),
          bottom: Math.min(any.height, Math.max(...ys) + 1 + margin),
        });
      }),
    );
  });

  test("where nothing is set the box is one that can be cut out", () => {
    const { left, top, right, bottom } = findBox(new Uint8Array(35), map, 1);
    expect(right).toBeGreaterThanOrEqual(left);
    expect(bottom).toBeGreaterThanOrEqual(top);
  });
});

describe("cropMap and cropMask", () => {
  test("what lies in the box, in its place", () => {
    const box = { left: 2, top: 1, right: 5, bottom: 4 };
    expect(cropMap(map, box)).toEqual(readMap("121", "222", "111"));
    expect([...cropMask(mask, map, box)]).toEqual([0, 1, 0, 1, 1, 1, 0, 0, 0]);
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
