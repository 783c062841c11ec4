import { afterAll, expect, test, vi } from "vitest";
import { Pool } from "../../../src/analysis/jobs/pool.ts";
import { compareAll } from "../../../src/analysis/likeness/comparegallery.ts";
import { study, studyResult } from "../../publish/sample.ts";

vi.setConfig({ testTimeout: 60_000 });
const pool = new Pool({ size: 1 });
afterAll(() => pool.close());
const cloth = { black: 5, white: 85 };

test("every redesign meets the other study's flags, and two that are one picture are told of on both", async () => {
  const other = { ...studyResult, study: { ...study, slug: "b-square" } };
  const away = {
    ...other,
    drawings: { ...other.drawings, original: studyResult.drawings.original.replace("#12235c", "#0b7a3b") },
  };
  const { studies, problems } = await compareAll(pool, [studyResult, away], [], [], cloth);
  // The second's original has another field, so that its redesign is a stranger to the first, though the same picture.
  const [first] = studies;
  expect(first?.likeness?.nearest[0]).toMatchObject({ origin: "redesign", slug: "b-square", deltaE00: 0 });
  expect(first?.likeness?.compared).toBe(2);
  const told = problems.filter(({ reason }) => reason.includes("the redesign of"));
  expect(told.map(({ rule, reason }) => [rule, /redesign of (\S+):/.exec(reason)?.[1]])).toEqual([
    ["study/likeness", "b-square"],
    ["study/likeness", "a-square"],
  ]);
});

test("two proposals for one flag, each with a copy of its drawing, may be alike: neither is told of", async () => {
  const copy = { ...studyResult, study: { ...study, slug: "b-square", original: "original.svg" } };
  const { studies, problems } = await compareAll(pool, [studyResult, copy], [], [], cloth);
  expect(problems).toEqual([]);
  expect(studies.map(({ likeness }) => likeness)).toEqual([undefined, undefined]);
});

test("a study alone has nothing to be compared with; one whose drawing is broken keeps the rest", async () => {
  const alone = await compareAll(pool, [studyResult], [], [], cloth);
  expect(alone).toEqual({ studies: [studyResult], problems: [] });
  const torn = { ...studyResult, drawings: { ...studyResult.drawings, redesign: "<svg" } };
  expect((await compareAll(pool, [torn], [], [], cloth)).studies).toEqual([torn]);
});
