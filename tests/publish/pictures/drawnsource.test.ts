import { expect, test } from "vitest";
import { listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import { collectSources, findFrom } from "../../../src/publish/pictures/drawnsource.ts";
import { gallery, studyResult } from "../sample.ts";

const drawn = collectSources([[studyResult, listDrawn(studyResult, gallery)]], undefined);

test("what a page shows is found from where the page is", () => {
  const { original } = studyResult.drawings;
  const whole = { drawing: original, proportions: studyResult.comparison.before.proportions };
  expect(findFrom("/studies/a-square/show/", drawn)("../original.svg")).toEqual(whole);
  expect(findFrom("/series/x/show/", drawn)("../../../studies/a-square/from-80-original.webp")).toEqual({
    ...whole,
    distance: 80,
  });
});

test("an address that nothing is drawn for is a fault", () => {
  expect(() => findFrom("/", drawn)("gone.svg")).toThrow(RangeError);
});
