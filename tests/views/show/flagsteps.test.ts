import { expect, test } from "vitest";
import { listSteps } from "../../../src/views/show/showsteps.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, gallery, studyResult } from "../../publish/sample.ts";

const list = (result: typeof studyResult) =>
  listSteps(result, gallery, "/studies/a-square/show/", createFormat("en"));

test("the weakest edge is said with its names, and shown on the flag and close by", () => {
  expect(list(studyResult).find(({ name }) => name === "the-weakest-edge")).toMatchObject({
    says: "Dark blue / red: contrast 25%",
    speech: "The weakest edge is where dark blue meets red. It is weak (25%); from 45% on, an edge is clear.",
    picture: { kind: "edge", plate: { alt: "The place where dark blue / red meet" } },
  });
});

test("a flag where nothing has to be seen first is only shown from afar", () => {
  const { focus } = comparison.before;
  const plain = {
    ...comparison,
    before: { ...comparison.before, focus: { ...focus, source: "none" as const } },
  };
  const names = list({ ...studyResult, comparison: plain }).map(({ name }) => name);
  expect(names).not.toContain("what-has-to-be-seen");
  expect(names).toContain("from-afar");
});
