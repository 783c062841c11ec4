import { expect, test } from "vitest";
import type { GalleryResult } from "../../../src/analysis/result.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { listOrders, presentPlaces, presentSeriesCards } from "../../../src/views/series/seriesplace.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const named = (slug: string) => ({ ...studyResult, study: { ...study, slug, title: slug.toUpperCase() } });
const series = (slug: string, studies: readonly string[]) => ({
  slug,
  file: `series/${slug}.md`,
  title: `Series ${slug}`,
  authors: [],
  entries: [...studies.map((one) => ({ study: one })), { flag: "flags/x.svg" }],
  body: "",
  bodyLine: 1,
  places: [],
});
const result: GalleryResult = {
  ...galleryResult,
  studies: ["a", "b", "c"].map(named),
  series: [series("one", ["c", "a", "b"]), series("two", ["a"])],
};

test("a study in two series has a place in both, with what stands before and after it", () => {
  const places = presentPlaces("a", listOrders(result), linkFrom("/studies/a/"), format);
  expect(places).toEqual([
    {
      place: "2 of 4 in",
      title: "Series one",
      address: "../../series/one/",
      previous: { title: "C", address: "../c/" },
      next: { title: "B", address: "../b/" },
    },
    {
      place: "1 of 2 in",
      title: "Series two",
      address: "../../series/two/",
      previous: undefined,
      next: undefined,
    },
  ]);
});

test("the front page counts what is published", () => {
  expect(
    presentSeriesCards(result, linkFrom("/"), format).map(({ address, count, plates }) => [
      address,
      count,
      plates.map(({ src }) => src),
    ]),
  ).toEqual([
    [
      "series/one/",
      "3 studies and 1 flag without a study",
      ["c", "a", "b"].map((slug) => `studies/${slug}/redesign.svg`),
    ],
    ["series/two/", "1 study and 1 flag without a study", ["studies/a/redesign.svg"]],
  ]);
});
