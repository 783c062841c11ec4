import { expect, test } from "vitest";
import { linkFrom } from "../../../src/site/address.ts";
import { presentFlagRow } from "../../../src/site/present/flagrow.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { studyResult } from "../sample.ts";
import { survey } from "../surveyed.ts";

const rows = survey.entries.map((entry) =>
  presentFlagRow(entry, [studyResult], linkFrom("/survey/"), createFormat("en")),
);

test("an original: its study, its weakest edge, what to change", () => {
  expect(rows[0]).toMatchObject({
    id: "flag-studies-a-square-original",
    name: "The square",
    plate: { src: "../studies/a-square/original.svg" },
    studies: [{ title: "A lighter square", address: "../studies/a-square/" }],
    clarity: { text: "74%", value: "74.1" },
    share: { text: "43%", value: "0.4286" },
    weakest: { text: "25", value: "24.6", swatches: [{ hex: "#12235c" }, { hex: "#c8202f", name: "red" }] },
    first: [{ hex: "#c8202f", name: "red" }],
    best: { text: "100%", value: "100", swatches: [{ name: "red" }, { hex: "#f4c430", name: "straw" }] },
    reads: { text: "no focus", value: "" },
  });
  expect(rows[0]?.words).toContain("a lighter square");
  expect(rows[0]?.words).toMatch(/^[\p{L}\p{N} ]+$/u);
});

test("a clear flag without a study has its drawing beside the survey", () => {
  expect(rows[1]).toMatchObject({
    name: "Harbour pilots",
    plate: { src: "flags/harbour-pilots.svg" },
    studies: [],
    first: [],
    best: undefined,
    reads: { text: "320 or more", value: "320" },
  });
});

test("one colour: no edges, and nothing to sort by", () => {
  expect(rows[2]).toMatchObject({ clarity: { text: "no edges", value: "" }, weakest: undefined });
});
