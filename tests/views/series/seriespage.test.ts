import { expect, test } from "vitest";
import type { GalleryResult } from "../../../src/analysis/result.ts";
import { formatSeriesPath, presentSeries } from "../../../src/views/series/seriespage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult, series as quay, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const second = { ...studyResult, study: { ...study, slug: "second", title: "Second" } };
const result: GalleryResult = { ...galleryResult, studies: [studyResult, second], series: [quay] };

test("studies stand in the order of the series, numbered, with change, verdict and price", () => {
  const [page] = presentSeries(result, format);
  expect(page).toMatchObject({
    title: "From the quay",
    count: "2 studies",
    closing: "Which would you change?",
  });
  expect(page?.items.map((item) => [item.number, "card" in item && item.card.address])).toEqual([
    ["1", "../../studies/second/"],
    ["2", `../../studies/${study.slug}/`],
  ]);
  expect(page?.gain?.rows).toHaveLength(2);
});

test("HTML in the opening is text; an author without a study has no page to lead to", () => {
  const [page] = presentSeries(result, format);
  expect(page?.opening.join("")).toBe("<p>Look <em>twice</em>.</p>\n<p>&lt;b&gt;No&lt;/b&gt;</p>");
  expect(page?.people.map(({ text, address }) => [text, address])).toEqual([
    ["Ines Valcourt", "../../authors/ines-valcourt/"],
    [" and ", undefined],
    ["Nobody Here", undefined],
  ]);
});

test("the record names its studies in order", () => {
  const [page] = presentSeries(
    { ...result, gallery: { ...result.gallery, address: "https://flags.example/" } },
    format,
  );
  const record = JSON.parse(page?.frame.share?.record ?? "{}") as { hasPart: readonly object[] };
  expect(record.hasPart).toMatchObject([
    { position: 1, url: "https://flags.example/studies/second/" },
    { position: 2, url: `https://flags.example/studies/${study.slug}/` },
  ]);
});

test("the newest series first, those without a date last", () => {
  const { date: _, ...undated } = quay;
  const all = [{ ...undated, slug: "a" }, { ...quay, slug: "b", date: "2025-01-01" }, quay];
  expect(presentSeries({ ...result, series: all }, format).map(({ slug }) => slug)).toEqual([
    "quay",
    "b",
    "a",
  ]);
});

test("no slug leads out of the folder", () => {
  expect(formatSeriesPath("quay")).toBe("/series/quay/");
  expect(() => formatSeriesPath("../quay")).toThrow(RangeError);
});
