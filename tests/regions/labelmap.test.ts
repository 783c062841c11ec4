import { describe, expect, test } from "vitest";
import { readLabels } from "../../src/regions/labelmap.ts";
import type { Raster } from "../../src/regions/raster.ts";
import { listed } from "../../src/svg/paintnumber.ts";
import { drawPicture, readPicture } from "./picture.ts";

// Two code colours far apart in every channel.
const codes = [0x102030, 0xd0e0f0];
const one = "102030ff";
const two = "d0e0f0ff";
const nothing = "00000000";

const labelsOf = (picture: Raster, known: readonly number[] = codes): readonly number[] => [
  ...readLabels(picture, listed(known)).labels,
];

describe("readLabels", () => {
  test("exact codes become the number of their paint, from 1", () => {
    const map = readLabels(readPicture(`${one} ${two}`, `${two} ${two}`), listed(codes));
    expect([...map.labels]).toEqual([1, 2, 2, 2]);
    expect(map).toMatchObject({ width: 2, height: 2, exactShare: 1 });
  });

  test("red, green and blue are not mixed up", () => {
    expect(labelsOf(readPicture("ff0000ff 00ff00ff 0000ffff"), [0x0000ff, 0xff0000, 0x00ff00])).toEqual([
      2, 3, 1,
    ]);
  });

  test("transparent pixels are label 0 and no blended pixels", () => {
    const map = readLabels(readPicture(`${nothing} ${one}`), listed(codes));
    expect([...map.labels]).toEqual([0, 1]);
    expect(map.exactShare).toBe(1);
  });

  // Half of 255 is 127.5: from 128 on a pixel shows more of the paint than of nothing.
  test.each([
    ["1020307f", 0],
    ["10203080", 1],
  ])("a rim pixel %s of a paint becomes %i", (rim, label) => {
    expect(labelsOf(readPicture(`${nothing} ${rim} ${one}`))).toEqual([0, label, 1]);
  });

  test("a blended pixel takes the nearer of the labels beside it", () => {
    // Halfway between the codes is 708090; 5f is nearer to the first, 81 to the second.
    expect(labelsOf(readPicture(`${one} 5f6f7fff ${two}`))).toEqual([1, 1, 2]);
    expect(labelsOf(readPicture(`${one} 8191a1ff ${two}`))).toEqual([1, 2, 2]);
  });

  test("a blend that happens to be nearest to a paint elsewhere takes a label beside it", () => {
    // 708090 is the third code almost exactly, but that paint is not beside the pixel.
    const map = readLabels(readPicture(`${one} 718191ff ${two} 708090ff`), listed([...codes, 0x708090]));
    expect([...map.labels]).toEqual([1, 2, 2, 3]);
  });

  test("a band of blended pixels is settled from both sides inward", () => {
    expect(labelsOf(readPicture(`${one} 304050ff 304050ff b0c0d0ff b0c0d0ff ${two}`))).toEqual([
      1, 1, 1, 2, 2, 2,
    ]);
  });

  test("blended pixels with nothing known around them are transparent", () => {
    expect(labelsOf(readPicture("708090ff 718191ff"))).toEqual([0, 0]);
  });

  test("the share of exact pixels counts the blended ones", () => {
    expect(readLabels(readPicture(`${one} ${one} ${one} 304050ff`), listed(codes)).exactShare).toBe(0.75);
  });

  test("a picture that starts at an odd byte of its buffer reads the same", () => {
    const { width, height, rgba } = readPicture(`${one} ${two}`);
    const shifted = new Uint8Array(rgba.length + 1);
    shifted.set(rgba, 1);
    expect(labelsOf({ width, height, rgba: shifted.subarray(1) })).toEqual([1, 2]);
  });
});

// 200 by 150: a blended band of 60 columns has 9,000 pixels, one of 80 has 12,000, of 30,000.
test("more blended pixels than a border has take no label", () => {
  const banded = (columns: number): Raster =>
    drawPicture(200, 150, (column) => (column < columns ? "#405060" : "#102030"));
  expect(readLabels(banded(60), listed(codes)).labels[0]).toBe(1);
  expect(readLabels(banded(80), listed(codes)).labels[0]).toBe(0);
  expect(readLabels(banded(80), listed(codes)).labels[199]).toBe(1);
});
