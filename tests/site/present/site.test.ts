import { expect, test } from "vitest";
import { presentSite } from "../../../src/site/present/site.ts";
import { galleryResult, study, studyResult } from "../sample.ts";

test("all that templates see is plain data: it survives being written down", () => {
  const { view } = presentSite(galleryResult, undefined);
  // JSON has no undefined; everything else must come back as it was.
  expect(JSON.parse(JSON.stringify(view))).toEqual(JSON.parse(JSON.stringify(structuredClone(view))));
  expect(view.studies.map((page) => page.slug)).toEqual(["a-square"]);
});

test("the page for missing addresses follows the base, or else the gallery's address", () => {
  expect(presentSite(galleryResult, undefined).view.missing.frame.links.home).toBe("/sound/");
  expect(presentSite(galleryResult, "/preview").view.missing.frame.links.home).toBe("/preview/");
});

test("what was noticed in the prose is passed on", () => {
  const odd = { ...studyResult, study: { ...study, body: "![x](y)" } };
  expect(presentSite({ ...galleryResult, studies: [odd] }, undefined).problems).toHaveLength(1);
});
