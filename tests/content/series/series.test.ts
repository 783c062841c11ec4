import { expect, test } from "vitest";
import { studyOf, subjectOf } from "../../../src/content/series/series.ts";

test("an entry is a study, or a flag without one", () => {
  expect(studyOf({ study: "ferry" })).toBe("ferry");
  expect(studyOf({ flag: "flags/a.svg", name: "The a" })).toBeUndefined();
  expect([{ study: "ferry" }, { flag: "flags/a.svg" }].map(subjectOf)).toEqual(["ferry", "flags/a.svg"]);
});
