import { describe, expect, test } from "vitest";
import { measureAreas } from "../../../src/regions/area.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { Viewer } from "../../../src/regions/view/distanceview.ts";
import { findNearLimit, furthestLimit } from "../../../src/regions/view/sightlimit.ts";
import { drawMap } from "../picture.ts";

/** Labels near the limit of a flag 400 by 300 with a stripe (2) of this thickness, seen down to `thinnest` pixels. */
function nearLimit(thickness: number, thinnest: number): readonly number[] {
  const map = drawMap(400, 300, (_, y) => (y >= 100 && y < 100 + thickness ? 2 : 1));
  const { pixels } = measureAreas(findRuns(map), 2);
  return findNearLimit(new Viewer(map, furthestLimit(thinnest)), thinnest, pixels);
}

describe("findNearLimit", () => {
  // Within a tenth of 20: from 18 to 22.
  test.each([
    [17, []],
    [18, [2]],
    [20, [2]],
    [21, [2]],
    [23, []],
    [40, []],
  ])("a stripe of %i pixels where 20 is the limit", (thickness, labels) => {
    expect(nearLimit(thickness, 20)).toEqual(labels);
  });

  // The measuring picture of a flag seen from 40 has its limit at 40 · tan 1′ · 720 = 8.38 pixels: 7.54 to 9.22.
  test.each([
    [7, []],
    [8, [2]],
    [9, [2]],
    [10, []],
  ])("a stripe of %i pixels where 8.38 is the limit", (thickness, labels) => {
    expect(nearLimit(thickness, 8.38)).toEqual(labels);
  });

  // A tenth of its paint has to be in doubt: a stripe of 8 × 400 pixels beside a block that makes it this share.
  test.each([
    [0.05, []],
    [0.2, [2]],
  ])("a stripe that is %d of its paint", (share, labels) => {
    const block = (8 * 400) / share - 8 * 400;
    const map = drawMap(400, 300, (x, y) => ((y > 20 && y < 28) || (y > 100 && x < block / 200) ? 2 : 1));
    const { pixels } = measureAreas(findRuns(map), 2);
    expect(findNearLimit(new Viewer(map, furthestLimit(8)), 8, pixels)).toEqual(labels);
  });

  test("a stripe too small to be worth a word: under 0.2 % of the flag", () => {
    const map = drawMap(400, 300, (x, y) => (y >= 100 && y < 120 && x >= 100 && x < 110 ? 2 : 1));
    const { pixels } = measureAreas(findRuns(map), 2);
    // 200 of 120,000 pixels; 240 would be 0.2 %.
    expect(findNearLimit(new Viewer(map, furthestLimit(10)), 10, pixels)).toEqual([]);
  });

  test("in the full drawing nothing is near the limit", () => {
    expect(nearLimit(1, 0)).toEqual([]);
  });
});
