import { expect, test } from "vitest";
import { findHomes, leaveOriginals } from "../../../src/analysis/survey/sameflag.ts";
import { study, studyResult } from "../../publish/sample.ts";
import { surveyedFlag } from "../../publish/surveyed.ts";

const other = {
  ...studyResult,
  study: { ...study, slug: "other" },
  drawings: { ...studyResult.drawings, original: "<svg/>" },
};
const flagOf = (file: string, drawing: string) => ({
  file,
  outcome: { value: surveyedFlag(file, 50, drawing), problems: [] },
});

test("studies with a copy of one drawing each are of the flag of the first; another drawing is another flag", () => {
  const rival = { ...studyResult, study: { ...study, slug: "rival" } };
  expect([...findHomes([studyResult, rival, other]).values()]).toEqual([
    "studies/a-square/original.svg",
    "studies/a-square/original.svg",
    "studies/other/original.svg",
  ]);
});

test("a file of flags/ with the drawing of a study is that study's flag; files alike without a study stay two", () => {
  const flags = [flagOf("flags/a.svg", "<svg/>"), flagOf("flags/b.svg", "<svg> </svg>")];
  const twin = flagOf("flags/c.svg", "<svg> </svg>");
  const left = leaveOriginals([...flags, twin], [other]);
  expect(left.map(({ file }) => file)).toEqual(["flags/b.svg", "flags/c.svg"]);
});
