// Finding a study among two hundred: by words, by choice, from the keyboard, from an address, from a disk, without script.
import { stat } from "node:fs/promises";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { GalleryResult, StudyResult } from "../../src/analysis/result.ts";
import { listSite } from "../../src/publish/publishgallery.ts";
import { writeAll } from "../publish/making.ts";
import { comparison, galleryResult, study, studyResult } from "../publish/sample.ts";
import { openRoom } from "./room.ts";
import { listViolations } from "./violations.ts";

const total = 200;
/** As long as a tag may be, without a place to break. */
const longTag = "Flaggenfarbenwahrnehmungsuntersuchungsvorrichtungs";
/** Typed so that every count can be read off: every 4th is adopted, every 5th mixed, every 10th has a bollard … */
const studies = Array.from({ length: total }, (_, index): StudyResult => {
  const verdict = index % 5 === 0 ? "mixed" : "clearer";
  const gain = index / total;
  return {
    ...studyResult,
    study: {
      ...study,
      slug: `study-${index}`,
      title: `Proposal number ${index}`,
      status: index % 4 === 0 ? "adopted" : "open",
      authors: [index % 2 === 0 ? "Ines Valcourt" : "Zoë Ébène"],
      tags: index % 20 === 0 ? ["canton"] : index === 3 ? ["charge", longTag] : ["charge"],
      body: `Long prose about the harbour. ${index % 10 === 0 ? "A rusty bollard." : ""} ${index === 7 ? "青い旗" : ""}`,
      decision: { why: index === 9 ? "Kept for the regatta." : "Decided." },
    },
    comparison: { ...comparison, verdict, clarity: [0, 100 * gain] },
  };
});
const ownPage = (path: string, title: string, body: string) => ({ path, title, body, file: "", bodyLine: 1 });
const gallery: GalleryResult = {
  ...galleryResult,
  studies,
  pages: [
    ownPage("about", "Who we are", "A café by the quay."),
    ownPage("about/rules", "Terms", "The café."),
  ],
};

const room = openRoom({
  site: async (folder) => {
    const needed =
      /^(?:index\.html|(?:authors|tags)\/.*|404\.html|assets\/.*|studies\/[^/]+\/(?:original|redesign)\.svg)$/;
    const { files: texts, drawn } = await listSite(gallery, "/");
    const files = [...texts, ...drawn];
    await writeAll(
      files.filter((file) => needed.test(file.path)),
      folder,
    );
  },
});

interface Visit {
  readonly page: Page;
  readonly requests: readonly string[];
  readonly complaints: readonly string[];
}

async function visit<T>(
  url: string,
  look: (visit: Visit) => Promise<T>,
  options: BrowserContextOptions = {},
): Promise<T> {
  const context = await room.browser.newContext({ reducedMotion: "reduce", ...options });
  const page = await context.newPage();
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  try {
    await page.goto(url, { waitUntil: "load" });
    return await look({ page, requests, complaints });
  } finally {
    await context.close();
  }
}

const home = (query = "") => `${room.sites.site.address}/${query}`;
const countShown = (page: Page) => page.locator("[data-list] > :not([hidden])").count();
const said = (page: Page) => page.locator(".finder .found").textContent();
const search = (page: Page) => page.getByRole("searchbox", { name: "Words" });
const wordsAreThere = (page: Page) => page.waitForFunction(() => "studyWords" in globalThis);

const asked = [
  ["a word of the prose", "bollard", 20],
  ["the beginning of a word", "boll", 20],
  ["two words, in any order", "rusty adopted", 10],
  ["a colour by name", "yellow", 200],
  ["a hex", "#c8202f", 200],
  ["a hex that no study has", "#c8202e", 0],
  ["an author, without the accents", "zoe ebene", 100],
  ["an author, with them", "ÉBÈNE", 100],
  ["a tag", "canton", 10],
  ["a verdict", "mixed", 40],
  ["an outcome", "gained", 200],
  ["a status", "adopted", 50],
  ["the decision", "regatta", 1],
  ["a number in a title", "199", 1],
  ["letters without spaces between words", "旗", 1],
  ["signs alone, which are no words", "!? --", 200],
] as const;

