// Gaps of transparency: closed where they are thinner than what is seen, in maps whose geometry is known in closed form and
// in maps at random, where the slow way of naive.ts says which pixels are thin.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { traceLines } from "../../../src/regions/traceline.ts";
import { type View, Viewer } from "../../../src/regions/view/distanceview.ts";
import { closeSlits, hasTransparent, joinGivings } from "../../../src/regions/view/slit.ts";
import { labelAt, openByDisc, sidesOf, smallMaps } from "../naive.ts";
import { drawMap, readMap } from "../picture.ts";

const view = (map: LabelMap, thinnest: number) => new Viewer(map, thinnest).viewFrom(thinnest);
const countOf = ({ labels }: LabelMap, label: number): number =>
  labels.filter((other) => other === label).length;
/** The map with every pixel of the view that was given away as its source has it. */
const seenAlike = ({ pixels, sources }: View, map: LabelMap): Uint16Array => {
  const labels = map.labels.slice();
  for (const [index, at] of pixels.entries()) labels[at] = map.labels[sources[index] as number] as number;
  return labels;
};
const linesOf = (map: LabelMap) => traceLines(map).map(({ a, b, length }) => [a, b, length]);

describe("a gap between two stripes", () => {
  const stripes = (gap: number, between = 40, width = 120, height = 80): LabelMap =>
    drawMap(width, height, (_, y) => (y < between ? 1 : y < between + gap ? 0 : 2));

  // At either end, where the gap is open to what lies outside, a pixel or two of it stay.
  test.each([1, 2, 5])("of %i is shared by them: the line is that of stripes that meet", (gap) => {
    const { map } = view(stripes(gap, 360, 1080, 720), 8.4);
    expect(countOf(map, 0)).toBeLessThanOrEqual(4 * gap);
    expect(Math.abs(countOf(map, 1) / 1080 - 360 - gap / 2)).toBeLessThanOrEqual(0.6);
    const [[a, b, length] = []] = linesOf(map);
    expect([a, b]).toEqual([1, 2]);
    expect(Math.abs((length ?? 0) / 1080 - 1)).toBeLessThan(0.01);
  });

  test("stays where it is seen, and from no distance", () => {
    expect(view(stripes(6), 6).map.labels).toEqual(stripes(6).labels);
    const near = stripes(1);
    expect(view(near, 0).map).toBe(near);
    expect(view(near, 1).map).toBe(near);
  });

  test("at any slope gives a line that crosses the flag", () => {
    // By 3 : 4 from side to side of 480 pixels: 480 · 5 / 4 = 600 long.
    const slanted = drawMap(480, 640, (x, y) => {
      const across = 0.8 * (y - 320) - 0.6 * (x - 240);
      return Math.abs(across) < 1.5 ? 0 : across < 0 ? 1 : 2;
    });
    const { map } = view(slanted, 8);
    expect(countOf(map, 0)).toBeLessThan(20);
    const [[, , length] = []] = linesOf(map);
    expect(Math.abs((length ?? 0) / 600 - 1)).toBeLessThan(0.01);
  });
});

test("a slit through one paint parts nothing: halves that are too thin alone stay together", () => {
  // Two stripes of 4 with a gap of 1 are one of 9.
  const parted = drawMap(90, 60, (_, y) => (y < 20 || y > 29 ? 1 : y > 24 && y < 25 ? 0 : 2));
  const { map } = view(parted, 6);
  expect(countOf(map, 0)).toBeLessThanOrEqual(4);
  expect(Math.abs(countOf(map, 2) - 90 * 9)).toBeLessThanOrEqual(6);
});

test("a slit along a stripe that vanishes goes with it: both are shared by the neighbours, to a row", () => {
  const parted = drawMap(90, 60, (_, y) => (y < 30 ? 1 : y < 31 ? 0 : y < 34 ? 2 : 3));
  const { map } = view(parted, 8);
  expect(countOf(map, 0)).toBeLessThanOrEqual(4);
  expect(countOf(map, 2)).toBe(0);
  expect(Math.abs(countOf(map, 1) - 90 * 32)).toBeLessThanOrEqual(90);
});

