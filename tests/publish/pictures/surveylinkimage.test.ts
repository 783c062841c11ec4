import sharp from "sharp";
import { expect, test } from "vitest";
import { listShared } from "../../../src/publish/pictures/drawingrecipe.ts";
import { type Fonts, unpackFonts } from "../../../src/publish/pictures/linkimage.ts";
import { encodeLayout } from "../../../src/publish/pictures/pixelpicture.ts";
import { Easel } from "../../../src/publish/pictures/renderdrawing.ts";
import { laySurveyPicture } from "../../../src/publish/pictures/surveylinkimage.ts";
import { pictureSurvey } from "../../../src/views/survey/surveylinkview.ts";
import { createFormat } from "../../../src/words/format.ts";
import { makeAll } from "../making.ts";
import { gallery, studyResult } from "../sample.ts";
import { survey } from "../surveyed.ts";

const picture = pictureSurvey(survey, gallery, createFormat("en"));
if (picture === undefined) throw new Error("three flags");

async function readPixels(png: Buffer): Promise<(x: number, y: number) => string> {
  const { data, info } = await sharp(png).raw().toBuffer({ resolveWithObject: true });
  return (x, y) => {
    const at = (y * info.width + x) * info.channels;
    return data.subarray(at, at + 3).toString("hex");
  };
}

type Laid = Parameters<typeof laySurveyPicture>;
const drawSurveyPicture = async (words: Laid[0], flags: Laid[1], fonts: Fonts) => {
  return encodeLayout(await laySurveyPicture(words, flags, fonts, new Easel()), "note");
};

const plain = (fill: string) => ({
  svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="${fill}" d="M0 0h3v2H0z"/></svg>`,
  proportions: [2, 3] as const,
});

test("one picture of 1200 by 630 pixels, with the study's own drawing for a flag that has a study", async () => {
  const made = await makeAll(listShared(picture, survey, [studyResult]));
  expect([...made.keys()]).toEqual(["assets/icon.png", "survey/link.png"]);
  const png = Buffer.from(made.get("survey/link.png") ?? "");
  const { format, width, height } = await sharp(png).metadata();
  expect({ format, width, height }).toEqual({ format: "png", width: 1200, height: 630 });
  const at = await readPixels(png);
  // Three flags in a row: the middle of the first is its red square, of the third its blue field.
  expect(at(56 + 18 + 168, 44 + 188)).toBe("c8202f");
  expect(at(56 + 1088 - 18 - 168, 44 + 188)).toBe("12235c");
});

test("only the icon where there is no flag", () => {
  expect(listShared(undefined, { entries: [] }, []).map(({ path }) => path)).toEqual(["assets/icon.png"]);
});

test("from right to left the first flag is on the right", async () => {
  const fonts = await unpackFonts();
  const flags = [plain("#c8202f"), plain("#f4c430")];
  const left = await readPixels(await drawSurveyPicture(picture, flags, fonts));
  const right = await readPixels(await drawSurveyPicture({ ...picture, direction: "rtl" }, flags, fonts));
  expect([left(330, 232), left(870, 232)]).toEqual(["c8202f", "f4c430"]);
  expect([right(330, 232), right(870, 232)]).toEqual(["f4c430", "c8202f"]);
});

test.each([1, 2, 7, 22, 40])("%i flags lie on the mat, apart from each other", async (count) => {
  const flags = Array.from({ length: count }, () => plain("#c8202f"));
  const at = await readPixels(await drawSurveyPicture(picture, flags, await unpackFonts()));
  // The mat shows all around its rim, and there are `count` pieces of red: rises of a scan over the sheet's corners.
  for (const x of [57, 600, 1142]) for (const y of [45, 418]) expect(at(x, y), `${x},${y}`).toBe("777777");
  let corners = 0;
  for (let y = 45; y < 419; y++)
    for (let x = 57; x < 1143; x++)
      if (at(x, y) === "c8202f" && at(x - 1, y) !== "c8202f" && at(x, y - 1) !== "c8202f") corners++;
  expect(corners).toBe(count);
});
