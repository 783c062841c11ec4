// A study step by step: by keys, buttons, taps and the address, and without script.
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoBase, openDemo } from "../demo.ts";
import { openRoom } from "./room.ts";

const room = openRoom({ demo: openDemo }, demoBase);

async function open<T>(
  hash: string,
  look: (page: Page) => Promise<T>,
  options: {
    readonly of?: string;
    readonly javaScriptEnabled?: boolean;
    readonly width?: number;
    readonly height?: number;
    readonly hasTouch?: boolean;
  } = {},
): Promise<T> {
  const {
    of = "studies/kedgeport",
    width = 1280,
    height = 720,
    javaScriptEnabled = true,
    hasTouch = true,
  } = options;
  const context = await room.browser.newContext({
    viewport: { width, height },
    javaScriptEnabled,
    hasTouch,
  });
  const page = await context.newPage();
  try {
    await page.goto(`${room.sites.demo.address}${demoBase}${of}/show/${hash}`);
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

test("a finger turns a step as it turns a page, and taps go where clicks go", async () => {
  await open("#from-afar", async (page) => {
    const swipe = (fromX: number, toX: number) =>
      page.evaluate(
        ([from = 0, to = 0]) => {
          const touch = (clientX: number) =>
            new Touch({ identifier: 1, target: document.body, clientX, clientY: 300 });
          document.body.dispatchEvent(
            new TouchEvent("touchstart", { bubbles: true, touches: [touch(from)] }),
          );
          document.body.dispatchEvent(
            new TouchEvent("touchend", { bubbles: true, changedTouches: [touch(to)] }),
          );
        },
        [fromX, toX],
      );
    await swipe(900, 300);
    expect(await shown(page)).toEqual(["the-colours"]);
    await swipe(300, 900);
    expect(await shown(page)).toEqual(["from-afar"]);
    await swipe(300, 310);
    expect(await shown(page)).toEqual(["from-afar"]);
    await page.touchscreen.tap(1000, 300);
    expect(await shown(page)).toEqual(["the-colours"]);
  });
});

test("the speaker's window goes along both ways, with notes that no projector shows", async () => {
  await open("#the-flag", async (page) => {
    const [notes] = await Promise.all([
      page.waitForEvent("popup"),
      page.getByRole("button", { name: "Notes" }).click(),
    ]);
    await notes.waitForFunction(() => document.querySelector(".show-told")?.textContent !== "");
    const told = notes.locator(".show-told");
    expect(new URL(notes.url()).search).toBe("?notes");
    expect(await told.textContent()).toMatch(/^Say nothing for ten seconds/);
    expect(await shown(notes)).toEqual(["the-flag", "what-has-to-be-seen"]);
    await page.keyboard.press("ArrowRight");
    await notes.waitForFunction(() => location.hash === "#what-has-to-be-seen");
    expect(await told.textContent()).toBe("No note for this step.");
    await notes.keyboard.press("End");
    await page.waitForFunction(() => location.hash === "#the-question");
    expect(await shown(page)).toEqual(["the-question"]);
    expect(await page.locator(".show-note").filter({ visible: true }).count()).toBe(0);
    expect(await notes.getByText("Say nothing").filter({ visible: true }).count()).toBe(0);
  });
});

test("the opening and the closing of a series have notes of its own, its flags those of their studies", async () => {
  await open(
    "?notes#the-closing",
    async (page) => {
      const told = page.locator(".show-told");
      expect(await told.textContent()).toMatch(/^Count hands before anybody speaks/);
      await page.keyboard.press("Home");
      expect(await told.textContent()).toMatch(/^Blinds half down/);
    },
    { of: "series/half-dark" },
  );
});

test("nothing moves by itself, and the controls hide but for the counter, none of them on a phone", async () => {
  const look = async (page: Page) => {
    const moving = await page.evaluate(() => document.getAnimations().length);
    expect(moving).toBe(0);
    await page.clock.install();
    await page.mouse.move(400, 300);
    expect(await page.locator(".show-ways").isVisible()).toBe(true);
    await page.clock.runFor(3100);
    const next = page.getByRole("button", { name: "Next" });
    expect(await next.isVisible()).toBe(false);
    expect(await page.getByRole("status").isVisible()).toBe(true);
    await page.setViewportSize({ width: 390, height: 800 });
    expect(await next.isVisible()).toBe(true);
  };
  await open("", look, { hasTouch: false });
});

test.each([
  [1920, 1080, "studies/kedgeport"],
  [1280, 720, "studies/kedgeport"],
  [1280, 720, "series/half-dark"],
])(
  "at %i × %i every step of %s fits the screen, in type of a fortieth of its height or more",
  async (width, height, of) => {
    const anchors = await open(
      "",
      (page) => page.locator(".show-step").evaluateAll((all) => all.map(({ id }) => id)),
      { of },
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
            // What is on paper or on the mat stays clear of a twentieth of each side, and of what is beside it.
            const out = [...step.querySelectorAll("h2, img, td, th, .show-caption, figcaption")]
              .filter((one) => (one as HTMLElement).offsetParent !== null)
              .flatMap((one) => {
                const { left, right, top, bottom } = one.getBoundingClientRect();
                const isIn =
                  left >= 0.05 * innerWidth - 1 &&
                  right <= 0.95 * innerWidth + 1 &&
                  top >= 0.05 * innerHeight - 1 &&
                  bottom <= 0.95 * innerHeight + 1;
                return isIn ? [] : [`${one.tagName} ${one.textContent}`];
              });
            const picture = step.querySelector(".show-picture");
            if (picture && picture.scrollHeight > picture.clientHeight + 1) out.push("the picture");
            return { low: document.documentElement.scrollHeight, least: Math.min(...sizes), out };
          });
          expect(found.out, anchor).toEqual([]);
          expect(found.low, anchor).toBeLessThanOrEqual(height);
          expect(found.least, anchor).toBeGreaterThanOrEqual(height / 40 - 0.01);
          await page.keyboard.press("ArrowRight");
        }
      },
      { of, width, height },
    );
  },
);

test.each([
  ["studies/kedgeport", "the-flag", "the-price", "the-question"],
  ["series/half-dark", "the-opening", "linnet-strand-after", "the-closing"],
])("without script every step of %s stands on the page, a screen each", async (of, first, some, last) => {
  await open(
    `#${some}`,
    async (page) => {
      const steps = await shown(page);
      expect(steps).toContain(first);
      expect(steps).toContain(last);
      const top = await page.locator(`#${some}`).evaluate((step) => step.getBoundingClientRect().top);
      expect(Math.abs(top)).toBeLessThan(2);
      expect(await page.locator(".show-note").filter({ visible: true }).count()).toBe(0);
      expect(await page.getByRole("button").filter({ visible: true }).count()).toBe(0);
      // A screen reader comes by each step as a whole: its heading, what it shows, what is said of it.
      const told = (await page.locator("main").ariaSnapshot()).replace(/\s+/g, " ");
      const articles = told.split("- article").slice(1);
      expect(articles).toHaveLength(steps.length);
      for (const article of articles)
        expect(article).toMatch(
          /^ '?"(.*?)"'?: - '?heading "\1" \[level=2\]'?.*[ '](?:img|table|figure).* paragraph/,
        );
    },
    { of, javaScriptEnabled: false },
  );
});

test("on paper each step has a page, across", async () => {
  await open("", async (page) => {
    const steps = await page.locator(".show-step").count();
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(steps);
    const [, width = 0, height = 0] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf)?.map(Number) ?? [];
    expect(width).toBeGreaterThan(height);
  });
});
