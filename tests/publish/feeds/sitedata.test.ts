import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import type { GalleryResult, StudyResult } from "../../../src/analysis/result.ts";
import { formatStudiesData, formatStudyData } from "../../../src/publish/feeds/sitedata.ts";
import { presentVotes } from "../../../src/views/vote/votepage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { oddGallery } from "../../browser/gallery.ts";
import { galleryResult, series, studyResult } from "../sample.ts";
import { readSchemas } from "../schemas.ts";
import { survey } from "../surveyed.ts";

const root = path.resolve(import.meta.dirname, "../../..");
const schemas = ["src/cli/schema", "src/publish/schema"].flatMap((folder) =>
  readdirSync(path.join(root, folder))
    .filter((file) => file.endsWith(".schema.json"))
    .map((file) => [file, readFileSync(path.join(root, folder, file), "utf8")] as const),
);
const findFaults = readSchemas(new Map(schemas));
const absolute = (to: string) => `https://flags.example/sound${to}`;

const [option] = survey.entries.flatMap(({ flag }) => flag.bestOption ?? []);
if (option === undefined) throw new Error("the survey has a best option");
const { date: _date, credit: _credit, decision: _decision, ...bare } = studyResult.study;
const ranked: StudyResult = {
  ...studyResult,
  ranking: {
    report: {
      file: "/home/ines/original.svg",
      distance: 40,
      clarity: 74.1,
      strength: 66.3,
      focusClarity: null,
      changeFirst: [{ id: "p2", hex: "#c8202f", name: "red" }],
      mostGained: null,
      options: [{ ...option, place: 1, placeInColour: 1 }],
      vanishing: [],
      shades: [],
      leftOut: { uneven: [], unseen: [], shared: [] },
    },
    standing: {
      place: 1,
      total: 58,
      level: 0,
      behindBest: 0,
      lost: 0,
    },
    noted: [],
  },
  likeness: {
    compared: 12,
    nearest: [{ file: "flags/pilots.svg", origin: "flag", deltaE00: 9, orientation: "mirrored" }],
  },
};
const galleries: Readonly<Record<string, GalleryResult>> = {
  sample: galleryResult,
  odd: oddGallery,
  bare: { ...galleryResult, studies: [{ ...studyResult, study: bare }] },
  ranked: { ...galleryResult, studies: [ranked] },
};

describe.each(Object.entries(galleries))("%s gallery", (_name, { gallery, studies }) => {
  test.each(studies.map((result) => [result.study.slug, result] as const))(
    "%s: study.json is as its schema says, from wherever it is addressed",
    (_slug, result) => {
      for (const address of [absolute, (to: string) => `../..${to}`])
        expect(findFaults("study.schema.json", formatStudyData(result, gallery, address))).toEqual([]);
    },
  );

  test("studies.json is as its schema says", () => {
    expect(
      findFaults("studies.schema.json", formatStudiesData(studies, [series], [], gallery, absolute)),
    ).toEqual([]);
  });
});

// Newcombe, Statistics in Medicine 17 (1998), table I: 15 of 148 lie between 0.0624 and 0.1605 by Wilson's method.
test("studies.json has the vote of a series and its counts, and no word of a voter", () => {
  const ballots = Array.from({ length: 148 }, (_, at) => ({
    id: at.toString(16).padStart(16, "0"),
    votes: [
      { study: "a-square", choice: at < 15 ? ("redesign" as const) : ("original" as const), why: "Secret." },
    ],
  }));
  const voted = { ...series, entries: [{ study: "a-square" }], ballots, showWords: true };
  const votes = presentVotes({ ...galleryResult, series: [voted] }, createFormat("en"));
  const text = formatStudiesData([studyResult], [voted], votes, galleryResult.gallery, absolute);
  expect(findFaults("studies.schema.json", text)).toEqual([]);
  expect(text).not.toContain("Secret");
  const [{ vote }] = JSON.parse(text).series;
  expect(vote).toMatchObject({
    address: "https://flags.example/sound/series/quay/vote/",
    ballots: 148,
    questions: [{ studies: ["a-square"], voters: 148 }],
  });
  const [{ choices }] = vote.questions;
  expect(choices.map(({ choice, voters }: { choice: string; voters: number }) => [choice, voters])).toEqual([
    ["original", 133],
    ["a-square", 15],
    ["neither", 0],
  ]);
  const [low, high] = choices[1].interval;
  expect([low.toFixed(4), high.toFixed(4)]).toEqual(["0.0624", "0.1605"]);
});

