import { expect, test } from "vitest";
import { formatSurveyData } from "../../../src/analysis/survey/surveydata.ts";
import { findFaults } from "../../cli/schema.ts";
import { survey } from "../../publish/surveyed.ts";

const plain = { flags: survey.entries.map(({ flag }) => flag), failed: survey.failed };

test("fits its schema and says which version of it", () => {
  const text = formatSurveyData(plain);
  expect(findFaults("survey", text)).toEqual([]);
  expect(text.split("\n")[1]).toBe('  "schemaVersion": 2,');
});

test("a form of another version, or without one, does not fit", () => {
  const { schemaVersion, ...rest } = JSON.parse(formatSurveyData(plain));
  expect(findFaults("survey", JSON.stringify({ ...rest, schemaVersion: schemaVersion + 1 }))).toHaveLength(1);
  expect(findFaults("survey", JSON.stringify(rest))).toHaveLength(1);
});

test("the problem of a broken drawing has what a program needs, and null where there is no place", () => {
  const [failed] = JSON.parse(formatSurveyData(plain)).failed;
  expect(failed).toEqual({
    file: "flags/torn.svg",
    problem: expect.objectContaining({
      rule: "svg/not-well-formed",
      line: null,
      reason: "It ends too early.",
    }),
  });
});
