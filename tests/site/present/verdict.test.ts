import { expect, test } from "vitest";
import type { Comparison, Outcome } from "../../../src/measure/comparison.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { describeChange, describeVerdict } from "../../../src/site/present/verdict.ts";
import { comparison, studyResult } from "../sample.ts";

const format = createFormat("en");

test("says the change by names, and where it was made", () => {
  expect(describeChange(studyResult)).toBe("Red becomes yellow.");
  const only = { ...studyResult, change: { ...studyResult.change, only: "#square" } };
  expect(describeChange(only)).toBe("Red becomes yellow, only in the selected part (#square).");
  const called = { ...only, change: { ...only.change, part: "the square" } };
  expect(describeChange(called)).toBe("Red becomes yellow, only in the square.");
});

test("says the verdict with the numbers that made it", () => {
  expect(describeVerdict(comparison, format)).toEqual({
    word: "Clearer",
    sentence:
      "The clear-edge share goes from 43% to 100%, clarity goes from 74% to 100%. 1 of 2 edges gained.",
  });
});

function withOutcomes(outcomes: readonly Outcome[]): Comparison {
  const [edge] = comparison.edges;
  if (edge === undefined) throw new Error("the sample has edges");
  return { ...comparison, edges: outcomes.map((outcome) => ({ ...edge, outcome })) };
}

test.each<[readonly Outcome[], string]>([
  [["same"], "Its one edge stays, within 3 points."],
  [["same", "same"], "All edges stay, within 3 points."],
  [["merged"], "Its one edge is merged."],
  [["lost", "gained", "same", "gained"], "2 of 4 edges gained, 1 lost."],
])("counts the edges that moved: %j", (outcomes, sentence) => {
  expect(describeVerdict(withOutcomes(outcomes), format).sentence).toMatch(sentence);
});

test("one colour has nothing to measure", () => {
  const none: Comparison = { ...comparison, edges: [], clearEdgeShare: [null, null], clarity: [null, null] };
  expect(describeVerdict(none, format).sentence).toBe("One colour: no edges to measure.");
});

test("a colour that keeps its word says in what it changes", () => {
  const [one, red, white] = comparison.after.colours;
  if (!one || !red || !white) throw new Error("the sample has three paints");
  const darker = { ...red, hex: "#8c1f2b" as const, name: "darker red" };
  const after = { ...comparison.after, colours: [one, darker, white] };
  const result = {
    ...studyResult,
    change: { replace: "#c8202f", with: "#8c1f2b" },
    comparison: { ...comparison, after },
  } as const;
  expect(describeChange(result)).toBe("Red becomes darker red.");
});
