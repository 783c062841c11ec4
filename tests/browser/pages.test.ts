import { readFile } from "node:fs/promises";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { HtmlValidate } from "html-validate";
import type { BrowserContextOptions, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { listFiles } from "../../src/publish/folder/manifest.ts";
import { demoBase as base, openDemo } from "../demo.ts";
import { isWhole, sample } from "../sample.ts";
import { emptyGallery, oddGallery } from "./gallery.ts";
import { openRoom, publishKept } from "./room.ts";
import { listViolations } from "./violations.ts";

const sites = ["demo", "odd", "empty"] as const;
const room = openRoom(
  {
    demo: openDemo,
    odd: (folder) => publishKept(oddGallery, folder, base),
    empty: (folder) => publishKept(emptyGallery, folder, base),
  },
  base,
);

/** Everything a page said and asked for while it was open. */
interface Visit {
  readonly page: Page;
  readonly complaints: readonly string[];
  readonly requests: readonly string[];
}

/** Opens a page; it is open until the context is closed. */
async function open(url: string, options: BrowserContextOptions): Promise<Visit> {
  const context = await room.browser.newContext({ reducedMotion: "reduce", ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("requestfailed", (request) => complaints.push(`failed: ${request.url()}`));
  page.on("request", (request) => requests.push(request.url()));
  await page.goto(url, { waitUntil: "load" });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  return { page, complaints, requests };
}

async function visit<T>(
  url: string,
  options: BrowserContextOptions,
  look: (visited: Visit) => Promise<T>,
): Promise<T> {
  const visited = await open(url, options);
  try {
    return await look(visited);
  } finally {
    await visited.page.context().close();
  }
}

/** How far the channels of a pixel are apart at most. A page of any height, one window after the other. */
async function measureHue(page: Page): Promise<number> {
  const width = page.viewportSize()?.width ?? 900;
  await page.setViewportSize({ width, height: slice });
  const session = await page.context().newCDPSession(page);
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  let worst = 0;
  for (let y = 0; y < height; y += slice) {
    await page.evaluate((top) => scrollTo({ top, behavior: "instant" }), y);
    // Packed less tightly than Playwright has it: in a fraction of the time, and without loss all the same.
    const shot = await session.send("Page.captureScreenshot", { format: "png", optimizeForSpeed: true });
    const { data, info } = await sharp(Buffer.from(shot.data, "base64"))
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    for (let index = 0; index < data.length; index += info.channels) {
      const [r, g, b] = [data[index] ?? 0, data[index + 1] ?? 0, data[index + 2] ?? 0];
      worst = Math.max(worst, Math.abs(r - g), Math.abs(g - b));
    }
  }
  return worst;
}

/** Height of a window in pixels: what a busy machine still takes a picture of. */
const slice = 1500;

const at = (site: (typeof sites)[number], address: string) => `${room.sites[site].address}${base}${address}`;
const pages: readonly [(typeof sites)[number], string][] = [
  ["demo", ""],
  ["demo", "studies/harrowquay/"],
  ["demo", "studies/fourwells/"],
  ["demo", "studies/lockmouth/"],
  ["demo", "studies/lockmouth/changes/"],
  ["demo", "studies/kedgeport/show/"],
  ["demo", "studies/harrowquay/maker/"],
  ["demo", "series/half-dark/show/"],
  ["demo", "series/half-dark/"],
  // With the series' own name both sides stand as they do without a script.
  ["demo", "series/spring-season/vote/?ballot=spring-season"],
  ["demo", "flags/the-kedgeport-anchor/"],
  ["demo", "flags/threeweirs/"],
  ["demo", "method/"],
  ["demo", "rules/"],
  ["demo", "guide/study/"],
  ["demo", "survey/"],
  ["demo", "authors/tobin-arkwell/"],
  ["demo", "studies/kedgeport/edges/000000-15244a/"],
  ["odd", ""],
  ["odd", "studies/one-colour/"],
  ["odd", "studies/long-words/"],
  ["odd", "series/quay/"],
  ["odd", "guide/"],
  ["odd", "studies/long-words/show/"],
  ["odd", "studies/long-words/sheet/"],
  ["odd", "series/quay/sheet/"],
  ["odd", "series/quay/vote/?ballot=quay"],
  ["odd", "studies/long-words/edges/12235c-c8202f/"],
  ["empty", ""],
  ["empty", "survey/"],
];
/** An address without the names of one study, series, flag, author or edge: pages of a kind have one template. */
const kindOf = (address: string): string =>
  address.replace(/\?.*/, "").replace(/(studies|series|flags|authors|edges)\/[^/]+\/(?=.|$)/g, "$1/*/");
/** Whether a page before it in the list has its kind: the same template and styles, of which rules and colours are asked once. */
const isTwin = (site: string, address: string): boolean => {
  const at = pages.findIndex((page) => page[0] === site && page[1] === address);
  return !isWhole && at > 0 && pages.slice(0, at).some((page) => kindOf(page[1]) === kindOf(address));
};
const isMissing = (line: string) => line.includes("404 (Not Found)");
const schemes = ["light", "dark"] as const;
/** One page of each kind on a large screen, where the pair of a study is wider than the text. */
const onLarge: readonly string[] = ["", "studies/lockmouth/", "survey/", "method/"];

/** A page without script, and, as it is asked for its words alone, without pictures, fonts and styles. */
let unscripted: Page;
beforeAll(async () => {
  unscripted = await (await room.browser.newContext({ javaScriptEnabled: false })).newPage();
  await unscripted.route(/\.(?:svg|png|webp|woff2|css)$/, (route) => route.abort());
});

/** Each page is opened once, and looked at by one test after the other: the later ones change it. */
describe.each([...pages, ["demo", "no/such/page"] as const])("%s /%s", (site, address) => {
  let visited: Visit;
  let text: string;
  const read = async (page: Page) => (await page.locator("body").textContent()) ?? "";
  const measureWidth = () => visited.page.evaluate(() => document.documentElement.scrollWidth);
  beforeAll(async () => {
    visited = await open(at(site, address), { viewport: { width: 1280, height: 900 } });
    text = await read(visited.page);
  });
  afterAll(() => visited?.page.context().close());

  const large = site === "demo" && onLarge.includes(address) ? [1920] : [];
  test.each([...large, 1280])(
    "%i px wide: no wider than the screen, and all can be reached",
    async (width) => {
      await visited.page.setViewportSize({ width, height: 900 });
      expect(await measureWidth()).toBeLessThanOrEqual(width);
      if (!isTwin(site, address)) expect(await listViolations(visited.page, "layout")).toEqual([]);
    },
  );

  test("with text at 200 % it is no wider than the screen", async () => {
    const setSize = (size: string) =>
      visited.page.evaluate((fontSize) => {
        document.documentElement.style.fontSize = fontSize;
      }, size);
    await setSize("200%");
    const width = await measureWidth();
    await setSize("");
    expect(width).toBeLessThanOrEqual(1280);
  });

  test("with letters twice as large in the browser's own settings nothing is cut off and nothing reaches off the screen", async () => {
    const { page } = visited;
    const session = await page.context().newCDPSession(page);
    await session.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
    const seen = await page.evaluate(() => ({
      letters: getComputedStyle(document.documentElement).fontSize,
      width: document.documentElement.scrollWidth,
      // What is hidden from the eye on purpose is cut to a pixel; everything else that cuts off has to hold its text.
      cut: [...document.querySelectorAll<HTMLElement>("body *")]
        .filter((box) => box.clientWidth > 2 && (box.textContent ?? "").trim() !== "")
        .filter((box) => /hidden|clip/.test(getComputedStyle(box).overflow))
        .filter((box) => box.scrollWidth > box.clientWidth + 1 || box.scrollHeight > box.clientHeight + 1)
        .map((box) => box.outerHTML.slice(0, 120)),
    }));
    await session.send("Page.setFontSizes", { fontSizes: { standard: 16, fixed: 13 } });
    await session.detach();
    expect(seen).toEqual({ letters: "32px", width: 1280, cut: [] });
  });

  test("flags are shown whole, in their proportions, on every kind of mat", () => checkFlags(visited.page));

  // A narrow page has all that a wide one has and the heads of its tables besides. A scheme changes nothing but colours,
  // and no script reads it: the page is not loaded again for it.
  test("320 px wide: no wider than the screen; accessible, light and dark", async () => {
    const { page } = visited;
    await page.setViewportSize({ width: 320, height: 900 });
    expect(await measureWidth()).toBeLessThanOrEqual(320);
    if (!isTwin(site, address)) expect(await listViolations(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await measureWidth()).toBeLessThanOrEqual(320);
    if (!isTwin(site, address)) expect(await listViolations(page, "colours")).toEqual([]);
  });

  // Of each kind of page once: another study has no other styles, and the other language turns a page round.
  test.skipIf(isTwin(site, address))("light and dark: nothing has a hue but flags and swatches", async () => {
    const { page } = visited;
    await page.setViewportSize({ width: 900, height: 700 });
    await page.evaluate(() => {
      for (const cloth of document.querySelectorAll<HTMLElement>("img, svg rect, svg image"))
        cloth.style.visibility = "hidden";
      for (const svg of document.querySelectorAll<HTMLElement>("svg rect")) svg.style.fill = "none";
    });
    // A focus ring is part of what is looked at.
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    for (const colorScheme of schemes) {
      await page.emulateMedia({ colorScheme });
      expect(await measureHue(page), colorScheme).toBeLessThanOrEqual(1);
    }
  });

  test("all this was quiet, and asked for nothing from elsewhere; without script it says the same", async () => {
    const { complaints, requests } = visited;
    expect(complaints.filter((line) => !(address === "no/such/page" && isMissing(line)))).toEqual([]);
    expect(requests.filter((url) => !url.startsWith(at(site, "")))).toEqual([]);
    expect(requests.length).toBeGreaterThan(1);
    await unscripted.goto(at(site, address));
    const without = await read(unscripted);
    expect(without).toBe(text);
    expect(without.length).toBeGreaterThan(100);
  });
});

async function checkFlags(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const flag of document.querySelectorAll("img")) flag.loading = "eager";
  });
  await page.evaluate(() => Promise.allSettled([...document.images].map((image) => image.decode())));
  const flags = await page.locator("img:visible").evaluateAll((images) =>
    images.map((image) => {
      const flag = image as HTMLImageElement;
      const box = flag.getBoundingClientRect();
      // On a projector the box is all the room there is, and the flag is as large in it as it can be, whole.
      const isFitted = getComputedStyle(flag).objectFit === "contain";
      const scale = Math.min(box.width / flag.naturalWidth, box.height / flag.naturalHeight);
      const { width, height } = isFitted
        ? { width: scale * flag.naturalWidth, height: scale * flag.naturalHeight }
        : box;
      const mat = flag.closest(isFitted ? ".show-picture" : ".mat")?.getBoundingClientRect();
      return {
        loaded: flag.naturalWidth > 0,
        stretch: (width / height) * (flag.naturalHeight / flag.naturalWidth),
        // A true-size row and a detail have no mat of their own.
        room: mat ? Math.min(mat.width - width, mat.height - height) : Number.POSITIVE_INFINITY,
        // In a picture of many flags the words stand in the link around each, in a chart in its row.
        words: flag.alt.length || (flag.closest("a, li, [aria-hidden]")?.textContent ?? "").length,
      };
    }),
  );
  for (const flag of flags) {
    expect(flag.loaded).toBe(true);
    expect(flag.stretch).toBeCloseTo(1, 1);
    expect(flag.room).toBeGreaterThan(8);
    expect(flag.words).toBeGreaterThan(15);
  }
}

test("flags that figures draw are shown whole too, each from a file of its own proportions", async () => {
  for (const address of ["studies/kedgeport/", "studies/fourwells/"]) {
    await visit(at("demo", address), {}, async ({ page }) => {
      const flags = await page.locator(".mat > svg > image").evaluateAll((images) =>
        Promise.all(
          images.map(async (image) => {
            const file = new Image();
            file.src = new URL(image.getAttribute("href") ?? "", document.baseURI).href;
            await file.decode();
            const { width, height } = image.getBoundingClientRect();
            const mat = image.closest(".mat")?.getBoundingClientRect();
            return {
              stretch: (width / height) * (file.naturalHeight / file.naturalWidth),
              room: Math.min((mat?.width ?? 0) - width, (mat?.height ?? 0) - height),
            };
          }),
        ),
      );
      // Three distances and four kinds of vision, each twice, and the two grounds of the edge map at least.
      expect(flags.length).toBeGreaterThanOrEqual(16);
      for (const flag of flags) {
        expect(flag.stretch).toBeCloseTo(1, 1);
        expect(flag.room).toBeGreaterThan(8);
      }
    });
  }
}, 60_000);

test.each([
  ["", { ".gain": 1 }],
  ["studies/lockmouth/", { ".prose > .gain": 1 }],
  [
    "studies/kedgeport/",
    {
      "#contrast-ruler": 1,
      ".edge-map": 2,
      ".strip": 6,
      ".seen-figure": 8,
      ".prose > .edge-figure": 2,
    },
  ],
])(
  "/%s: figures are drawn as SVG, and each drawing says what it is and what it shows",
  async (address, figures) => {
    await unscripted.goto(at("demo", address));
    for (const [figure, count] of Object.entries(figures)) {
      const box = unscripted.locator(figure).first();
      expect(await box.evaluate(({ id }) => id)).not.toBe("");
      // Flags beside their names are no part of the drawing.
      expect(await box.locator("img:not([alt=''])").count()).toBe(0);
      const told = await box.locator("svg[role=img]").evaluateAll((drawings) =>
        drawings.map((drawing) => {
          const own = ["title", "desc"].map((part) => drawing.querySelector(`:scope > ${part}`));
          const named = (drawing.getAttribute("aria-labelledby") ?? "").split(" ");
          return {
            texts: own.map((part) => part?.textContent?.trim() ?? ""),
            isNamed: own.every(
              (part, index) => part !== null && document.getElementById(named[index] ?? "") === part,
            ),
          };
        }),
      );
      expect(told, figure).toHaveLength(count);
      expect(told.every(({ isNamed }) => isNamed)).toBe(true);
      for (const { texts } of told) for (const text of texts) expect(text.length).toBeGreaterThan(5);
      expect(new Set(told.map(({ texts }) => texts.join(". "))).size).toBe(count);
      // Any other drawing of it only repeats for the eye what stands beside it.
      expect(await box.locator("svg:not([role=img]):not([aria-hidden=true])").count()).toBe(0);
    }
  },
  30_000,
);

test("the old address of a study says where it is now, for everyone, before it leads there", async () => {
  const context = await room.browser.newContext({ viewport: { width: 320, height: 900 } });
  const page = await context.newPage();
  // An answer without content leaves the reader where they are.
  await page.route("**/studies/long-words/", (route) => route.fulfill({ status: 204 }));
  await page.goto(at("odd", "studies/longer-words/"), { waitUntil: "load" });
  expect(await page.locator("h1").textContent()).toBe("This page has moved");
  // The refresh at once is what WCAG asks for where a server cannot redirect (technique H76).
  expect(await listViolations(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: "dark" });
  expect(await listViolations(page, "colours")).toEqual([]);
  for (const width of [320, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
  await context.close();
}, 60_000);

test("every link of the site leads to a page, and every fragment to a place on it", async () => {
  const found = new Set<string>();
  for (const [site, address] of pages) {
    const here = at(site, address);
    for (const [, written = ""] of (await readPage(here)).matchAll(/<a [^>]*?href="([^"]*)"/g)) {
      const { href } = new URL(written.replaceAll("&amp;", "&"), here);
      if (href.startsWith(room.sites[site].address)) found.add(href);
    }
  }
  expect(found.size).toBeGreaterThan(100);
  const texts = new Map<string, string>();
  for (const link of found) {
    const [place = ""] = link.split("#");
    const text = texts.get(place) ?? (await readPage(place));
    texts.set(place, text);
    const fragment = new URL(link).hash.slice(1);
    if (fragment !== "") expect(text, link).toContain(`id="${fragment}"`);
  }
}, 60_000);

async function readPage(address: string): Promise<string> {
  const response = await fetch(address);
  expect(response.status, address).toBe(200);
  return response.text();
}

test("opened from a disk, links lead on and nothing is refused", async () => {
  await visit(
    pathToFileURL(path.join(await openDemo(), "index.html")).href,
    {},
    async ({ page, complaints }) => {
      // A picture that is still on its way when the page is left counts as failed.
      await page.waitForLoadState("networkidle");
      await page.locator("main a", { hasText: "A lighter ferry wheel" }).first().click();
      await page.waitForURL(/\/studies\/harrowquay\/index\.html$/);
      await page.getByRole("link", { name: "Method", exact: true }).click();
      await page.waitForURL(/\/method\/index\.html$/);
      expect(await page.locator("h1").textContent()).toBe("Method");
      await page.getByRole("link", { name: "Studies", exact: true }).click();
      await page.waitForURL(/\/demo\/index\.html$/);
      // Chromium gives pages from a disk no fonts of their own; those of the system stand in.
      expect(complaints.filter((line) => !/font|preload|ERR_FAILED/.test(line))).toEqual([]);
    },
  );
}, 60_000);

test.each([
  ["demo", 1],
  ["odd", -1],
] as const)(
  "%s: what was stands before what is, and the chart's figures over their lines",
  async (site, way) => {
    await visit(at(site, ""), { viewport: { width: 1280, height: 900 } }, async ({ page }) => {
      const moves = await page.locator(".move").evaluateAll((all) =>
        all.map((move) => {
          const [before, after] = ["before", "after"].map((side) =>
            move.querySelector(`.move-${side}`)?.getBoundingClientRect(),
          );
          return (after?.left ?? 0) - (before?.left ?? 0);
        }),
      );
      expect(moves.length).toBeGreaterThan(1);
      for (const across of moves) expect(across * way).toBeGreaterThan(10);
      const middles = await page.locator(".gain").evaluate((gain) => {
        const middle = (element: Element) => {
          const { left, right } = element.getBoundingClientRect();
          return (left + right) / 2;
        };
        return {
          figures: [...gain.querySelectorAll(".gain-ticks span")].map(middle),
          places: [...(gain.querySelector(".gain-rows svg")?.querySelectorAll(".gain-track") ?? [])]
            .slice(1)
            .map(middle),
        };
      });
      expect(middles.figures.length).toBe(3);
      for (const [index, figure] of middles.figures.entries()) {
        expect(Math.abs(figure - (middles.places[index] ?? 0)), `${index}`).toBeLessThan(2);
      }
    });
  },
);

test("the keyboard reaches the content first, and every study in order", async () => {
  await visit(at("demo", ""), {}, async ({ page }) => {
    await page.keyboard.press("Tab");
    expect(await page.locator(":focus").textContent()).toBe("Skip to the content");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("content");
    // The newest study, the cards, the form; then every study, in the order of the chart.
    const titles = await page.locator("[data-list] a").allTextContents();
    expect(titles.length).toBeGreaterThan(10);
    const reached: string[] = [];
    for (let presses = 0; presses < 120 && reached.length < titles.length; presses += 1) {
      await page.keyboard.press("Tab");
      if ((await page.locator("[data-list] a:focus").count()) > 0)
        reached.push((await page.locator(":focus").textContent()) ?? "");
    }
    expect(reached).toEqual(titles);
  });
});

test.each([
  [1280, 800],
  [390, 844],
])("the front page opens with both flags of the newest study, whole, at %i × %i", async (width, height) => {
  await visit(at("demo", ""), { viewport: { width, height } }, async ({ page }) => {
    const flags = await page
      .locator(".lead .pair img")
      .evaluateAll((all) => all.map((flag) => flag.getBoundingClientRect().toJSON()));
    expect(flags.length).toBe(2);
    for (const { top, bottom, width: wide } of flags) {
      expect(top).toBeGreaterThan(0);
      expect(bottom).toBeLessThan(height);
      expect(wide).toBeGreaterThan(width / 6);
    }
  });
});

test("the method is short, has a picture for each idea, and keeps the places that pages and messages lead to", async () => {
  await visit(at("demo", "method/"), { viewport: { width: 1280, height: 900 } }, async ({ page }) => {
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(6300);
    const text = (await page.locator("main").allInnerTexts()).join(" ");
    expect(text).not.toContain("%%");
    const words = text.match(/\S*\p{L}\S*/gu);
    expect(words?.length).toBeLessThanOrEqual(2350);
    const places =
      "edges distance lasting reflectance near-the-line contrast numbers outcomes words options survey likeness beside facts vision cautions";
    for (const id of places.split(" ")) expect(await page.locator(`#${id}`).count(), id).toBe(1);
    const drawn =
      "edges distance lasting reflectance contrast numbers outcomes options survey likeness beside vision";
    for (const id of drawn.split(" "))
      expect(
        await page.locator(`section[aria-labelledby="${id}"] :is(img, svg)`).count(),
        id,
      ).toBeGreaterThan(0);
  });
});

test("the rules are an index, and the address of a rule opens its entry", async () => {
  await visit(at("demo", "rules/"), { javaScriptEnabled: false }, async ({ page }) => {
    expect(await page.locator("details.rule").count()).toBeGreaterThan(100);
    expect(await page.locator("details.rule[open]").count()).toBe(0);
  });
  await visit(at("demo", "rules/#study-unknown-key"), { javaScriptEnabled: false }, async ({ page }) => {
    expect(await page.locator("details.rule[open] code").first().textContent()).toBe("study/unknown-key");
    expect(await page.locator("details.rule[open]").count()).toBe(1);
  });
});

test("words narrow the rules to those that have all of them, and no words show all again", async () => {
  await visit(at("demo", "rules/"), {}, async ({ page }) => {
    const all = await page.locator(".rule").count();
    const words = page.locator(".rules-finder input");
    await words.fill("unknown-KEY");
    const names = await page.locator(".rule:visible .rule-id code").allTextContents();
    expect(names).toContain("study/unknown-key");
    expect(names.length).toBeLessThan(all / 10);
    expect(await page.locator(".found").textContent()).toBe(`${names.length} of ${all} rules`);
    await words.fill("");
    expect(await page.locator(".rule:not([hidden])").count()).toBe(all);
    expect(await page.locator(".rules-chapter:visible").count()).toBe(
      await page.locator(".rules-chapter").count(),
    );
  });
});

test("the keyboard narrows the list by words and widens it again; without a hit the page says so", async () => {
  await visit(at("demo", ""), {}, async ({ page }) => {
    const shown = () => page.locator("[data-list] > :not([hidden])").count();
    const all = await shown();
    await page.locator(".finder input").first().focus();
    await page.keyboard.type("anchor");
    expect(await shown()).toBeGreaterThan(0);
    expect(await shown()).toBeLessThan(all);
    await page.keyboard.type("xyz");
    expect(await shown()).toBe(0);
    expect(await page.locator(".none-found").isVisible()).toBe(true);
    for (let count = 0; count < 9; count += 1) await page.keyboard.press("Backspace");
    expect(await shown()).toBe(all);
  });
});

test.each(sites)(
  "%s: every second page, of edges every fourth, is valid HTML, with one h1, the right language, and nothing inline",
  async (site) => {
    const validator = new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: {
        // Preact closes void elements the XML way, writes no line breaks, and both are valid.
        "void-style": ["error", { style: "selfclose" }],
        "long-title": "off",
      },
    });
    const folder = room.folders[site];
    const all = (await listFiles(folder)).filter((file) => file.endsWith(".html"));
    const isEdge = (file: string): boolean => file.includes("/edges/");
    const files = [
      ...sample(
        all.filter((file) => !isEdge(file)),
        site === "empty" ? 1 : 2,
      ),
      ...sample(all.filter(isEdge), 4),
    ];
    expect(files.length).toBeGreaterThan(2);
    for (const file of files) {
      const html = await readFile(path.join(folder, file), "utf8");
      const report = await validator.validateString(html, file);
      const messages = report.results.flatMap((result) =>
        result.messages.map(({ ruleId, message }) => `${ruleId}: ${message}`),
      );
      expect(messages, file).toEqual([]);
      expect(html.match(/<h1[ >]/g)?.length, file).toBe(1);
      expect(html, file).toContain(site === "demo" ? '<html lang="en' : '<html lang="he" dir="rtl">');
      expect(html, file).toMatch(/<head><meta http-equiv="Content-Security-Policy"/);
      // Data in a script element is never run, and no policy speaks of it.
      expect(html, file).not.toMatch(
        / style="| on[a-z]+="|<style|<script(?! src=| type="application\/ld\+json">)/,
      );
    }
  },
);

test("a study page weighs under 60 KB beside its drawings, as hosts send it, and under 15 KB of it is script", async () => {
  const sizes = await visit(at("demo", "studies/kedgeport/"), {}, async ({ requests }) => {
    const own = requests.filter((url) => !/\.(?:svg|png|webp)$/.test(url));
    return Promise.all(
      own.map(async (url) => {
        const bytes = new Uint8Array(await (await fetch(url)).arrayBuffer());
        // Fonts are compressed already; text is sent compressed.
        return { url, sent: url.endsWith(".woff2") ? bytes.length : gzipSync(bytes).length };
      }),
    );
  });
  const sum = (list: typeof sizes): number => list.reduce((total, { sent }) => total + sent, 0);
  const scripts = sizes.filter(({ url }) => url.endsWith(".js"));
  process.stdout.write(`  a study page: ${sum(sizes)} bytes, script ${sum(scripts)} bytes\n`);
  expect(sum(sizes)).toBeLessThan(60_000);
  expect(sum(scripts)).toBeLessThan(15_000);
});
