// What a paint looks like along its lines, in pictures whose every pixel is known.
import { describe, expect, test } from "vitest";
import { measureBeside } from "../../src/regions/linecolour.ts";
import { traceLines } from "../../src/regions/traceline.ts";
import { Viewer } from "../../src/regions/view/distanceview.ts";
import { nth } from "../numbered.ts";
import { drawMap, drawPicture } from "./picture.ts";

const grey = (byte: number): string => `#${byte.toString(16).padStart(2, "0").repeat(3)}`;
/** The light of a grey byte (IEC 61966-2-1). */
const lightOf = (byte: number): number =>
  byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4;

describe("measureBeside", () => {
  // Label 1 above, 2 below row 40; label 3 right of column 60 below. Label 2 gets lighter downward, a step a row.
  const map = drawMap(100, 80, (x, y) => (y < 40 ? 1 : x < 60 ? 2 : 3));
  const down = drawPicture(100, 80, (_, row) => grey(row < 40 ? 0 : 100 + 3 * (row - 40)));

  test("sees the rows beside the line, from 1 to 3 pixels inside", () => {
    const seen = measureBeside(down, map, traceLines(map), nth(2), 3).get(nth(1));
    // Row 40 touches the line and does not count.
    expect(seen?.darkest.linearG).toBeCloseTo(lightOf(103), 9);
    expect(seen?.lightest.linearG).toBeCloseTo(lightOf(109), 9);
  });

  test("each paint that it meets on its own", () => {
    const seen = measureBeside(down, map, traceLines(map), nth(2), 3);
    expect([...seen.keys()].sort()).toEqual([1, 3]);
    // The line to paint 3 runs along the whole gradient: rows 41 to 78 lie inside.
    const ends = seen.get(nth(3));
    expect(ends?.darkest.linearG).toBeLessThan(lightOf(107));
    expect(ends?.lightest.linearG).toBeGreaterThan(lightOf(100 + 3 * 37));
  });

  test("a paint that is nowhere along a line has no colour there", () => {
    expect(measureBeside(down, map, traceLines(map), nth(4), 3).size).toBe(0);
    // One row has no inside.
    const thin = drawMap(100, 80, (_, y) => (y < 40 ? 1 : y < 41 ? 2 : 3));
    expect(measureBeside(down, thin, traceLines(thin), nth(2), 3).size).toBe(0);
  });

  test("past what vanished between the two, as far as it reaches", () => {
    // A line of 6 rows goes from the view: the two meet 3 rows from what is left of either.
    const parted = drawMap(100, 80, (_, y) => (y < 37 ? 1 : y < 43 ? 4 : 2));
    const { map: view } = new Viewer(parted, 8).viewFrom(8);
    const lines = traceLines(view);
    expect(lines.map(({ a, b }) => [a, b])).toEqual([[1, 2]]);
    const seen = measureBeside(down, parted, lines, nth(2), 11).get(nth(1));
    // Row 43 touches what vanished; row 44 is the nearest that lies inside.
    expect(seen?.darkest.linearG).toBeCloseTo(lightOf(112), 9);
    expect(seen?.lightest.linearG).toBeCloseTo(lightOf(112), 9);
    expect(measureBeside(down, parted, lines, nth(2), 3).size).toBe(0);
  });
});
