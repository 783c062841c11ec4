import { describe, expect, test } from "vitest";
import { measureSeen } from "../../src/regions/seencolour.ts";
import { nth } from "../numbered.ts";
import { drawMap, readMap, readPicture } from "./picture.ts";

const black = "000000ff";
const white = "ffffffff";
const grey = "808080ff";

/** A picture of the size of a map in which each pixel is one of the bytes that `byteAt` gives, as grey. */
function drawGrey(width: number, height: number, byteAt: (x: number, y: number) => number) {
  const rgba = new Uint8Array(4 * width * height);
  for (let at = 0; at < width * height; at += 1) {
    rgba.fill(byteAt(at % width, Math.floor(at / width)), 4 * at, 4 * at + 3);
    rgba[4 * at + 3] = 255;
  }
  return { width, height, rgba };
}

describe("measureSeen", () => {
  test("looks 1 px inside the label: rim pixels, where neighbours blend in, do not count", () => {
    const map = readMap("11111", "11111", "11111");
    const picture = readPicture(
      `${white} ${white} ${white} ${white} ${white}`,
      `${white} ${black} ${black} ${black} ${white}`,
      `${white} ${white} ${white} ${white} ${white}`,
    );
    expect(measureSeen(picture, map, nth(1))?.mean).toEqual({
      linearR: 0,
      linearG: 0,
      linearB: 0,
    });
  });

  test("a label without an inside is looked at anywhere", () => {
    const seen = measureSeen(readPicture(`${black} ${white} ${black}`), readMap("121"), nth(2));
    expect(seen?.mean).toEqual({ linearR: 1, linearG: 1, linearB: 1 });
  });

  test("a label that is nowhere has no colour", () => {
    expect(measureSeen(readPicture(`${black} ${black}`), readMap("11"), nth(2))).toBeNull();
  });

  test("the mean is of light, not of bytes", () => {
    const seen = measureSeen(readPicture(`${black} ${white}`), readMap("11"), nth(1));
    // Half of the light; half of the bytes (128) would be 0.2159 of it.
    expect(seen?.mean.linearG).toBeCloseTo(0.5, 12);
    expect(measureSeen(readPicture(`${grey} ${grey}`), readMap("11"), nth(1))?.mean.linearG).toBeCloseTo(
      0.21586,
      5,
    );
  });

  test("keeps the channels apart", () => {
    const { mean } = measureSeen(readPicture("ff0000ff ff0000ff"), readMap("11"), nth(1)) ?? {};
    expect(mean).toEqual({ linearR: 1, linearG: 0, linearB: 0 });
  });

  test("lightest and darkest are the outermost 2 %: one odd pixel in a hundred decides only half of an end", () => {
    // Inside: 100 × 10 = 1000 pixels, so each end is the mean of 20. Ten of 1000 are white, the rest black.
    const map = drawMap(102, 12, () => 1);
    const picture = drawGrey(102, 12, (x, y) => (y === 5 && x >= 1 && x <= 10 ? 255 : 0));
    const seen = measureSeen(picture, map, nth(1));
    // Ten white among the lightest twenty.
    expect(seen?.lightest.linearR).toBeCloseTo(0.5, 12);
    expect(seen?.darkest.linearR).toBe(0);
    expect(seen?.mean.linearR).toBeCloseTo(0.01, 12);
  });

  test("lightest and darkest go by luminance: pure green is lighter than pure blue", () => {
    const seen = measureSeen(readPicture("00ff00ff 0000ffff"), readMap("11"), nth(1));
    expect(seen?.lightest).toEqual({ linearR: 0, linearG: 1, linearB: 0 });
    expect(seen?.darkest).toEqual({ linearR: 0, linearG: 0, linearB: 1 });
  });
});
