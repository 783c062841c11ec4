// What is named where somebody stands beside a gallery, or inside one, or has mistyped a drawing.
import { relative, resolve } from "node:path";
import { join } from "node:path/posix";
import { expect, test } from "vitest";
import { readDrawing } from "../../../src/content/folder/drawingfile.ts";
import { loadGallery } from "../../../src/content/folder/loadgallery.ts";
import { findDrawingNear, findGalleryAround, listGalleriesNear } from "../../../src/content/folder/nearby.ts";
import { formatProblems } from "../../../src/problem/problemtext.ts";
import { harbour, makeFolder } from "../folder.ts";

const under = (folder: string) =>
  Object.fromEntries(Object.entries(harbour).map(([path, text]) => [`${folder}/${path}`, text]));

test("a gallery beside the folder that was named, and the one of a similar name alone", async () => {
  const root = await makeFolder({ ...under("flags-of-the-sound"), ...under("inland"), "notes/a.txt": "" });
  const near = async (name: string) =>
    (await listGalleriesNear(join(root, name))).map((path) => relative(root, resolve(path)));
  expect(await near("content")).toEqual(["flags-of-the-sound", "inland"]);
  expect(await near("inlnad")).toEqual(["inland"]);
  expect(await near("notes/content")).toEqual([]);
});

test.each(["studies", "studies/ferry", "studies/ferry/study.md", "studies/none/content", "flags"])(
  "%s lies in a gallery",
  async (path) => {
    const root = await makeFolder({ ...harbour, "flags/a.txt": "", "drafts/a.txt": "" });
    expect(resolve((await findGalleryAround(join(root, path))) ?? "none")).toBe(root);
    expect(await findGalleryAround(join(root, "drafts"))).toBeUndefined();
    expect(await findGalleryAround(root)).toBeUndefined();
  },
);

test("a part of a gallery is not taken for an empty gallery, but a gallery within another is one", async () => {
  const root = await makeFolder({ ...harbour, ...under("studies/ferry/inner") });
  const report = async (path: string) =>
    formatProblems((await loadGallery(join(root, path))).problems).replaceAll(relative("", root), "here");
  expect((await report("studies/ferry")).replaceAll(root, "here")).toBe(`\
here/studies/ferry  error  This folder holds neither gallery.yaml nor studies/: it is a part of a gallery.  study/content-missing
    It lies in the gallery here: name that.`);
  expect(await report("studies/ferry/study.md")).toContain("    It lies in the gallery here: name that.");
  expect(await report("studies/ferry/inner")).toBe("");
});

test("the drawing that is most likely meant is named", async () => {
  const root = await makeFolder({ "flag.svg": "", "harbour.svg": "", "one/old.svg": "", "none/a.txt": "" });
  expect(await findDrawingNear(join(root, "flagg.svg"))).toBe(join(root, "flag.svg"));
  expect(await findDrawingNear(join(root, "flag.png"))).toBe(join(root, "flag.svg"));
  expect(await findDrawingNear(join(root, "lighthouse.svg"))).toBeUndefined();
  expect(await findDrawingNear(join(root, "one/lighthouse.svg"))).toBe(join(root, "one/old.svg"));
  expect(await findDrawingNear(join(root, "none/x.svg"))).toBeUndefined();
  expect(await findDrawingNear(join(root, "nowhere/x.svg"))).toBeUndefined();
  const { problems } = await readDrawing(join(root, "flagg.svg"));
  expect(problems[0]?.hint).toContain(`A drawing that is there: ${join(root, "flag.svg")}`);
});
