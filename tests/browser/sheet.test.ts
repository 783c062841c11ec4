// The sheets for a class on paper: a page of A4 or Letter for each part, and nothing that only colour tells.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoBase, demoContent, openDemo } from "../demo.ts";
import { openRoom } from "./room.ts";
import { listViolations } from "./violations.ts";

const room = openRoom({ demo: openDemo }, demoBase);

const listFolders = (kind: string, end = "") =>
  readdirSync(join(demoContent, kind)).map((name) => `${kind}/${name.replace(end, "")}`);

async function open<T>(address: string, look: (page: Page) => Promise<T>, kind = "sheet"): Promise<T> {
  const context = await room.browser.newContext({ viewport: { width: 390, height: 844 } });
  try {
    const page = await context.newPage();
    await page.goto(`${room.sites.demo.address}${demoBase}${address}/${kind}/`);
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    return await look(page);
  } finally {
    await context.close();
  }
}

/** Source: ISO 32000-1:2008, 7.7.3.3: each page is an object of the type Page. */
async function countPages(page: Page, format: "A4" | "Letter"): Promise<number> {
  const pdf = await page.pdf({ format, printBackground: true });
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

test("every study has three pages of A4 and of Letter", async () => {
  const studies = listFolders("studies");
  const found: unknown[] = [];
  for (const study of studies)
    await open(study, async (page) => {
      found.push([study, await countPages(page, "A4"), await countPages(page, "Letter")]);
    });
  expect(found).toEqual(studies.map((study) => [study, 3, 3]));
});

test.each(listFolders("series", ".md"))("%s has the pages that its contents name", async (series) => {
  await open(series, async (page) => {
    const parts = await page.locator(".sheets-page").count();
    expect(await countPages(page, "A4")).toBe(parts);
    expect(await countPages(page, "Letter")).toBe(parts);
    const last = page.locator(".sheets-contents a").last();
    expect(
      await page
        .locator(".sheets-page")
        .nth(Number(await last.textContent()) - 1)
        .getAttribute("id"),
    ).toBe((await last.getAttribute("href"))?.slice(1));
  });
});

test("the sheet for makers is one page of A4 and of Letter, and study and decisions lead there", async () => {
  const look = async (page: Page) => {
    expect([await countPages(page, "A4"), await countPages(page, "Letter")]).toEqual([1, 1]);
    expect(
      await page.locator(".sheets-picture").evaluate((one) => (one as HTMLImageElement).naturalWidth),
    ).toBe(1500);
    for (const from of ["studies/harrowquay/", "decisions/"]) {
      await page.goto(`${room.sites.demo.address}${demoBase}${from}`);
      await page.getByRole("link", { name: "sheet for makers" }).click();
      expect(new URL(page.url()).pathname).toBe(`${demoBase}studies/harrowquay/maker/`);
    }
  };
  await open("studies/harrowquay", look, "maker");
});

test("a phone shows all of it without a script, and no rule of accessibility is broken", async () => {
  await open("studies/kedgeport", async (page) => {
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(await listViolations(page)).toEqual([]);
    // What a screen reader comes by, in its order.
    expect((await page.locator("main").ariaSnapshot()).replace(/\s+/g, " ")).toMatch(
      /Handout" \[level=2\].*img "Original: .*img "Redesign: .*heading "Three questions".*lightness: weak under 30%.*Worksheet" \[level=2\].*in outlines".*For the teacher" \[level=2\].*heading "Answers".*table:/,
    );
    // The class gets the questions, the teacher the answers.
    const marks = (sheet: string) => page.locator(`${sheet} .ruler-track > circle`).count();
    expect([await marks("#handout"), await marks("#worksheet"), await marks("#answers")]).toEqual([0, 0, 6]);
    // The scale stands where it is asked for.
    expect(await page.locator("#handout li:nth-child(2) .sheets-ruler").count()).toBe(1);
    const pictures = page.locator(".sheets-picture");
    expect(
      await pictures.evaluateAll((all) => all.map((one) => (one as HTMLImageElement).naturalWidth)),
    ).toEqual([900, 900, 1500]);
  });
});
