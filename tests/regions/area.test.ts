import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measureAreas } from "../../src/regions/area.ts";
import { findRuns } from "../../src/regions/runs.ts";
import { sidesOf, smallMaps } from "./naive.ts";
import { drawMap, readMap } from "./picture.ts";

const areasOf = (map: Parameters<typeof findRuns>[0], labelCount: number) => {
  const { pixels, touchesBorder, flagPixels } = measureAreas(findRuns(map), labelCount);
  // By label, with what is transparent first.
  return {
    pixels: [map.labels.length - flagPixels, ...pixels],
    touchesBorder: [false, ...touchesBorder],
    flagPixels,
  };
};

describe("measureAreas", () => {
  test("counts the pixels of every label, and of the flag", () => {
    const areas = areasOf(readMap("1112", "1332", "0332"), 4);
    expect(areas.pixels).toEqual([1, 4, 3, 4, 0]);
    expect(areas.flagPixels).toBe(11);
  });

  test("says which labels reach the border of the picture, at each of its sides", () => {
    expect(areasOf(readMap("1111", "1231", "1111"), 3).touchesBorder).toEqual([false, true, false, false]);
    expect(areasOf(readMap("1211", "1111", "1111"), 2).touchesBorder[2]).toBe(true);
    expect(areasOf(readMap("1111", "1112", "1111"), 2).touchesBorder[2]).toBe(true);
    expect(areasOf(readMap("1111", "1111", "1121"), 2).touchesBorder[2]).toBe(true);
    expect(areasOf(readMap("1111", "2111", "1111"), 2).touchesBorder[2]).toBe(true);
  });

  test.each([
    ["left of it", ["11111", "10211", "11111"]],
    ["right of it", ["11111", "11201", "11111"]],
    ["above it", ["11011", "11211", "11111"]],
    ["below it", ["11111", "11211", "11011"]],
  ])("a transparent part %s is a border", (_, rows) => {
    expect(areasOf(readMap(...rows), 2).touchesBorder[2]).toBe(true);
  });

  test("a transparent part that meets a paint at a corner only is no border of it", () => {
    expect(areasOf(readMap("11111", "10111", "11211", "11111"), 2).touchesBorder[2]).toBe(false);
  });

  test("an empty picture has no flag", () => {
    expect(areasOf(readMap("00", "00"), 1)).toMatchObject({
      pixels: [4, 0],
      flagPixels: 0,
    });
  });

  // π r² within half of one percent: the rest is what a grid of pixels loses on a disc of this size.
  test.each([60, 100, 240])("a disc of radius %i has π r² pixels", (radius) => {
    const disc = drawMap(600, 500, (x, y) => (Math.hypot(x - 300.3, y - 250.6) < radius ? 2 : 1));
    const pixels = areasOf(disc, 2).pixels[2] ?? 0;
    expect(Math.abs(pixels / (Math.PI * radius ** 2) - 1)).toBeLessThan(0.005);
  });
});

test("on any map: counted pixel by pixel", () => {
  fc.assert(
    fc.property(smallMaps(0), (map) => {
      const { pixels, touchesBorder, flagPixels } = areasOf(map, 3);
      const all = [...map.labels.keys()];
      for (let label = 0; label <= 3; label += 1) {
        const own = all.filter((at) => map.labels[at] === label);
        expect(pixels[label]).toBe(own.length);
        if (label === 0) continue;
        expect(touchesBorder[label]).toBe(
          own.some((at) => sidesOf(map, at).some((next) => next < 0 || map.labels[next] === 0)),
        );
      }
      expect(flagPixels).toBe(all.length - (pixels[0] ?? 0));
    }),
  );
});
