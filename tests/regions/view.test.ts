import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../src/regions/label.ts";
import { joinLabels, measureThinnest, Viewer } from "../../src/regions/view.ts";
import { drawMap, readMap } from "./picture.ts";

const view = (map: LabelMap, thinnest: number): LabelMap => new Viewer(map, thinnest).viewFrom(thinnest);
const countOf = ({ labels }: LabelMap, label: number): number => labels.filter((other) => other === label).length;

describe("measureThinnest", () => {
  // 1 arcminute at 100 m is 29.089 mm (a Snellen letter of 5 arcminutes at 6.096 m is 8.866 mm).
  test("one arcminute from the distance", () => {
    expect(measureThinnest(100)).toBeCloseTo(0.029089, 6);
    expect(5 * measureThinnest(6.096)).toBeCloseTo(0.0088663, 6);
    expect(measureThinnest(0)).toBe(0);
  });
});

describe("viewFrom", () => {
  const striped = (thickness: number): LabelMap => drawMap(90, 60, (_, y) => (y >= 20 && y < 20 + thickness ? 2 : 1));

  test.each([3, 4, 7, 8])("a stripe of %i stays from that thickness on and goes one thinner", (thinnest) => {
    expect(countOf(view(striped(thinnest), thinnest), 2)).toBe(90 * thinnest);
    expect(countOf(view(striped(thinnest - 1), thinnest), 2)).toBe(0);
  });

  test("a slanted stripe likewise", () => {
    const slanted = (thickness: number): LabelMap => drawMap(200, 120, (x, y) => (Math.abs(0.8 * (y - 60) - 0.6 * (x - 100)) < thickness / 2 ? 2 : 1));
    expect(countOf(view(slanted(12), 8), 2)).toBeGreaterThan(0.9 * countOf(slanted(12), 2));
    expect(countOf(view(slanted(5), 8), 2)).toBe(0);
  });

  test("a disc wider than that stays, a speck goes to what is around it", () => {
    const discs = drawMap(90, 60, (x, y) => (Math.hypot(x - 25, y - 30) < 12 ? 2 : Math.hypot(x - 65, y - 30) < 2 ? 3 : 1));
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
    const whole = joinLabels(base, [0, 1, 2, 2]);
    expect(countOf(view(base, 6), 2)).toBe(0);
    expect(new Viewer(base, 6, whole).viewFrom(6).labels).toEqual(base.labels);
  });
});

test("joinLabels replaces labels, and gives back the same map where none changes", () => {
  const map = readMap("123");
  expect([...joinLabels(map, [0, 1, 1, 3]).labels]).toEqual([1, 1, 3]);
  expect(joinLabels(map, [0, 1, 2, 3])).toBe(map);
});