test("a swallowtail keeps its form", () => {
  // A notch of 360 by 720 pixels, seen from 40 flag heights. Its tip is a right angle and stays but for rounding.
  const tail = drawMap(1080, 720, (x, y) => (x > 720 && Math.abs(y - 360) < x - 720 ? 0 : y < 360 ? 1 : 2));
  const { map } = view(tail, 8.4);
  const [open, seen] = [countOf(tail, 0), countOf(map, 0)];
  expect(seen).toBeLessThanOrEqual(open);
  expect(seen).toBeGreaterThan(0.9999 * open);
  const [[, , length] = []] = linesOf(map);
  expect(Math.abs((length ?? 0) / 720 - 1)).toBeLessThan(0.01);
});

test("a narrow margin along the border is no slit: nothing lies beyond it", () => {
  const round = drawMap(120, 120, (x, y) => (Math.hypot(x - 60, y - 60) < 58 ? 1 : 0));
  expect(view(round, 8).map).toBe(round);
});

test("a wide transparent part bounds a paint as before: a thin stripe beside it vanishes into the other", () => {
  const map = drawMap(90, 60, (_, y) => (y < 20 ? 0 : y < 23 ? 2 : 1));
  const seen = view(map, 6).map;
  expect([0, 1, 2].map((label) => countOf(seen, label))).toEqual([90 * 20, 90 * 40, 0]);
});

/** What is transparent as paint 1 on all sides of a map, `margin` pixels further; what is painted is transparent. */
const openAround = (map: LabelMap, margin: number): LabelMap =>
  drawMap(map.width + 2 * margin, map.height + 2 * margin, (x, y) =>
    labelAt(map, Math.floor(x) - margin, Math.floor(y) - margin) > 0 ? 0 : 1,
  );

describe("for any map", () => {
  const thickness = fc.integer({ min: 2, max: 9 });

  test("slits are the thin parts of what is transparent, as far as a paint reaches them", () => {
    fc.assert(
      fc.property(smallMaps(0), thickness, (map, n) => {
        const { pixels, sources } = closeSlits(map, n) ?? { pixels: new Int32Array(0), sources: [] };
        const thin = openByDisc(openAround(map, 2 * n), n)
          .map((at) => [(at % (map.width + 4 * n)) - 2 * n, Math.floor(at / (map.width + 4 * n)) - 2 * n])
          .filter(([x = 0, y = 0]) => x >= 0 && y >= 0 && x < map.width && y < map.height)
          .map(([x = 0, y = 0]) => y * map.width + x);
        expect(pixels.every((at) => thin.includes(at))).toBe(true);
        // What is left touches no paint on its four sides, and nothing that was given to one.
        const isPainted = (at: number): boolean => at >= 0 && (map.labels[at] !== 0 || pixels.includes(at));
        const left = thin.filter((at) => !pixels.includes(at));
        expect(left.filter((at) => sidesOf(map, at).some(isPainted))).toEqual([]);
        expect([...sources].every((source) => map.labels[source] !== 0)).toBe(true);
      }),
      { numRuns: 150, seed: 1 },
    );
  });

  test("nothing is given to transparency, and a view is what its givings say", () => {
    fc.assert(
      fc.property(smallMaps(0), thickness, (map, n) => {
        const seen = view(map, n);
        expect(map.labels.every((label, at) => label === 0 || seen.map.labels[at] !== 0)).toBe(true);
        expect(seenAlike(seen, map)).toEqual(seen.map.labels);
        expect([...seen.sources].every((source) => map.labels[source] !== 0)).toBe(true);
      }),
      { numRuns: 200, seed: 1 },
    );
  });
});

test("hasTransparent", () => {
  expect(hasTransparent(findRuns(readMap("11", "12")))).toBe(false);
  expect(hasTransparent(findRuns(readMap("11", "10")))).toBe(true);
});

test("givings join: what took from a pixel that was given away takes from where that came from", () => {
  const list = (...numbers: number[]): Int32Array => Int32Array.from(numbers);
  const joined = joinGivings(
    { pixels: list(5, 6), sources: list(1, 2) },
    { pixels: list(6, 7, 8), sources: list(3, 5, 4) },
  );
  expect(new Map([...joined.pixels].map((at, index) => [at, joined.sources[index]]))).toEqual(
    new Map([
      [5, 1],
      [6, 3],
      [7, 1],
      [8, 4],
    ]),
  );
});
