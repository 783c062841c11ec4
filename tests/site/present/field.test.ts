import { expect, test } from "vitest";
import { linkFrom } from "../../../src/site/address.ts";
import { presentField } from "../../../src/site/present/field.ts";
import { presentFlagRow } from "../../../src/site/present/flagrow.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import type { SurveyEntry } from "../../../src/study/entry.ts";
import { studyResult } from "../sample.ts";
import { survey } from "../surveyed.ts";

const format = createFormat("en");
const fieldOf = (entries: readonly SurveyEntry[]) =>
  presentField(
    entries,
    entries.map((entry) => presentFlagRow(entry, [studyResult], linkFrom("/survey/"), format)),
    format,
  );

test("every flag stands in the row of its clarity, in whole percent; empty rows keep the axis even", () => {
  const field = fieldOf(survey.entries);
  expect(field?.rows.map(({ label, dots }) => [label, dots.map(({ name }) => name)])).toEqual([
    ["70 to 74", ["The square"]],
    ["75 to 79", []],
    ["80 to 84", []],
    ["85 to 89", []],
    ["90 to 94", []],
    ["95 to 99", []],
    ["100", ["Harbour pilots"]],
  ]);
  expect(field?.rows[0]?.dots[0]).toMatchObject({ row: "flag-studies-a-square-original", hasStudy: true });
  expect(field?.without).toBe("1 of one colour has no edge and no place here.");
  expect(field?.isSmall).toBe(true);
});

test.each([
  [99.4, "95 to 99"],
  [99.5, "100"],
  [4.4, "0 to 4"],
  [4.5, "5 to 9"],
])("a clarity of %d is in the row %s", (clarity, label) => {
  const [entry] = survey.entries;
  if (entry === undefined) throw new Error("the sample has an entry");
  const field = fieldOf([{ ...entry, flag: { ...entry.flag, clarity } }]);
  expect(field?.rows.find(({ dots }) => dots.length > 0)?.label).toBe(label);
});

test("many flags are dots; flags without an edge alone make no picture", () => {
  const [entry] = survey.entries;
  if (entry === undefined) throw new Error("the sample has an entry");
  expect(fieldOf(Array.from({ length: 61 }, () => entry))?.isSmall).toBe(false);
  expect(fieldOf(survey.entries.slice(2))).toBeUndefined();
});
