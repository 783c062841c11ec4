// The pages of a study and of an edge in a browser: the stamp, copying, answering, figures in prose, paper.
import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, test, vi } from "vitest";
import type { GalleryResult } from "../../src/analysis/result.ts";
import { gallery, study, studyResult } from "../publish/sample.ts";
import { oddGallery } from "./gallery.ts";
import { openRoom, publishKept } from "./room.ts";

vi.setConfig({ testTimeout: 60_000 });

const kinds = ["original", "redesign", "true size", "edge map", "contrast ruler", "distance strip"];
const asked = [...kinds, "seen otherwise", "edge map", "gain chart"].map(
  (kind) => `::figure{kind="${kind}"}`,
);
const edge = '::figure{edge="dark blue / red"}';
const body = ["Words.", ...asked, edge, edge, '::figure{kind="lasts to"}', "More words."].join("\n\n");
const letters: GalleryResult = {
  gallery: { ...gallery, answer: { way: "mail", address: "editor@flags.example" } },
  studies: [{ ...studyResult, study: { ...study, body } }],
  problems: [],
};
const studyPath = "studies/a-square/";
const edgePath = `${studyPath}edges/12235c-c8202f/`;

const room = openRoom({
  site: (folder) => publishKept(letters, folder),
  odd: (folder) => publishKept(oddGallery, folder),
});

/** Opens a page, and fails where it complains. */
async function open<T>(
  url: string,
  look: (page: Page) => Promise<T>,
  options: BrowserContextOptions = {},
): Promise<T> {
  const context = await room.browser.newContext({ viewport: { width: 1000, height: 800 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => complaints.push(message.text()));
  try {
    await page.goto(url, { waitUntil: "load" });
    const seen = await look(page);
    expect(complaints).toEqual([]);
    return seen;
  } finally {
    await context.close();
  }
}

const at = (address: string) => `${room.sites.site.address}/${address}`;

test("what a script alone can do is not there without one or on paper, and is wide enough for a finger", async () => {
  await open(
    at(studyPath),
    async (page) => {
      expect(await page.locator(".copying, .stamp-note").evaluateAll((all) => all.length)).toBe(2);
      for (const hidden of [".copying", ".stamp-note"])
        expect(await page.locator(hidden).isVisible(), hidden).toBe(false);
      const heights = await page
        .locator("#figure-true-size .size-row")
        .first()
        .locator("img")
        .evaluateAll((images) => images.map((image) => image.getBoundingClientRect().height));
      expect(heights).toEqual([113, 28, 7]);
    },
    { javaScriptEnabled: false },
  );
  await open(
    at(studyPath),
    async (page) => {
      for (const target of await page.locator(".copying button").all()) {
        const box = await target.boundingBox();
        expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
      }
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".copying, .downloads").filter({ visible: true }).count()).toBe(0);
    },
    { viewport: { width: 320, height: 700 } },
  );
});

describe("the stamp", () => {
  test.each([studyPath, edgePath])(
    "of an older state is told on /%s, today's and nonsense are not",
    async (address) => {
      const note = async (query: string) =>
        open(`${at(address)}${query}`, async (page) => {
          const shown = page.locator(".stamp-note");
          return (await shown.isVisible()) ? ((await shown.textContent()) ?? "") : undefined;
        });
      expect(await note("?stamp=0123abcd")).toMatch(/has changed since\..*0123abcd/);
      expect(await note("")).toBeUndefined();
      expect(await note("?stamp=")).toBeUndefined();
      expect(await note("?stamp=%3Cimg%20src%3Dx%3E")).toBeUndefined();
      const own = await open(at(address), (page) => page.locator(".stamp-note").getAttribute("data-stamp"));
      expect(own).toMatch(/^[0-9a-f]{8}$/);
      expect(await note(`?stamp=${own}`)).toBeUndefined();
    },
  );

  test("stands in the words, in the BibTeX and in the link of both pages", async () => {
    for (const address of [studyPath, edgePath]) {
      await open(at(address), async (page) => {
        const stamp = (await page.locator(".stamp-note").getAttribute("data-stamp")) ?? "none";
        const stamped = `https://flags.example/sound/${address}?stamp=${stamp}`;
        expect(await page.locator("#refer-text").textContent()).toContain(stamped);
        expect(await page.locator("#refer-bibtex").textContent()).toContain(`\\url{${stamped}}`);
        await page.locator(".refer summary").click();
        expect(
          await page.getByRole("link", { name: "an address with the stamp in it" }).getAttribute("href"),
        ).toBe(stamped);
      });
    }
  });
});

test("the buttons copy what stands above them, and say so", async () => {
  await open(
    at(studyPath),
    async (page) => {
      for (const [name, from] of [
        ["Copy the text", "#refer-text"],
        ["Copy the BibTeX", "#refer-bibtex"],
      ] as const) {
        await page.getByRole("button", { name }).press("Enter");
        await expect.poll(() => page.locator(".copied").textContent()).toBe("Copied.");
        expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
          await page.locator(from).textContent(),
        );
      }
    },
    { permissions: ["clipboard-read", "clipboard-write"] },
  );
});

