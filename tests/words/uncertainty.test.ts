import { expect, test } from "vitest";
import type { Doubt } from "../../src/measure/measurement.ts";
import { createFormat, plainFormat } from "../../src/words/format.ts";
import { describeDoubt, tellMeasure } from "../../src/words/uncertainty.ts";
import { measure } from "../cli/measured.ts";

test.each<[Doubt, string]>([
  [
    { about: "joined", count: 12 },
    "The drawing has more colours than are measured each: the 12 that show least are measured with one near them that shows more, or together, as “other colours”.",
  ],
  [{ about: "faint", count: 1 }, "One shape shows at less than half and is left out of the measurement."],
  [{ about: "faint", count: 3 }, "3 shapes show at less than half and are left out of the measurement."],
  [
    { about: "inexact", exactShare: 0.9799 },
    "Only 98 % of the drawing could be told apart exactly; its figures are less certain.",
  ],
  [
    {
      about: "effect",
      looks: [
        { kind: "blur", mode: "" },
        { kind: "blend", mode: "multiply" },
      ],
    },
    "The author's drawing has what is not shown here and not measured: a blur, colours mixed with what is below them (multiply).",
  ],
  [{ about: "nearLimit", names: ["red", "gold"] }, "Near the limit of sight: parts in red, gold."],
])("%j", (doubt, says) => expect(describeDoubt(doubt, plainFormat)).toBe(says));

test("what a drawing had beside shapes is told in the language of the page", () => {
  const doubt: Doubt = { about: "effect", looks: [{ kind: "shadow", mode: "" }] };
  expect(describeDoubt(doubt, createFormat("de"))).toMatch(/: ein Schatten\.$/);
  expect(describeDoubt({ about: "joined", count: 12 }, createFormat("de"))).toMatch(/„weitere Farben“\.$/);
});

test("a measure for machines says its doubts, and keeps its figures and their order", () => {
  const told = tellMeasure(measure);
  expect(told.warnings).toEqual(["Near the limit of sight: parts in green."]);
  expect(Object.keys(told)).toEqual(Object.keys(measure));
  expect(told.edges).toBe(measure.edges);
});
