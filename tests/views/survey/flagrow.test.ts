import { expect, test } from "vitest";
import { linkFrom } from "../../../src/views/address.ts";
import { listRivals } from "../../../src/views/flag/findrivals.ts";
import { presentFlagRow } from "../../../src/views/survey/flagrow.ts";
import { createFormat } from "../../../src/words/format.ts";
import { studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const rows = survey.entries.map((entry) =>
  presentFlagRow(entry, { studies: [studyResult] }, linkFrom("/survey/"), createFormat("en")),
);

test("an original: its study, its weakest edge, what to change", () => {
  expect(rows[0]).toMatchObject({
    id: "flag-studies-a-square-original",
    name: "The square",
    plate: { src: "../studies/a-square/original.svg" },
    studies: [{ title: "A lighter square", address: "../studies/a-square/" }],
    clarity: { text: "74%", value: "74.1" },
    focus: { text: "no emblem found", value: "" },
    file: "studies/a-square/original.svg",
    slug: undefined,
    weakest: { text: "25%", value: "24.6", swatches: [{ hex: "#12235c" }, { hex: "#c8202f", name: "red" }] },
    first: [{ hex: "#c8202f", name: "red" }],
    best: { text: "100%", value: "100", swatches: [{ name: "red" }, { hex: "#f4c430", name: "straw" }] },
    lasts: { text: "–", value: "" },
  });
  expect(rows[0]?.words).toContain("a lighter square");
  expect(rows[0]?.words).toMatch(/^[\p{L}\p{N} ]+$/u);
});

test("a clear flag without a study has its drawing beside the survey", () => {
  expect(rows[1]).toMatchObject({
    name: "Harbour pilots",
    plate: { src: "flags/harbour-pilots.svg" },
    file: "flags/harbour-pilots.svg",
    slug: "harbour-pilots",
    studies: [],
    first: [],
    best: undefined,
    focus: { text: "100%", value: "100" },
    lasts: { text: "320 or more", value: "320" },
  });
});

test("one colour: no edges, and nothing to sort by", () => {
  expect(rows[2]).toMatchObject({ clarity: { text: "no edges", value: "" }, weakest: undefined });
});

test("a focus that lasts to no step sorts before all others, and is not no focus", () => {
  const [, clear] = survey.entries;
  if (clear === undefined) throw new Error("the survey has a clear flag");
  const flag = { ...clear.flag, focus: { source: "found", clarity: 30, lastsTo: null } } as const;
  const row = presentFlagRow(
    { ...clear, flag },
    { studies: [studyResult] },
    linkFrom("/survey/"),
    createFormat("en"),
  );
  expect(row.lasts).toEqual({ text: "under 10", value: "0" });
});

test("what readers said who named it, with the way to its page; and of no other flag", () => {
  const nominations = [{ flag: "flags/harbour-pilots.svg", reason: "Too many stripes." }];
  const flags = new Map(
    listRivals({ studies: [studyResult], survey, nominations }).map((flag) => [flag.entry.flag.file, flag]),
  );
  const shown = survey.entries.map((entry) =>
    presentFlagRow(entry, { studies: [studyResult], flags }, linkFrom("/survey/"), createFormat("en")),
  );
  expect(shown.map(({ nominated }) => nominated)).toEqual([
    undefined,
    { said: ["Too many stripes."], address: "../flags/harbour-pilots/" },
    undefined,
  ]);
});
