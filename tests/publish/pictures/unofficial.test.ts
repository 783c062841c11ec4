import sharp from "sharp";
import { expect, test } from "vitest";
import { unofficial } from "../../../src/publish/pictures/unofficial.ts";
import { listSite } from "../../../src/publish/publishgallery.ts";
import { makeAll } from "../making.ts";
import { galleryResult } from "../sample.ts";

test("a picture of a redesign that is taken away still says what it is; one of an original does not", async () => {
  const { drawn } = await listSite(galleryResult);
  const files = await makeAll(drawn.filter(({ path }) => path.endsWith("-2000.png")));
  // Source: TIFF 6.0, tag 270, ImageDescription, which is ASCII text in the Exif block of the file.
  const describe = async (file: string) =>
    (await sharp(files.get(`studies/a-square/${file}`)).metadata()).exif?.toString("latin1") ?? "";
  expect(await describe("redesign-2000.png")).toContain(unofficial);
  expect(await describe("original-2000.png")).not.toContain("study");
  expect(unofficial).toMatch(/unofficial.*proposal.*not a flag in use/i);
});
