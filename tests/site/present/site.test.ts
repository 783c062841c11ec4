import { expect, test } from "vitest";
import { presentSite } from "../../../src/site/present/site.ts";
import { galleryResult } from "../sample.ts";

test("all that templates see is plain data: it survives being written down", () => {
  const view = presentSite(galleryResult, undefined);
  // JSON has no undefined; everything else must come back as it was.
  expect(JSON.parse(JSON.stringify(view))).toEqual(view);
  expect(view.studies.map((page) => page.slug)).toEqual(["a-square"]);
});

test("the page for missing addresses follows the base, or else the gallery's address", () => {
  expect(presentSite(galleryResult, undefined).missing.frame.links.home).toBe("/sound/");
  expect(presentSite(galleryResult, "/preview").missing.frame.links.home).toBe("/preview/");
});
