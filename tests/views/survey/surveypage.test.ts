import { expect, test } from "vitest";
import type { SurveyEntry } from "../../../src/analysis/survey/surveyentry.ts";
import { presentSurvey } from "../../../src/views/survey/surveypage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult } from "../../publish/sample.ts";
import { survey, surveyedGallery } from "../../publish/surveyed.ts";

const format = createFormat("en");

test("a row for each flag in the order of the survey, the failed named, the files beside", () => {
  const page = presentSurvey(surveyedGallery, format);
  expect(page.count).toBe("3 flags, least clear first.");
  expect(page.rows.map(({ name }) => name)).toEqual(["The square", "Harbour pilots", "Plain"]);
  expect(page.failed).toEqual([{ file: "flags/torn.svg", reason: "It ends too early." }]);
  expect(page.downloads.map(({ address }) => address)).toEqual(["survey.csv", "survey.json"]);
  expect([page.rest, page.more]).toEqual([undefined, undefined]);
});

test("says how many have a weak edge and how many one change would help", () => {
  // The square's weakest edge has 24.6 and its change is to red; the other two need none.
  expect(presentSurvey(surveyedGallery, format).told).toBe(
    "In 1 the weakest edge has a contrast under 30%; in 1 one change of colour brings 5 points of clarity or more.",
  );
  const entries = survey.entries.slice(1);
  expect(presentSurvey({ ...surveyedGallery, survey: { entries, failed: [] } }, format).told).toBe(
    "In none the weakest edge has a contrast under 30%; in none one change of colour brings 5 points of clarity or more.",
  );
  const one = { entries: survey.entries.slice(0, 1), failed: [] };
  expect(presentSurvey({ ...surveyedGallery, survey: one }, format).told).toBeUndefined();
});

test("the form offers the colours to change first, and studies where some flags have none", () => {
  expect(presentSurvey(surveyedGallery, format).finder).toEqual({
    first: ["red"],
    hasBoth: true,
    found: "# of 3 flags",
    all: "3 flags",
  });
});

test("a gallery without a survey has an empty page", () => {
  const page = presentSurvey(galleryResult, format);
  expect([page.count, page.rows, page.field, page.finder]).toEqual(["0 flags.", [], undefined, undefined]);
});

test("of ten thousand flags the page lists the thousand least clear and says so", () => {
  const [entry] = survey.entries;
  if (entry === undefined) throw new Error("the sample has an entry");
  const entries = Array.from(
    { length: 10_000 },
    (_, index): SurveyEntry => ({
      ...entry,
      slugs: [],
      flag: { ...entry.flag, file: `flags/f${index}.svg` },
    }),
  );
  const page = presentSurvey({ ...surveyedGallery, survey: { entries, failed: [] } }, format);
  expect(page.rows).toHaveLength(36);
  expect(page.more?.rows).toHaveLength(964);
  expect(page.more?.label).toBe("964 more flags");
  expect(page.rest).toBe("The 1000 least clear are listed; the other 9000 are in the files.");
});
