// The pair of a study in a browser: where its control stands, what it shows and at which pixels, what it says, paper, no script.
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import sharp from "sharp";
import { describe, expect, test, vi } from "vitest";
import { galleryResult } from "../publish/sample.ts";
import { oddGallery } from "./gallery.ts";
import { openRoom, publishKept } from "./room.ts";

vi.setConfig({ testTimeout: 60_000 });

const studyPath = "studies/a-square/";
const desk = { viewport: { width: 1280, height: 800 } };
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

const room = openRoom({
  site: (folder) => publishKept(galleryResult, folder),
  odd: (folder) => publishKept(oddGallery, folder),
});

interface Shown {
  readonly page: Page;
  readonly flags: Locator;
  readonly next: Locator;
  readonly both: Locator;
}

async function open(
  url: string,
  look: (shown: Shown) => Promise<void>,
  options: BrowserContextOptions = desk,
): Promise<void> {
  const context = await room.browser.newContext(options);
  const page = await context.newPage();
  try {
    await page.goto(url, { waitUntil: "load" });
    await look({
      page,
      flags: page.locator(".swap .plate:not(.split) img"),
      next: page.getByRole("button", { name: "Swap in place" }),
      both: page.getByRole("button", { name: "Show both" }),
    });
  } finally {
    await context.close();
  }
}

const at = (address: string) => `${room.sites.site.address}/${address}`;

/** The names of the flags that can be seen, by their captions. */
async function listShown(page: Page): Promise<readonly string[]> {
  const shown = page.locator(".swap figure").filter({ visible: true });
  return shown
    .locator("figcaption")
    .evaluateAll((all) => all.map((caption) => (caption.querySelector("span") ?? caption).textContent ?? ""));
}

const expectShown = (page: Page, names: readonly string[]) =>
  expect.poll(() => listShown(page), { timeout: 5_000 }).toEqual(names);

/** The pixels of a flag on the screen, and where: whole pixels inside its box. */
async function takeFlag(page: Page, flag: Locator): Promise<{ clip: Box; pixels: Buffer }> {
  const box = await boxOf(flag);
  const [x, y] = [Math.ceil(box.x), Math.ceil(box.y)];
  const width = Math.floor(box.x + box.width) - x;
  const height = Math.floor(box.y + box.height) - y;
  const clip = { x, y, width, height };
  return { clip, pixels: await readPixels(await page.screenshot({ clip })) };
}

const readPixels = (png: Buffer) => sharp(png).removeAlpha().raw().toBuffer();

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

async function boxOf(target: Locator): Promise<Box> {
  const box = await target.boundingBox();
  if (box === null) throw new Error("it can be seen");
  return box;
}

/** The drawing alone, drawn by the browser in the same box of a page with nothing else on it. */
async function renderAlone(address: string, box: Box, clip: Box): Promise<Buffer> {
  const context = await room.browser.newContext(desk);
  const page = await context.newPage();
  try {
    const { x, y, width, height } = box;
    await page.setContent(
      `<img src="${address}" style="position: absolute; left: ${x}px; top: ${y}px; width: ${width}px; height: ${height}px">`,
      { waitUntil: "load" },
    );
    return await readPixels(await page.screenshot({ clip }));
  } finally {
    await context.close();
  }
}

describe.each([
  ["study", studyPath],
  ["front page", ""],
])("the control of a %s", (_name, address) => {
  test.each([
    ["1280 × 800", desk],
    ["390 × 844", phone],
    ["844 × 390", { viewport: { width: 844, height: 390 } }],
  ])(
    "is on the screen before anything is scrolled, and where it was after a swap, at %s",
    async (_size, options) => {
      const { height, width } = options.viewport;
      await open(
        at(address),
        async ({ page, next, both, flags }) => {
          const [first, box] = [await boxOf(flags.first()), await boxOf(next)];
          expect(await page.evaluate(() => scrollY)).toBe(0);
          expect(first.y).toBeLessThan(height);
          expect(box.y + box.height).toBeLessThanOrEqual(height);
          expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24);
          await next.click();
          await expectShown(page, ["Original"]);
          const alone = [await boxOf(next), await boxOf(both)];
          for (const target of alone) {
            expect(target.y + target.height).toBeLessThanOrEqual(height);
            expect(target.x + target.width).toBeLessThanOrEqual(width);
          }
          await next.click();
          await expectShown(page, ["Redesign"]);
          expect([await boxOf(next), await boxOf(both)]).toEqual(alone);
        },
        options,
      );
    },
  );
});

