// A site as it is served against the same site as it is built: every byte but the script that shows it anew, and the fonts,
// which are whole while pages are still being written.
import { expect, test, vi } from "vitest";
import { analyseGallery } from "../../src/analysis/analysegallery.ts";
import type { Line } from "../../src/analysis/jobs/pool.ts";
import type { GalleryResult } from "../../src/analysis/result.ts";
import { undressPage } from "../../src/preview/servedpage.ts";
import { Version } from "../../src/preview/siteversion.ts";
import { loadTemplates } from "../../src/preview/templates.ts";
import { keepFonts } from "../../src/publish/pictures/imagecache.ts";
import { makeFiles } from "../../src/publish/pictures/makefiles.ts";
import { listSite } from "../../src/publish/publishgallery.ts";
import { templatesDir } from "../../src/publish/renderpages.ts";
import { demoContent } from "../demo.ts";
import { openKept } from "../kept.ts";
import { makeFile } from "../publish/making.ts";
import { gallery, studyResult } from "../publish/sample.ts";
import { serve } from "./serving.ts";

vi.setConfig({ testTimeout: 240_000 });

const templates = await loadTemplates(templatesDir);

/** Draws in this process. */
const doHere = ((_: string, __: string, input: Parameters<typeof makeFiles>[0]) =>
  makeFiles(input)) as unknown as Line["run"];

const sample: GalleryResult = { gallery, studies: [studyResult], problems: [] };

function make(
  result: GalleryResult,
  parts: { edition?: string; shelf?: Map<string, Promise<string | Uint8Array>> } = {},
) {
  const { edition = "1", shelf = new Map() } = parts;
  const means = { line: { run: doHere } };
  return new Version({ result, templates, templatesDir, edition, shelf, means });
}

const bytesOf = (made: string | Uint8Array): Buffer => Buffer.from(made as string);
const isFont = (path: string): boolean => path.endsWith(".woff2");
const styles = "assets/site.css";
const withoutFaces = (sheet: Buffer): Buffer =>
  Buffer.from(String(sheet).replace(/@font-face \{[^}]*\}\n/g, ""));

test("the demo: each file over HTTP, and none that is not built; pictures of a study", async () => {
  const store = await openKept();
  const site = await listSite(await analyseGallery(demoContent, { store }), "/");
  const files = [...keepFonts(site.files, store), ...site.drawn];
  const served = await serve(demoContent, { store });
  const isPicture = (path: string): boolean => /^studies\/.*\.(?:png|webp)$/.test(path);
  const compared = files.filter(({ path }) => !isPicture(path) || path.startsWith("studies/lockmouth/"));
  expect(compared.length).toBeGreaterThan(300);
  for (const file of compared) {
    const response = await served.get(`/${file.path}`);
    const body = Buffer.from(await response.arrayBuffer());
    const isPage = file.path.endsWith(".html");
    expect([file.path, response.status]).toEqual([file.path, 200]);
    const plain = isPage ? Buffer.from(undressPage(body.toString())) : body;
    if (isPage) expect(plain.equals(body)).toBe(false);
    const made = bytesOf(await makeFile(file));
    if (isFont(file.path)) {
      expect(body.length, file.path).toBeGreaterThan(made.length);
      continue;
    }
    const [left, right] = file.path === styles ? [withoutFaces(plain), withoutFaces(made)] : [plain, made];
    // Compared by `equals`: a difference of a hundred kilobytes is no message.
    expect([file.path, left.equals(right)]).toEqual([file.path, true]);
  }
});

test("has the files of the built site and, but for fonts, no others", async () => {
  const site = await listSite(sample, "/");
  const files = [...site.files, ...site.drawn];
  const built = files.map(({ path }) => path).sort();
  const served = [...new Set(await make(sample).listPaths())].sort();
  expect(served.filter((path) => built.includes(path))).toEqual(built);
  expect(served.filter((path) => !built.includes(path) && !isFont(path))).toEqual([]);
  expect(String(await make(sample).make(styles)).match(/@font-face/g)?.length).toBeGreaterThan(24);
  expect(await make(sample).make("studies/a-square/none.webp")).toBeUndefined();
});

test("a page is marked by what it shows: words, drawings of its own study, styles", async () => {
  const page = "studies/a-square/index.html";
  const mark = (result: GalleryResult, edition = "1") => make(result, { edition }).markPage(page);
  const before = mark(sample);
  expect(mark({ ...sample })).toBe(before);
  expect(mark(sample, "2")).not.toBe(before);
  expect(mark({ ...sample, gallery: { ...gallery, title: "Another" } })).not.toBe(before);
  expect(mark({ ...sample, gallery: { ...gallery, theme: { mat: 55 } } })).not.toBe(before);
  const logo = { drawing: "<svg/>", width: 3, height: 2 };
  const signed = mark({ ...sample, gallery: { ...gallery, logo } });
  expect(mark({ ...sample, gallery: { ...gallery, logo: { ...logo, drawing: "<svg />" } } })).not.toBe(
    signed,
  );
  const drawings = { ...studyResult.drawings, redesign: `${studyResult.drawings.redesign}\n` };
  const redrawn = { ...studyResult, drawings };
  expect(mark({ ...sample, studies: [redrawn] })).not.toBe(before);
  const own = (drawing: string) => {
    const drawings = new Map([["flags/a.svg", { drawing, measure: studyResult.comparison.before }]]);
    return make({ ...sample, drawings }).markPage("survey/index.html");
  };
  expect(own("<svg/>")).not.toBe(own("<svg />"));
  const missing = (result: GalleryResult) => make(result).markPage("studies/none/index.html");
  expect(missing(sample)).toBe(missing({ ...sample, gallery: { ...gallery, title: "Another" } }));
});

test("a picture is made once while its drawing is the same, and anew when it is another", async () => {
  const shelf = new Map<string, Promise<string | Uint8Array>>();
  const path = "studies/a-square/from-20-original.webp";
  const first = await make(sample, { shelf }).make(path);
  const retitled = { ...studyResult, study: { ...studyResult.study, title: "Another", body: "More.\n" } };
  expect(await make({ ...sample, studies: [retitled] }, { shelf }).make(path)).toBe(first);
  expect(shelf.size).toBe(1);
  const original = studyResult.drawings.original.replace("#ffffff", "#ff0000");
  const redrawn = { ...studyResult, drawings: { ...studyResult.drawings, original } };
  const second = await make({ ...sample, studies: [redrawn] }, { shelf }).make(path);
  expect(bytesOf(second ?? "").equals(bytesOf(first ?? ""))).toBe(false);
});
