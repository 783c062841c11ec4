import { expect, test } from "vitest";
import { blurPicture, measureAngle, measureBlur } from "../../src/regions/eyeblur.ts";

test("the angle a flag fills, and the blur on its picture", () => {
  // 1 m high from 100 m: 34.3772′; on 400 pixels half an arcminute is 5.8178 px. 0.9 m from 50 m: 61.8778′, 3.2325 px.
  expect(measureAngle(100)).toBeCloseTo(34.3772, 4);
  expect(measureBlur(100, 400)).toBeCloseTo(5.8178, 4);
  expect(measureAngle(50 / 0.9)).toBeCloseTo(61.8778, 4);
  expect(measureBlur(50 / 0.9, 400)).toBeCloseTo(3.2325, 3);
  expect(() => measureAngle(0)).toThrow(RangeError);
});

const grey = (level: number): readonly number[] => [level, level, level, 255];

/** `width` × `height`, black on the left half, white on the right. */
function halves(width: number, height: number) {
  const row = Array.from({ length: width }, (_, x) => grey(x < width / 2 ? 0 : 255)).flat();
  return { width, height, rgba: Uint8Array.from(Array(height).fill(row).flat()) };
}

test("light is added in linear light: black and white meet in sRGB 188, not in 128", () => {
  const { rgba } = blurPicture(halves(101, 3), 8);
  // Column 50 is the last black one; half the light there would be 0.5 linear, which is sRGB 188 (IEC 61966-2-1).
  const middle = ((rgba[4 * 50] ?? 0) + (rgba[4 * 51] ?? 0)) / 2;
  expect(Math.abs(middle - 188)).toBeLessThan(4);
  expect([rgba[0], rgba[4 * 100]]).toEqual([0, 255]);
});

test("an edge blurred by σ passes 84 % of the light at one σ from it", () => {
  const { rgba } = blurPicture(halves(200, 1), 10);
  // Source: the normal distribution, Φ(1) = 0.8413. Pixel 109 has its middle 9.5 from the edge, 110 has it 10.5 from it.
  const linear = (at: number) => (((rgba[4 * at] ?? 0) / 255 + 0.055) / 1.055) ** 2.4;
  expect((linear(109) + linear(110)) / 2).toBeCloseTo(0.8413, 2);
});

test("one colour stays that colour, up to the border, and no blur changes nothing", () => {
  const plain = { width: 9, height: 7, rgba: Uint8Array.from(Array(63).fill([200, 30, 47, 255]).flat()) };
  expect(blurPicture(plain, 5).rgba).toEqual(plain.rgba);
  expect(blurPicture(halves(20, 2), 0).rgba).toEqual(halves(20, 2).rgba);
});

test("transparent parts lend no colour and stay transparent", () => {
  const rgba = Uint8Array.from([...[0, 255, 0, 0], ...[200, 30, 47, 255], ...[200, 30, 47, 255]]);
  expect([...blurPicture({ width: 3, height: 1, rgba }, 1).rgba]).toEqual([
    200, 30, 47, 0, 200, 30, 47, 255, 200, 30, 47, 255,
  ]);
});
