// A site opened from a disk, where nothing answers for a folder: every way leads to a page.
import path from "node:path";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import { oddGallery } from "./gallery.ts";
import { openRoom, publishKept } from "./room.ts";

const room = openRoom({ site: (folder) => publishKept(oddGallery, folder) });
const at = (file: string): string => pathToFileURL(path.join(room.folders.site, file)).href;

test("a link to a study opens its page", async () => {
  const page = await room.browser.newPage();
  await page.goto(at("index.html"));
  await page.click('main a[href*="long-words"]');
  expect(page.url()).toBe(at("studies/long-words/index.html"));
  await page.close();
});

test("the old address of a study that has moved leads to the study and not into its folder", async () => {
  const page = await room.browser.newPage();
  await page.goto(at("studies/longer-words/index.html"), { waitUntil: "commit" });
  await page.waitForURL(at("studies/long-words/index.html"));
  // What the refresh in the page would have shown comes at once or never.
  await page.waitForLoadState("load");
  expect(page.url()).toBe(at("studies/long-words/index.html"));
  await page.close();
});
