import { beforeAll, describe, expect, test } from "vitest";
import { SitePaths } from "../../src/publish/folder/freshsite.ts";
import { listSite } from "../../src/publish/publishgallery.ts";
import { emptyGallery, oddGallery } from "../browser/gallery.ts";
import { galleryResult } from "./sample.ts";

describe.each([
  ["a gallery of one study", galleryResult],
  ["a gallery of odd ones", oddGallery],
  ["an empty gallery", emptyGallery],
])("%s", (_, gallery) => {
  let files: readonly { readonly path: string }[];
  let pages: readonly (readonly [path: string, html: string])[];
  beforeAll(async () => {
    const site = await listSite(gallery, "/");
    files = [...site.files, ...site.drawn];
    pages = await Promise.all(
      site.files.slice(0, site.pages).map(async (file) => [file.path, String(await file.make())] as const),
    );
  });

  test("no two files of the site have one path", () => {
    expect(() => new SitePaths().add(files.map((file) => file.path))).not.toThrow();
  });

  test("the pages are those of the addresses, each a whole document", () => {
    for (const path of ["index.html", "404.html", "method/index.html"])
      expect(pages.map(([page]) => page)).toContain(path);
    for (const { study } of gallery.studies)
      expect(pages.map(([page]) => page)).toContain(`studies/${study.slug}/index.html`);
    for (const [, html] of pages) expect(html).toMatch(/^<!doctype html>[\s\S]+<\/html>\s*$/i);
  });

  test("every picture, script and style that a page names is in the list", () => {
    const known = new Set(files.map((file) => file.path));
    const missing = pages.flatMap(([page, html]) =>
      [...html.matchAll(/<(?:img|script|link)\b[^>]*?\s(?:src|href)="([^"#?]+)"/g)]
        .map((match) => match[1] ?? "")
        .filter((address) => !/^(?:[a-z]+:|\/\/)/.test(address))
        .map((address) => resolve(page, address))
        .filter((path) => !known.has(path))
        .map((path) => `${page} names ${path}`),
    );
    expect(missing).toEqual([]);
  });
});

/** The file that an address on a page stands for. */
function resolve(page: string, address: string): string {
  const path = new URL(address, `https://flags.example/${page}`).pathname.slice(1);
  return path === "" || path.endsWith("/") ? `${path}index.html` : path;
}
