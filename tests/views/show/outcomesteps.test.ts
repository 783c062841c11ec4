import { expect, test } from "vitest";
import { listSteps } from "../../../src/views/show/showsteps.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, gallery, studyResult } from "../../publish/sample.ts";

const list = (result: typeof studyResult) =>
  listSteps(result, gallery, "/studies/a-square/show/", createFormat("en"));

test("both flags stand at the price and at the question, which tells no number", () => {
  const [price, question] = ["the-price", "the-question"].map((name) =>
    list(studyResult).find((step) => step.name === name),
  );
  expect([price?.picture.kind, question?.picture.kind]).toEqual(["pair", "pair"]);
  expect(price?.says).toMatch(/\d+%/);
  expect(`${question?.heading} ${question?.says}`).not.toMatch(/\d/);
});

test("no more edges are told than are read from afar, and some where none moves", () => {
  const [edge] = comparison.edges;
  if (edge === undefined) throw new Error("no edge");
  const many = {
    ...comparison,
    edges: Array.from({ length: 9 }, () => ({ ...edge, outcome: "same" as const })),
  };
  const step = list({ ...studyResult, comparison: many }).find(({ name }) => name === "better-and-worse");
  expect(step?.picture.kind === "ruler" && step.picture.ruler.rows.length).toBe(6);
});
