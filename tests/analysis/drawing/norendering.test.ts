import { expect, test } from "vitest";
import { notDrawable, nothingDrawn } from "../../../src/analysis/drawing/norendering.ts";

test("an empty picture", () => {
  expect(nothingDrawn("a.svg")).toEqual({
    rule: "study/nothing-drawn",
    severity: "error",
    file: "a.svg",
    reason: "The drawing shows nothing.",
    hint: "Check that its shapes have a fill and lie inside the viewBox.",
  });
});

test.each([
  [new Error(" out of range\n"), "rendered", "The drawing could not be rendered: out of range."],
  ["no", "measured", "The drawing could not be measured: no."],
] as const)("%s while it was %s", (fault, done, reason) => {
  expect(notDrawable("a.svg", fault, done)).toMatchObject({
    rule: "study/not-drawable",
    severity: "error",
    file: "a.svg",
    reason,
  });
});
