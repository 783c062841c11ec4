import { expect, test } from "vitest";
import { studyOf } from "../../../src/content/series/series.ts";

test("an entry is a study, or a flag without one", () => {
  expect(studyOf({ study: "ferry" })).toBe("ferry");
  expect(studyOf({ flag: "flags/a.svg", name: "The a" })).toBeUndefined();
});
