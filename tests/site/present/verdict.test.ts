import { expect, test } from "vitest";
import type { Comparison, Outcome } from "../../../src/measure/comparison.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import {
  capitalise,
  describeChange,
  describeOutcomes,
  describeVerdict,
} from "../../../src/site/present/verdict.ts";
import { comparison, studyResult } from "../sample.ts";

const format = createFormat("en");

test("says the change by names, and where it was made", () => {
  expect(describeChange(studyResult)).toBe("Red becomes yellow.");
  const only = { ...studyResult, change: { ...studyResult.change, only: "#square" } };
  expect(describeChange(only)).toBe("Red becomes yellow, only in #square.");
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
  [["same"], "Its one edge stays as it is."],
  [["same", "same"], "No edge moves."],
  [["merged"], "Its one edge is merged."],
  [["lost", "gained", "same", "gained"], "2 of 4 edges gained, 1 lost."],
])("counts the edges that moved: %j", (outcomes, sentence) => {
  expect(describeVerdict(withOutcomes(outcomes), format).sentence).toMatch(sentence);
});

test("one colour has nothing to measure", () => {
  const none: Comparison = { ...comparison, edges: [], clearEdgeShare: [null, null], clarity: [null, null] };
  expect(describeVerdict(none, format).sentence).toBe("One colour: no edges to measure.");
  expect(describeOutcomes(none, format)).toEqual([]);
});

test("says each edge in words, what is easier to see first", () => {
  expect(describeOutcomes(comparison, format)).toEqual([
    {
      outcome: "gained",
      heading: "Gained",
      sentences: ["Dark blue / red becomes dark blue / yellow: contrast 25 to 67, weak to strong."],
    },
    { outcome: "same", heading: "Same", sentences: ["Dark blue / white: contrast stays at 84, strong."] },
  ]);
});

test("says where two colours become one, and where two come to meet", () => {
  const merged = describeOutcomes(withOutcomes(["merged"]), format)[0]?.sentences[0];
  expect(merged).toBe("Dark blue / white become one colour where they meet, over 1.50 flag heights.");
  const [edge] = comparison.edges;
  if (edge === undefined) throw new Error("the sample has edges");
  const parted = {
    ...comparison,
    edges: [{ ...edge, contrast: [null, 84.2] as const, outcome: "parted" as const }],
  };
  expect(describeOutcomes(parted, format)[0]?.sentences[0]).toBe(
    "Dark blue / white now meet: contrast 84, strong.",
  );
});

test("only the first letter is raised", () => {
  expect(capitalise("dark Blue")).toBe("Dark Blue");
});
