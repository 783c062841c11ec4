import { expect, test } from "vitest";
import { hatchGrid, hatchPicture } from "../../../src/publish/pictures/hatchpicture.ts";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { listed } from "../../../src/svg/paintnumber.ts";

const size = 56;
const mapOf = (labelAt: (x: number, y: number) => number, side = size): LabelMap => ({
  width: side,
  height: side,
  labels: Uint16Array.from({ length: side * side }, (_, at) => labelAt(at % side, Math.floor(at / side))),
  exactShare: 1,
});
/** More than any hatching needs until it repeats, twice: lines go on without a seam. */
const large = 300;
const whole = mapOf(() => 1, large);
const inkOf =
  ({ rgba, width }: { readonly rgba: Uint8Array; readonly width: number }) =>
  (x: number, y: number) =>
    rgba[4 * (y * width + x)] === 0;
/** Whether the ink of a picture of the whole stays where it is moved by dx, dy. */
const stays = (isInk: (x: number, y: number) => boolean, dx: number, dy: number): boolean => {
  for (let y = 20; y < large - 20; y += 1)
    for (let x = 20; x < large - 20; x += 1) if (isInk(x, y) !== isInk(x + dx, y + dy)) return false;
  return true;
};

test("red stands upright, blue lies, green falls from the upper left, purple rises", () => {
  const red = inkOf(hatchPicture(whole, listed(["#c8202f"])));
  const blue = inkOf(hatchPicture(whole, listed(["#1f56a8"])));
  const green = inkOf(hatchPicture(whole, listed(["#2f8f46"])));
  const purple = inkOf(hatchPicture(whole, listed(["#5f2a7a"])));
  expect([stays(red, 0, 1), stays(red, 1, 0)]).toEqual([true, false]);
  expect([stays(blue, 0, 1), stays(blue, 1, 0)]).toEqual([false, true]);
  expect([stays(green, 1, 1), stays(green, 1, -1)]).toEqual([true, false]);
  expect([stays(purple, 1, 1), stays(purple, 1, -1)]).toEqual([false, true]);
});

test("white has no ink, and black has that of red and of blue", () => {
  const [white, black, red, blue] = (["#ffffff", "#000000", "#c8202f", "#1f56a8"] as const).map((hex) =>
    inkOf(hatchPicture(whole, listed([hex]))),
  );
  for (let at = 0; at < hatchGrid.step ** 2; at += 1) {
    // Away from the border, which is drawn as a line.
    const [x, y] = [at % hatchGrid.step, Math.floor(at / hatchGrid.step)].map((one) => one + hatchGrid.step);
    if (x === undefined || y === undefined) throw new RangeError("two numbers");
    expect(white?.(x, y)).toBe(false);
    expect(black?.(x, y)).toBe(red?.(x, y) || blue?.(x, y));
  }
});

test("a line parts two paints, unless they are one colour to the eye, and runs along the border", () => {
  const halves = mapOf((x, y) => (y < 8 ? 0 : x < 28 ? 1 : 2));
  const parted = inkOf(hatchPicture(halves, listed(["#ffffff", "#fff4d0"])));
  expect([parted(27, 30), parted(28, 30), parted(25, 30)]).toEqual([true, true, false]);
  expect([parted(0, 30), parted(5, 8), parted(5, 55), parted(5, 30)]).toEqual([true, true, true, false]);
  const one = hatchPicture(halves, listed(["#ffffff", "#fefefe"]));
  expect(inkOf(one)(27, 30)).toBe(false);
  expect([one.rgba[3], one.rgba[4 * size * 8 + 3]]).toEqual([0, 255]);
});

test("in outlines no paint has lines of its own", () => {
  const halves = mapOf((x) => (x < 28 ? 1 : 2));
  const isInk = inkOf(hatchPicture(halves, listed(["#c8202f", "#000000"]), true));
  const row = Array.from({ length: size }, (_, x) => isInk(x, 30));
  expect(row.map((ink, x) => (ink ? x : -1)).filter((x) => x >= 0)).toEqual([0, 1, 26, 27, 28, 29, 54, 55]);
});
