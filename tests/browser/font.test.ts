// Fonts that were cut down to the letters of a site, in a browser: every page looks as with the fonts as they come, and is
// light. Which font a letter is set in is the browser's own word, of a page with the one and with the other.
import { readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { gzipSync } from "node:zlib";
import type { BrowserContext, Page } from "playwright-core";
import { beforeAll, describe, expect, test, vi } from "vitest";
import type { GalleryResult, StudyResult } from "../../src/analysis/result.ts";
import { listAssets } from "../../src/publish/assets.ts";
import { buildSite } from "../../src/publish/buildsite.ts";
import { listFiles } from "../../src/publish/folder/manifest.ts";
import { templatesDir } from "../../src/publish/renderpages.ts";
import { copyDemo } from "../demo.ts";
import { openKept } from "../kept.ts";
import { makeAll } from "../publish/making.ts";
import { gallery, study, studyResult } from "../publish/sample.ts";
import { sample } from "../sample.ts";
import { oddGallery } from "./gallery.ts";
import { openRoom, publishKept } from "./room.ts";

vi.setConfig({ testTimeout: 240_000 });

/** The two studies of the demo that have every figure. */
const shown = ["fourwells", "kedgeport"];
/** What an author may write into the one with the most. */
const marked =
  "\n\nThe harbour master of Łodmar called it *the plainest flag of the sound*; **nobody at sea agreed** with Łodmar.\n";
const heavy = "studies/kedgeport/";

const written = [
  "Łódź and ő, *Łódź “ő”*, **strong Łęk; 0123**, ***both Żółw***.",
  "> A quote, *emphasised*, **strong in it**, Ψάρι.\n>\n> 1. one\n> 2. two\n>\n> - Ű",
  "Δήμος Ύδρας, *Δήμος*, **Δήμος**. العلم, *العلم*, **العلم**. A\u0304, e\u0304\u0301, o\u030b, soft\u00adhyphen, non\u2011breaking.",
  "- ***Œuvre***\n- ffi fl “fi” ½ × −5 °\n\n1. **ten**\n2. *eleven*",
  '::figure{kind="seen otherwise"}',
].join("\n\n");
const authors = ["Łucja Őry", "Ωμέγα Δέλτα"];
const body = (one: StudyResult): StudyResult => ({
  ...one,
  study: { ...one.study, title: "Ægir’s Łódź – Δ", authors, tags: ["łódź", "ελλάδα"], body: written },
});
const odd: GalleryResult = { ...oddGallery, studies: oddGallery.studies.map(body) };
const greek: GalleryResult = {
  gallery: { ...gallery, language: "el" },
  studies: [body({ ...studyResult, study })],
  problems: [],
};

const room = openRoom({
  demo: async (folder) => {
    const content = `${folder}-content`;
    await copyDemo(content, shown);
    const file = path.join(content, heavy, "study.md");
    await writeFile(file, `${await readFile(file, "utf8")}${marked}`);
    await buildSite(content, folder, { base: "/", store: await openKept() });
  },
  odd: (folder) => publishKept(odd, folder, "/"),
  greek: (folder) => publishKept(greek, folder, "/"),
});
let whole: ReadonlyMap<string, Buffer>;
beforeAll(async () => {
  whole = await makeAll(listAssets(templatesDir));
});

/** Where an element with words of its own stands on a page, and what sets them: fonts with their numbers of glyphs. */
interface Setting {
  readonly words: string;
  /** Whether no element is inside it: its fonts are of its own words alone. */
  readonly isPlain: boolean;
  readonly weight: string;
  readonly style: string;
  /** Of its words in pixels: letters and what stands between them. */
  readonly width: number;
  readonly fonts: readonly string[];
}

/** Opens pages: as they are published, or with the fonts as their packages bring them. */
async function openContext(isWhole: boolean, failed: string[]): Promise<BrowserContext> {
  const context = await room.browser.newContext({
    viewport: { width: 1000, height: 800 },
    reducedMotion: "reduce",
  });
  await context.route(/\.(?:svg|png|webp)$/, (route) => route.abort());
  if (isWhole)
    await context.route(/\/assets\/(?:fonts\/.*|site\.css)$/, (route) => {
      const file = /assets\/.*$/.exec(route.request().url())?.[0] ?? "";
      const bytes = whole.get(file);
      const contentType = file.endsWith(".css") ? "text/css" : "font/woff2";
      return bytes === undefined ? route.abort() : route.fulfill({ body: bytes, contentType });
    });
  context.on("requestfailed", (request) => {
    if (!/\.(?:svg|png|webp)$/.test(request.url())) failed.push(request.url());
  });
  context.on("response", (response) => {
    if (response.status() >= 400) failed.push(response.url());
  });
  return context;
}

/** Shows everything a page has, and asks the browser what it sets it in. */
async function readSettings(page: Page, url: string): Promise<readonly Setting[]> {
  // A vote draws the order of its sides by lot, unless it is told one.
  await page.goto(url.includes("/vote/") ? `${url}?ballot=1` : url, { waitUntil: "load" });
  await page.evaluate(async () => {
    for (const element of document.querySelectorAll<HTMLElement>("body *")) element.hidden = false;
    for (const details of document.querySelectorAll("details")) details.open = true;
    for (const element of document.querySelectorAll("body *")) {
      const own = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
      if (own) element.setAttribute("data-own", "");
    }
    document.body.getBoundingClientRect();
    await document.fonts.ready;
  });
  const session = await page.context().newCDPSession(page);
  await session.send("DOM.enable");
  await session.send("CSS.enable");
  const { root } = await session.send("DOM.getDocument", { depth: 0 });
  const { nodeIds } = await session.send("DOM.querySelectorAll", {
    nodeId: root.nodeId,
    selector: "[data-own]",
  });
  const looks = await page.evaluate(() =>
    [...document.querySelectorAll("[data-own]")].map((element) => {
      const { fontWeight, fontStyle } = getComputedStyle(element);
      const isPlain = element.childElementCount === 0;
      const range = document.createRange();
      range.selectNodeContents(element);
      const width = Math.round(range.getBoundingClientRect().width * 100) / 100;
      return {
        words: element.textContent?.trim().slice(0, 60) ?? "",
        isPlain,
        width,
        weight: fontWeight,
        style: fontStyle,
      };
    }),
  );
  expect(nodeIds.length).toBe(looks.length);
  const settings = await Promise.all(
    looks.map(async (look, index): Promise<Setting> => {
      const { fonts } = await session.send("CSS.getPlatformFontsForNode", { nodeId: nodeIds[index] ?? 0 });
      const named = fonts.map(
        (font) => `${font.isCustomFont ? "" : "system "}${font.postScriptName} ${font.glyphCount}`,
      );
      return { ...look, fonts: named.sort() };
    }),
  );
  await session.detach();
  return settings;
}

/** The type of a page: its file without the names of one study, edge, author or tag. */
const typeOf = (file: string): string => file.replace(/(studies|edges|authors|tags)\/[^/]+\/(?=.)/g, "$1/*/");

/** One page of each type, and every study of the demo; of galleries in other letters every third type. */
async function listPages(site: keyof typeof room.sites): Promise<readonly string[]> {
  const files = (await listFiles(room.folders[site])).filter((file) => file.endsWith(".html"));
  const texts = await Promise.all(files.map((file) => readFile(path.join(room.folders[site], file), "utf8")));
  // A page that has moved leads on before anyone can look at it.
  const pages = files.filter((_, index) => !texts[index]?.includes('http-equiv="refresh"'));
  const isFirst = (page: string) => pages.find((other) => typeOf(other) === typeOf(page)) === page;
  const isShown = (page: string) =>
    site === "demo" && shown.some((slug) => page === `studies/${slug}/index.html`);
  const chosen = pages.filter((page) => isFirst(page) || isShown(page));
  return site === "demo" ? chosen : sample(chosen, 3);
}

describe.each(["demo", "odd", "greek"] as const)("%s: on a page of every type", (site) => {
  let pages: readonly string[];
  const published = new Map<string, readonly Setting[]>();
  const full = new Map<string, readonly Setting[]>();
  const failed: string[] = [];

  beforeAll(async () => {
    pages = await listPages(site);
    for (const [isWhole, found] of [
      [false, published],
      [true, full],
    ] as const) {
      const context = await openContext(isWhole, failed);
      const page = await context.newPage();
      for (const file of pages)
        found.set(file, await readSettings(page, `${room.sites[site].address}/${file}`));
      await context.close();
    }
  }, 240_000);

  test("every letter is set in the font that would set it were all fonts whole", () => {
    expect(pages.length).toBeGreaterThan(site === "demo" ? 7 : 3);
    for (const file of pages) expect(published.get(file), file).toEqual(full.get(file));
  });

  test("no font that a page asks for is missing", () => expect(failed).toEqual([]));

  test("bold and slanted words have a face of their own: none is smeared or pushed over", () => {
    const plain = [...published.values()].flat().filter(({ isPlain }) => isPlain);
    const bundled = plain.flatMap(({ fonts, ...look }) =>
      fonts.filter((font) => font.startsWith("Source")).map((font) => ({ ...look, font })),
    );
    for (const { font, weight, style, words } of bundled) {
      expect(/semibold/i.test(font), `${words}: ${font}`).toBe(Number(weight) >= 600);
      expect(/it(?:alic)? /i.test(font), `${words}: ${font}`).toBe(style === "italic");
    }
    const kinds = new Set(bundled.map(({ font }) => font.replace(/ \d+$/, "")));
    for (const kind of [
      "SourceSerif4-Regular",
      "SourceSans3ExtraLight-Regular",
      "SourceSans3ExtraLight-SemiBold",
    ])
      expect([...kinds]).toContain(kind);
  });
});

test("a study page with emphasised and strong words and a Ł weighs under 60 KB beside its drawings, as hosts send it", async () => {
  const context = await room.browser.newContext();
  const page = await context.newPage();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(`${room.sites.demo.address}/${heavy}`, { waitUntil: "load" });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  expect(await page.locator(".prose-run em").count()).toBeGreaterThan(0);
  await context.close();
  const sizes = await Promise.all(
    asked
      .filter((url) => !/\.(?:svg|png|webp)$/.test(url))
      .map(async (url) => {
        const bytes = new Uint8Array(await (await fetch(url)).arrayBuffer());
        return {
          name: path.basename(url),
          sent: url.endsWith(".woff2") ? bytes.length : gzipSync(bytes).length,
        };
      }),
  );
  const fonts = sizes.filter(({ name }) => name.endsWith(".woff2"));
  const sum = (list: typeof sizes): number => list.reduce((total, { sent }) => total + sent, 0);
  process.stdout.write(
    `  a study page with emphasis: ${sum(sizes)} of 60000 bytes, ${fonts.length} fonts ${sum(fonts)} bytes\n`,
  );
  // Both upright faces, one italic and one bold at least, and the Ł.
  expect(fonts.length).toBeGreaterThanOrEqual(5);
  expect(sum(sizes)).toBeLessThan(60_000);
});
