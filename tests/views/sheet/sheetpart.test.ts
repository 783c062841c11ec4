import { expect, test } from "vitest";
import { linkFrom } from "../../../src/views/address.ts";
import {
  hatchedSize,
  listPalette,
  listSigns,
  presentSheetStudy,
} from "../../../src/views/sheet/sheetpart.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, gallery, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const present = (result: typeof studyResult) =>
  presentSheetStudy(result, gallery, linkFrom("/studies/a-square/sheet/"), format);

test("swatches are of the original, the legend of both flags; pictures lie in the study's folder", () => {
  const sheet = present(studyResult);
  expect(sheet.colours.map(({ name }) => name)).toEqual(["dark blue", "red", "white"]);
  expect(sheet.legend.map(({ name }) => name)).toEqual(["dark blue", "red", "white", "yellow"]);
  expect(sheet.hatched.map(({ src }) => src)).toEqual([
    "../hatched-original.webp",
    "../hatched-redesign.webp",
  ]);
  expect(sheet.shares).toBe("dark blue 73%, red 17%, and white 10%");
  expect(sheet.credit).toBe("The square, by Ines Valcourt, CC0-1.0");
});

test("the ruler has room for four edges and counts the others", () => {
  const edges = Array.from({ length: 7 }, () => comparison.edges)
    .flat()
    .slice(0, 7);
  const { ruler } = present({ ...studyResult, comparison: { ...comparison, edges } });
  expect(ruler?.rows).toHaveLength(4);
  expect(ruler?.left).toMatch(/^3 more edges/);
  expect(present(studyResult).ruler?.left).toBeUndefined();
  expect(present(studyResult).ruler?.scale).toMatch(
    /weak under 30%, soft from 30%, clear from 45%, strong from 60%\.$/,
  );
});

test("the palette has fifteen colours at most, and all colours with lines but grey and pink are named", () => {
  const palette = new Map(Array.from({ length: 40 }, (_, at) => [`shade ${at}`, "#123456"]));
  expect(listPalette({ ...gallery, palette }, format)).toHaveLength(15);
  expect(listSigns(createFormat("en"))).toHaveLength(9);
});

test("a picture in lines keeps the proportions within its room", () => {
  expect(hatchedSize([2, 3])).toEqual({ width: 900, height: 600 });
  expect(hatchedSize([1, 3])).toEqual({ width: 900, height: 300 });
  expect(hatchedSize([2, 3], true)).toEqual({ width: 1500, height: 1000 });
  expect(hatchedSize([2, 1])).toEqual({ width: 300, height: 600 });
});
