import { expect, test } from "vitest";
import { findRegions } from "../../../src/regions/component.ts";
import { findFieldWithin } from "../../../src/regions/focus/hole.ts";
import { Surroundings } from "../../../src/regions/focus/surroundings.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { drawMap } from "../picture.ts";

/** Pixels of the field within all that does not reach the border, by what lies in the disc of radius 40 around (90, 60). */
function fieldWithin(labelAt: (x: number, y: number, away: number) => number): number {
  const map = findRegions(
    findRuns(
      drawMap(180, 120, (x, y) => {
        const away = Math.hypot(x - 90, y - 60);
        return away < 40 ? labelAt(x, y, away) : 1;
      }),
    ),
  );
  const group = [...map.regions.keys()].filter((index) => map.regions[index]?.touchesOutside === false);
  const around = new Surroundings(map, 180 * 120);
  return around.pixelsOf(findFieldWithin(around, group));
}

test("the opening of a ring is the field, to its area", () => {
  expect(Math.abs(fieldWithin((_x, _y, away) => (away < 20 ? 1 : 2)) / (Math.PI * 400) - 1)).toBeLessThan(
    0.01,
  );
});

test("an opening with a charge in it is the field all the same, the charge is not", () => {
  const field = fieldWithin((_x, _y, away) => (away < 8 ? 3 : away < 20 ? 1 : 2));
  expect(Math.abs(field / (Math.PI * (400 - 64)) - 1)).toBeLessThan(0.01);
});

test("one that lies aside, or of another shape, is the charge's own", () => {
  expect(fieldWithin((x, y) => (Math.hypot(x - 75, y - 60) < 12 ? 1 : 2))).toBe(0);
  expect(
    fieldWithin((x, y) =>
      Math.abs(x - 90) < 4 !== Math.abs(y - 60) < 4 && Math.hypot(x - 90, y - 60) < 20 ? 1 : 2,
    ),
  ).toBe(0);
});
