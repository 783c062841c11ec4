import { expect, test } from "vitest";
import type { MeasuredColour } from "../../src/measure/measurement.ts";
import { createFormat } from "../../src/words/format.ts";
import { describePaints, findChanged, findPaint, isReplaced, nameWhole } from "../../src/words/paintname.ts";
import { comparison, studyResult } from "../publish/sample.ts";

const format = createFormat("en");
const [blue, red, white] = comparison.before.colours as readonly [
  MeasuredColour,
  MeasuredColour,
  MeasuredColour,
];

test("finds a paint by its id", () => {
  expect(findPaint(comparison.before, "p2")?.name).toBe("red");
  expect(findPaint(comparison.before, "p9")).toBeUndefined();
});

test("the changed paint before and after", () => {
  expect(findChanged(studyResult)).toEqual([
    { hex: "#c8202f", name: "red" },
    { hex: "#f4c430", name: "yellow" },
  ]);
});

test("where only a part changed, it is the part that is meant", () => {
  const part = { ...red, id: "p2s", name: "red, selected part", part: { of: "red" } };
  const colours = [blue, red, white, part];
  const only = { ...comparison, before: { ...comparison.before, colours } };
  expect(colours.filter((colour) => isReplaced(only, colour, "#c8202f"))).toEqual([part]);
  expect(findChanged({ ...studyResult, comparison: only })[0]).toEqual({ hex: "#c8202f", name: "red" });
});

test("says of which colours a flag is made", () => {
  expect(describePaints(comparison.before, format)).toBe("mostly dark blue, with red and white");
  const even = [blue, red, white].map((colour) => ({ ...colour, share: 1 / 3 }));
  expect(describePaints({ ...comparison.before, colours: even }, format)).toBe("dark blue, red, and white");
  expect(describePaints({ ...comparison.before, colours: [blue] }, format)).toBe("dark blue all over");
  expect(describePaints({ ...comparison.before, colours: [] }, format)).toBe("an empty drawing");
});

test("the selected part of a paint is called after the whole", () => {
  expect(nameWhole({ name: "brown, selected part", part: { of: "brown" } })).toBe("brown");
  expect(nameWhole({ name: "dark brown" })).toBe("dark brown");
});
