import { expect, test } from "vitest";
import { presentShow } from "../../../src/views/show/showpage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, gallery, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const anchorsOf = (result: typeof studyResult) =>
  presentShow(result, gallery, format).steps.map(({ anchor }) => anchor);

test("one idea a step, in the order in which a lesson is told", () => {
  expect(anchorsOf(studyResult)).toEqual([
    "the-flag",
    "the-weakest-edge",
    "from-afar",
    "before",
    "after",
    "better-and-worse",
    "the-price",
    "to-other-eyes",
    "the-question",
  ]);
});

test("a flag of one colour has no step about edges", () => {
  const plain = {
    ...studyResult,
    comparison: {
      ...comparison,
      before: { ...comparison.before, edges: [], weakestEdge: null },
      after: { ...comparison.after, edges: [], weakestEdge: null },
      edges: [],
      clarity: [null, null] as const,
    },
  };
  expect(anchorsOf(plain)).toEqual([
    "the-flag",
    "before",
    "after",
    "the-price",
    "to-other-eyes",
    "the-question",
  ]);
});

test("the redesign says that it is unofficial, and pictures are those of the study", () => {
  const { steps, back, folder } = presentShow(studyResult, gallery, format);
  expect([folder, back.address]).toEqual(["studies/a-square/show", "../"]);
  for (const { picture, says } of steps)
    if (picture.kind === "flag" && picture.plate.src.endsWith("redesign.svg"))
      expect(says).toContain("unofficial study");
  expect(steps.find(({ anchor }) => anchor === "after")).toMatchObject({
    heading: "Red becomes yellow.",
    picture: { plate: { src: "../redesign.svg" } },
  });
});
