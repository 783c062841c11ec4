import path from "node:path";
import sharp from "sharp";
import { expect, test } from "vitest";
import { listMachineFiles, listStudyFiles } from "../../src/site/machine.ts";
import { presentSite } from "../../src/site/present/site.ts";
import { unofficial } from "../../src/site/unofficial.ts";
import { makeAll } from "./making.ts";
import { galleryResult } from "./sample.ts";

test("a picture of a redesign that is taken away still says what it is; one of an original does not", async () => {
  const schemas = [path.resolve(import.meta.dirname, "../../src/site/schema")];
  const { gallery, studies } = galleryResult;
  const files = await makeAll([
    ...(await listMachineFiles(galleryResult, presentSite(galleryResult, undefined), schemas)),
    ...studies.flatMap((study) => listStudyFiles(study, gallery)),
  ]);
  // Source: TIFF 6.0, tag 270, ImageDescription, which is ASCII text in the Exif block of the file.
  const describe = async (file: string) =>
    (await sharp(files.get(`studies/a-square/${file}`)).metadata()).exif?.toString("latin1") ?? "";
  expect(await describe("redesign-2000.png")).toContain(unofficial);
  expect(await describe("original-2000.png")).not.toContain("study");
  expect(unofficial).toMatch(/unofficial.*proposal.*not a flag in use/i);
});
