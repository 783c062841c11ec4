import { expect, test } from "vitest";
import type { GalleryResult } from "../../../src/analysis/result.ts";
import { presentSeriesSheets, presentSheet } from "../../../src/views/sheet/sheetpage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, galleryResult, series as quay, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const second = { ...studyResult, study: { ...study, slug: "second", title: "Second" } };
const result: GalleryResult = { ...galleryResult, studies: [studyResult, second], series: [quay] };

test("a study has a handout, a worksheet and the answers, a page each", () => {
  const { parts, folder, back, foot } = presentSheet(studyResult, gallery, format);
  expect(parts.map(({ kind, id, page }) => [kind, id, page])).toEqual([
    ["handout", "handout", "1 / 3"],
    ["worksheet", "worksheet", "2 / 3"],
    ["answers", "answers", "3 / 3"],
  ]);
  expect([folder, back.address]).toEqual(["studies/a-square/sheet", "../"]);
  expect(foot).toBe("Flags of the Sound · https://flags.example/sound/studies/a-square/");
});

test("a series has contents, then in its order all handouts, all worksheets, all answers", () => {
  const [sheet] = presentSeriesSheets(result, format);
  expect(sheet?.parts.map(({ id }) => id)).toEqual([
    "contents",
    "handout-second",
    `handout-${study.slug}`,
    "worksheet-second",
    `worksheet-${study.slug}`,
    "answers-second",
    `answers-${study.slug}`,
  ]);
});

test("the contents name the page on which each part stands", () => {
  const [sheet] = presentSeriesSheets(result, format);
  const [contents, ...rest] = sheet?.parts ?? [];
  if (contents?.kind !== "contents") throw new Error("no contents");
  const told = contents.lines.flatMap(({ pages }) => pages.map(({ anchor, number }) => [anchor, number]));
  const there = rest.map(({ id, page }) => [`#${id}`, page.split(" / ")[0]]);
  expect(told.sort()).toEqual(there.sort());
  expect(contents.lines.map(({ says }) => says)).toEqual(["Second", study.title]);
});
