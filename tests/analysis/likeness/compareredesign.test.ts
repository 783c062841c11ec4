import { expect, test } from "vitest";
import { compareRedesign, type KnownFlag } from "../../../src/analysis/likeness/compareredesign.ts";
import { gridOf } from "../../../src/analysis/likeness/likenessreport.ts";
import { drawing, stripes } from "../drawing.ts";
import { parseText, writeStudy } from "../fixture.ts";

const gridOfStripes = async (...colours: readonly string[]) => {
  const { value } = await gridOf("a.svg", drawing(stripes(...colours)), { black: 5, white: 85 });
  if (value === undefined) throw new Error("no grid");
  return value;
};
const { value: study } = parseText(writeStudy());
const grids = {
  original: await gridOfStripes("#12235c", "#ffffff"),
  redesign: await gridOfStripes("#c8202f", "#ffffff"),
};

test("a near flag is a warning at the new colour; the study's own flags are none of the others", async () => {
  if (study === undefined) throw new Error("the fixture is a study");
  const near = await gridOfStripes("#cc2233", "#ffffff");
  const known: readonly KnownFlag[] = [
    { file: "studies/ferry/original.svg", origin: "original", slug: "ferry", grid: grids.original },
    {
      file: "own",
      origin: "redesign",
      slug: "ferry",
      original: "studies/ferry/original.svg",
      grid: grids.redesign,
    },
    { file: "rival", origin: "redesign", slug: "b", original: "studies/ferry/original.svg", grid: near },
    { file: "flags/far.svg", origin: "flag", grid: await gridOfStripes("#000000", "#0b7a3b") },
    { file: "collection/near.svg", origin: "collection", grid: near },
  ];
  const { likeness, problems } = compareRedesign(study, grids, known);
  expect(likeness.compared).toBe(2);
  expect(likeness.nearest.map(({ file, origin }) => [file, origin])).toEqual([
    ["collection/near.svg", "collection"],
    ["flags/far.svg", "flag"],
  ]);
  expect(problems).toMatchObject([
    { rule: "study/likeness", severity: "warning", file: "ferry/study.md", place: { line: 4 } },
  ]);
  expect(problems[0]?.reason).toMatch(
    /^The redesign looks much like collection\/near\.svg: they differ by \d\.\d \(mean ΔE00 over the flag\)\.$/,
  );
});

test("nothing to compare with", () => {
  if (study === undefined) throw new Error("the fixture is a study");
  expect(compareRedesign(study, grids, [])).toEqual({ likeness: { nearest: [], compared: 0 }, problems: [] });
});
