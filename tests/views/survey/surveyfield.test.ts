import { expect, test } from "vitest";
import type { SurveyEntry } from "../../../src/analysis/survey/surveyentry.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { presentFlagRow } from "../../../src/views/survey/flagrow.ts";
import { presentField } from "../../../src/views/survey/surveyfield.ts";
import { createFormat } from "../../../src/words/format.ts";
import { studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const format = createFormat("en");
const fieldOf = (entries: readonly SurveyEntry[]) =>
  presentField(
    entries,
    entries.map((entry) => presentFlagRow(entry, { studies: [studyResult] }, linkFrom("/survey/"), format)),
    format,
  );

test("every flag stands in the row of its clarity, in whole percent, on an axis from 0 to 100", () => {
  const field = fieldOf(survey.entries);
  expect(field?.rows).toHaveLength(11);
  expect([field?.rows[0], field?.rows[10]]).toMatchObject([{ label: "0–9%", dots: [] }, { label: "100%" }]);
  const taken = field?.rows.filter(({ dots }) => dots.length > 0);
  expect(taken?.map(({ label, dots }) => [label, dots.map(({ name }) => name)])).toEqual([
    ["70–79%", ["The square"]],
    ["100%", ["Harbour pilots"]],
  ]);
  expect(field?.least).toMatchObject({
    row: "flag-studies-a-square-original",
    hasStudy: true,
    weakest: "Weakest: dark blue / red, contrast 25%",
  });
  expect(field?.least).toBe(taken?.[0]?.dots[0]);
  expect(field?.without).toBe("1 of one colour has no edge and no place here.");
  expect(field?.isSmall).toBe(true);
});

test.each([
  [99.4, "90–99%"],
  [99.5, "90–99%"],
  [99.97, "90–99%"],
  [100, "100%"],
  [9.4, "0–9%"],
  [9.5, "10–19%"],
])("a clarity of %d is in the row %s", (clarity, label) => {
  const [entry] = survey.entries;
  if (entry === undefined) throw new Error("the sample has an entry");
  const field = fieldOf([{ ...entry, flag: { ...entry.flag, clarity } }]);
  expect(field?.rows.find(({ dots }) => dots.length > 0)?.label).toBe(label);
});

test("the axis of many flags stands; flags without an edge alone make no picture", () => {
  const [entry] = survey.entries;
  if (entry === undefined) throw new Error("the sample has an entry");
  const spread = (length: number, step: number) =>
    Array.from({ length }, (_, at) => ({ ...entry, flag: { ...entry.flag, clarity: (at * step) % 101 } }));
  expect(fieldOf(spread(60, 7))?.isSmall).toBe(true);
  expect(fieldOf(spread(61, 7))?.isSmall).toBe(false);
  // A pile of twelve is as high as a picture may be.
  expect([fieldOf(spread(12, 0))?.isSmall, fieldOf(spread(13, 0))?.isSmall]).toEqual([true, false]);
  expect(fieldOf(survey.entries.slice(2))).toBeUndefined();
});
