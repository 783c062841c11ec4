// The survey in a browser: for everyone, with and without script, by keyboard alone.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { publishGallery } from "../../src/site/publish.ts";
import type { GalleryResult } from "../../src/study/result.ts";
import { survey, surveyedGallery } from "../site/surveyed.ts";
import { launchBrowser } from "./browser.ts";
import { type SiteServer, serveSite } from "./server.ts";
import { listViolations } from "./violations.ts";

vi.setConfig({ testTimeout: 60_000 });
let room: string;
let browser: Browser;
let small: SiteServer;
let large: SiteServer;

/** Enough flags that the picture has dots, from right to left. */
const many: GalleryResult = {
  ...surveyedGallery,
  gallery: { ...surveyedGallery.gallery, language: "ar" },
  survey: {
    ...survey,
    entries: Array.from({ length: 120 }, (_, index) => survey.entries.slice(0, 2)[index % 2])
      .filter((entry) => entry !== undefined)
      .map((entry, index) => ({
        ...entry,
        slugs: [],
        drawing: survey.entries[1]?.drawing ?? "",
        flag: { ...entry.flag, file: `flags/f${index}.svg`, clarity: 20 + ((index * 7) % 81) },
      })),
  },
};

beforeAll(async () => {
  room = await mkdtemp(path.join(tmpdir(), "counterchange-survey-pages-"));
  await publishGallery(surveyedGallery, path.join(room, "small"), { keepOut: [] });
  await publishGallery(many, path.join(room, "large"), { keepOut: [] });
  small = await serveSite(path.join(room, "small"));
  large = await serveSite(path.join(room, "large"));
  browser = await launchBrowser();
}, 180_000);

afterAll(async () => {
  await browser?.close();
  await Promise.all([small?.close(), large?.close()]);
  await rm(room, { recursive: true, force: true });
});