test("each flag alone is its own drawing at the same pixels, as large as the column or the window allows", async () => {
  await open(at(studyPath), async ({ page, next, flags }) => {
    const before = await boxOf(flags.first());
    await next.click();
    await expectShown(page, ["Original"]);
    await page.mouse.move(0, 0);
    const box = await boxOf(flags.first());
    const original = await takeFlag(page, flags.first());
    await next.press("Enter");
    await expectShown(page, ["Redesign"]);
    expect(await boxOf(flags.nth(1))).toEqual(box);
    const redesign = await takeFlag(page, flags.nth(1));
    expect(redesign.clip).toEqual(original.clip);
    const [first, second] = ["original.svg", "redesign.svg"].map((file) =>
      renderAlone(at(`${studyPath}${file}`), box, original.clip),
    );
    expect(original.pixels.equals((await first) ?? Buffer.alloc(0))).toBe(true);
    expect(redesign.pixels.equals((await second) ?? Buffer.alloc(0))).toBe(true);
    expect(original.pixels.equals(redesign.pixels)).toBe(false);
    // Whole in the window, and half as wide again as beside the other at least.
    expect(box.y).toBeGreaterThanOrEqual(0);
    expect(box.y + box.height).toBeLessThanOrEqual(800);
    expect(box.width).toBeGreaterThan(1.5 * before.width);
  });
});

test("no frame between two flags shows anything else", async () => {
  await open(at(studyPath), async ({ page, next, flags }) => {
    await next.click();
    await expectShown(page, ["Original"]);
    const seen = await page.evaluate(async () => {
      const swap = document.querySelector<HTMLElement>(".swap");
      const button = swap?.querySelector("button");
      const counts = new Set<number>();
      const running = document.getAnimations().length;
      for (let frame = 0; frame < 40; frame += 1) {
        if (frame % 4 === 0) button?.click();
        await new Promise(requestAnimationFrame);
        const images = [...document.querySelectorAll(".swap .plate:not(.split) img")];
        counts.add(images.filter((image) => getComputedStyle(image).visibility === "visible").length);
      }
      return { counts: [...counts], moving: running + document.getAnimations().length };
    });
    expect(seen).toEqual({ counts: [1], moving: 0 });
    expect(await flags.evaluateAll((all) => all.every((image) => (image as HTMLImageElement).complete))).toBe(
      true,
    );
  });
});

describe("by keyboard", () => {
  test("the button alternates, says what is shown, and the second one returns to both", async () => {
    await open(at(studyPath), async ({ page, next, both }) => {
      const status = page.locator(".swap [role=status]");
      await expectShown(page, ["Original", "Redesign"]);
      expect([await status.textContent(), await both.isVisible()]).toEqual(["", false]);
      await next.focus();
      for (const name of ["Original", "Redesign", "Original"]) {
        await page.keyboard.press("Space");
        await expectShown(page, [name]);
        expect(await status.textContent()).toBe(`${name} shown alone`);
        expect(await page.getByRole("img", { name: /^(Original|Redesign): / }).count()).toBe(1);
      }
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      await expectShown(page, ["Original", "Redesign"]);
      expect(await status.textContent()).toBe("Both flags shown");
      expect(await next.evaluate((button) => button === document.activeElement)).toBe(true);
    });
  });

  test.each(["ltr", "rtl"])("the arrow key of its side shows a flag, Escape both, %s", async (direction) => {
    const url = direction === "ltr" ? at(studyPath) : `${room.sites.odd.address}/studies/long-words/`;
    await open(url, async ({ page, flags }) => {
      expect(await page.evaluate(() => document.dir || "ltr")).toBe(direction);
      const [original, redesign] = [await boxOf(flags.first()), await boxOf(flags.nth(1))];
      const isOriginalLeft = original.x < redesign.x;
      expect(isOriginalLeft).toBe(direction === "ltr");
      await page.keyboard.press("ArrowLeft");
      await expectShown(page, [isOriginalLeft ? "Original" : "Redesign"]);
      await page.keyboard.press("ArrowRight");
      await expectShown(page, [isOriginalLeft ? "Redesign" : "Original"]);
      await page.keyboard.press("Escape");
      await expectShown(page, ["Original", "Redesign"]);
    });
  });

  test("keys are left to fields, to other commands, and to a reader who is elsewhere on the page", async () => {
    await open(at(""), async ({ page, next }) => {
      await page.keyboard.press("Alt+Shift+ArrowRight");
      await page.evaluate(() => scrollTo({ top: document.body.scrollHeight, behavior: "instant" }));
      await page.evaluate(() =>
        document.querySelector<HTMLElement>("main")?.style.setProperty("padding-bottom", "2000px"),
      );
      await page.evaluate(() => scrollTo({ top: document.body.scrollHeight, behavior: "instant" }));
      await page.keyboard.press("ArrowRight");
      await page.evaluate(() => {
        scrollTo({ top: 0, behavior: "instant" });
        const field = document.createElement("input");
        document.querySelector(".opening")?.append(field);
        field.focus();
      });
      await page.keyboard.press("ArrowRight");
      await page.waitForTimeout(100);
      expect(await listShown(page)).toEqual(["Original", "Redesign"]);
      await next.focus();
      await page.keyboard.press("ArrowRight");
      await expectShown(page, ["Redesign"]);
    });
  });
});

