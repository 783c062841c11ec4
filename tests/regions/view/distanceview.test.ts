import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { joinLabels, measureThinnest, Viewer } from "../../../src/regions/view/distanceview.ts";
import { type Label, listed, type PaintIndex } from "../../../src/svg/paintnumber.ts";
import { nth } from "../../numbered.ts";
import { drawMap, readMap } from "../picture.ts";

const joins = (...labels: readonly number[]) => listed<PaintIndex, Label>(labels.map((label) => nth(label)));
const view = (map: LabelMap, thinnest: number): LabelMap => new Viewer(map, thinnest).viewFrom(thinnest).map;
const countOf = ({ labels }: LabelMap, label: number): number =>
  labels.filter((other) => other === label).length;

describe("measureThinnest", () => {
  // 1 arcminute at 100 m is 29.089 mm (a Snellen letter of 5 arcminutes at 6.096 m is 8.866 mm).
  test("one arcminute from the distance", () => {
    expect(measureThinnest(100)).toBeCloseTo(0.029089, 6);
    expect(5 * measureThinnest(6.096)).toBeCloseTo(0.0088663, 6);
    expect(measureThinnest(0)).toBe(0);
  });
});

describe("viewFrom", () => {
  const striped = (thickness: number): LabelMap =>
    drawMap(90, 60, (_, y) => (y >= 20 && y < 20 + thickness ? 2 : 1));

  test.each([3, 4, 7, 8])("a stripe of %i stays from that thickness on and goes one thinner", (thinnest) => {
    expect(countOf(view(striped(thinnest), thinnest), 2)).toBe(90 * thinnest);
    expect(countOf(view(striped(thinnest - 1), thinnest), 2)).toBe(0);
  });

  test("a slanted stripe likewise", () => {
    const slanted = (thickness: number): LabelMap =>
      drawMap(200, 120, (x, y) => (Math.abs(0.8 * (y - 60) - 0.6 * (x - 100)) < thickness / 2 ? 2 : 1));
    expect(countOf(view(slanted(12), 8), 2)).toBeGreaterThan(0.9 * countOf(slanted(12), 2));
    expect(countOf(view(slanted(5), 8), 2)).toBe(0);
  });

  // Half of a stripe's area is where it vanishes: at 0.9 of the thickness it has gone, at 1.1 it stays, whatever its
  // slope. Straight stripes of n go at n + 1 (above); 20 pixels, so that a pixel is half of the tenth.
  test.each([0, 7, 15, 22.5, 30, 38, 45, 52, 60, 75, 83, 90])(
    "stripes at %d degrees vanish at the thickness of straight ones, within a tenth",
    (degrees) => {
      const sine = Math.sin((degrees * Math.PI) / 180);
      const cosine = Math.cos((degrees * Math.PI) / 180);
      const left = (thickness: number): number => {
        const map = drawMap(300, 300, (x, y) =>
          Math.abs(cosine * (y - 150) - sine * (x - 150)) < thickness / 2 ? 2 : 1,
        );
        return countOf(view(map, 20), 2) / countOf(map, 2);
      };
      expect(left(18)).toBeLessThan(0.5);
      expect(left(22)).toBeGreaterThan(0.5);
    },
  );

  test("what stays of a wedge is where the disc fits: a point loses its tip", () => {
    // Opens by 1 : 2 to either side, so it is 20 wide 20 pixels from its tip; a disc of 20 that touches both sides has its
    // centre 10 · √5 = 22.4 pixels from the tip and keeps what lies within √2 · 10 = 14.1 of that: the tip to 8.2 goes.
    const wedge = drawMap(200, 120, (x, y) => (x > 20 && Math.abs(y - 60) < (x - 20) / 2 ? 2 : 1));
    const seen = view(wedge, 20);
    const columns = [...seen.labels.keys()].filter((at) => seen.labels[at] === 2).map((at) => at % 200);
    expect(Math.abs(Math.min(...columns) - 28.2)).toBeLessThan(2);
  });

  test("a thin tail goes while the body stays, and is given to what is around it", () => {
    const kite = drawMap(200, 120, (x, y) =>
      Math.hypot(x - 60, y - 60) < 30 ? 2 : x >= 60 && x < 180 && y > 58 && y < 62 ? 2 : 1,
    );
    const seen = view(kite, 10);
    const discPixels = countOf(
      drawMap(200, 120, (x, y) => (Math.hypot(x - 60, y - 60) < 30 ? 2 : 1)),
      2,
    );
    // 4 · 90 pixels of tail; a stump of up to the reach √2 · 4.5 may stay.
    expect(countOf(kite, 2) - discPixels).toBeGreaterThan(350);
    expect(countOf(seen, 2) - discPixels).toBeLessThan(4 * 7);
    expect(seen.labels[60 * 200 + 150]).toBe(1);
  });

  test("squares and cantons are seen as they are, corners and all", () => {
    const square = drawMap(200, 120, (x, y) =>
      x < 60 && y < 50 ? 3 : x > 100 && x < 140 && y > 40 && y < 80 ? 2 : 1,
    );
    expect(view(square, 20).labels).toEqual(square.labels);
  });

  test("a vanished part goes to the nearest that remains, not to the largest", () => {
    // Field 1 is largest; a speck lies on the stripe 2.
    const map = drawMap(200, 120, (x, y) => (Math.hypot(x - 100, y - 100) < 3 ? 3 : y > 80 ? 2 : 1));
    const seen = view(map, 10);
    expect(countOf(seen, 1)).toBe(countOf(map, 1));
    expect(countOf(seen, 2)).toBe(countOf(map, 2) + countOf(map, 3));
  });

  test("a view says which pixels were given away, and to which that remain", () => {
    const map = drawMap(90, 60, (_, y) => (y < 28 ? 1 : y < 32 ? 3 : 2));
    const { map: seen, pixels, sources } = new Viewer(map, 6).viewFrom(6);
    expect([...pixels].sort((a, b) => a - b)).toEqual(
      Array.from({ length: 4 * 90 }, (_, at) => 28 * 90 + at),
    );
    for (const [index, at] of pixels.entries()) {
      expect(map.labels[at]).toBe(3);
      expect(seen.labels[at]).toBe(map.labels[sources[index] ?? -1]);
      // The rows beside the line are 27 and 32.
      expect(Math.floor((sources[index] ?? 0) / 90)).toBe(at < 30 * 90 ? 27 : 32);
    }
    expect(new Viewer(map, 6).viewFrom(3)).toMatchObject({
      map,
      pixels: new Int32Array(0),
      sources: new Int32Array(0),
    });
  });

  test("one viewer gives each view as a viewer of its own would", () => {
    const map = drawMap(120, 80, (x, y) =>
      Math.hypot(x - 60, y - 40) < 20 ? 2 : y > 70 ? 3 : x % 40 < 6 ? 4 : 1,
    );
    const viewer = new Viewer(map, 12);
    for (const thinnest of [12, 3, 7, 3, 10])
      expect(viewer.viewFrom(thinnest).map.labels).toEqual(view(map, thinnest).labels);
    expect(viewer.viewFrom(7)).toBe(viewer.viewFrom(7));
  });

  test("a disc wider than that stays, a speck goes to what is around it", () => {
    const discs = drawMap(90, 60, (x, y) =>
      Math.hypot(x - 25, y - 30) < 12 ? 2 : Math.hypot(x - 65, y - 30) < 2 ? 3 : 1,
    );
    const seen = view(discs, 7);
    expect(countOf(seen, 2)).toBe(countOf(discs, 2));
    expect(countOf(seen, 3)).toBe(0);
    expect(countOf(seen, 1)).toBe(countOf(discs, 1) + countOf(discs, 3));
  });

  test("the corners of a cross stay", () => {
    const cross = drawMap(90, 60, (x, y) => (Math.abs(x - 45) < 8 || Math.abs(y - 30) < 8 ? 2 : 1));
    expect(view(cross, 10).labels).toEqual(cross.labels);
  });

  test("a fimbriation is halved between the colours beside it", () => {
    const fimbriated = drawMap(90, 60, (_, y) => (y < 28 ? 1 : y < 32 ? 3 : 2));
    const seen = view(fimbriated, 6);
    expect([countOf(seen, 1), countOf(seen, 2), countOf(seen, 3)]).toEqual([90 * 30, 90 * 30, 0]);
  });

  test("from no distance it is the very same map", () => {
    const map = striped(1);
    expect(view(map, 0)).toBe(map);
    expect(view(map, 1)).toBe(map);
  });

  test("where nothing would be left it stays as it is", () => {
    const checks = drawMap(20, 20, (x, y) => 1 + ((Math.floor(x) + Math.floor(y)) % 2));
    expect(view(checks, 5)).toBe(checks);
  });

  test("pixels are never made or lost, and transparent ones stay", () => {
    const map = drawMap(90, 60, (x, y) => (x > 80 ? 0 : y % 10 < 3 ? 2 : 1));
    const seen = view(map, 5);
    expect(countOf(seen, 0)).toBe(countOf(map, 0));
    expect(seen.labels).toHaveLength(map.labels.length);
  });

  test("labels that are one for thickness stay together", () => {
    // Two stripes of 4 that touch: alone each goes at 6, as one of 8 they stay.
    const base = drawMap(90, 60, (_, y) => (y >= 20 && y < 24 ? 2 : y >= 24 && y < 28 ? 3 : 1));
    const whole = joinLabels(base, joins(1, 2, 2));
    expect(countOf(view(base, 6), 2)).toBe(0);
    expect(view(whole, 6).labels).toEqual(whole.labels);
  });

  test("says which pixel every vanished one took its label from", () => {
    const { map, pixels, sources } = new Viewer(striped(3), 6).viewFrom(6);
    expect(pixels).toHaveLength(3 * 90);
    for (const [index, at] of pixels.entries()) {
      expect(map.labels[at]).toBe(1);
      expect(map.labels[sources[index] as number]).toBe(1);
      expect(striped(3).labels[sources[index] as number]).toBe(1);
    }
  });

  test("thin parts may be found by something else", () => {
    const only = { findThinner: () => Int32Array.of(20 * 90 + 5) };
    const seen = new Viewer(striped(3), only).viewFrom(6).map;
    expect(countOf(seen, 2)).toBe(3 * 90 - 1);
  });
});

test("joinLabels replaces labels, and gives back the same map where none changes", () => {
  const map = readMap("123");
  expect([...joinLabels(map, joins(1, 1, 3)).labels]).toEqual([1, 1, 3]);
  expect(joinLabels(map, joins(1, 2, 3))).toBe(map);
});
