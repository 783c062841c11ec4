import { expect, test } from "vitest";
import { findAdoptedTwice } from "../../../src/analysis/survey/adoptedtwice.ts";
import { study, studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const named = (slug: string, status: typeof study.status) => ({
  ...studyResult,
  study: { ...study, slug, title: slug, status },
});
const [entry] = survey.entries;
const flags = (...slugs: readonly (readonly string[])[]) => ({
  entries: slugs.map((some) => ({ ...(entry as NonNullable<typeof entry>), slugs: some })),
  failed: [],
});
const find = (slugs: readonly (readonly string[])[], ...studies: ReturnType<typeof named>[]) =>
  findAdoptedTwice(flags(...slugs), studies).map(
    ({ rule, severity, reason }) => `${severity} ${rule} ${reason}`,
  );

test("two adopted studies of one flag are both told, each of the other", () => {
  expect(find([["a", "b", "c"]], named("a", "adopted"), named("b", "open"), named("c", "adopted"))).toEqual([
    "warning study/adopted-twice This study is adopted, and so is “c”, another one of the same flag.",
    "warning study/adopted-twice This study is adopted, and so is “a”, another one of the same flag.",
  ]);
});

test("adopted studies of two flags do not contradict each other", () => {
  expect(
    find([["a", "b"], ["c"]], named("a", "adopted"), named("b", "declined"), named("c", "adopted")),
  ).toEqual([]);
});
