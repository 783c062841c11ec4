import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { presentWorked } from "../../../src/views/method/workedflag.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, galleryResult, studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const show = (...studies: readonly StudyResult[]) =>
  presentWorked({ ...galleryResult, studies }, linkFrom("/method/"), createFormat("en"));

/** With something for every step: three edges, one of them gained, a charge, a flag that it looks like. */
const telling: StudyResult = {
  ...studyResult,
  study: { ...studyResult.study, slug: "telling", flag: "The telling flag" },
  comparison: {
    ...comparison,
    before: {
      ...comparison.before,
      focus: {
        source: "found",
        share: 0.1,
        clarity: 50,
        from: [20, 80].map((distance) => ({ distance, left: 1, clarity: 40, outlineClear: 0 })),
        lastsTo: 80,
      },
    },
    edges: [...comparison.edges, ...comparison.edges.slice(0, 1)],
  },
  likeness: {
    compared: 1,
    nearest: [{ file: "a.svg", origin: "flag", deltaE00: 20, orientation: "as it is" }],
  },
};
const older = (result: StudyResult, date: string): StudyResult => ({
  ...result,
  study: { ...result.study, date },
});

test("the oldest study that has something to show for every step, however old others are", () => {
  const chosen = show(studyResult, older(studyResult, "2001-01-01"), telling, older(telling, "2025-01-01"));
  expect(chosen?.name).toBe("The telling flag");
  expect(chosen?.address).toBe("../studies/telling/");
  const [first, second] = [older(telling, "2025-01-01"), older(telling, "2025-02-01")].map((one, index) => ({
    ...one,
    study: { ...one.study, slug: `s${index}`, flag: `Flag ${index}` },
  }));
  if (!first || !second) throw new Error("there are two");
  expect(show(second, first)?.name).toBe("Flag 0");
});

test("without such a study the oldest with an edge; without any, none", () => {
  expect(show(studyResult, older(studyResult, "2001-01-01"))?.name).toBe("A lighter square");
  const { before } = comparison;
  const plain = { ...studyResult, comparison: { ...comparison, before: { ...before, edges: [] } } };
  expect(show(plain)).toBeUndefined();
  expect(show()).toBeUndefined();
});

test("its colours as cloth, its edges before and after, its pictures from the study's own folder", () => {
  const worked = show(telling);
  // Luminance of #ffffff is 1 by definition; reflectances as the sample has them.
  expect(worked?.cloth.at(-1)).toEqual({
    hex: "#ffffff",
    name: "white",
    luminance: "1.000",
    reflectance: "85.0",
    x: 85,
  });
  expect(worked?.edges.map(({ names, outcome, x }) => [names, outcome, x])).toContainEqual([
    "dark blue / red",
    "gained",
    [24.6, 67.2],
  ]);
  expect(worked?.labels.src).toBe("../studies/telling/labels.svg");
  expect(worked?.afar.map(({ src, clarity }) => [src, clarity])).toEqual([
    ["../studies/telling/from-20-original.webp", "40%"],
    ["../studies/telling/from-80-original.webp", "40%"],
    ["../studies/telling/from-320-original.webp", "nothing left"],
  ]);
  expect(worked?.seen).toHaveLength(4);
});

test("its verdict in words, and its place in the survey between its neighbours", () => {
  const [entry] = survey.entries;
  if (entry === undefined) throw new Error("the sample has an entry");
  const of = (file: string, slugs: readonly string[], clarity: number) => ({
    ...entry,
    slugs,
    flag: { ...entry.flag, file, clarity },
  });
  const entries = [
    of("flags/first.svg", [], 10),
    of("flags/before.svg", [], 20),
    of("studies/telling/original.svg", ["telling"], 30),
    of("flags/behind.svg", [], 40),
  ];
  const worked = presentWorked(
    { ...galleryResult, studies: [telling], survey: { entries, failed: [] } },
    linkFrom("/method/"),
    createFormat("en"),
  );
  expect(worked?.said).toMatch(/^Clearer\. Red becomes yellow\. Clarity rises from 74% to 100%/);
  expect(worked?.placed.map(({ label, clarity }) => [label, clarity])).toEqual([
    ["Before", "20%"],
    ["The telling flag", "30%"],
    ["Behind", "40%"],
  ]);
  // Nothing was tried and nothing surveyed: no picture of it.
  expect(show(telling)).toMatchObject({ options: [], placed: [] });
});
