import { access } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { renderPages, templatesDir } from "../../src/publish/renderpages.ts";
import { presentSite, type SiteView } from "../../src/views/siteview.ts";
import { makeRoom } from "./room.ts";
import { galleryResult } from "./sample.ts";

test("the templates are where Eleventy is told to look", async () => {
  await access(path.join(templatesDir, "pages"));
});

test("pages come as text, twice the same, in whichever working folder", async () => {
  const view = presentSite(galleryResult, "/flags/");
  const render = async () =>
    Promise.all(
      (await renderPages(view, galleryResult.gallery)).map(
        async (page) => `${page.path}\n${await page.make()}`,
      ),
    );
  const first = await render();
  const before = process.cwd();
  const page = (path: string) => first.find((text) => text.startsWith(`${path}\n`));
  expect(page("index.html")).toContain(galleryResult.gallery.title);
  // Shown at any address, so it alone has to know where the site lies.
  expect(page("404.html")).toContain('href="/flags/assets/site.css"');
  expect(await render()).toEqual(first);
  expect(process.cwd()).toBe(before);
});

test("what a view does not have is not rendered, wherever the command was called", async () => {
  const { method, edges } = presentSite(galleryResult, "/");
  const before = process.cwd();
  const room = await makeRoom();
  process.chdir(room);
  try {
    const paths = async (view: Partial<SiteView>) =>
      (await renderPages(view, galleryResult.gallery)).map((page) => page.path);
    expect(await paths({ method })).toEqual(["method/index.html"]);
    expect(await paths({ edges })).toEqual(edges.map(({ folder }) => `${folder}/index.html`).sort());
  } finally {
    process.chdir(before);
  }
});

test("the logo stands before the gallery's name, and alone where that is the heading", async () => {
  const logo = { drawing: "<svg/>", width: 3, height: 2 };
  const gallery = { ...galleryResult.gallery, logo };
  const { method, front } = presentSite({ ...galleryResult, gallery }, "/");
  const pages = await renderPages({ method, front }, gallery);
  const texts = await Promise.all(pages.map(async ({ make }) => String(await make())));
  const size = 'width="54" height="36" alt';
  const [first, second] = texts.map((text) => /<p class="masthead-name">.*?<\/p>/.exec(text)?.[0]);
  expect(first).toBe(
    `<p class="masthead-name"><img class="masthead-logo" src="assets/logo.svg" ${size}/></p>`,
  );
  expect(second).toContain(`<a href="../"><img class="masthead-logo" src="../assets/logo.svg" ${size}/>`);
});

test("a page shows a drawing on its mat, and what its author calls it as text", async () => {
  const { before: measure } = galleryResult.studies[0]?.comparison ?? {};
  if (measure === undefined) throw new Error("the sample has a study");
  const body = '::figure{drawing="/flags/a.svg" caption="<b>Old</b>"}';
  const pages = [{ path: "about", title: "About", file: "", body, bodyLine: 1 }];
  const drawings = new Map([["flags/a.svg", { drawing: "<svg/>", measure }]]);
  const { pages: own } = presentSite({ ...galleryResult, pages, drawings }, "/");
  const [page] = await renderPages({ pages: own.slice(0, 1) }, galleryResult.gallery);
  const text = String(await page?.make());
  expect(text).toMatch(
    /<div class="mat"><img class="flag flag-wide" src="[./]+assets\/drawings\/flags\/a\.svg"/,
  );
  expect(text).toContain("<figcaption>&lt;b>Old&lt;/b></figcaption>");
});

test("no line breaks at the slash between two colours, and what is to be typed has plain spaces", async () => {
  const body = 'White / red, 1 / 2, <https://example.org/>.\n\n`edge="white / red"`\n\n    white / red\n';
  const pages = [{ path: "about", title: "About", file: "", body, bodyLine: 1 }];
  const { pages: own } = presentSite({ ...galleryResult, pages }, "/");
  const [page] = await renderPages({ pages: own.slice(0, 1) }, galleryResult.gallery);
  const text = String(await page?.make());
  expect(text).toContain("White\u00a0/\u00a0red, 1 / 2, ");
  expect(text.match(/white \/ red/g)?.length).toBe(2);
});
