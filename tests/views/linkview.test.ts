import { expect, test } from "vitest";
import { describePicture, pictureStudy } from "../../src/views/linkview.ts";
import { createFormat } from "../../src/words/format.ts";
import { gallery, studyResult } from "../publish/sample.ts";

const format = createFormat("en");
const picture = pictureStudy(studyResult, gallery, format);

test("a study's number is its clarity, with the verdict", () => {
  expect(picture.measure).toBe("Clearer: clarity");
  expect(picture.move).toEqual(["74%", "100%"]);
  expect(picture.captions[1]).toContain("unofficial study");
});

test("the picture in words has all that it shows", () => {
  expect(describePicture(picture, format)).toBe(
    "A flag divided per pale, half original and half redesign. A lighter square (Ines Valcourt and Tobin Arkwell). Clearer: clarity 74% to 100%. Unofficial study.",
  );
});

test("the captions say which half is which, also where the halves lie over each other", () => {
  expect(picture).toMatchObject({ split: "per pale", captions: ["Original", "Redesign · unofficial study"] });
  // The middle of the hoist: upright or slanting, no line divides it.
  const points = [0.02, 0.3, 0.3, 0.3, 0.3, 0.7, 0.02, 0.7, 0.02, 0.3];
  const low = { ...studyResult, edgeLines: [{ a: "p1", b: "p2", points, focusShare: 0 }] };
  expect(pictureStudy(low, gallery, format)).toMatchObject({
    split: "per fess",
    captions: ["Above: Original", "Below: Redesign · unofficial study"],
  });
});

test("one colour has no number to move", () => {
  const { comparison } = studyResult;
  const one = {
    ...studyResult,
    comparison: { ...comparison, edges: [], clearEdgeShare: [null, null] as const },
  };
  expect(pictureStudy(one, gallery, format).move).toEqual([undefined, "no edges"]);
});
