import { cp, readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { findTemplates, loadTemplates } from "../../src/preview/templates.ts";
import { templatesDir as compiled, renderPages } from "../../src/publish/renderpages.ts";
import { presentSite } from "../../src/views/siteview.ts";
import { createSay } from "../../src/words/say.ts";
import { oddGallery } from "../browser/gallery.ts";
import { makeFolder } from "../content/folder.ts";

vi.setConfig({ testTimeout: 120_000 });

const templatesDir = await findTemplates();
const view = presentSite(oddGallery, "/");

test.each([
  ["the sources", templatesDir],
  ["what was compiled", compiled],
])("from %s the same pages as Eleventy makes, byte for byte", async (_, folder) => {
  const built = await renderPages(view, oddGallery.gallery);
  const served = (await loadTemplates(folder)).listPages(view, createSay("en"));
  expect(served.map(({ path }) => path).sort()).toEqual(built.map(({ path }) => path).sort());
  expect(built.length).toBeGreaterThan(5);
  for (const file of built) {
    const page = served.find(({ path }) => path === file.path);
    expect(page?.render()).toBe(await file.make());
  }
});

/** Templates import nothing but packages and, as types, our sources. */
async function copyTemplates(): Promise<string> {
  const folder = join(await makeFolder({ "package.json": '{ "type": "module" }' }), "templates");
  await cp(templatesDir, folder, { recursive: true });
  for (const name of ["preact", "preact-render-to-string"])
    await cp(join(templatesDir, "../node_modules", name), join(folder, "../node_modules", name), {
      recursive: true,
    });
  return folder;
}

test("read anew, a template and the parts it imports are those of the disk", async () => {
  const folder = await copyTemplates();
  const missing = async (): Promise<string> =>
    (await loadTemplates(folder))
      .listPages(view, createSay("en"))
      .find(({ path }) => path === "404.html")
      ?.render() ?? "";
  expect(await missing()).toContain("<h1>No page here</h1>");
  const page = join(folder, "pages/missing.11ty.tsx");
  await writeFile(page, (await readFile(page, "utf8")).replace('{say("frame.missing")}', "Nothing here"));
  expect(await missing()).toContain("<h1>Nothing here</h1>");
  const part = join(folder, "parts/document.tsx");
  await writeFile(part, (await readFile(part, "utf8")).replace('{say("frame.skip")}', "On to the content"));
  expect(await missing()).toContain("On to the content");
});

test("a template that cannot be read says why", async () => {
  const folder = await copyTemplates();
  const [page = ""] = await readdir(join(folder, "pages"));
  await writeFile(join(folder, "pages", page), "export const data = {");
  await expect(loadTemplates(folder)).rejects.toThrow(/expected|unexpected/i);
  await writeFile(join(folder, "pages", page), "export const data = {};");
  await expect(loadTemplates(folder)).rejects.toThrow("permalink");
});
