// A study step by step: by keys, buttons, taps and the address, and without script.
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoBase, openDemo } from "../demo.ts";
import { openRoom } from "./room.ts";

const room = openRoom({ demo: openDemo }, demoBase);

async function open<T>(
  hash: string,
  look: (page: Page) => Promise<T>,
  options: { readonly javaScriptEnabled?: boolean; readonly width?: number; readonly height?: number } = {},
): Promise<T> {
  const { width = 1280, height = 720, javaScriptEnabled = true } = options;
  const context = await room.browser.newContext({ viewport: { width, height }, javaScriptEnabled });
  const page = await context.newPage();
  try {
    await page.goto(`${room.sites.demo.address}${demoBase}studies/kedgeport/show/${hash}`);
    return await look(page);
  } finally {
    await context.close();
  }
}

/** The steps that are to be seen. */
const shown = (page: Page): Promise<readonly string[]> =>
  page
    .locator(".show-step")
    .filter({ visible: true })
    .evaluateAll((all) => all.map(({ id }) => id));

test("keys of keyboards and presenters go on and back, and the address follows", async () => {
  await open("", async (page) => {
    const press = async (...keys: readonly string[]) => {
      for (const key of keys) await page.keyboard.press(key);
      return [await shown(page), new URL(page.url()).hash];
    };
    expect(await press()).toEqual([["the-flag"], "#the-flag"]);
    expect(await press("ArrowLeft")).toEqual([["the-flag"], "#the-flag"]);
    expect(await press("PageDown", " ", "ArrowRight")).toEqual([["from-afar"], "#from-afar"]);
    expect(await press("PageUp", "Shift+Space")).toEqual([["what-has-to-be-seen"], "#what-has-to-be-seen"]);
    expect(await press("End")).toEqual([["the-question"], "#the-question"]);
    expect(await press("Home")).toEqual([["the-flag"], "#the-flag"]);
    await page.keyboard.press("Escape");
    await page.waitForURL(/kedgeport\/$/);
  });
});

test("an address opens its step; buttons and taps move from there", async () => {
  await open("#the-price", async (page) => {
    expect(await shown(page)).toEqual(["the-price"]);
    await page.getByRole("button", { name: "Next" }).click();
    expect(await shown(page)).toEqual(["to-other-eyes"]);
    await page.getByRole("button", { name: "Back" }).click();
    await page.mouse.click(100, 300);
    expect(await shown(page)).toEqual(["better-and-worse"]);
    await page.mouse.click(1100, 600);
    expect(await shown(page)).toEqual(["the-price"]);
    expect(await page.getByRole("status").textContent()).toMatch(/^\d+ \/ \d+$/);
  });
});

test("before and after stand at the same pixels", async () => {
  const boxes = ["#before", "#after"].map((hash) =>
    open(hash, (page) => page.locator(`${hash} img`).boundingBox()),
  );
  const [before, after] = await Promise.all(boxes);
  expect(before).not.toBeNull();
  expect(after).toEqual(before);
});

test.each([
  [1920, 1080],
  [1280, 720],
])(
  "at %i × %i every step fits the screen, in type of a fortieth of its height or more",
  async (width, height) => {
    const anchors = await open("", (page) =>
      page.locator(".show-step").evaluateAll((all) => all.map(({ id }) => id)),
    );
    expect(anchors.length).toBeGreaterThan(9);
    await open(
      "",
      async (page) => {
        for (const anchor of anchors) {
          const found = await page.locator(`#${anchor}`).evaluate((step) => {
            const texts = [...step.querySelectorAll("h2, p, figcaption, td, th, span, a")];
            const sizes = texts
              .filter((one) => (one as HTMLElement).offsetParent !== null && one.textContent?.trim() !== "")
              .map((one) => Number.parseFloat(getComputedStyle(one).fontSize));
            return { low: document.documentElement.scrollHeight, least: Math.min(...sizes) };
          });
          expect(found.low, anchor).toBeLessThanOrEqual(height);
          expect(found.least, anchor).toBeGreaterThanOrEqual(height / 40 - 0.01);
          await page.keyboard.press("ArrowRight");
        }
      },
      { width, height },
    );
  },
);

test("without script every step stands on the page, a screen each", async () => {
  await open(
    "#the-price",
    async (page) => {
      const steps = await shown(page);
      expect(steps).toContain("the-flag");
      expect(steps).toContain("the-question");
      const top = await page.locator("#the-price").evaluate((step) => step.getBoundingClientRect().top);
      expect(Math.abs(top)).toBeLessThan(2);
      expect(await page.getByRole("button").filter({ visible: true }).count()).toBe(0);
    },
    { javaScriptEnabled: false },
  );
});
