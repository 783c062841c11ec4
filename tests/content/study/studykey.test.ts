import { expect, test } from "vitest";
import { parse } from "yaml";
import { studyExamples, studySchema } from "../../../src/content/study/studykey.ts";
import { printStudy } from "../../analysis/fixture.ts";

test("every key has an example, and every example is one of a key", () => {
  const keys = Object.keys(studySchema.shape);
  expect(Object.keys(studyExamples).filter((path) => !path.includes("."))).toEqual(keys);
});

test("what a message tells an author to type is accepted", () => {
  for (const [path, example] of Object.entries(studyExamples)) {
    if (path.includes(".")) continue;
    // A decision is one of a study that is decided.
    const status = path === "decided" ? ["status: adopted"] : [];
    expect(printStudy(...status, example)).toBe("");
  }
});

test("the example of an inner key is a value of that key", () => {
  for (const [path, example] of Object.entries(studyExamples)) {
    const key = path.split(".").at(-1) ?? "";
    if (path.includes(".") && key !== "*") expect(Object.keys(parse(example))).toEqual([key]);
  }
});
