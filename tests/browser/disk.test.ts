// A site opened from a disk, where nothing answers for a folder: every way leads to a page.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { publishGallery } from "../../src/publish/publishgallery.ts";
import { launchBrowser } from "./browser.ts";
import { oddGallery } from "./gallery.ts";

let room: string;
let browser: Browser;

beforeAll(async () => {
  room = await mkdtemp(path.join(tmpdir(), "counterchange-from-disk-"));
  await publishGallery(oddGallery, path.join(room, "site"), { keepOut: [] });
  browser = await launchBrowser();
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await rm(room, { recursive: true, force: true });
});

const at = (file: string): string => pathToFileURL(path.join(room, "site", file)).href;

test("a link to a study opens its page", async () => {
  const page = await browser.newPage();
  await page.goto(at("index.html"));
  await page.click('main a[href*="long-words"]');
  expect(page.url()).toBe(at("studies/long-words/index.html"));
  await page.close();
});

test("the old address of a study that has moved leads to the study and not into its folder", async () => {
  const page = await browser.newPage();
  await page.goto(at("studies/longer-words/index.html"), { waitUntil: "commit" });
  await page.waitForURL(at("studies/long-words/index.html"));
  // What the refresh in the page would have shown comes at once or never.
  await page.waitForLoadState("load");
  expect(page.url()).toBe(at("studies/long-words/index.html"));
  await page.close();
});
