import { expect, test } from "vitest";
import { listSurveyFiles } from "../../../src/publish/feeds/surveyfiles.ts";
import { findFaults } from "../../cli/schema.ts";
import { makeAll } from "../making.ts";
import { galleryResult } from "../sample.ts";
import { surveyedGallery } from "../surveyed.ts";

test("drawings of flags without a study, and both files; the JSON is that of the command", async () => {
  const made = await makeAll(listSurveyFiles(surveyedGallery));
  expect([...made.keys()].sort()).toEqual([
    "survey/flags/harbour-pilots.svg",
    "survey/flags/plain.svg",
    "survey/survey.csv",
    "survey/survey.json",
  ]);
  const json = made.get("survey/survey.json")?.toString() ?? "";
  expect(findFaults("survey", json)).toEqual([]);
  const nowhere = { ...surveyedGallery, gallery: { ...surveyedGallery.gallery, address: "" } };
  const relative = (await makeAll(listSurveyFiles(nowhere))).get("survey/survey.json")?.toString() ?? "";
  expect(JSON.parse(relative).schema).toBe("../schemas/survey.schema.json");
  expect(JSON.parse(json)).toMatchObject({
    flags: [{ file: "studies/a-square/original.svg" }, {}, {}],
    failed: [{}],
  });
  const csv = made.get("survey/survey.csv")?.toString() ?? "";
  expect(csv.split("\r\n")).toHaveLength(6);
  expect(csv).toContain("flags/torn.svg,,,,,,,,,,,,,It ends too early.\r\n");
});

test("without a survey the files are there and empty", async () => {
  const made = await makeAll(listSurveyFiles(galleryResult));
  expect(JSON.parse(made.get("survey/survey.json")?.toString() ?? "")).toEqual({
    schemaVersion: 2,
    schema: expect.stringMatching(/\/schemas\/survey\.schema\.json$/),
    flags: [],
    failed: [],
  });
});
