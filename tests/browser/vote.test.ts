// A vote on the demo's series: by keyboard, by touch and without script; blind until the choice, and what comes out of it.
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import { loadSeries } from "../../src/content/series/loadseries.ts";
import { parseBallots } from "../../src/content/vote/ballotfile.ts";
import { orderSides } from "../../src/views/vote/ballotsides.ts";
import { demoBase, demoContent, openDemo } from "../demo.ts";
import { openRoom } from "./room.ts";
import { listViolations } from "./violations.ts";

vi.setConfig({ testTimeout: 60_000 });

const room = openRoom({ demo: openDemo }, demoBase);
const season = "series/spring-season/vote/";
/** The questions of the season: two of its studies are rivals. */
const keys = ["linnet-strand", "harrowquay", "kedgeport", "farlamp", "cinder-head", "fourwells"] as const;

async function open<T>(
  address: string,
  options: BrowserContextOptions,
  look: (page: Page, complaints: readonly string[]) => Promise<T>,
): Promise<T> {
  const context = await room.browser.newContext({ reducedMotion: "reduce", ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => {
    if (!request.url().startsWith(room.sites.demo.address) && !request.url().startsWith("blob:"))
      complaints.push(request.url());
  });
  try {
    await page.goto(`${room.sites.demo.address}${demoBase}${address}`);
    return await look(page, complaints);
  } finally {
    await context.close();
  }
}

const sidesOf = (page: Page) =>
  page
    .locator(".vote-question:visible .vote-sides > [data-side]")
    .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset["side"]));
const poll = () => ({
  slug: "spring-season",
  studies: [...keys, "kedgeport-copper"],
  met: new Map(),
  contradicted: new Set<string>(),
});
const parse = (text: string) => parseBallots("a.csv", new TextEncoder().encode(text), poll());

