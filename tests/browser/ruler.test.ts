// The contrast ruler in a browser: marks stand where the numbers say, and the section keeps its size.
import { cp, readFile } from "node:fs/promises";
import path from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import { buildSite } from "../../src/publish/buildsite.ts";
import { openKept } from "../kept.ts";
import { oddGallery } from "./gallery.ts";
import { openRoom, publishKept } from "./room.ts";

vi.setConfig({ testTimeout: 60_000 });

const content = path.resolve(import.meta.dirname, "../../content");
/** One with a gain and a loss, one with a merged edge. */
const slugs = ["kedgeport", "thriftholm"];
const room = openRoom({
  site: async (folder) => {
    const own = `${folder}-content`;
    await cp(path.join(content, "gallery.yaml"), path.join(own, "gallery.yaml"), { recursive: true });
    for (const slug of slugs) {
      const study = path.join("studies", slug);
      await cp(path.join(content, study), path.join(own, study), { recursive: true });
    }
    await buildSite(own, folder, { store: await openKept() });
  },
  odd: (folder) => publishKept(oddGallery, folder),
});

async function open<T>(
  url: string,
  options: BrowserContextOptions,
  look: (page: Page) => Promise<T>,
): Promise<T> {
  const context = await room.browser.newContext(options);
  try {
    const page = await context.newPage();
    await page.goto(url, { waitUntil: "load" });
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    return await look(page);
  } finally {
    await context.close();
  }
}

const sized = (width: number) => ({ viewport: { width, height: 900 } });

/** Middle of each mark of each row in pixels from where the axis begins, with the axis' length and what is drawn. */
async function readRows(page: Page) {
  return page.locator("#contrast-ruler tbody tr").evaluateAll((rows) =>
    rows.map((row) => {
      const axis = row.querySelector(".ruler-track")?.getBoundingClientRect() ?? new DOMRect();
      const place = (selector: string) => {
        const box = row.querySelector(selector)?.getBoundingClientRect();
        return box ? box.x + box.width / 2 - axis.x : null;
      };
      const line = row.querySelector(".ruler-move");
      return {
        key: /edges\/([^/]+)\//.exec(row.querySelector("a")?.getAttribute("href") ?? "")?.[1],
        length: axis.width,
        ring: place(".ring"),
        dot: place(".dot") ?? place(".ruler-cross"),
        thickness: line ? Number.parseFloat(getComputedStyle(line).strokeWidth) : null,
        size: row.querySelector(".dot, .ruler-cross")?.getBoundingClientRect().height ?? 0,
      };
    }),
  );
}

/** Contrast before and after and length of each edge, as the table for spreadsheets has them. */
async function readTable(slug: string) {
  const [head = "", ...lines] = (
    await readFile(path.join(room.folders.site, "studies", slug, "edges.csv"), "utf8")
  )
    .trim()
    .split("\r\n");
  const names = head.split(",");
  return new Map(
    lines.map((line) => {
      const cells = line.split(",");
      const read = (name: string) => cells[names.indexOf(name)] ?? "";
      return [
        read("edge"),
        { before: read("contrastBefore"), after: read("contrastAfter"), length: read("length") },
      ];
    }),
  );
}

test.each(slugs.flatMap((slug) => [1280, 390].map((width) => [slug, width] as const)))(
  "/studies/%s/ at %s: ring and dot stand at the contrast within a pixel, the longer edge is thicker",
  async (slug, width) => {
    const [rows, table] = [
      await open(`${room.sites.site.address}/studies/${slug}/`, sized(width), readRows),
      await readTable(slug),
    ];
    expect(rows.length).toBe(table.size);
    for (const { key, length, ring, dot } of rows) {
      const { before, after } = table.get(key ?? "") ?? { before: "none", after: "none" };
      expect(Math.abs((ring ?? Number.NaN) - (Number(before) / 100) * length), key).toBeLessThan(1);
      expect(Math.abs((dot ?? Number.NaN) - (Number(after) / 100) * length), key).toBeLessThan(1);
      expect(length).toBeGreaterThan(200);
    }
    const lengthOf = ({ key }: { key: string | undefined }) => Number(table.get(key ?? "")?.length);
    const byLength = [...rows].sort((one, other) => lengthOf(one) - lengthOf(other));
    const thick = byLength.map(({ thickness }) => thickness ?? Number.NaN);
    expect(thick).toEqual([...new Set(thick)].sort((one, other) => one - other));
    expect(Math.min(...thick)).toBeGreaterThanOrEqual(2);
    for (const { size } of rows) expect(size).toBeGreaterThanOrEqual(8);
  },
);

