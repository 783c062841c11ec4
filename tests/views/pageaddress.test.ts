import { expect, test } from "vitest";
import { listSite } from "../../src/publish/publishgallery.ts";
import { listAddresses, listPages } from "../../src/views/pageaddress.ts";
import { presentSite } from "../../src/views/siteview.ts";
import { oddGallery } from "../browser/gallery.ts";

test("every page that is published has its address, and there is no other; titles are without the gallery's", async () => {
  const { files } = await listSite(oddGallery, "/");
  const published = files
    .map(({ path }) => `/${path}`)
    .filter((path) => path.endsWith("/index.html"))
    .map((path) => path.slice(0, -"index.html".length));
  const pages = listPages(presentSite(oddGallery, "/"), oddGallery.gallery);
  expect([...pages.keys()].sort()).toEqual(published.sort());
  expect([...listAddresses(oddGallery)].sort()).toEqual(published);
  expect(pages.get("/method/")).toBe("Method");
  expect(pages.get("/")).toBe(oddGallery.gallery.title);
});
