// A served page in a browser: it shows an edit by itself, what is wrong lies over it, and its policy holds.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeStudy } from "../analysis/fixture.ts";
import { harbour, makeFolder } from "../content/folder.ts";
import { serve } from "../preview/serving.ts";
import { shareBrowser } from "./room.ts";

test("an edit, an error and its mending, without a hand on the browser", { timeout: 180_000 }, async () => {
  const folder = await makeFolder(harbour);
  const study = join(folder, "studies/ferry/study.md");
  const served = await serve(folder);
  const browser = await shareBrowser();
  const page = await browser.newPage();
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  await page.goto(`${served.address}/studies/ferry/`);
  expect(await page.locator("h1").textContent()).toContain("A lighter ferry wheel");
  expect(await page.locator("#serve-notice").count()).toBe(0);

  await writeFile(study, writeStudy("title: A wheel of gold"));
  await page.locator("h1", { hasText: "A wheel of gold" }).waitFor();

  await writeFile(study, writeStudy("title: A wheel of gold", "status: <b>odd</b>"));
  const notice = page.locator("#serve-notice");
  await notice.waitFor();
  expect(await notice.getAttribute("open")).toBe("");
  // Text of the content stays text.
  expect(await notice.locator("b").count()).toBe(0);
  expect(await notice.textContent()).toContain("“status” is “<b>odd</b>”");
  expect(await page.locator("h1").textContent()).toContain("A wheel of gold");
  // It lies over the page, at its top, and can be shut.
  expect((await notice.boundingBox())?.y).toBe(0);
  await notice.locator("summary").click();
  expect(await notice.getAttribute("open")).toBeNull();

  await writeFile(study, writeStudy("title: A wheel of brass"));
  await page.locator("h1", { hasText: "A wheel of brass" }).waitFor();
  await notice.waitFor({ state: "detached" });
  expect(faults).toEqual([]);
  await page.close();
});
