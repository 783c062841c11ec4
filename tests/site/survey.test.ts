import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, test } from "vitest";
import { writeSurvey } from "../../src/site/survey.ts";
import { findFaults } from "../cli/schema.ts";
import { galleryResult } from "./sample.ts";
import { surveyedGallery } from "./surveyed.ts";

async function inFolder<T>(look: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(path.join(tmpdir(), "counterchange-survey-"));
  try {
    return await look(folder);
  } finally {
    await rm(folder, { recursive: true });
  }
}

test("drawings of flags without a study, and both files; the JSON is that of the command", async () => {
  await inFolder(async (folder) => {
    await writeSurvey(surveyedGallery, folder);
    expect((await readdir(path.join(folder, "survey/flags"))).sort()).toEqual([
      "harbour-pilots.svg",
      "plain.svg",
    ]);
    const json = await readFile(path.join(folder, "survey/survey.json"), "utf8");
    expect(findFaults("survey", json)).toEqual([]);
    expect(JSON.parse(json)).toMatchObject({
      flags: [{ file: "studies/a-square/original.svg" }, {}, {}],
      failed: [{}],
    });
    const csv = await readFile(path.join(folder, "survey/survey.csv"), "utf8");
    expect(csv.split("\r\n")).toHaveLength(6);
    expect(csv).toContain("flags/torn.svg,,,,,,,,,,,It ends too early.\r\n");
  });
});

test("without a survey the files are there and empty", async () => {
  await inFolder(async (folder) => {
    await writeSurvey(galleryResult, folder);
    expect(JSON.parse(await readFile(path.join(folder, "survey/survey.json"), "utf8"))).toEqual({
      flags: [],
      failed: [],
    });
  });
});
