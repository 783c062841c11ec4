import { expect, test } from "vitest";
import { countWeak, describeSurveyPicture, pictureSurvey } from "../../../src/views/survey/surveylinkview.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const format = createFormat("en");

test("the picture says how many flags there are, and from which clarity to which they go", () => {
  // The square's weakest edge has 24.6, the harbour pilots' 84.2, the plain flag has none.
  expect(countWeak(survey.entries)).toBe(1);
  const picture = pictureSurvey(survey, gallery, format);
  expect(picture).toMatchObject({
    file: "survey/link.png",
    direction: "ltr",
    subtitle: "3 flags, least clear first",
    measure: "Clarity",
    number: "74% to 100%",
    gallery: "Flags of the Sound",
  });
  expect(picture && describeSurveyPicture(picture, format)).toBe(
    "A sheet of flags. Survey: 3 flags, least clear first. Clarity: 74% to 100%. The numbers say nothing of beauty or meaning.",
  );
});

test("no picture of no flags; one flag is one flag", () => {
  expect(pictureSurvey({ entries: [] }, gallery, format)).toBeUndefined();
  const one = { entries: survey.entries.slice(1, 2) };
  expect(pictureSurvey(one, gallery, format)).toMatchObject({
    subtitle: "1 flag, least clear first",
    number: "100%",
  });
});
