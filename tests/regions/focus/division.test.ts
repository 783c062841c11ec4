import { describe, expect, test } from "vitest";
import { findRegions } from "../../../src/regions/component.ts";
import { Divisions, isField } from "../../../src/regions/focus/division.ts";
import { Surroundings } from "../../../src/regions/focus/surroundings.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { drawMap } from "../picture.ts";

/** The surroundings of a map of 180 × 120 with the group of all regions of `labels` inside it. */
function look(labelAt: (x: number, y: number) => number, ...labels: readonly number[]) {
  const map = findRegions(findRuns(drawMap(180, 120, labelAt)));
  const group = [...map.regions.keys()].filter((index) => {
    const { label, touchesOutside } = map.regions[index] ?? { label: 0, touchesOutside: true };
    return labels.includes(label) && !touchesOutside;
  });
  return { around: new Surroundings(map, 180 * 120), group };
}

const rectangle =
  (width: number, height: number) =>
  (x: number, y: number): number =>
    Math.abs(x - 90) < width / 2 && Math.abs(y - 60) < height / 2 ? 2 : 1;

describe("isField", () => {
  test.each([
    ["a rectangle over three quarters of the height", 40, 92, true],
    ["one of less", 40, 88, false],
    ["one so high that covers less than a tenth", 20, 100, false],
    ["a region over 35 %", 120, 66, true],
    ["one of less", 110, 66, false],
  ])("%s: %d × %d", (_, width, height, expected) => {
    const { around, group } = look(rectangle(width, height), 2);
    expect(isField(around, group)).toBe(expected);
  });

  test("a high charge that is no rectangle is none", () => {
    const { around, group } = look((x, y) => (Math.abs(x - 90) < 0.4 * (y - 10) && y < 110 ? 2 : 1), 2);
    expect(isField(around, group)).toBe(false);
  });
});

describe("Divisions", () => {
  test("what repeats a piece at the border, in paint and size, is a part; of another size it is none", () => {
    const pieces =
      (side: number) =>
      (x: number, y: number): number =>
        (x < 30 && y < 30) || (Math.abs(x - 100) < side / 2 && Math.abs(y - 60) < side / 2) ? 2 : 1;
    const same = look(pieces(30), 2);
    expect(new Divisions(same.around).find(same.group)).toEqual(same.group);
    const other = look(pieces(40), 2);
    expect(new Divisions(other.around).find(other.group)).toEqual([]);
  });

  test("a disc in front of three stripes is no band", () => {
    const { around, group } = look(
      (x, y) => (Math.hypot(x - 90, y - 60) < 45 ? 4 : y < 40 ? 1 : y < 80 ? 2 : 3),
      4,
    );
    expect(new Divisions(around).find(group)).toEqual([]);
  });
});