async function open<T>(
  server: SiteServer,
  options: BrowserContextOptions,
  look: (page: Page, complaints: readonly string[], requests: readonly string[]) => Promise<T>,
  query = "",
): Promise<T> {
  const context = await browser.newContext({ reducedMotion: "reduce", ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => requests.push(request.url()));
  try {
    await page.goto(`${server.address}/survey/${query}`, { waitUntil: "load" });
    return await look(page, complaints, requests);
  } finally {
    await context.close();
  }
}

const namesIn = (page: Page) =>
  page
    .locator("tbody tr:visible th a:first-child")
    .evaluateAll((links) =>
      links.map((link) => link.textContent).filter((text) => text !== "A lighter square"),
    );

describe.each(["small", "large"] as const)("%s", (which) => {
  const server = () => (which === "small" ? small : large);

  test.each([
    ["light", 1280],
    ["light", 320],
    ["dark", 1280],
    ["dark", 320],
  ] as const)("%s, %d px wide: accessible, quiet, no wider than the screen", async (colorScheme, width) => {
    await open(server(), { colorScheme, viewport: { width, height: 900 } }, async (page, complaints) => {
      expect(await listViolations(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(complaints).toEqual([]);
    });
  });

  test("says the same without script, and then shows no form and no button", async () => {
    const read = (page: Page) => page.locator("body").textContent();
    const without = await open(server(), { javaScriptEnabled: false }, async (page) => {
      expect(await page.locator("form:visible, button:visible").count()).toBe(0);
      return read(page);
    });
    expect(without).toBe(await open(server(), {}, read));
  });
});

test("a column sorts by its button with the keyboard alone, and says so; what has no value stays last", async () => {
  await open(small, {}, async (page) => {
    const head = page.locator('th[data-sort="clarity"]');
    expect(await head.getAttribute("aria-sort")).toBe("ascending");
    expect(await namesIn(page)).toEqual(["The square", "Harbour pilots", "Plain"]);
    await page.locator('th[data-sort="name"] button').focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await head.getAttribute("aria-sort")).toBe("descending");
    expect(await namesIn(page)).toEqual(["Harbour pilots", "The square", "Plain"]);
    expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe("Clarity");
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("Space");
    expect(await head.getAttribute("aria-sort")).toBeNull();
    expect(await page.locator('th[data-sort="name"]').getAttribute("aria-sort")).toBe("ascending");
    expect(await namesIn(page)).toEqual(["Harbour pilots", "Plain", "The square"]);
    expect(new URL(page.url()).search).toBe("?sort=name");
  });
});

test("words and choices narrow the list, the count says how far, and the address keeps it", async () => {
  await open(small, {}, async (page) => {
    await page.locator("#survey-words").fill("pilots");
    expect(await namesIn(page)).toEqual(["Harbour pilots"]);
    expect(await page.locator(".found").textContent()).toBe("1 of 3 flags");
    await page.locator("#survey-words").fill("PÍLOTS, harbour");
    expect(await namesIn(page)).toEqual(["Harbour pilots"]);
    await page.locator("#survey-study").selectOption("yes");
    expect(await namesIn(page)).toEqual([]);
    expect(await page.locator(".none-found").isVisible()).toBe(true);
    await page.getByRole("button", { name: "Show all" }).click();
    await page.waitForFunction(() => document.querySelectorAll("tbody tr:not([hidden])").length === 3);
  });
  const read = async (page: Page) => namesIn(page);
  expect(await open(small, {}, read, "?q=square&sort=-clarity")).toEqual(["The square"]);
  expect(await open(small, {}, read, "?sort=nonsense&first=nothing")).toHaveLength(3);
});

test("from right to left a change still runs from what is to what is proposed, and so does its arrow", async () => {
  for (const [server, way] of [
    [small, 1],
    [large, -1],
  ] as const) {
    await open(server, { viewport: { width: 1280, height: 900 } }, async (page) => {
      const changes = await page.locator("tbody td:last-child .renamed").evaluateAll((all) =>
        all.slice(0, 9).map((change) => {
          const middle = (element: Element | undefined) => {
            const { left, right } = element?.getBoundingClientRect() ?? { left: 0, right: 0 };
            return (left + right) / 2;
          };
          const [from, to] = change.querySelectorAll(".named");
          const arrow = change.querySelector(".arrow") ?? undefined;
          return {
            across: [middle(arrow) - middle(from), middle(to) - middle(arrow)],
            isTurned: arrow !== undefined && getComputedStyle(arrow).transform.startsWith("matrix(-1"),
          };
        }),
      );
      expect(changes.length).toBeGreaterThan(0);
      for (const { across, isTurned } of changes) {
        for (const step of across) expect(step * way).toBeGreaterThan(5);
        expect(isTurned).toBe(way < 0);
      }
    });
  }
});

test("on paper every sheet of the list has its heads", async () => {
  await open(small, {}, async (page) => {
    await page.emulateMedia({ media: "print" });
    const shown = await page
      .locator("thead button")
      .evaluateAll((all) => all.map((button) => getComputedStyle(button).display));
    // A button in a head that is repeated is drawn once: its words alone are drawn on each sheet.
    expect(new Set(shown)).toEqual(new Set(["contents"]));
  });
});

test("on a phone a flag is a card: every cell says what it is, and the buttons still sort", async () => {
  await open(small, { viewport: { width: 360, height: 800 } }, async (page) => {
    const cells = page.locator("tbody tr").first().locator("td");
    const heads = await cells.evaluateAll((all) =>
      all.map((cell) => getComputedStyle(cell, "::before").content.replace(/"/g, "").trim()),
    );
    const columns = await page.locator("thead th").allTextContents();
    expect(heads).toEqual(columns.map((text) => text.trim()).slice(1));
    for (const cell of await cells.all())
      expect((await cell.boundingBox())?.width ?? 0).toBeLessThanOrEqual(360);
    await page.locator('th[data-sort="name"] button').click();
    expect(await namesIn(page)).toEqual(["Harbour pilots", "Plain", "The square"]);
  });
});

test.each([true, false])(
  "a mark shows its flag on focus and leads to its line; script %s",
  async (javaScriptEnabled) => {
    await open(
      large,
      { javaScriptEnabled, viewport: { width: 1280, height: 900 } },
      async (page, _, requests) => {
        const peek = page.locator(".peek").nth(3);
        expect(await peek.evaluate((element) => getComputedStyle(element).opacity)).toBe("0");
        await page.locator(".dot").nth(3).focus();
        await expect.poll(() => peek.evaluate((element) => getComputedStyle(element).opacity)).toBe("1");
        const picture = peek.locator("img");
        await expect
          .poll(() => picture.evaluate((element: HTMLImageElement) => element.naturalWidth))
          .toBeGreaterThan(0);
        // Pictures of marks that nobody looked at are not fetched. Without script a browser puts nothing off.
        const fetched = new Set(requests.filter((url) => url.endsWith(".svg"))).size;
        if (javaScriptEnabled) expect(fetched).toBeLessThan(60);
        await page.keyboard.press("Enter");
        const target = await page.evaluate(() => document.querySelector("tr:target")?.textContent ?? "");
        expect(target).toContain(((await peek.textContent()) ?? "?,").split(",")[0]);
      },
    );
  },
);
