// The pages of all studies of the demo as somebody scrolls and prints them: how high, how many sheets, with large letters.
import { readdir } from "node:fs/promises";
import path from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { demoBase, openDemo } from "../demo.ts";
import { openRoom } from "./room.ts";

const room = openRoom({ demo: openDemo }, demoBase);

async function open<T>(address: string, width: number, look: (page: Page) => Promise<T>): Promise<T> {
  const page = await room.browser.newPage({ viewport: { width, height: 900 }, reducedMotion: "reduce" });
  try {
    await page.goto(`${room.sites.demo.address}${demoBase}${address}`, { waitUntil: "load" });
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    return await look(page);
  } finally {
    await page.close();
  }
}

/** What the page of a study takes, in CSS pixels and sheets of A4. */
interface Size {
  readonly slug: string;
  /** Besides its prose and the answers of others, at each width. */
  readonly heights: Readonly<Record<1280 | 390, number>>;
  /** At 390 px with letters twice as large: the page of the study, and that of its other changes. */
  readonly enlarged: readonly number[];
  /** Where what has to stand over the fold ends, on a screen so high: 1280 and 390 px wide. */
  readonly ends: readonly (readonly [number, readonly number[]])[];
  readonly price: string | null;
  readonly sheets: number | undefined;
  /** Pictures that are loaded once they are scrolled to. */
  readonly waiting: number;
}

async function measureAt(page: Page, width: number): Promise<number> {
  await page.setViewportSize({ width, height: 900 });
  return page.evaluate(
    () =>
      document.documentElement.scrollHeight -
      [document.querySelector(".prose"), document.querySelector(".said")].reduce(
        (sum, part) => sum + (part?.getBoundingClientRect().height ?? 0),
        0,
      ),
  );
}

async function findEnds(page: Page, width: number, height: number): Promise<readonly [number, number[]]> {
  await page.setViewportSize({ width, height });
  const ends = await page
    .locator(".swap .plate:not(.split) img, .swap button, .verdict h2, .verdict-sentence")
    .filter({ visible: true })
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().bottom + scrollY));
  return [height, ends];
}

/** Leaves the page so. */
async function enlarge(page: Page): Promise<number> {
  await page.setViewportSize({ width: 390, height: 900 });
  return page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
    return document.documentElement.scrollWidth;
  });
}

async function measureStudy(slug: string): Promise<Size> {
  const found = await open(`studies/${slug}/`, 1280, async (page) => ({
    slug,
    heights: { 1280: await measureAt(page, 1280), 390: await measureAt(page, 390) },
    ends: [await findEnds(page, 1280, 800), await findEnds(page, 390, 844)],
    price: await page.locator(".verdict-sentence").textContent(),
    waiting: await page.locator("main img[loading=lazy]").count(),
    sheets: (await page.pdf({ format: "A4" })).toString("latin1").match(/\/Type\s*\/Page\b/g)?.length,
    enlarged: [await enlarge(page)],
  }));
  const changes = await open(`studies/${slug}/changes/`, 390, enlarge);
  return { ...found, enlarged: [...found.enlarged, changes] };
}

const sizes: Size[] = [];
beforeAll(async () => {
  for (const slug of await readdir(path.join(room.folders.demo, "studies")))
    sizes.push(await measureStudy(slug));
}, 120_000);

test.each([
  [1280, 4800],
  [390, 7500],
] as const)("at %i px a study is at most %i px high besides its prose", (width, most) => {
  expect(sizes.length).toBeGreaterThan(10);
  for (const { slug, heights } of sizes) {
    expect(heights[width], slug).toBeGreaterThan(1000);
    expect(heights[width], slug).toBeLessThanOrEqual(most);
  }
});

test("on a screen both flags, the verdict and its price stand over the fold, and their control", () => {
  for (const { slug, ends, price } of sizes) {
    for (const [height, found] of ends) {
      expect(found.length, slug).toBe(5);
      expect(Math.max(...found), slug).toBeLessThanOrEqual(height);
    }
    expect(price, slug).toMatch(/Clarity \w+ /);
  }
});