test("by words: each has to begin a word of title, prose, names, tags, colours, outcomes, verdict or status", async () => {
  await visit(home(), async ({ page }) => {
    await search(page).focus();
    await wordsAreThere(page);
    for (const [what, words, count] of asked) {
      await search(page).fill(words);
      expect(await countShown(page), what).toBe(count);
      expect(await said(page)).toBe(count === total ? "200 studies" : `${count} of 200 studies`);
    }
    const pages = page.locator(".pages-found");
    await search(page).fill("cafe");
    expect((await pages.textContent())?.trim()).toBe("Pages that have these words: Who we are · Terms");
    expect(await pages.getByRole("link").last().getAttribute("href")).toBe("about/rules/");
    await search(page).fill("bollard");
    expect(await pages.isVisible()).toBe(false);
  });
});

test("choices narrow the list together with words; orders order it", async () => {
  await visit(home(), async ({ page }) => {
    await page.getByText("More filters").click();
    await page.getByLabel("Status").selectOption("adopted");
    expect(await countShown(page)).toBe(50);
    await page.getByLabel("Verdict").selectOption("mixed");
    expect(await countShown(page)).toBe(10);
    await page.getByLabel("Tag", { exact: true }).selectOption({ label: "charge" });
    expect(await countShown(page)).toBe(0);
    await page.getByLabel("Tag", { exact: true }).selectOption({ label: "canton" });
    expect(await countShown(page)).toBe(10);
    const titles = await page.locator("[data-list] > :not([hidden]) .gain-link").allTextContents();
    expect(titles).toEqual(
      [180, 160, 140, 120, 100, 80, 60, 40, 20, 0].map((number) => `Proposal number ${number}`),
    );
    await page.getByRole("button", { name: "Show all" }).click();
    await expect.poll(() => countShown(page)).toBe(200);
  });
});

test("by the keyboard alone: to the field, words, a choice, and to the first hit", async () => {
  await visit(home(), async ({ page }) => {
    for (let presses = 0; presses < 60; presses += 1) {
      await page.keyboard.press("Tab");
      if (await search(page).evaluate((field) => field === document.activeElement)) break;
    }
    await page.keyboard.type("bollard");
    await page.keyboard.press("Enter");
    await wordsAreThere(page);
    expect(await countShown(page)).toBe(20);
    expect(new URL(page.url()).pathname).toBe("/");
    // The order, then the word that opens the other choices.
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    await page.keyboard.type("Adopted");
    expect(await countShown(page)).toBe(10);
    for (let presses = 0; presses < 8; presses += 1) {
      await page.keyboard.press("Tab");
      if ((await page.locator("[data-list] a:focus").count()) === 1) break;
    }
    const [first] = await page.locator("[data-list] > :not([hidden]) .gain-link").allTextContents();
    expect(await page.locator(":focus").textContent()).toBe(first);
  });
});

test("how many there are is said aloud, once, when it changes; nothing found is said kindly", async () => {
  await visit(home(), async ({ page }) => {
    const status = page.locator(".found");
    expect(await status.count()).toBe(1);
    expect(await status.getAttribute("role")).toBe("status");
    await search(page).fill("bollard");
    await wordsAreThere(page);
    expect(await status.textContent()).toBe("20 of 200 studies");
    await page.evaluate(() => {
      const target = document.querySelector(".found");
      const heard: string[] = [];
      Object.assign(globalThis, { heard });
      if (target)
        new MutationObserver(() => heard.push(target.textContent ?? "")).observe(target, { childList: true });
    });
    await search(page).pressSequentially(" rusty");
    expect(await countShown(page)).toBe(20);
    await search(page).pressSequentially("x");
    expect(await page.evaluate(() => Reflect.get(globalThis, "heard"))).toEqual(["0 of 200 studies"]);
    const none = page.locator(".none-found");
    expect(await none.isVisible()).toBe(true);
    expect(await none.textContent()).toContain("Take away a word or a choice");
    expect(await listViolations(page)).toEqual([]);
  });
});

test("what is asked stands in the address, and the address asks it again", async () => {
  const address = await visit(home(), async ({ page }) => {
    await search(page).fill("Zoë bollard");
    await page.getByLabel("Order").selectOption("title");
    await search(page).fill("ébène number");
    await page.getByText("More filters").click();
    await page.getByLabel("Verdict").selectOption("mixed");
    return page.url();
  });
  expect([...new URL(address).searchParams]).toEqual([
    ["q", "ébène number"],
    ["order", "title"],
    ["verdict", "mixed"],
  ]);
  await visit(address, async ({ page }) => {
    await wordsAreThere(page);
    expect(await search(page).inputValue()).toBe("ébène number");
    expect(await page.getByLabel("Verdict").isVisible()).toBe(true);
    // Odd numbers that five divides.
    expect(await countShown(page)).toBe(20);
  });
  await visit(
    home("?verdict=perfect&tag=%3Cscript%3E&q=&utm=1&length=1&item=2&constructor=3#gain"),
    async ({ page, complaints }) => {
      expect(await countShown(page)).toBe(200);
      expect(complaints).toEqual([]);
    },
  );
});

