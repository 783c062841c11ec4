import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PixelList, sortPixels } from "../../src/regions/pixellist.ts";

describe("PixelList", () => {
  test("begins empty", () => {
    const list = new PixelList();
    expect(list.length).toBe(0);
    expect(list.pixels).toHaveLength(0);
  });

  test("keeps what is added, in order, far beyond its first size", () => {
    const list = new PixelList();
    for (let at = 0; at < 20_000; at += 1) list.add(3 * at);
    expect(list.length).toBe(20_000);
    expect([...list.pixels]).toEqual(Array.from({ length: 20_000 }, (_, at) => 3 * at));
  });

  test("what was read before stays as it was while the list grows", () => {
    const list = new PixelList();
    list.add(7);
    const before = list.pixels;
    for (let at = 0; at < 9000; at += 1) list.add(at);
    expect([...before]).toEqual([7]);
  });
});

test("sortPixels: as numbers are sorted, in place, up to the largest pictures", () => {
  fc.assert(
    fc.property(fc.array(fc.nat(2 ** 23)), (pixels) => {
      const sorted = Int32Array.from(pixels);
      expect(sortPixels(sorted)).toBe(sorted);
      expect([...sorted]).toEqual(pixels.sort((a, b) => a - b));
    }),
  );
});
