// The pages of all studies of the demo as somebody scrolls and prints them: how high, how many sheets, with large letters.
import { readdir } from "node:fs/promises";
import path from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { buildSite } from "../../src/publish/buildsite.ts";
import { openKept } from "../kept.ts";
import { openRoom } from "./room.ts";

const content = path.resolve(import.meta.dirname, "../../content");
let slugs: readonly string[];
const room = openRoom({
  demo: async (folder) => {
    await buildSite(content, folder, { store: await openKept() });
    slugs = await readdir(path.join(folder, "studies"));
  },
});

async function open<T>(address: string, width: number, look: (page: Page) => Promise<T>): Promise<T> {
  const page = await room.browser.newPage({ viewport: { width, height: 900 }, reducedMotion: "reduce" });
  try {
    await page.goto(`${room.sites.demo.address}/${address}`, { waitUntil: "load" });
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    return await look(page);
  } finally {
    await page.close();
  }
}

test.each([
  [1280, 4800],
  [390, 7500],
])(
  "at %i px a study is at most %i px high besides its prose",
  async (width, most) => {
    expect(slugs.length).toBeGreaterThan(10);
    for (const slug of slugs) {
      const height = await open(`studies/${slug}/`, width, (page) =>
        page.evaluate(
          () =>
            document.documentElement.scrollHeight -
            (document.querySelector(".prose")?.getBoundingClientRect().height ?? 0),
        ),
      );
      expect(height, slug).toBeGreaterThan(1000);
      expect(height, slug).toBeLessThanOrEqual(most);
    }
  },
  60_000,
);

test.each([
  [1280, 800],
  [390, 844],
])(
  "on a screen of %i × %i px both flags, the verdict and its price stand over the fold, and their control",
  async (width, height) => {
    for (const slug of slugs) {
      const page = await room.browser.newPage({ viewport: { width, height }, reducedMotion: "reduce" });
      try {
        await page.goto(`${room.sites.demo.address}/studies/${slug}/`, { waitUntil: "load" });
        await page.evaluate(() => document.fonts.ready.then(() => undefined));
        const ends = await page
          .locator(".swap .plate:not(.split) img, .swap button, .verdict h2, .verdict-sentence")
          .filter({ visible: true })
          .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().bottom));
        expect(ends.length, slug).toBe(5);
        expect(Math.max(...ends), slug).toBeLessThanOrEqual(height);
        expect(await page.locator(".verdict-sentence").textContent(), slug).toMatch(/Clarity \w+ /);
      } finally {
        await page.close();
      }
    }
  },
  60_000,
);

test("a study prints on at most five sheets of A4, and no picture waits to be scrolled to", async () => {
  for (const slug of slugs) {
    const { sheets, waiting } = await open(`studies/${slug}/`, 1280, async (page) => ({
      waiting: await page.locator("main img[loading=lazy]").count(),
      sheets: (await page.pdf({ format: "A4" })).toString("latin1").match(/\/Type\s*\/Page\b/g)?.length,
    }));
    expect(waiting, slug).toBe(0);
    expect(sheets, slug).toBeGreaterThan(1);
    expect(sheets, slug).toBeLessThanOrEqual(5);
  }
}, 120_000);

test("with letters twice as large on a phone nothing reaches off the screen", async () => {
  for (const slug of slugs)
    for (const address of [`studies/${slug}/`, `studies/${slug}/changes/`]) {
      const width = await open(address, 390, async (page) => {
        await page.evaluate(() => {
          document.documentElement.style.fontSize = "200%";
        });
        return page.evaluate(() => document.documentElement.scrollWidth);
      });
      expect(width, address).toBeLessThanOrEqual(390);
    }
}, 120_000);

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
  });
  await open("studies/kedgeport/#change-000000-e6b436", 1280, async (page) => {
    await page.waitForURL(/\/kedgeport\/changes\/#change-000000-e6b436$/);
    expect(await page.locator("td:target").textContent()).toContain("this study");
    await page.getByRole("link", { name: "A gold anchor over two fields" }).click();
    await page.waitForURL(/\/studies\/kedgeport\/$/);
  });
});
