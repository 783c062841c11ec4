import { describe, expect, test } from "vitest";
import { measuringHeight, measuringLongSide, measuringSize, renderSvg } from "../../src/regions/raster.ts";

const svg = (body: string, size = 'width="4" height="2"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${body}</svg>`;

describe("measuringSize", () => {
  // The height is the same for every flag, unless the longer side would be over twice that.
  test.each([
    ["2 : 3", 900, 600, 1.5, 1],
    ["1 : 2", 2, 1, 2, 1],
    ["1 : 1", 32, 32, 1, 1],
    ["taller than long", 100, 122, 100 / 122, 1],
    ["1 : 3, held by its length", 3, 1, 2, 2 / 3],
    ["a strip", 1000, 100, 2, 0.2],
    ["a banner", 1, 4, 0.25, 1],
  ])("%s", (_, width, height, widthHeights, heightHeights) => {
    const size = measuringSize(width, height);
    expect(size.width).toBe(Math.round(widthHeights * measuringHeight));
    expect(size.height).toBe(Math.round(heightHeights * measuringHeight));
  });

  test("no side passes the limit, and none is 0", () => {
    expect(measuringLongSide).toBe(2 * measuringHeight);
    for (const [width, height] of [
      [1e6, 1],
      [1, 1e6],
      [1e-3, 1e-3],
      [7, 3],
    ] as const) {
      const size = measuringSize(width, height);
      expect(Math.max(size.width, size.height)).toBeLessThanOrEqual(measuringLongSide);
      expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(1);
    }
  });

  test("another height keeps the rule", () => {
    expect(measuringSize(3, 2, 100)).toEqual({ width: 150, height: 100 });
    expect(measuringSize(4, 1, 100)).toEqual({ width: 200, height: 50 });
  });
});

describe("renderSvg", () => {
  test("gives four bytes a pixel, row by row, transparent where nothing is drawn", async () => {
    const picture = await renderSvg(svg('<rect x="1" width="1" height="1" fill="#0a141e"/>'));
    expect(picture).toMatchObject({ width: 4, height: 2 });
    expect(picture.rgba).toHaveLength(32);
    expect([...picture.rgba.subarray(0, 12)]).toEqual([0, 0, 0, 0, 10, 20, 30, 255, 0, 0, 0, 0]);
    expect([...picture.rgba.subarray(16)].every((byte) => byte === 0)).toBe(true);
  });

  test("colours are not premultiplied", async () => {
    const { rgba } = await renderSvg(svg('<rect width="4" height="2" fill="#ff8000" fill-opacity="0.5"/>'));
    const [red = 0, green = 0, blue = 0, alpha = 0] = rgba;
    // Within two steps: alpha 127 or 128 leaves no more precision than that.
    expect(Math.abs(red - 255)).toBeLessThanOrEqual(2);
    expect(Math.abs(green - 128)).toBeLessThanOrEqual(2);
    expect(blue).toBe(0);
    expect(Math.abs(alpha - 127.5)).toBeLessThan(1);
  });

  test("refuses what is no SVG, and what is larger than the limit", async () => {
    await expect(renderSvg("<svg")).rejects.toThrow();
    await expect(renderSvg("no drawing")).rejects.toThrow();
    await expect(renderSvg(svg("", 'width="5000" height="5000"'))).rejects.toThrow();
  });

  test("opens nothing by name", async () => {
    await expect(renderSvg(import.meta.filename)).rejects.toThrow();
  });
});
