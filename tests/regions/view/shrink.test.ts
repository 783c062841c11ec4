import fc from "fast-check";
import { expect, test } from "vitest";
import { shrinkMap, shrinkMask } from "../../../src/regions/view/shrink.ts";
import { smallMaps } from "../naive.ts";
import { drawMap, readMap } from "../picture.ts";

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
  expect(
    shrinkMap(
      drawMap(9, 9, () => 4),
      8,
    ),
  ).toMatchObject({ width: 1, height: 1, labels: Uint16Array.of(4) });
});

test("every pixel of a shrunk map is the middle one of its block, and a mask goes with it", () => {
  fc.assert(
    fc.property(smallMaps(0), fc.integer({ min: 2, max: 4 }), (map, factor) => {
      fc.pre(map.width >= factor && map.height >= factor);
      const small = shrinkMap(map, factor);
      const mask = Uint8Array.from(map.labels, (label) => (label === 2 ? 1 : 0));
      expect([small.width, small.height]).toEqual([
        Math.floor(map.width / factor),
        Math.floor(map.height / factor),
      ]);
      const middle = Math.floor(factor / 2);
      for (let y = 0; y < small.height; y += 1)
        for (let x = 0; x < small.width; x += 1)
          expect(small.labels[y * small.width + x]).toBe(
            map.labels[(factor * y + middle) * map.width + factor * x + middle],
          );
      expect([...shrinkMask(mask, map, factor)]).toEqual(
        [...small.labels].map((label) => (label === 2 ? 1 : 0)),
      );
    }),
  );
});

// π r² of the whole, within 2 %: half a pixel along the outline of a disc of radius 100 / factor, mostly made good.
test.each([2, 4, 8])("shrunk by %i a disc covers the same share", (factor) => {
  const disc = drawMap(480, 320, (x, y) => (Math.hypot(x - 240.3, y - 160.6) < 100 ? 2 : 1));
  const small = shrinkMap(disc, factor);
  const share = small.labels.filter((label) => label === 2).length / small.labels.length;
  expect(Math.abs(share / ((Math.PI * 100 ** 2) / (480 * 320)) - 1)).toBeLessThan(0.02);
});