test("a tap on a flag shows it alone, the next one the other", async () => {
  await open(
    at(studyPath),
    async ({ page, flags, both }) => {
      await flags.nth(1).tap();
      await expectShown(page, ["Redesign"]);
      await flags.nth(1).tap();
      await expectShown(page, ["Original"]);
      await flags.first().tap();
      await expectShown(page, ["Redesign"]);
      await both.tap();
      await expectShown(page, ["Original", "Redesign"]);
    },
    phone,
  );
});

test("on the front page a flag leads to its study, and the control does not", async () => {
  await open(at(""), async ({ page, flags, next }) => {
    await next.click();
    await expectShown(page, ["Original"]);
    const { x, y, width, height } = await boxOf(flags.first());
    await page.mouse.click(x + width / 2, y + height / 2);
    await page.waitForURL(at(studyPath));
  });
});

test.each([
  [390, 1],
  [768, 2],
  [1280, 2],
  [1920, 2],
])(
  "%i pixels wide: both flags at one size, %i abreast, on one grey in light and dark",
  async (width, abreast) => {
    const greys = new Set<string>();
    for (const colorScheme of ["light", "dark"] as const) {
      await open(
        at(studyPath),
        async ({ page, flags }) => {
          const [first, second] = [await boxOf(flags.first()), await boxOf(flags.nth(1))];
          expect([first.width, first.height]).toEqual([second.width, second.height]);
          expect(first.y === second.y ? 2 : 1).toBe(abreast);
          // Beside each other they fill the column; one over the other they leave room for the verdict.
          expect(abreast * first.width).toBeGreaterThan((abreast === 2 ? 0.65 : 0.5) * width);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
          const mats = page.locator(".swap .mat").filter({ visible: true });
          for (const grey of await mats.evaluateAll((all) =>
            all.map((mat) => getComputedStyle(mat).backgroundColor),
          ))
            greys.add(grey);
          expect(await mats.allTextContents()).toEqual(["", ""]);
        },
        { viewport: { width, height: 1080 }, colorScheme },
      );
    }
    // Source: CIE 15, L* = 50 is Y = 18.4 percent; of the greys of sRGB (IEC 61966-2-1) that is 119.
    expect([...greys]).toEqual(["rgb(119, 119, 119)"]);
  },
);

test("without script both flags stand and there is no control", async () => {
  await open(
    at(studyPath),
    async ({ page, next, flags }) => {
      expect([
        await next.isVisible(),
        await flags.first().isVisible(),
        await flags.nth(1).isVisible(),
      ]).toEqual([false, true, true]);
      expect(await listShown(page)).toEqual(["Original", "Redesign"]);
      expect(await page.getByRole("button").count()).toBe(0);
    },
    { ...desk, javaScriptEnabled: false },
  );
});

test("on paper both flags and one of both halves, whatever was shown, and no control", async () => {
  await open(at(studyPath), async ({ page, next, flags }) => {
    await next.click();
    await expectShown(page, ["Original"]);
    await page.emulateMedia({ media: "print" });
    expect(await listShown(page)).toEqual(["Original", "Redesign", "Half original, half redesign"]);
    expect(await next.isVisible()).toBe(false);
    const split = page.locator(".split img");
    expect(await boxOf(split.first())).toEqual(await boxOf(split.nth(1)));
    expect((await boxOf(split.first())).width).toBeCloseTo((await boxOf(flags.first())).width, 0);
    const { pixels, clip } = await takeFlag(page, split.first());
    const pixelAt = (x: number) => {
      const from = 3 * (Math.floor(clip.height / 2) * clip.width + Math.round(x * clip.width));
      return [...pixels.subarray(from, from + 3)];
    };
    // The square reaches from one third to two thirds of the flag: red before, yellow after.
    expect([pixelAt(0.4), pixelAt(0.6)]).toEqual([
      [0xc8, 0x20, 0x2f],
      [0xf4, 0xc4, 0x30],
    ]);
  });
});

test("works on a page opened from a disk", async () => {
  await open(
    pathToFileURL(path.join(room.folders.site, studyPath, "index.html")).href,
    async ({ page, next }) => {
      await next.click();
      await expectShown(page, ["Original"]);
    },
  );
});
