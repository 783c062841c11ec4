import { beforeAll, expect, test } from "vitest";
import { listPublishedPages } from "../../src/publish/publishedpage.ts";
import { openDemo } from "../demo.ts";

let site = "";
beforeAll(async () => {
  site = await openDemo();
});

test("every page of the demo has its part for a layout, but for shows and pages that lead on", async () => {
  const { pages, studies } = await listPublishedPages(site, true);
  expect(studies.length).toBeGreaterThan(10);
  expect(
    pages.whole.every(({ file, whole }) => /\/show\//.test(file) || whole.includes('http-equiv="refresh"')),
  ).toBe(true);
  expect(pages.main.length).toBeGreaterThan(80);
  for (const { file, title, head, main, whole } of pages.main) {
    expect([file, title.length > 3, /^<style>@import url/.test(head)]).toEqual([file, true, true]);
    // Whole: a page's one heading, and as many links as there are between masthead and foot.
    expect([file, main.match(/<h1[ >]/g)?.length]).toEqual([file, 1]);
    expect(whole).toContain(main.slice(main.indexOf(">") + 1, -"</div>".length));
  }
  expect((await listPublishedPages(site, false)).pages.main).toEqual([]);
});