test("by keyboard alone: blind to the choice, then told, kept, and handed in as line and as table", async () => {
  const options = { viewport: { width: 1280, height: 800 }, acceptDownloads: true };
  await open(`${season}?ballot=7f3a`, options, async (page, complaints) => {
    const main = page.locator("main");
    const heron = await main.ariaSnapshot();
    // What a screen reader comes by, in its order.
    expect(heron.replace(/\s+/g, " ")).toMatch(
      /heading "The Linnet Strand heron".*img "A flag: .* radio "A".*img "A flag: .* radio "B".* radio "Neither".* what is proposed is an unofficial study\..*.* textbox "Why\? \(optional\)".* button "This is my choice".* button "Next"/,
    );
    expect(heron).not.toMatch(/original|redesign|clarity|[0-9] voters/i);
    expect(heron).not.toContain("Back");
    expect(await listViolations(page)).toEqual([]);
    for (const key of keys) {
      const rivals = key === "kedgeport" ? ["kedgeport-copper"] : [];
      expect(await sidesOf(page)).toEqual(orderSides("7f3a", key, ["original", key, ...rivals]));
      if (key === "farlamp") {
        await page.getByRole("button", { name: "This is my choice" }).press("Enter");
        expect(await page.locator(".vote-missing:visible").textContent()).toMatch(/^Choose a flag/);
      }
      if (key !== "fourwells") {
        await page.locator(".vote-question:visible input[type=radio]").first().focus();
        await page.keyboard.press("Space");
        if (rivals.length > 0) await page.keyboard.press("ArrowDown");
        await page.getByLabel("Why?").and(page.locator(":visible")).fill('=a "gold", b');
        await page.keyboard.press("Enter");
        expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("SUMMARY");
        expect(await page.locator(".vote-own:visible").count()).toBe(1);
        expect(await page.locator(".vote-answer:visible").count()).toBe(0);
      }
      await page.getByRole("button", { name: /^(?:Next|Your ballot)$/ }).press("Enter");
    }
    const line = (await page.locator(".vote-line code").textContent()) ?? "";
    const expected = keys.slice(0, 5).map((key) => {
      const rivals = key === "kedgeport" ? ["kedgeport-copper"] : [];
      const side = orderSides("7f3a", key, ["original", key, ...rivals])[rivals.length] ?? "";
      const choice = side === "original" ? "original" : "redesign";
      return { study: side === "original" ? key : side, choice, why: '=a "gold", b' };
    });
    const read = parse(line);
    expect(read.problems).toEqual([]);
    expect(read.value.map(({ votes }) => votes)).toEqual([expected]);
    const waiting = page.waitForEvent("download");
    await page.locator(".vote-save").press("Enter");
    expect(parse(await readFile(await (await waiting).path(), "utf8"))).toEqual(read);
    const letter = (await page.locator(".vote-send").getAttribute("href")) ?? "";
    expect(letter).toMatch(/^mailto:letters@tessary\.example\?/);
    expect(decodeURIComponent(letter)).toContain(line);
    expect(await listViolations(page)).toEqual([]);
    await page.reload();
    expect(await page.locator(".vote-line code").textContent()).toBe(line);
    await page.getByRole("button", { name: "Begin another ballot" }).press("Enter");
    expect(await page.locator(".vote-told:visible").count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe(
      "The Linnet Strand heron",
    );
    expect(complaints).toEqual([]);
  });
});

test("a study that is called as what every object has is asked as any other", async () => {
  await open(season, {}, async (page, complaints) => {
    await page.route("**/vote/", async (route) => {
      const body = (await (await route.fetch()).text()).replaceAll(
        /(data-question|data-side|name|value)="linnet-strand"/g,
        '$1="constructor"',
      );
      await route.fulfill({ body, contentType: "text/html" });
    });
    await page.reload();
    await page.locator(".vote-question:visible input[type=radio]").first().check();
    await page.getByRole("button", { name: "This is my choice" }).click();
    await page.goto(`${page.url().replace(/#.*/, "")}#ballot`);
    await page.reload();
    expect(await page.locator(".vote-line code").textContent()).toMatch(
      / spring-season constructor=(?:original|redesign)$/,
    );
    expect(complaints).toEqual([]);
  });
});

test("by touch on a phone, in the dark: a tap on a flag chooses it, and the counts stand beside the choice", async () => {
  const options = { viewport: { width: 390, height: 844 }, hasTouch: true, colorScheme: "dark" } as const;
  await open(season, options, async (page, complaints) => {
    await page.locator(".vote-question:visible .vote-sides img").last().tap();
    await page.getByRole("button", { name: "This is my choice" }).tap();
    expect(await page.locator(".vote-told:visible tbody tr").count()).toBe(3);
    expect(await page.locator(".vote-told:visible thead").textContent()).toMatch(/Chosen, of \d+ voters/);
    expect(await page.locator(".vote-mine:visible .vote-said").textContent()).toMatch(/original|redesign/);
    await page.emulateMedia({ media: "print" });
    const sizes = await page
      .locator(".vote-said")
      .evaluateAll((all) => all.map((one) => getComputedStyle(one).fontSize));
    expect(new Set(sizes)).toEqual(new Set(["0px"]));
    await page.emulateMedia({ media: "screen" });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    expect(await listViolations(page, "colours")).toEqual([]);
    expect(await listViolations(page, "layout")).toEqual([]);
    // A choice that the series does not ask for any more is forgotten, and so is what is no ballot.
    const keep = async (change: (text: string) => string) =>
      page.evaluate(
        ([key = "", text = ""]) => localStorage.setItem(key, text),
        [
          ...(await page.evaluate(() => Object.keys(localStorage))),
          change(await page.evaluate(() => Object.values(localStorage)[0] as string)),
        ],
      );
    await keep((text) => text.replace(/"side":"[^"]*"/, '"side":"gone"'));
    await page.reload();
    expect(await page.locator(".vote-answer:visible").count()).toBe(1);
    await keep(() => '{"id":"0000000000000000","seed":"<b>","votes":null}');
    await page.reload();
    expect(await page.locator(".vote-answer:visible").count()).toBe(1);
    expect(complaints).toEqual([]);
  });
});

test("without script it says so, asks every question and tells which is which on demand; on paper there are boxes", async () => {
  await open(season, { javaScriptEnabled: false }, async (page) => {
    expect(await page.locator(".vote-unscripted").isVisible()).toBe(true);
    expect(await page.locator(".vote-question:visible").count()).toBe(keys.length);
    expect(await page.locator("input:visible, button:visible").count()).toBe(0);
    const told = page.locator(".vote-told").first();
    expect(await told.locator("table").isVisible()).toBe(false);
    await told.locator("summary").click();
    expect(await told.locator("table").isVisible()).toBe(true);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".vote-boxes span:visible").count()).toBe(2 * 5 + 3 + keys.length);
    expect(await page.locator(".vote-caution:visible").count()).toBe(keys.length);
    expect(await page.locator(".vote-key li:visible").count()).toBe(keys.length);
    expect(await page.locator(".vote-told:visible").count()).toBe(0);
  });
});

test("flags chosen in the survey make a file with which a series begins, as it stands", async () => {
  const text = await open("survey/", { acceptDownloads: true }, async (page) => {
    for (const row of ["#flag-flags-threeweirs", "#flag-studies-farlamp-original", "#flag-flags-gannetry"])
      await page.locator(`${row} .choose`).check();
    const waiting = page.waitForEvent("download");
    await page.locator(".chosen-series").click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe("chosen-flags.md");
    expect(await page.locator("#flag-flags-threeweirs").textContent()).toContain("Marit Osseny: Three weirs");
    return readFile(await download.path(), "utf8");
  });
  const root = await mkdtemp(path.join(tmpdir(), "counterchange-chosen-"));
  try {
    await cp(path.join(demoContent, "flags"), path.join(root, "flags"), { recursive: true });
    await mkdir(path.join(root, "series"));
    await writeFile(path.join(root, "series/chosen-flags.md"), text);
    const { value, problems } = await loadSeries(
      root,
      "content",
      await readdir(path.join(demoContent, "studies")),
    );
    expect(problems).toEqual([]);
    expect(value?.[0]?.entries).toEqual([
      { flag: "flags/threeweirs.svg", name: "Threeweirs" },
      { study: "farlamp" },
      { flag: "flags/gannetry.svg", name: "Gannetry" },
    ]);
  } finally {
    await rm(root, { recursive: true, force: true });
  }
});