test("a study prints on at most five sheets of A4, and no picture waits to be scrolled to", () => {
  for (const { slug, sheets, waiting } of sizes) {
    expect(waiting, slug).toBe(0);
    expect(sheets, slug).toBeGreaterThan(1);
    expect(sheets, slug).toBeLessThanOrEqual(5);
  }
});

test("with letters twice as large on a phone nothing reaches off the screen", () => {
  for (const { slug, enlarged } of sizes)
    for (const width of enlarged) expect(width, slug).toBeLessThanOrEqual(390);
});

test("where the matrix has no room for columns nothing of it is cut off, and the study's own change is the first of its row", async () => {
  for (const width of [390, 768]) {
    const seen = await open("studies/kedgeport/changes/", width, async (page) => {
      const box = page.locator(".matrix-box");
      return {
        room: await box.evaluate(({ scrollWidth, clientWidth }) => clientWidth - scrollWidth),
        own: await page.locator(".matrix td:not(.no-cell)").evaluateAll(
          (all) =>
            all.filter(({ className, previousElementSibling }) => {
              return className === "own" && previousElementSibling?.tagName === "TH";
            }).length,
        ),
        names: await page.locator(".cell-name").filter({ visible: true }).allTextContents(),
      };
    });
    expect(seen.room, `${width}`).toBeGreaterThanOrEqual(0);
    expect(seen.own, `${width}`).toBe(1);
    expect(seen.names, `${width}`).toContain("gold");
  }
});

test("what can be pressed is 24 px wide and high, or stands in a line of text", async () => {
  for (const width of [1280, 390]) {
    const small = await open("studies/kedgeport/", width, (page) =>
      page
        .locator("main :is(.on-page a, .tags a, .downloads a, button, summary)")
        .filter({ visible: true })
        .evaluateAll((all) =>
          all
            .map((target) => ({ text: target.textContent, box: target.getBoundingClientRect() }))
            .filter(({ box }) => Math.min(box.width, box.height) < 24)
            .map(({ text, box }) => `${text} ${box.width} × ${box.height}`),
        ),
    );
    expect(small).toEqual([]);
  }
});

test("the contents name headings of the page, and old anchors lead to where their matter is now", async () => {
  await open("studies/kedgeport/", 1280, async (page) => {
    const links = await page
      .locator(".on-page a")
      .evaluateAll((all) => all.map((link) => [link.getAttribute("href") ?? "", link.textContent]));
    expect(links.length).toBeGreaterThan(5);
    for (const [anchor, text] of links) expect(await page.locator(anchor ?? "").textContent()).toBe(text);
    expect(await page.locator("#options, #matrix, #likeness, #facts, #colours, #drawings").count()).toBe(6);
    // Grades that no edge has are not explained, and numbers under small pictures say what they are of.
    const key = await page.locator(".map-key li").allTextContents();
    expect(key.map((text) => text.trim())).toEqual([
      "strong",
      "weak",
      "what has to be seen, found: 8% of the flag",
    ]);
    for (const text of await page.locator(".strip-clarity").allTextContents())
      expect(text).toMatch(
        /what has to be seen: clarity \d+%$|^enlarged: at its real size too small to make out$/,
      );
    for (const text of await page.locator(".seen-one .seen-number").allTextContents())
      expect(text).toMatch(/^clarity of the whole flag |^nearest two greys differ by /);
  });
  await open("studies/kedgeport/#change-000000-e6b436", 1280, async (page) => {
    await page.waitForURL(/\/kedgeport\/changes\/#change-000000-e6b436$/);
    expect(await page.locator("td:target").textContent()).toContain("this study");
    await page.getByRole("link", { name: "A gold anchor over two fields" }).click();
    await page.waitForURL(/\/studies\/kedgeport\/$/);
  });
});