test("study.json holds what the author says and what is measured", () => {
  const data = JSON.parse(formatStudyData(studyResult, galleryResult.gallery, absolute));
  expect(data).toMatchObject({
    schemaVersion: 2,
    schema: "https://flags.example/sound/schemas/study.schema.json",
    slug: "a-square",
    title: "A lighter square",
    address: "https://flags.example/sound/studies/a-square/",
    unofficial: true,
    status: "adopted",
    decision: "Adopted, because it can be seen.",
    authors: ["Ines Valcourt", "Tobin Arkwell"],
    date: "2026-04-02",
    change: { replace: "#c8202f", with: "#f4c430" },
    verdict: "clearer",
    clarity: [74.1, 100],
    strength: [66.3, 100],
    clearEdgeShare: [0.4286, 1],
    comparison: { schemaVersion: 2, price: [] },
    credit: { licence: "CC0-1.0" },
    files: { edges: "https://flags.example/sound/studies/a-square/edges.csv" },
    edgePages: [
      { a: "p1", b: "p3", address: "https://flags.example/sound/studies/a-square/edges/12235c-ffffff/" },
      { a: "p1", b: "p2", address: "https://flags.example/sound/studies/a-square/edges/12235c-c8202f/" },
    ],
  });
  expect(data.comparison.edges).toHaveLength(2);
});

test("nothing tells where the drawing lay on the machine that built the site, and no drawing is in the numbers", () => {
  const { comparison } = ranked;
  const before = { ...comparison.before, file: "/home/ines/original.svg" };
  const text = formatStudyData(
    { ...ranked, comparison: { ...comparison, before } },
    galleryResult.gallery,
    absolute,
  );
  expect(text).not.toContain("/home/");
  expect(text).not.toContain("<svg");
  expect(JSON.parse(text)).toMatchObject({
    options: { options: [{ with: "#f4c430" }] },
    standing: { total: 58 },
  });
});

test("the same input gives the same bytes, and another stamp when the change is another", () => {
  const format = (result: StudyResult) => formatStudyData(result, galleryResult.gallery, absolute);
  expect(format(studyResult)).toBe(format(structuredClone(studyResult)));
  const stampOf = (result: StudyResult) => JSON.parse(format(result)).stamp;
  const other = { ...studyResult, change: { ...studyResult.change, with: "#f4c431" as const } };
  expect(stampOf(other)).not.toBe(stampOf(studyResult));
});

describe("the schemas can say no", () => {
  const text = formatStudyData(studyResult, galleryResult.gallery, absolute);

  test.each([
    ["another version", '"schemaVersion": 2', '"schemaVersion": 0'],
    ["a verdict that there is not", '"verdict": "clearer"', '"verdict": "better"'],
    ["a hex without its sign", '"replace": "#c8202f"', '"replace": "c8202f"'],
    ["a key of its own", '"slug"', '"beauty": 9,\n  "slug"'],
    ["a day that is none", "2026-04-02", "2026-04-32"],
    ["an address with a space", "/studies/a-square/edges/", "/studies/a square/edges/"],
  ])("%s", (_what, right, wrong) => {
    expect(text).toContain(right);
    expect(findFaults("study.schema.json", text.replace(right, wrong))).not.toEqual([]);
  });
});
