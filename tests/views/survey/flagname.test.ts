import { expect, test } from "vitest";
import {
  anchorOf,
  findShown,
  nameEntry,
  nameFile,
  placeDrawing,
  placeEntry,
} from "../../../src/views/survey/flagname.ts";
import { plainFormat } from "../../../src/words/format.ts";
import { study, studyResult } from "../../publish/sample.ts";
import { survey, surveyedGallery } from "../../publish/surveyed.ts";

const [original, pilots] = survey.entries;
if (original === undefined || pilots === undefined) throw new Error("the sample has two flags");

test("a flag is called what the credit of its study says, else by its folder or file", () => {
  expect(nameEntry(original, [studyResult])).toBe("The square");
  const { credit: _credit, ...uncredited } = study;
  expect(nameEntry(original, [{ ...studyResult, study: uncredited }])).toBe("A square");
  expect(nameEntry(pilots, [studyResult])).toBe("Harbour pilots");
});

test("a drawing without a name is called as its file", () => {
  expect(nameFile("pages/guide/old-quay.svg")).toBe("Old quay");
});

test("where it is shown", () => {
  expect([original, pilots].map(placeEntry)).toEqual([
    "/studies/a-square/",
    "/survey/#flag-flags-harbour-pilots",
  ]);
  expect([original, pilots].map(placeDrawing)).toEqual([
    "/studies/a-square/original.svg",
    "/survey/flags/harbour-pilots.svg",
  ]);
  expect(anchorOf(pilots)).toBe("flag-flags-harbour-pilots");
});

test("a near flag leads to its study or to its line of the survey; one of a collection to nothing", () => {
  const near = { deltaE00: 3, orientation: "as it is" } as const;
  expect(
    findShown({ ...near, file: "x", origin: "redesign", slug: "a-square" }, surveyedGallery, plainFormat),
  ).toMatchObject({
    name: "the redesign of “A lighter square”",
    drawing: "/studies/a-square/redesign.svg",
    page: "/studies/a-square/",
  });
  expect(
    findShown({ ...near, file: "flags/harbour-pilots.svg", origin: "flag" }, surveyedGallery, plainFormat)
      ?.page,
  ).toBe("/survey/#flag-flags-harbour-pilots");
  expect(
    findShown({ ...near, file: "old/x.svg", origin: "collection" }, surveyedGallery, plainFormat),
  ).toBeUndefined();
});
