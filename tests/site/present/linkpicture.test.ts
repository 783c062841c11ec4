import { expect, test } from "vitest";
import { createFormat } from "../../../src/site/present/format.ts";
import { describePicture, pictureStudy } from "../../../src/site/present/linkpicture.ts";
import { gallery, studyResult } from "../sample.ts";

const format = createFormat("en");
const picture = pictureStudy(studyResult, gallery, format);

test("a study's number is its clarity, with the verdict", () => {
  expect(picture.measure).toBe("Clearer: clarity");
  expect(picture.move).toEqual(["74%", "100%"]);
  expect(picture.captions[1]).toContain("unofficial study");
});

test("the picture in words has all that it shows", () => {
  expect(describePicture(picture)).toBe(
    "Original and redesign of a flag side by side. A lighter square (Ines Valcourt and Tobin Arkwell). Clearer: clarity 74% to 100%. Unofficial study.",
  );
});

test("one colour has no number to move", () => {
  const { comparison } = studyResult;
  const one = {
    ...studyResult,
    comparison: { ...comparison, edges: [], clearEdgeShare: [null, null] as const },
  };
  expect(pictureStudy(one, gallery, format).move).toEqual([undefined, "no edges"]);
});