test.each([
  [1280, 1100],
  [390, 1900],
])("what got better and worse, map included, at %s: at most %s px", async (width, most) => {
  for (const slug of slugs) {
    const height = await open(`${room.sites.site.address}/studies/${slug}/`, sized(width), (page) =>
      page.locator("section.edges").evaluate((section) => section.getBoundingClientRect().height),
    );
    expect(height, slug).toBeLessThanOrEqual(most);
    expect(height, slug).toBeGreaterThan(400);
  }
});

test.each(["studies/kedgeport/", "studies/thriftholm/edges/2a6b45-78ab62/"])(
  "/%s: with text of twice the size on a phone the ruler is no wider than its place, and nothing lies on anything else",
  async (address) => {
    await open(`${room.sites.site.address}/${address}`, sized(390), async (page) => {
      await page.evaluate(() => {
        document.documentElement.style.fontSize = "200%";
      });
      const beyond = await page
        .locator(".edges :is(.ruler, .ruler *), .edge article :is(table, table *, .ruler-one)")
        .evaluateAll((all) =>
          all
            .filter((box) => box.closest(".unseen, svg") === null || box.matches("svg"))
            .map((box) => box.getBoundingClientRect().right - innerWidth),
        );
      expect(beyond.length).toBeGreaterThan(10);
      expect(Math.max(...beyond)).toBeLessThanOrEqual(0);
      const overlaps = await page.locator(".ruler-rows tbody tr").evaluateAll((rows) =>
        rows.flatMap((row) => {
          const boxes = [
            ".ruler-name",
            ".ruler-track",
            ".ruler-contrast > .number",
            ".ruler-outcome bdi",
          ].map((part) => row.querySelector(part)?.getBoundingClientRect() ?? new DOMRect());
          return boxes.slice(1).map((box, at) => (boxes[at]?.bottom ?? 0) - box.top);
        }),
      );
      for (const overlap of overlaps) expect(overlap).toBeLessThanOrEqual(4);
    });
  },
);

test("from right to left the axis still runs from the left, and figures stand beside it", async () => {
  await open(`${room.sites.odd.address}/studies/long-words/`, sized(1280), async (page) => {
    expect(await page.evaluate(() => document.dir)).toBe("rtl");
    const rows = await readRows(page);
    // As typed in the gallery of odd cases: 24.6 merged, 84.2 parted.
    const [merged, parted] = rows;
    expect(Math.abs((merged?.ring ?? 0) - 0.246 * (merged?.length ?? 0))).toBeLessThan(1);
    expect(merged?.dot).toBeCloseTo(0, 0);
    expect(parted?.ring).toBeNull();
    expect(Math.abs((parted?.dot ?? 0) - 0.842 * (parted?.length ?? 0))).toBeLessThan(1);
    const gaps = await page.locator("#contrast-ruler tbody .ruler-contrast").evaluateAll((cells) =>
      cells.map((cell) => {
        const [track, figures] = [".ruler-track", ".number"].map((part) =>
          cell.querySelector(part)?.getBoundingClientRect(),
        );
        return (track?.left ?? 0) - (figures?.right ?? 0);
      }),
    );
    for (const gap of gaps) expect(gap).toBeGreaterThan(8);
  });
});

test("a reader of the screen hears a table: the edge, its contrast with its unit, its outcome", async () => {
  await open(
    `${room.sites.site.address}/studies/kedgeport/`,
    { ...sized(1280), javaScriptEnabled: false },
    async (page) => {
      const rows = page.locator("#contrast-ruler").getByRole("row");
      expect(await rows.first().getByRole("columnheader").allTextContents()).toEqual([
        "Edge",
        expect.stringContaining("Contrast, original to redesign"),
        "Outcome",
      ]);
      const first = rows.nth(1);
      expect(await first.getByRole("rowheader").textContent()).toMatch(
        /^navy\s\/\sblack to gold [\d.]+ flag heights/,
      );
      expect(await first.getByRole("cell").allTextContents()).toEqual([
        expect.stringMatching(/^\d+% to \d+%$/),
        expect.stringMatching(/^gained weak to strong$/),
      ]);
    },
  );
});

test("on paper every mark is there, and what opens on a screen is open", async () => {
  await open(`${room.sites.site.address}/studies/kedgeport/`, sized(672), async (page) => {
    await page.emulateMedia({ media: "print" });
    const marks = await readRows(page);
    expect(marks.length).toBe(3);
    for (const { size } of marks) expect(size).toBeGreaterThan(4);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(672);
    expect(await page.locator(".ladder").isVisible()).toBe(true);
  });
});
