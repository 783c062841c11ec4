import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { callFlag, checkFlagNames } from "../../../src/analysis/survey/flagcalled.ts";
import { study, studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const named = (...flags: readonly (string | undefined)[]): readonly StudyResult[] =>
  flags.map((flag, index) => {
    const { flag: _, ...unnamed } = study;
    const slug = `s${index}`;
    return { ...studyResult, study: flag === undefined ? { ...unnamed, slug } : { ...unnamed, slug, flag } };
  });
const callOf = (flags: readonly (string | undefined)[], known?: string) =>
  callFlag(
    named(...flags).map((one) => one.study),
    (name) => name === known,
  );

test("a name that the flag had before, then the one of most studies, then the first", () => {
  expect(callOf(["Old", "Gull", "gull "])).toBe("Gull");
  expect(callOf(["Old", "Gull"])).toBe("Old");
  expect(callOf(["Old", "Old", "Gull"], "Gull")).toBe("Gull");
  expect(callOf([undefined, "Gull"])).toBe("Gull");
  expect(callOf([undefined])).toBeUndefined();
});

test("who calls it otherwise is told what the others call it", () => {
  const [entry] = survey.entries;
  const results = named("Gull", "GULL", "Stolen", undefined);
  const entries = [{ ...(entry as NonNullable<typeof entry>), slugs: results.map((one) => one.study.slug) }];
  expect(checkFlagNames({ entries, failed: [] }, results)).toMatchObject([
    {
      rule: "study/flag-called",
      severity: "warning",
      reason: "The flag is called “Stolen” here, and “Gull” in other studies of the same drawing.",
      hint: "Type, if it is the same flag: flag: Gull",
    },
  ]);
});
