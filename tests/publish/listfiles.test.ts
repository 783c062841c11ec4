import { expect, test } from "vitest";
import { listFilesBeside } from "../../src/publish/listfiles.ts";
import { listSite } from "../../src/publish/publishgallery.ts";
import { presentSite } from "../../src/views/siteview.ts";
import { makeAll } from "./making.ts";
import { galleryResult, studyResult } from "./sample.ts";

test("the files beside the pages: what every page shares, and files for machines", async () => {
  const files = await listFilesBeside(galleryResult, presentSite(galleryResult, undefined));
  const paths = files.map((file) => file.path);
  for (const path of ["assets/site.css", "_headers", "feed.xml", "studies.json"])
    expect(paths).toContain(path);
  expect(paths.filter((path) => path.endsWith(".html"))).toEqual([]);
});

test("every link picture that a page of a study or an edge names is made, and is a PNG", async () => {
  const view = presentSite(galleryResult, undefined);
  const made = await makeAll((await listSite(galleryResult)).drawn);
  const pictures = [...view.studies, ...view.edges].map(({ picture }) => picture.file);
  expect(pictures.length).toBeGreaterThan(1);
  for (const file of pictures) {
    // The signature of a PNG file. Source: PNG (third edition), 5.2.
    expect([...(made.get(file) ?? []).slice(0, 4)]).toEqual([0x89, 0x50, 0x4e, 0x47]);
  }
});

test("the drawings that pages show, as they were written", async () => {
  const { before: measure } = studyResult.comparison;
  const drawings = new Map([["pages/guide/a.svg", { drawing: "<svg/>", measure }]]);
  const files = await listFilesBeside({ ...galleryResult, drawings }, presentSite(galleryResult, undefined));
  const found = files.find(({ path }) => path === "assets/drawings/pages/guide/a.svg");
  expect(await found?.make()).toBe("<svg/>");
});

test("the logo, and none where there is none", async () => {
  const logoOf = async (result: typeof galleryResult) => {
    const files = await listFilesBeside(result, presentSite(result, undefined));
    return files.find(({ path }) => path === "assets/logo.svg")?.make();
  };
  const logo = { drawing: "<svg/>", width: 3, height: 2 };
  expect(await logoOf({ ...galleryResult, gallery: { ...galleryResult.gallery, logo } })).toBe("<svg/>");
  expect(await logoOf(galleryResult)).toBeUndefined();
});
