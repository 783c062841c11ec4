import { describe, expect, test } from "vitest";
import { chooseSplit, presentSplit, type Split, showsOriginal } from "../../../src/views/study/splitline.ts";
import { createFormat } from "../../../src/words/format.ts";
import { studyResult } from "../../publish/sample.ts";

type Box = [x: number, y: number, right: number, bottom: number];

/** The sample, 3 wide and 2 high, with a rectangle of the changed paint from (x, y) to (right, bottom), in flag heights. */
function changed([x, y, right, bottom]: Box, edge = { a: "p1", b: "p2" }) {
  const points = [x, y, right, y, right, bottom, x, bottom, x, y];
  return {
    ...studyResult,
    edgeLines: [...studyResult.edgeLines.slice(1), { ...edge, points, focusShare: 0 }],
  };
}

describe("one flag of both halves is divided", () => {
  test.each([
    // In the middle any division would do.
    ["in the middle", [0.5, 0.25, 1, 0.75], "per pale"],
    ["across the whole flag", [0, 0.4, 1.5, 0.6], "per pale"],
    // A third and two thirds: the line itself decides, at x = 0.75.
    ["a little more at the hoist", [0.3, 0.2, 1, 0.8], "per pale"],
    // The bend runs from (0, 0) to (1.5, 1), the bend sinister from (0, 1) to (1.5, 0).
    ["in the canton", [0, 0, 0.6, 0.5], "per bend"],
    ["in the lower fly", [1, 0.6, 1.5, 1], "per bend"],
    ["in the upper fly", [0.9, 0, 1.5, 0.5], "per bend sinister"],
    ["in the lower hoist", [0, 0.6, 0.5, 1], "per bend sinister"],
    ["in the middle of the hoist", [0.02, 0.3, 0.3, 0.7], "per fess"],
  ] satisfies [string, Box, Split][])("where the change is %s", (_place, box, split) => {
    expect(chooseSplit(changed(box))).toBe(split);
  });

  test("the least bad where none has a third of the outline on each side", () => {
    // At the hoist, between both bends, and for a quarter of its length above the middle of the height.
    expect(chooseSplit(changed([0.02, 0.4, 0.06, 0.7]))).toBe("per fess");
  });

  test("by the changed paint alone, and per pale where it has no line", () => {
    const still = { a: "p1", b: "p3" };
    expect(chooseSplit(changed([0, 0, 0.6, 0.5], still))).toBe("per pale");
  });
});

test("the page names it for the style sheet and for readers", () => {
  expect(presentSplit(changed([0.9, 0, 1.5, 0.5]), createFormat("en"))).toEqual({
    name: "per-bend-sinister",
    caption: "Half original, half redesign",
  });
});

test("the original is on the side where lines of text begin, and above in both directions", () => {
  const corner = (split: Split, direction: "ltr" | "rtl") => showsOriginal(split, 0.1, 0.3, direction);
  expect(corner("per pale", "ltr")).toBe(true);
  expect(corner("per pale", "rtl")).toBe(false);
  // At a tenth of the width and three tenths of the height: left of the bend, and left of the bend sinister.
  expect([corner("per bend", "ltr"), corner("per bend sinister", "ltr")]).toEqual([true, true]);
  expect([corner("per bend", "rtl"), corner("per bend sinister", "rtl")]).toEqual([false, false]);
  expect([corner("per fess", "ltr"), corner("per fess", "rtl")]).toEqual([true, true]);
});
