import { expect, test } from "vitest";
import { presentSeriesShows } from "../../../src/views/show/seriesshow.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const series = {
  slug: "quay",
  file: "series/quay.md",
  title: "From the quay",
  authors: ["Ines Valcourt"],
  entries: [{ study: "a-square" }, { study: "gone" }],
  closing: "Which would you take?",
  body: "",
  bodyLine: 1,
  places: [],
};
const galleryResult = { gallery, studies: [studyResult], series: [series], problems: [] };

test("a series has an opening, a short run of each study, and its question", () => {
  const [show] = presentSeriesShows(galleryResult, format);
  expect([show?.folder, show?.back.address]).toEqual(["series/quay/show", "../"]);
  expect(show?.steps.map(({ anchor }) => anchor)).toEqual([
    "the-opening",
    "a-square-the-flag",
    "a-square-the-weakest-edge",
    "a-square-before",
    "a-square-after",
    "a-square-the-price",
    "the-closing",
  ]);
  expect(show?.steps.at(-1)?.heading).toBe("Which would you take?");
});

test("in a series too a study leaves out what its author leaves out", () => {
  const study = { ...studyResult.study, show: { without: ["before", "the-weakest-edge"] } };
  const [show] = presentSeriesShows({ ...galleryResult, studies: [{ ...studyResult, study }] }, format);
  expect(show?.steps.map(({ name }) => name)).toEqual([
    "the-opening",
    "the-flag",
    "after",
    "the-price",
    "the-closing",
  ]);
});

test("a flag with several studies in one series is shown once", () => {
  const rival = { ...studyResult, study: { ...studyResult.study, slug: "a-rival" } };
  const entry = { drawing: "", flag: { file: "flags/square.svg" }, slugs: ["a-square", "a-rival"] };
  const result = {
    ...galleryResult,
    studies: [studyResult, rival],
    series: [{ ...series, entries: [{ study: "a-square" }, { study: "a-rival" }] }],
    survey: { entries: [entry] },
  } as unknown as Parameters<typeof presentSeriesShows>[0];
  const [show] = presentSeriesShows(result, format);
  expect(show?.steps.map(({ anchor }) => anchor).slice(6, 9)).toEqual([
    "a-rival-before",
    "a-rival-after",
    "a-rival-the-price",
  ]);
  const [opening] = show?.steps ?? [];
  expect(opening?.picture.kind === "strip" && opening.picture.plates.length).toBe(1);
  expect(show?.steps[6]?.heading).toMatch(/: another proposal$/);
  expect(show?.steps[6]?.speech).toMatch(/: another proposal\. First words\.$/);
});
