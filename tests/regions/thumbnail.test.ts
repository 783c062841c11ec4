import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../src/regions/labelmap.ts";
import type { Raster } from "../../src/regions/raster.ts";
import { layFramed, Thumbnail } from "../../src/regions/thumbnail.ts";
import { listed } from "../../src/svg/paintnumber.ts";
import { smallMaps } from "./naive.ts";
import { readMap, readPicture } from "./picture.ts";

const black = { linearR: 0, linearG: 0, linearB: 0 };
const white = { linearR: 1, linearG: 1, linearB: 1 };
const red = { linearR: 1, linearG: 0, linearB: 0 };

const show = ({ rgba }: Raster) => Buffer.from(rgba).toString("hex").match(/.{8}/g);

describe("Thumbnail", () => {
  test("boxes of one colour keep its very bytes, row by row from the upper hoist", () => {
    const small = new Thumbnail(readMap("1122", "1122", "3333", "3333"), 2, 2);
    expect(show(small.paint(listed([black, white, red])))).toEqual([
      "000000ff",
      "ffffffff",
      "ff0000ff",
      "ff0000ff",
    ]);
  });

  // Half of the light is encoded as 1.055 · 0.5^(1/2.4) − 0.055 = 0.7354, 187.5 of 255; half of the bytes would be 128.
  // Source: IEC 61966-2-1.
  test("where colours meet, their light is mixed by area", () => {
    const [half] = show(new Thumbnail(readMap("12", "12"), 1, 1).paint(listed([black, white]))) ?? [];
    expect(half).toBe("bcbcbcff");
    // A quarter of the light: 1.055 · 0.25^(1/2.4) − 0.055 = 0.5371, 137 of 255.
    const [quarter] = show(new Thumbnail(readMap("11", "12"), 1, 1).paint(listed([black, white]))) ?? [];
    expect(quarter).toBe("898989ff");
  });

  test("what is transparent thins a colour and does not change it", () => {
    const small = new Thumbnail(readMap("0100", "1100"), 2, 1).paint(listed([red]));
    // Three of four: 191.25 of 255.
    expect(show(small)).toEqual(["ff0000bf", "00000000"]);
  });

  test("one map is painted again and again", () => {
    const small = new Thumbnail(readMap("12"), 2, 1);
    expect(show(small.paint(listed([black, white])))).toEqual(["000000ff", "ffffffff"]);
    expect(show(small.paint(listed([white, red])))).toEqual(["ffffffff", "ff0000ff"]);
  });

  test("every pixel of the map counts in one small pixel, whatever the sizes", () => {
    const sizes = fc.tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 }));
    fc.assert(
      fc.property(smallMaps(0), sizes, (map, [width, height]) => {
        fc.pre(width <= map.width && height <= map.height);
        const alpha = new Thumbnail(map, width, height)
          .paint(listed([undefined, white]))
          .rgba.filter((_, index) => index % 4 === 3);
        expect([...alpha]).toEqual(scatter(map, width, height));
      }),
    );
  });
});

/** The alpha of each small pixel where label 2 alone is painted: each pixel of the map is handed to the one it falls in. */
function scatter({ labels, width, height }: LabelMap, columns: number, rows: number): readonly number[] {
  const found = Array.from({ length: columns * rows }, () => ({ all: 0, painted: 0 }));
  for (const [at, label] of labels.entries()) {
    const [x, y] = [at % width, Math.floor(at / width)];
    const [column, row] = [
      Math.ceil(((x + 1) * columns) / width) - 1,
      Math.ceil(((y + 1) * rows) / height) - 1,
    ];
    const small = found[row * columns + column];
    if (small === undefined) throw new Error("outside");
    small.all += 1;
    if (label === 2) small.painted += 1;
  }
  return found.map(({ all, painted }) => Math.round((255 * painted) / all));
}

test("a tile is laid with its own outermost pixels round it", () => {
  const [a, b, none] = ["aa0000ff", "00bb00ff", "00000000"];
  const all: Raster = { width: 6, height: 4, rgba: new Uint8Array(4 * 6 * 4) };
  layFramed(all, readPicture(`${a} ${b}`), 1, 1, 1);
  const rows = Array.from({ length: 4 }, (_, row) => show(all)?.slice(6 * row, 6 * row + 6));
  expect(rows).toEqual([[none, none, none, none, none, none], ...Array(3).fill([none, a, a, b, b, none])]);
});