test("from a disk: the same words are found, and nothing is refused", async () => {
  await visit(
    pathToFileURL(path.join(room.folders.site, "index.html")).href,
    async ({ page, complaints }) => {
      await search(page).fill("bollard");
      await wordsAreThere(page);
      expect(await countShown(page)).toBe(20);
      expect(page.url()).toContain("?q=bollard");
      // Chromium gives pages from a disk no fonts of their own; those of the system stand in.
      expect(complaints.filter((line) => !/font|preload|ERR_FAILED/.test(line))).toEqual([]);
    },
  );
});

test("without script every study is there, with ways to tags and authors, and no form that does nothing", async () => {
  await visit(
    home(),
    async ({ page }) => {
      expect(await page.locator("[data-list] > *").count()).toBe(200);
      expect(await page.locator(".finder").isVisible()).toBe(false);
      expect(await page.locator(".shelves a").allTextContents()).toEqual([
        "2 authors",
        "3 tags",
        "50 decisions",
      ]);
    },
    { javaScriptEnabled: false },
  );
});

test("the words are fetched once somebody searches, never by the page itself, and it holds no prose", async () => {
  await visit(home(), async ({ page, requests }) => {
    const asked = () => requests.filter((url) => url.endsWith("/assets/words.js")).length;
    expect(asked()).toBe(0);
    expect(await page.content()).not.toContain("bollard");
    await search(page).focus();
    await wordsAreThere(page);
    await search(page).fill("bollard");
    expect(asked()).toBe(1);
    const { size } = await stat(path.join(room.folders.site, "index.html"));
    process.stdout.write(`  front page of 200 studies: ${size} bytes\n`);
    expect(size / total).toBeLessThan(4000);
  });
});

test("where the words cannot be had, those that the page shows are found", async () => {
  await visit(home(), async ({ page }) => {
    await page.route("**/words.js", (route) => route.abort());
    await search(page).fill("199");
    expect(await countShown(page)).toBe(1);
    await search(page).fill("ebene");
    expect(await countShown(page)).toBe(100);
  });
});

// The long ones are of the same kind as a short one, and as those of the demo: only their layout is asked about.
test.each([
  ["authors/", true],
  ["tags/", true],
  ["tags/canton/", true],
  ["tags/charge/", false],
  ["authors/ines-valcourt/", false],
])("/%s: accessible, quiet, and no wider than the screen, light and dark", async (address, isShort) => {
  const measureWidth = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth);
  const look = async ({ page, complaints }: Visit) => {
    if (isShort) expect(await listViolations(page)).toEqual([]);
    expect(await measureWidth(page)).toBeLessThanOrEqual(320);
    await page.emulateMedia({ colorScheme: "dark" });
    if (isShort) expect(await listViolations(page, "colours")).toEqual([]);
    await page.setViewportSize({ width: 1280, height: 900 });
    if (isShort) expect(await listViolations(page, "layout")).toEqual([]);
    expect(await measureWidth(page)).toBeLessThanOrEqual(1280);
    expect(complaints).toEqual([]);
  };
  await visit(home(address), look, { viewport: { width: 320, height: 900 } });
});

test("a letter is answered at once", async () => {
  await visit(home("?q=a"), async ({ page }) => {
    await wordsAreThere(page);
    const milliseconds = await page.evaluate(() => {
      const field = document.querySelector<HTMLInputElement>("#find-words");
      if (field === null) throw new Error("no field");
      const times = ["b", "bo", "bol", "boll", "bol", "bo", "b"].map((value) => {
        field.value = value;
        const start = performance.now();
        field.dispatchEvent(new Event("input", { bubbles: true }));
        document.body.getBoundingClientRect();
        return performance.now() - start;
      });
      return times.sort((a, b) => a - b)[3] ?? Number.POSITIVE_INFINITY;
    });
    process.stdout.write(`  a letter among 200 studies: ${milliseconds.toFixed(1)} ms, layout with it\n`);
    expect(milliseconds).toBeLessThan(200);
  });
});
