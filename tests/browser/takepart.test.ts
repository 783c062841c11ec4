// Proposing a study on `/take-part/`: real drawings become studies that pass check as they are, hostile ones run and load
// nothing, and what cannot be shown is said.
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import { runHere } from "../cli/run.ts";
import { listCollection } from "../collection/files.ts";
import { demoBase, demoContent, openDemo } from "../demo.ts";
import { sample } from "../sample.ts";
import { openRoom } from "./room.ts";
import { listViolations } from "./violations.ts";

vi.setConfig({ testTimeout: 60_000 });

const room = openRoom({ demo: openDemo }, demoBase);
const hostile = path.join(import.meta.dirname, "../hostile/svg");

/** Opens the page, and keeps what the browser asked for and complained of since. */
async function open(
  options: BrowserContextOptions,
  look: (page: Page, heard: string[]) => Promise<void>,
): Promise<void> {
  const context = await room.browser.newContext({ reducedMotion: "reduce", ...options });
  const page = await context.newPage();
  const heard: string[] = [];
  try {
    await page.goto(`${room.sites.demo.address}${demoBase}take-part/`, { waitUntil: "networkidle" });
    page.on("request", (request) => heard.push(request.url()));
    page.on("dialog", (dialog) => {
      heard.push(dialog.message());
      void dialog.dismiss();
    });
    // What the policy stops is heard of too, but for the styles of the document that a file is read into: it applies none. That a
    // drawing has numbers that are none, the browser says as well.
    page.on("console", (message) => {
      const text = message.text();
      if (/violates|refused|blocked|trusted/i.test(text) && !text.startsWith("Applying inline style"))
        heard.push(text);
    });
    page.on("pageerror", (error) => heard.push(error.message));
    await look(page, heard);
  } finally {
    await context.close();
  }
}

/** Gives the page a file, and returns what it says of it. */
async function choose(page: Page, file: { name: string; text: Buffer }): Promise<string> {
  const said = page.locator(".part-said");
  await said.evaluate((element) => element.replaceChildren());
  const { name, text: buffer } = file;
  await page.locator("#part-file").setInputFiles({ name, mimeType: "image/svg+xml", buffer });
  await page.waitForFunction(() => document.querySelector(".part-said")?.textContent !== "");
  return (await said.textContent()) ?? "";
}

test("five real drawings become studies that pass check as they are", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "counterchange-part-"));
  await cp(path.join(demoContent, "gallery.yaml"), path.join(folder, "gallery.yaml"));
  const all = listCollection();
  try {
    await open({ viewport: { width: 1280, height: 900 } }, async (page, heard) => {
      for (const share of [1, 3, 5, 7, 9]) {
        const file = all[Math.floor((all.length * share) / 10)];
        const drawing = await readFile(file?.path ?? "");
        expect(await choose(page, { name: "flag.svg", text: drawing })).toMatch(/^The drawing is shown/);
        await page.locator("#part-typed").fill("#4b6e57");
        await page.getByLabel("Title of the study").fill(`A "quieter" field: ${share}`);
        await page.getByLabel("What the flag is called").fill("A flag");
        await page.getByLabel("Your name").fill("Ines Valcourt");
        await page.getByLabel("Why this change").fill("The field was too loud.\n\nNow it is not.");
        const text = (await page.locator(".part-study").textContent()) ?? "";
        const send = new URL((await page.locator(".part-send").getAttribute("href")) ?? "");
        expect(send.protocol).toBe("mailto:");
        expect(send.searchParams.get("body")?.replaceAll("\r\n", "\n")).toContain(text);
        const study = path.join(folder, "studies", `proposal-${share}`);
        await mkdir(study, { recursive: true });
        await writeFile(path.join(study, "study.md"), text);
        await writeFile(path.join(study, "original.svg"), drawing);
      }
      expect(heard).toEqual([]);
    });
    const { status, messages } = await runHere(folder, "check", ".");
    expect(messages).toMatch(/^0 errors, 0 warnings; 5 good studies/m);
    expect(status).toBe(0);
  } finally {
    await rm(folder, { recursive: true });
  }
});

test("hostile drawings, a third of them, run nothing and load nothing, and what is shown is of the page's own making", async () => {
  const all = (await readdir(hostile)).filter((name) => name.endsWith(".svg")).sort();
  expect(all.length).toBeGreaterThan(200);
  const names = sample(all, 3);
  const files = await Promise.all(
    names.map(async (name) => ({ name, base64: await readFile(path.join(hostile, name), "base64") })),
  );
  await open({}, async (page, heard) => {
    const seen = await page.evaluate(tryAll, files);
    expect(seen.map(({ name }) => name)).toEqual(names);
    for (const { name, faults } of seen) expect(faults, name).toEqual([]);
    const words = new Set(seen.map(({ said }) => said));
    for (const expected of [/^The drawing is shown/, /cannot be read/, /without end/])
      expect([...words].filter((word) => expected.test(word))).toHaveLength(1);
    expect(heard).toEqual([]);
  });
});