describe("Argue with this", () => {
  const hrefOf = (url: string) =>
    open(url, (page) => page.getByRole("link", { name: "Argue with this" }).getAttribute("href"), {
      javaScriptEnabled: false,
    });

  test("is a letter with the address and the numbers of the page", async () => {
    const [whole = "", part = ""] = await Promise.all([hrefOf(at(studyPath)), hrefOf(at(edgePath))]);
    const bodyOf = (href: string | null) => new URL(href ?? "").searchParams.get("body") ?? "";
    expect(new URL(whole ?? "").pathname).toBe("editor@flags.example");
    expect(new URL(whole ?? "").searchParams.get("subject")).toBe("A lighter square");
    expect(bodyOf(whole)).toMatch(/\/studies\/a-square\/\?stamp=[0-9a-f]{8}\r\n/);
    // As typed in the sample.
    expect(bodyOf(whole)).toContain("Clarity: 74% → 100%");
    expect(new URL(part ?? "").searchParams.get("subject")).toBe("Dark blue / red, in A lighter square");
    expect(bodyOf(part)).toContain("Contrast: 25% weak → 67% strong");
    expect(bodyOf(part)).toContain("edges/12235c-c8202f/?stamp=");
  });

  test("is a form with the same filled in", async () => {
    const href = new URL(
      (await hrefOf(`${room.sites.odd.address}/studies/long-words/edges/12235c-c8202f/`)) ?? "",
    );
    expect(href.origin).toBe("https://forum.example");
    expect(href.searchParams.get("text")).toContain("/edges/12235c-c8202f/?stamp=");
    expect(decodeURIComponent(href.hash)).toBe("#Dark blue / red");
  });
});

test("figures in the prose: each under its own anchor, none with the id of another, lines of the map drawn again", async () => {
  await open(at(studyPath), async (page) => {
    const ids = await page.locator("[id]").evaluateAll((all) => all.map(({ id }) => id));
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const figures = await page
      .locator(".prose > figure")
      .evaluateAll((all) =>
        all.map((figure) => [figure.id, figure.querySelector("strong a")?.getAttribute("href")]),
      );
    // “lasts to” is left out: the sample has no focus.
    expect(figures.map(([id]) => id)).toEqual([
      "figure-original",
      "figure-redesign",
      "figure-true-size",
      "figure-edge-map",
      "figure-contrast-ruler",
      "figure-distance-strip",
      "figure-seen-otherwise",
      "figure-edge-map-2",
      "figure-gain-chart",
      "figure-edge-p1-p2",
      "figure-edge-p1-p2-2",
    ]);
    for (const [id, href] of figures.filter(([id]) => id !== "figure-seen-otherwise"))
      expect(href).toBe(`#${id}`);
    expect(
      await page.locator('#figure-seen-otherwise > figcaption a[href="#figure-seen-otherwise"]').count(),
    ).toBe(1);
    const drawn = await page
      .locator("#figure-edge-map use")
      .evaluateAll((lines) => lines.map((line) => (line as SVGUseElement).getBBox().width));
    expect(drawn.length).toBe(4);
    for (const width of drawn) expect(width).toBeGreaterThan(100);
  });
});

test("what the prose shows stands once on the page, and its place below leads there", async () => {
  await open(at(studyPath), async (page) => {
    for (const [kind, parts] of [
      ["contrast-ruler", ".ruler-rows"],
      ["distance-strip", ".strip-steps"],
      ["true-size", ".size-row"],
      ["seen-otherwise", ".seen-grid"],
    ] as const) {
      expect(await page.locator(`#${kind} a`).getAttribute("href"), kind).toBe(`#figure-${kind}`);
      const all = await page.locator(`main ${parts}`).count();
      expect(all, kind).toBeGreaterThan(0);
      expect(await page.locator(`#figure-${kind} ${parts}`).count(), kind).toBe(all);
    }
    // The prose of the sample asks for the map twice.
    expect(await page.locator("main .edge-map").count()).toBe(2);
    expect(await page.locator("#edge-map a").getAttribute("href")).toBe("#figure-edge-map");
  });
});

test.each([studyPath, edgePath])(
  "/%s on A4: nothing wider than the paper, no figure in two parts",
  async (address) => {
    // A4 is 210 mm wide; the page keeps 16 mm on each side; 96 pixels are 25.4 mm.
    const width = Math.floor(((210 - 32) / 25.4) * 96);
    await open(
      at(address),
      async (page) => {
        await page.emulateMedia({ media: "print" });
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        const figures = page.locator("article figure");
        for (const figure of await figures.filter({ visible: true }).all())
          expect(await figure.evaluate((box) => getComputedStyle(box).breakInside)).toBe("avoid");
        // A figure taller than a page would be cut in spite of it: 297 mm less 18 above and below.
        const heights = await figures.evaluateAll((all) =>
          all.map((box) => box.getBoundingClientRect().height),
        );
        expect(Math.max(...heights)).toBeLessThan(((297 - 36) / 25.4) * 96);
        expect((await page.pdf({ format: "A4" })).subarray(0, 5).toString()).toBe("%PDF-");
      },
      { viewport: { width, height: 1000 } },
    );
  },
);
