import { expect, test } from "vitest";
import { surveyGallery } from "../../../src/analysis/survey/overview.ts";
import { comparison, study, studyResult } from "../../publish/sample.ts";
import { surveyedFlag } from "../../publish/surveyed.ts";

const flag = (clarity: number) => surveyedFlag("/home/somebody/flags/x.svg", clarity, "<svg/>");
const problem = {
  rule: "svg/empty",
  severity: "error",
  file: "/home/somebody/c.svg",
  reason: "Empty.",
} as const;

test("originals and other flags in one order; where the files lie on the disk is not told", () => {
  const { entries, failed } = surveyGallery(
    [studyResult],
    [
      { file: "flags/b.svg", outcome: { value: flag(90), problems: [] } },
      { file: "flags/a.svg", outcome: { value: flag(10), problems: [] } },
      { file: "flags/c.svg", outcome: { value: undefined, problems: [problem] } },
    ],
  );
  expect(entries.map(({ flag: { file }, slugs }) => [file, slugs])).toEqual([
    ["flags/a.svg", []],
    ["studies/a-square/original.svg", ["a-square"]],
    ["flags/b.svg", []],
  ]);
  expect(failed).toEqual([{ file: "flags/c.svg", problem: { ...problem, file: "flags/c.svg" } }]);
  expect(JSON.stringify([entries, failed])).not.toContain("somebody");
});

test("an original of two studies is one flag; a part that only selects is no colour of its own", () => {
  const shared = { ...study, original: "/flags/square.svg" };
  const edges = comparison.before.edges.map((edge) => ({
    ...edge,
    names: [edge.names[0], `${edge.names[1]}, selected part`] as const,
  }));
  const colours = comparison.before.colours.map((colour) =>
    colour.name === "red" ? { ...colour, name: "red, selected part", part: { of: "red" } } : colour,
  );
  const parted = { ...comparison, before: { ...comparison.before, colours, edges } };
  const { entries } = surveyGallery(
    [
      { ...studyResult, study: { ...shared, slug: "b" }, comparison: parted },
      { ...studyResult, study: { ...shared, slug: "a" } },
    ],
    [],
  );
  expect(entries.map(({ flag: { file }, slugs }) => [file, slugs])).toEqual([
    ["flags/square.svg", ["a", "b"]],
  ]);
  expect(entries[0]?.flag.weakestEdge?.names).toEqual(["dark blue", "red"]);
});

test("rivals with a copy of the drawing each are one flag, and so is a file of flags/ with that drawing", () => {
  const copy = { ...flag(90), drawing: studyResult.drawings.original };
  const { entries } = surveyGallery(
    [studyResult, { ...studyResult, study: { ...study, slug: "rival" } }],
    [{ file: "flags/a.svg", outcome: { value: copy, problems: [] } }],
  );
  expect(entries.map(({ flag: { file }, slugs }) => [file, slugs])).toEqual([
    ["studies/a-square/original.svg", ["a-square", "rival"]],
  ]);
});
