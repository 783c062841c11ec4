// The survey in a browser: for everyone, with and without script, by keyboard alone.
import { readFile } from "node:fs/promises";
import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, test, vi } from "vitest";
import type { GalleryResult } from "../../src/analysis/result.ts";
import { inventFlags, survey, surveyedGallery } from "../publish/surveyed.ts";
import { openRoom, publishKept } from "./room.ts";
import type { SiteServer } from "./server.ts";
import { listViolations } from "./violations.ts";

vi.setConfig({ testTimeout: 60_000 });

/** Enough flags that the axis stands and the list opens on demand, from right to left. */
const many: GalleryResult = {
  ...surveyedGallery,
  gallery: { ...surveyedGallery.gallery, language: "he" },
  survey: { ...survey, entries: inventFlags(120) },
};

const room = openRoom({
  small: (folder) => publishKept(surveyedGallery, folder),
  large: (folder) => publishKept(many, folder),
});

async function open<T>(
  server: SiteServer,
  options: BrowserContextOptions,
  look: (page: Page, complaints: readonly string[]) => Promise<T>,
  query = "",
): Promise<T> {
  const context = await room.browser.newContext({ reducedMotion: "reduce", ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  try {
    await page.goto(`${server.address}/survey/${query}`, { waitUntil: "load" });
    return await look(page, complaints);
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
  const server = () => room.sites[which];

  test("accessible, quiet, no wider than the screen, light and dark, on a phone and on a desk", async () => {
    await open(server(), { viewport: { width: 320, height: 900 } }, async (page, complaints) => {
      const measureWidth = () => page.evaluate(() => document.documentElement.scrollWidth);
      expect(await listViolations(page)).toEqual([]);
      expect(await measureWidth()).toBeLessThanOrEqual(320);
      await page.emulateMedia({ colorScheme: "dark" });
      expect(await listViolations(page, "colours")).toEqual([]);
      await page.setViewportSize({ width: 1280, height: 900 });
      expect(await listViolations(page, "layout")).toEqual([]);
      expect(await measureWidth()).toBeLessThanOrEqual(1280);
      expect(complaints).toEqual([]);
    });
  });

  test("says the same without script, and then shows no form and no button", async () => {
    const read = (page: Page) => page.locator("body").textContent();
    const without = await open(server(), { javaScriptEnabled: false }, async (page) => {
      expect(await page.locator("form:visible, button:visible, input:visible").count()).toBe(0);
      expect(await page.locator(".chosen-bar:visible").count()).toBe(0);
      return read(page);
    });
    expect(without).toBe(await open(server(), {}, read));
  });
});

test("a column sorts by its button with the keyboard alone, and says so; what has no value stays last", async () => {
  await open(room.sites.small, {}, async (page) => {
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
  await open(room.sites.small, {}, async (page) => {
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
  expect(await open(room.sites.small, {}, read, "?q=square&sort=-clarity")).toEqual(["The square"]);
  expect(await open(room.sites.small, {}, read, "?sort=nonsense&first=nothing")).toHaveLength(3);
});

test("what is proposed stands under what is, behind an arrow that turns with the page", async () => {
  for (const [server, way] of [
    [room.sites.small, 1],
    [room.sites.large, -1],
  ] as const) {
    await open(server, { viewport: { width: 1280, height: 900 } }, async (page) => {
      const changes = await page.locator("tbody td:last-child .renamed").evaluateAll((all) =>
        all.slice(0, 9).map((change) => {
          const boxOf = (element: Element | undefined) =>
            element?.getBoundingClientRect() ?? { left: 0, right: 0, top: 0, bottom: 0 };
          const [from, to] = [...change.querySelectorAll(".named")].map(boxOf);
          const arrow = change.querySelector(".arrow") ?? undefined;
          const { left, right } = boxOf(arrow);
          return {
            down: (to?.top ?? 0) - (from?.bottom ?? 0),
            across: ((to?.left ?? 0) + (to?.right ?? 0) - left - right) / 2,
            isTurned: arrow !== undefined && getComputedStyle(arrow).transform.startsWith("matrix(-1"),
          };
        }),
      );
      expect(changes.length).toBeGreaterThan(0);
      for (const { down, across, isTurned } of changes) {
        expect(down).toBeGreaterThan(-5);
        expect(across * way).toBeGreaterThan(5);
        expect(isTurned).toBe(way < 0);
      }
    });
  }
});

test("on paper every sheet of the list has its heads", async () => {
  await open(room.sites.small, {}, async (page) => {
    await page.emulateMedia({ media: "print" });
    const shown = await page
      .locator("thead button")
      .evaluateAll((all) => all.map((button) => getComputedStyle(button).display));
    // A button in a head that is repeated is drawn once: its words alone are drawn on each sheet.
    expect(new Set(shown)).toEqual(new Set(["contents"]));
  });
});

test("on a phone a flag is a card: every cell says what it is, and the buttons still sort", async () => {
  await open(room.sites.small, { viewport: { width: 360, height: 800 } }, async (page) => {
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
      room.sites.large,
      { javaScriptEnabled, viewport: { width: 1280, height: 900 } },
      async (page) => {
        const peek = page.locator(".peek").nth(3);
        expect(await peek.evaluate((element) => getComputedStyle(element).opacity)).toBe("0");
        await page.locator(".dot").nth(3).focus();
        await expect.poll(() => peek.evaluate((element) => getComputedStyle(element).opacity)).toBe("1");
        const picture = peek.locator("img");
        await expect
          .poll(() => picture.evaluate((element: HTMLImageElement) => element.naturalWidth))
          .toBeGreaterThan(0);
        await page.keyboard.press("Enter");
        const target = await page.evaluate(() => document.querySelector("tr:target")?.textContent ?? "");
        expect(target).toContain(((await peek.textContent()) ?? "?,").split(",")[0]);
      },
    );
  },
);

test("of 120 flags the field shows every flag, and the page is short until more is asked for", async () => {
  await open(room.sites.large, { viewport: { width: 1280, height: 900 } }, async (page) => {
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(6000);
    expect(await page.locator(".survey-more summary").textContent()).toBe("84 more flags");
    const drawn = await page
      .locator(".field-rows .mini")
      .evaluateAll(
        (all: HTMLImageElement[]) => all.filter((one) => one.complete && one.naturalWidth > 0).length,
      );
    expect(drawn).toBe(120);
    expect(await page.locator("tbody tr:visible").count()).toBe(36);
    await page.locator(".survey-more summary").click();
    expect(await page.locator("tbody tr:visible").count()).toBe(120);
    // Sorted, the list is as long as before, with the last of all first.
    await page.locator('th[data-sort="clarity"] button').click();
    expect(await page.locator(".survey-table").first().locator("tbody tr").count()).toBe(36);
    const clarities = await page
      .locator('td[data-head="Clarity"]')
      .evaluateAll((all: HTMLElement[]) => all.map((cell) => Number(cell.dataset["value"])));
    expect(clarities).toHaveLength(120);
    expect(clarities).toEqual([...clarities].sort((a, b) => b - a));
  });
});

test("on paper the field has its pictures, and the list all its rows", async () => {
  await open(room.sites.large, { viewport: { width: 700, height: 900 } }, async (page) => {
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".field-rows .mini:visible").count()).toBe(120);
    expect(await page.locator("tbody tr:visible").count()).toBe(120);
    expect(await page.locator(".choose:visible, .chosen-bar:visible").count()).toBe(0);
  });
});

test("chosen flags make an address that shows just these, and a file to begin studies from", async () => {
  const address = await open(room.sites.large, { viewport: { width: 1280, height: 900 } }, async (page) => {
    const bar = page.locator(".chosen-bar");
    expect(await bar.isVisible()).toBe(false);
    const boxes = page.locator(".choose");
    await boxes.nth(1).focus();
    await page.keyboard.press("Space");
    expect(await bar.locator("[role=status]").textContent()).toBe("1 flag chosen");
    await boxes.nth(3).check();
    expect(await bar.locator("[role=status]").textContent()).toMatch(/^(?:2|٢) flags chosen$/);
    return (await bar.locator(".chosen-only").getAttribute("href")) ?? "";
  });
  const keys = new URLSearchParams(address).get("flags")?.split(" ") ?? [];
  expect(keys).toHaveLength(2);
  await open(
    room.sites.large,
    { acceptDownloads: true },
    async (page, complaints) => {
      const shown = page.locator("tbody tr:visible");
      expect(await shown.evaluateAll((all) => all.map(({ id }) => id.replace("flag-", "")))).toEqual(keys);
      expect(await page.locator(".dot:visible").count()).toBe(2);
      expect(await page.locator(".choose:checked").count()).toBe(2);
      expect(await listViolations(page)).toEqual([]);
      const waiting = page.waitForEvent("download");
      await page.locator(".chosen-file").click();
      const download = await waiting;
      expect(download.suggestedFilename()).toBe("chosen-flags.txt");
      const text = await readFile(await download.path(), "utf8");
      for (const key of keys) {
        const file = key.replace("flags-", "flags/");
        expect(text).toContain(`\n  ${file}.svg\n  Clarity: `);
        expect(text).toContain(`\n  counterchange begin ${file.slice(6)} --original "${file}.svg"\n`);
      }
      // What is taken off the list goes from the address that is offered, and back to all is one step.
      await page.locator(".choose:checked").first().uncheck();
      const fewer = new URLSearchParams((await page.locator(".chosen-only").getAttribute("href")) ?? "");
      expect(fewer.get("flags")).toBe(keys[1]);
      await page.locator(".chosen-all").click();
      await expect.poll(() => page.locator(".dot:visible").count()).toBe(120);
      expect(complaints).toEqual([]);
    },
    address,
  );
});