/** In the page: chooses each file, waits until it is painted, and returns what was said and what stands there that may not. */
async function tryAll(
  files: readonly { readonly name: string; readonly base64: string }[],
): Promise<readonly { readonly name: string; readonly said: string; readonly faults: readonly string[] }[]> {
  const input = document.querySelector("#part-file") as HTMLInputElement;
  const said = document.querySelector(".part-said") as HTMLElement;
  const element = /^(?:script|foreignObject|image|a|animate\w*|set|style|iframe|filter|text|handler)$/i;
  const isWrong = ({ name, value }: Attr) =>
    /^on|^style$|^class$/i.test(name) ||
    /url\((?!#part-)|:\/\/|script:|\\/i.test(value) ||
    (/href/i.test(name) && !value.startsWith("#part-"));
  const seen = [];
  for (const { name, base64 } of files) {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const chosen = new DataTransfer();
    chosen.items.add(new File([bytes], name, { type: "image/svg+xml" }));
    input.files = chosen.files;
    said.textContent = "";
    input.dispatchEvent(new Event("change", { bubbles: true }));
    while (said.textContent === "") await new Promise((resolve) => requestAnimationFrame(resolve));
    await new Promise((resolve) => requestAnimationFrame(resolve));
    const shown = [...document.querySelectorAll(".part-mat *")];
    const faults = shown.flatMap((one) => [
      ...(element.test(one.localName) ? [one.localName] : []),
      ...[...one.attributes].filter(isWrong).map((wrong) => `${wrong.name}=${wrong.value}`),
    ]);
    seen.push({ name, said: said.textContent ?? "", faults });
  }
  return seen;
}

test("a drawing that would take minutes to read or to draw is refused at once", async () => {
  const begin =
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#c00" d="M0 0h3v2H0z"/>';
  const rules = `<style>${"a{fill:red}".repeat(10_000)}</style>${"<g/>".repeat(15_000)}`;
  const within = `<style>${":has(x) g{fill:red}".repeat(3000)}</style>${"<g/>".repeat(1200)}`;
  const dots = `<marker id="m">${'<circle r="1"/>'.repeat(400)}</marker>`;
  const path = `<path marker-mid="url(#m)" d="M0 0${"l1 1l-1-1".repeat(20_000)}"/>`;
  await open({}, async (page) => {
    const say = async (inside: string) =>
      choose(page, { name: "a.svg", text: Buffer.from(`${begin}${inside}</svg>`) });
    const start = performance.now();
    expect(await say(rules)).toMatch(/too large to be shown/);
    expect(await say(`<defs>${dots}</defs>${path}`)).toMatch(/too large to be shown/);
    expect(await say(within)).toMatch(/^The drawing is shown/);
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});

test("a change shows before and after with their contrasts; a broken or large file gets a sentence", async () => {
  const options = { viewport: { width: 1280, height: 900 } };
  await open(options, async (page, heard) => {
    expect(await choose(page, { name: "a.svg", text: Buffer.from("<svg><g></svg>") })).toMatch(
      /cannot be read/,
    );
    const large = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><!--${"x".repeat(512 * 1024)}--></svg>`;
    expect(await choose(page, { name: "b.svg", text: Buffer.from(large) })).toMatch(/larger than 512 KB/);
    expect(await page.locator(".part-work:visible").count()).toBe(0);
    const flag =
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><style>.f{fill:white}</style><path class="f" d="M0 0h3v2H0z"/><rect style="fill:rgb(0,0,0)" width="1" height="1"/></svg>';
    await choose(page, { name: "c.svg", text: Buffer.from(flag) });
    expect(await page.locator("#part-replace option").allTextContents()).toEqual(["#ffffff", "#000000"]);
    // Cloth of 5 and 85 percent: 125 · 80 / 115 = 87.0. Source: AS 1428.1:2009, Appendix B.
    expect(await page.locator(".part-marks tbody td").first().textContent()).toBe("87 strong");
    await page.locator("#part-file").focus();
    for (const id of ["part-replace", "part-with", "part-typed"]) {
      await page.keyboard.press("Tab");
      expect(await page.evaluate(() => document.activeElement?.id)).toBe(id);
    }
    await page.keyboard.type("hotpinkish");
    expect(await page.locator(".part-wrong").textContent()).toMatch(/no colour/);
    await page.locator("#part-typed").fill("#000");
    expect(await page.locator(".part-marks tbody td").last().textContent()).toMatch(/0 weak$/);
    expect(await page.locator("[data-side=after] path").getAttribute("fill")).toBe("#000000");
    expect(await page.locator("[data-side=before] path").getAttribute("fill")).toBe("white");
    await page.getByLabel("Title of the study").fill("A darker field");
    await page.getByLabel("Why this change").fill("It was light.");
    expect(await listViolations(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await listViolations(page, "colours")).toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await listViolations(page, "layout")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(heard).toEqual([]);
  });
});

test("without a script the page has the files, a text to copy, and the letter; its script is small and nowhere else", async () => {
  await open({ javaScriptEnabled: false }, async (page) => {
    expect(await page.locator(".part-bench:visible").count()).toBe(0);
    expect(await page.locator(".part-template pre").first().textContent()).toMatch(/^---\ntitle: .*\n---\n/s);
    expect(await page.locator(".part-send").getAttribute("href")).toMatch(/^mailto:.*original\.svg/);
    expect(await page.locator("form").count()).toBe(0);
    expect(await page.locator(".foot a[href$='take-part/'], .foot a[href$='./']").count()).toBe(1);
  });
  const site = room.folders.demo;
  expect((await readFile(path.join(site, "assets/takepart.js"))).length).toBeLessThan(40 * 1024);
  const front = await readFile(path.join(site, "index.html"), "utf8");
  expect(front).not.toContain("takepart.js");
  expect(front.match(/href="take-part\/"/g)).toHaveLength(2);
});
