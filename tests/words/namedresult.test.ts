import { describe, expect, test } from "vitest";
import type { StudyResult } from "../../src/analysis/result.ts";
import { openSite } from "../../src/views/siteview.ts";
import { createFormat } from "../../src/words/format.ts";
import { measuredOf, nameGallery, nameStudy } from "../../src/words/namedresult.ts";
import { stampOf } from "../../src/words/studystamp.ts";
import { ranked } from "../publish/ranked.ts";
import { gallery, galleryResult, studyResult } from "../publish/sample.ts";

/** What names a language of its own. */
const words = { "colour.red": "ROJO", "colour.yellow": "AMARILLO", "colour.blue": "AZUL" };
const format = createFormat("en", words);
const english = createFormat("en");

describe("a study as its pages tell it", () => {
  test("has the names of the language in paints, edges and price", () => {
    const { before, after, edges } = nameStudy(studyResult, format).comparison;
    const names = JSON.stringify([before.colours, after.colours, edges]);
    expect(names).toContain('"ROJO"');
    expect(names).toContain('"AMARILLO"');
    expect(names).not.toMatch(/"(red|yellow)"/);
  });

  test("keeps every number, and is made once", () => {
    const named = nameStudy(studyResult, format);
    expect(named.comparison.clarity).toBe(studyResult.comparison.clarity);
    expect(nameStudy(studyResult, format)).toBe(named);
    expect(nameStudy(named, format)).toBe(named);
    expect(measuredOf(named)).toBe(studyResult);
  });

  test("has them in its options, which are asked for late", () => {
    const result = ranked(
      {},
      {
        leftOut: { uneven: ["red", "gold"], unseen: [], shared: [] },
        mostGained: {
          pair: { a: "p1", b: "p2", names: ["red", "dark red"] },
          other: "blue",
          contrast: 20,
          weight: 1,
        },
      },
    );
    const { leftOut, mostGained } = nameStudy(result, format).ranking?.report ?? {};
    expect(leftOut?.uneven).toEqual(["ROJO", "gold"]);
    expect(mostGained?.pair.names).toEqual(["ROJO", "dark ROJO"]);
    expect(mostGained?.other).toBe("AZUL");
  });

  test("has the stamp of what was measured", () => {
    const focused: StudyResult = {
      ...studyResult,
      study: { ...studyResult.study, focus: { colour: "red" } },
    };
    expect(stampOf(nameStudy(focused, format), gallery)).toBe(stampOf(focused, gallery));
  });
});

test("where the names stay what they are nothing is copied", () => {
  const named = nameGallery(galleryResult, english);
  expect(named.studies.map(({ comparison }) => comparison)).toEqual(
    galleryResult.studies.map(({ comparison }) => comparison),
  );
  expect(named.studies[0]?.comparison).toBe(galleryResult.studies[0]?.comparison);
});

test("a site tells names in its language and gives back studies as they were measured", () => {
  const site = openSite({ ...galleryResult, gallery: { ...gallery, words } }, undefined);
  expect(site.ordered.every((study) => galleryResult.studies.includes(study))).toBe(true);
  const { studies } = site.presentStudies(site.ordered);
  const said = JSON.stringify(studies.map(({ ruler }) => ruler));
  expect(said).toContain("ROJO");
  expect(said).not.toMatch(/\bred\b/);
});

test("drawings that pages show have them too", () => {
  const shown = { drawing: "<svg/>", measure: studyResult.comparison.before };
  const { drawings } = nameGallery({ ...galleryResult, drawings: new Map([["flags/a.svg", shown]]) }, format);
  const one = drawings?.get("flags/a.svg");
  expect(one?.drawing).toBe("<svg/>");
  expect(JSON.stringify(one?.measure.colours)).toContain('"ROJO"');
});
