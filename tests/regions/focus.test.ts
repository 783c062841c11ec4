import { describe, expect, test } from "vitest";
import { findRegions } from "../../src/regions/component.ts";
import { countMask, findCharges, maskLabels, maskRegions } from "../../src/regions/focus.ts";
import type { LabelMap } from "../../src/regions/label.ts";
import { findRuns } from "../../src/regions/runs.ts";
import { drawMap, readMap } from "./picture.ts";

/** Labels of the charges with their pixels, in reading order. */
function chargesOf(map: LabelMap): readonly (readonly [number, number])[] {
  const regions = findRegions(findRuns(map));
  return [...findCharges(regions, map.labels.filter((label) => label !== 0).length)]
    .sort((a, b) => a - b)
    .map((index) => [regions.regions[index]?.label ?? 0, regions.regions[index]?.pixels ?? 0]);
}

const disc = (x: number, y: number, radius: number): boolean => Math.hypot(x - 45, y - 30) < radius;

describe("findCharges", () => {
  test("a charge in the middle of a field", () => {
    expect(chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 12) ? 2 : 1))).map(([label]) => label)).toEqual([
      2,
    ]);
  });

  test("stripes and cantons are none: they reach the border", () => {
    expect(chargesOf(drawMap(90, 60, (x, y) => (x < 30 && y < 30 ? 3 : y < 30 ? 1 : 2)))).toEqual([]);
  });

  test("a charge in two colours is a charge in both", () => {
    expect(
      chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 6) ? 3 : disc(x, y, 12) ? 2 : 1))).map(
        ([label]) => label,
      ),
    ).toEqual([2, 3]);
  });

  test("the hole of a ring, in the paint of the field, is no charge", () => {
    expect(
      chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 6) ? 1 : disc(x, y, 12) ? 2 : 1))).map(
        ([label]) => label,
      ),
    ).toEqual([2]);
  });

  test("a field within a bordure, over 35 % of the flag, is no charge; what lies on it is", () => {
    // 50 by 50 … 70 by 40 of 90 by 60 is 52 %.
    const bordure = drawMap(90, 60, (x, y) =>
      disc(x, y, 10) ? 3 : x > 10 && x < 80 && y > 10 && y < 50 ? 2 : 1,
    );
    expect(chargesOf(bordure).map(([label]) => label)).toEqual([3]);
  });

  test("35 % of the flag is the most a charge may have", () => {
    // 7 by 5 of 10 by 10, and one pixel more.
    const field = [
      "1111111111",
      "1222222211",
      "1222222211",
      "1222222211",
      "1222222211",
      "1222222211",
      "1111111111",
      "1111111111",
      "1111111111",
      "1111111111",
    ];
    expect(chargesOf(readMap(...field))).toEqual([[2, 35]]);
    expect(chargesOf(readMap(...field.with(6, "1211111111")))).toEqual([]);
  });

  test("a charge that meets a transparent part is at the border", () => {
    expect(chargesOf(readMap("11111", "12011", "11111"))).toEqual([]);
  });

  test("a counterchanged disc is a charge in both its halves: each lies on the other paint, none is a hole", () => {
    const counterchanged = drawMap(90, 60, (x, y) => (disc(x, y, 12) === x < 45 ? 2 : 1));
    expect(chargesOf(counterchanged).map(([label]) => label)).toEqual([2, 1]);
  });

  test("a ring over two fields: the ring is a charge, the fields within it are not", () => {
    const ring = drawMap(90, 60, (x, y) => (disc(x, y, 16) && !disc(x, y, 8) ? 3 : x < 45 ? 1 : 2));
    expect(chargesOf(ring).map(([label]) => label)).toEqual([3]);
  });

  test("a charge within the hole of a ring is a charge, the hole is not", () => {
    const target = drawMap(90, 60, (x, y) =>
      disc(x, y, 5) ? 3 : disc(x, y, 11) ? 1 : disc(x, y, 18) ? 2 : 1,
    );
    expect(chargesOf(target).map(([label]) => label)).toEqual([2, 3]);
  });

  test("a disc over two fields in a paint of its own", () => {
    expect(
      chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 12) ? 3 : x < 45 ? 1 : 2))).map(([l]) => l),
    ).toEqual([3]);
  });

  test("a charge on a stripe, in the paint of a field that the stripe parts it from, is a charge", () => {
    // White disc on a red stripe between white fields: white is not around it, red is.
    const map = drawMap(90, 60, (x, y) => (disc(x, y, 8) ? 1 : y > 20 && y < 40 ? 2 : 1));
    expect(chargesOf(map).map(([label]) => label)).toEqual([1]);
  });

  test("a charge that runs into a stripe of its own paint reaches the border with it", () => {
    expect(chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 12) || y > 38 ? 2 : 1)))).toEqual([]);
  });

  test("a charge that touches the border is none", () => {
    expect(chargesOf(drawMap(90, 60, (x, y) => (Math.hypot(x, y - 30) < 12 ? 2 : 1)))).toEqual([]);
  });

  test("two charges side by side", () => {
    expect(chargesOf(readMap("1111111", "1211131", "1111111"))).toEqual([
      [2, 1],
      [3, 1],
    ]);
  });
});

test("maskRegions, maskLabels and countMask", () => {
  const map = readMap("111", "121", "111");
  const regions = findRegions(findRuns(map));
  const mask = maskRegions(regions, findCharges(regions, 9));
  expect([...mask]).toEqual([0, 0, 0, 0, 1, 0, 0, 0, 0]);
  expect([...maskLabels(map.labels, [false, false, true])]).toEqual([...mask]);
  expect(countMask(mask)).toBe(1);
});
