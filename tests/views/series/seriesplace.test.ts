import { expect, test } from "vitest";
import type { GalleryResult } from "../../../src/analysis/result.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { indexSeries, presentPlaces, presentSeriesCards } from "../../../src/views/series/seriesplace.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult, study, studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const format = createFormat("en");
const named = (slug: string) => ({ ...studyResult, study: { ...study, slug, title: slug.toUpperCase() } });
const series = (slug: string, studies: readonly string[]) => ({
  slug,
  file: `series/${slug}.md`,
  title: `Series ${slug}`,
  authors: [],
  entries: [...studies.map((one) => ({ study: one })), { flag: "flags/harbour-pilots.svg" }],
  body: "",
  bodyLine: 1,
  places: [],
});
const pilots = "survey/flags/harbour-pilots.svg";
const result: GalleryResult = {
  ...galleryResult,
  survey,
  studies: ["a", "b", "c"].map(named),
  series: [series("one", ["c", "a", "b"]), series("two", ["a"])],
};

test("a study in two series has a place in both, with what stands before and after it", () => {
  const places = presentPlaces("a", indexSeries(result), linkFrom("/studies/a/"), format);
  expect(places).toEqual([
    {
      number: "2",
      count: "4",
      title: "Series one",
      address: "../../series/one/",
      previous: { title: "C", address: "../c/" },
      next: { title: "B", address: "../b/" },
    },
    {
      number: "1",
      count: "2",
      title: "Series two",
      address: "../../series/two/",
      previous: undefined,
      next: undefined,
    },
  ]);
});

test("the front page counts and shows what is published, the flags without a study too", () => {
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
      [...["c", "a", "b"].map((slug) => `studies/${slug}/redesign.svg`), pilots],
    ],
    ["series/two/", "1 study and 1 flag without a study", ["studies/a/redesign.svg", pilots]],
  ]);
});

test("a card shows sixteen flags at most, and says so", () => {
  const many = series("long", Array<string>(17).fill("a"));
  const [card] = presentSeriesCards({ ...result, series: [many] }, linkFrom("/"), format);
  expect(card?.plates.length).toBe(16);
  expect(card?.count).toBe("17 studies and 1 flag without a study, the first 16 shown");
});
