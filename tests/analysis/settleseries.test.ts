import { expect, test } from "vitest";
import { findUnshown, settleSeries } from "../../src/analysis/settleseries.ts";
import type { Series } from "../../src/content/series/series.ts";
import { galleryResult, study } from "../publish/sample.ts";

const at = (line: number) => ({ place: { line, column: 3, length: 5 }, sourceLine: "" });
const series: Series = {
  slug: "quay",
  file: "series/quay.md",
  title: "From the quay",
  authors: [],
  entries: [{ study: study.slug }, { study: "draft" }, { flag: "flags/none.svg" }],
  body: "",
  bodyLine: 1,
  places: [at(4), at(5), at(6)],
};

test("what is not published is named at its place, and the order of the others stays", () => {
  const { series: settled, problems } = settleSeries([series], galleryResult);
  expect(settled).toEqual([{ ...series, entries: [{ study: study.slug }], places: [at(4)] }]);
  expect(problems.map(({ rule, severity, place }) => [rule, severity, place?.line])).toEqual([
    ["series/left-out", "warning", 5],
    ["series/left-out", "warning", 6],
  ]);
});

test("a series of which nothing is left goes", () => {
  expect(settleSeries([series], { studies: [] }).series).toEqual([]);
});

test("a page names the studies that it cannot show yet, and not those that nobody knows", () => {
  const body = `Text.\n\n::study{${study.slug}}\n\n::study{draft}\n\n::study{nobody}\n`;
  const page = { path: "about", file: "pages/about.md", title: "About", body, bodyLine: 4 };
  const found = findUnshown([page], { studies: galleryResult.studies, folders: [study.slug, "draft"] });
  expect(found.map(({ rule, severity, file, place }) => [rule, severity, file, place?.line])).toEqual([
    ["page/left-out", "warning", "pages/about.md", 8],
  ]);
});
