import { describe, expect, test } from "vitest";
import type { StudyResult } from "../../src/analysis/result.ts";
import type { Gallery } from "../../src/content/study/study.ts";
import { measureVersion, stampOf } from "../../src/words/studystamp.ts";
import { comparison, gallery, study, studyResult } from "../publish/sample.ts";

const stamp = stampOf(studyResult, gallery);
const { original, redesign } = studyResult.drawings;
const drawn = (changed: Partial<StudyResult["drawings"]>): StudyResult => ({
  ...studyResult,
  drawings: { ...studyResult.drawings, ...changed },
});
const told = (changed: Partial<StudyResult["study"]>): StudyResult => ({
  ...studyResult,
  study: { ...study, ...changed },
});

test("is eight small hexadecimal digits, the same each time", () => {
  expect(stamp).toMatch(/^[0-9a-f]{8}$/);
  expect(stampOf(structuredClone(studyResult), structuredClone(gallery))).toBe(stamp);
  expect(measureVersion).toMatch(/^\d+\.\d+$/);
});

describe("changes when what is measured changes:", () => {
  const selected: StudyResult = { ...studyResult, change: { ...studyResult.change, only: "#wheel" } };
  const changed: readonly [string, StudyResult, Gallery][] = [
    ["a shape of the drawing", drawn({ original: original.replace("M0 180", "M0 179") }), gallery],
    ["a colour of the drawing", drawn({ original: original.replace("#12235c", "#12235d") }), gallery],
    ["the new colour", { ...studyResult, change: { ...studyResult.change, with: "#f4c431" } }, gallery],
    [
      "the colour that is replaced",
      { ...studyResult, change: { ...studyResult.change, replace: "#ffffff" } },
      gallery,
    ],
    ["a part of it alone", selected, gallery],
    ["what the part is", { ...selected, drawings: { ...drawn({}).drawings, redesign: original } }, gallery],
    ["a focus by colour", told({ focus: { colour: "#c8202f" } }), gallery],
    ["another focus by colour", told({ focus: { colour: "#ffffff" } }), gallery],
    ["a focus by shape", told({ focus: { select: "#wheel" } }), gallery],
    ["a focus by a shape called like a colour", told({ focus: { select: "#c8202f" } }), gallery],
    ["the viewing distance", studyResult, { ...gallery, viewingDistance: 41 }],
    ["the blackest cloth", studyResult, { ...gallery, cloth: { black: 6, white: 85 } }],
    ["the whitest cloth", studyResult, { ...gallery, cloth: { black: 5, white: 86 } }],
  ];

  test.each(changed)("%s", (_, result, around) => {
    expect(stampOf(result, around)).not.toBe(stamp);
  });

  test("and no two of these have one stamp", () => {
    const stamps = changed.map(([, result, around]) => stampOf(result, around));
    expect(new Set(stamps).size).toBe(changed.length);
  });
});

describe("stays when only something else changes:", () => {
  const paragraph = (svg: string) =>
    svg.replace(
      "<path",
      "<title>A wheel</title>\n  <desc>Twelve\nspokes</desc>\n  <metadata>x</metadata>\n  <path",
    );
  test.each<[string, StudyResult, Gallery]>([
    [
      "title, prose, status, authors, date, tags",
      told({ title: "X", body: "Y", status: "open", authors: [], date: "2026-05-05", tags: [] }),
      gallery,
    ],
    ["notes, credit and meaning", told({ options: [], credit: { licence: "MIT" }, symbolism: "Z" }), gallery],
    [
      "titles and line breaks in the drawing",
      drawn({ original: paragraph(original), redesign: paragraph(redesign) }),
      gallery,
    ],
    [
      "what the gallery is called",
      studyResult,
      { ...gallery, title: "X", address: "https://y.example/", society: "Z" },
    ],
    ["the palette, which is tried and not measured", studyResult, { ...gallery, palette: new Map() }],
    [
      "the colour as written, where it is the same one",
      told({ change: { replace: "red", with: "#f4c430" } }),
      gallery,
    ],
  ])("%s", (_, result, around) => {
    expect(stampOf(result, around)).toBe(stamp);
  });

  test("another selector for the same shapes", () => {
    const only = (selector: string) =>
      stampOf({ ...studyResult, change: { ...studyResult.change, only: selector } }, gallery);
    expect(only("#wheel")).toBe(only("svg > #wheel"));
  });

  test("a focus colour by its name instead of its hex", () => {
    const named = { ...told({ focus: { colour: "Red" } }), comparison };
    expect(stampOf(named, gallery)).toBe(stampOf(told({ focus: { colour: "#C8202F" } }), gallery));
  });
});
