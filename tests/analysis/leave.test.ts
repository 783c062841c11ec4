import { expect, test } from "vitest";
import { leaveOut } from "../../src/analysis/leave.ts";
import type { NearFlag } from "../../src/analysis/likeness/likenessdata.ts";
import type { Problem } from "../../src/problem/problem.ts";
import { gallery, study, studyResult } from "../publish/sample.ts";
import { survey } from "../publish/surveyed.ts";

const near = (file: string, slug?: string): NearFlag => ({
  file,
  deltaE00: 3,
  orientation: "as it is",
  origin: slug === undefined ? "flag" : "redesign",
  ...(slug === undefined ? {} : { slug }),
});

const named = (slug: string, nearest: readonly NearFlag[] = []) => ({
  ...studyResult,
  study: { ...study, slug },
  likeness: { nearest, compared: 9 },
});

const problem: Problem = { rule: "study/fault", severity: "error", file: "b", reason: "A fault.", hint: "" };

test("a study that is left out is gone from the list, the likeness of others and the survey", () => {
  const flags = survey.entries.map((entry, index) => ({
    ...entry,
    slugs: index === 0 ? ["bad"] : ["bad", "good"],
  }));
  const [first, ...others] = flags;
  if (first === undefined) throw new Error("there are flags");
  const { drawing: _, ...undrawn } = first;
  const whole = {
    gallery,
    studies: [named("good", [near("x", "bad"), near("y"), near("z", "good")]), named("bad")],
    survey: { ...survey, entries: [undrawn, ...others] },
    leftOut: ["worse"],
    problems: [],
  };
  const rest = leaveOut(whole, new Set(["bad"]), [problem]);
  expect(rest.studies.map((one) => one.study.slug)).toEqual(["good"]);
  expect(rest.studies[0]?.likeness?.nearest.map(({ file }) => file)).toEqual(["y", "z"]);
  expect(rest.survey.entries.map(({ slugs }) => slugs)).toEqual(others.map(() => ["good"]));
  expect([rest.leftOut, rest.problems]).toEqual([["bad", "worse"], [problem]]);
  expect(JSON.stringify(rest)).not.toContain('"slug":"bad"');
});

test("a gallery without a survey has none after, and nobody left out leaves it as it was", () => {
  const plain = { gallery, studies: [named("good")], problems: [] };
  expect(leaveOut(plain, new Set(), [])).toEqual(plain);
});
