// Folders of flags on a disk, measured in the pool: what is broken is told and stops nothing.
import { symlink } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, expect, test, vi } from "vitest";
import { Pool } from "../../../src/analysis/jobs/pool.ts";
import { gridCollection, measureFlags, measureShown } from "../../../src/analysis/survey/collection.ts";
import { defaultGallery } from "../../../src/content/gallery/galleryfile.ts";
import { drawing, makeFolder } from "../../content/folder.ts";

vi.setConfig({ testTimeout: 60_000 });
const pool = new Pool({ size: 1 });
afterAll(() => pool.close());

test("every drawing of flags/ but the known ones; links are not followed", async () => {
  const contentDir = await makeFolder({
    "flags/a.svg": drawing,
    "flags/known.svg": drawing,
    "flags/torn.svg": "<svg",
    "flags/large.svg": `<svg xmlns="http://www.w3.org/2000/svg">${" ".repeat(600 * 1024)}</svg>`,
    "outside.svg": drawing,
  });
  await symlink(join(contentDir, "outside.svg"), join(contentDir, "flags/link.svg"));
  const told: string[] = [];
  const ground = {
    pool,
    contentDir,
    gallery: defaultGallery,
    onProgress: (done: number, total: number) => void told.push(`${done}/${total}`),
  };
  const { items, problems } = await measureFlags(ground, new Set(["flags/known.svg"]));
  expect(items.map(({ file, outcome }) => [file, outcome.value !== undefined])).toEqual([
    ["flags/a.svg", true],
    ["flags/large.svg", false],
    ["flags/torn.svg", false],
  ]);
  // White on dark red is clear: one edge, nothing to gain.
  expect(items[0]?.outcome.value?.flag).toMatchObject({ clarity: 100, changeFirst: null });
  expect(items[0]?.outcome.value?.drawing).toContain("<circle");
  expect(problems.map(({ rule, severity }) => [rule, severity])).toEqual([
    ["study/link", "warning"],
    ["study/drawing-size", "warning"],
    ["svg/not-well-formed", "warning"],
  ]);
  expect(told).toEqual(["1/3", "2/3", "3/3"]);
});

test("of both folders those drawings alone whose places are asked for", async () => {
  const names = ["a", "b", "c", "d"];
  const drawings = (folder: string) => names.map((name) => [`${folder}/${name}.svg`, drawing]);
  const contentDir = await makeFolder(Object.fromEntries([...drawings("flags"), ...drawings("old")]));
  const gallery = { ...defaultGallery, compareWith: "old" };
  const ground = { pool, contentDir, gallery, isOwn: (place: number) => place % 2 === 1 };
  // A known one keeps its place.
  const { items } = await measureFlags(ground, new Set(["flags/a.svg", "flags/b.svg"]));
  expect(items.map(({ file }) => file)).toEqual(["flags/d.svg"]);
  const grids = await gridCollection(ground);
  expect(grids.items.map(({ file }) => file)).toEqual(["old/b.svg", "old/d.svg"]);
});

test("no flags, or a folder that is a link: nothing, and no fault", async () => {
  const outside = await makeFolder({ "a.svg": drawing });
  const contentDir = await makeFolder({ "gallery.yaml": "title: x" });
  const ground = { pool, contentDir, gallery: defaultGallery };
  expect(await measureFlags(ground, new Set())).toEqual({ items: [], problems: [] });
  await symlink(outside, join(contentDir, "flags"));
  const { items, problems } = await measureFlags(ground, new Set());
  expect(items).toEqual([]);
  expect(problems).toMatchObject([{ rule: "study/link", severity: "warning" }]);
});

test("the folder to compare with, by whatever names; one that is missing is a warning", async () => {
  const contentDir = await makeFolder({
    "old/Flags of A/B (1).svg": drawing,
    "old/Flags of A/torn.svg": "<svg",
    "old/Flags of A/notes.txt": "x",
  });
  const gallery = { ...defaultGallery, compareWith: "old/Flags of A/" };
  const { items, problems } = await gridCollection({ pool, contentDir, gallery });
  expect(items.map(({ file, origin }) => [file, origin])).toEqual([
    ["old/Flags of A/B (1).svg", "collection"],
  ]);
  expect(problems).toMatchObject([{ rule: "svg/not-well-formed", severity: "warning" }]);
  const missing = await gridCollection({ pool, contentDir, gallery: { ...gallery, compareWith: "new" } });
  expect(missing.items).toEqual([]);
  expect(missing.problems).toMatchObject([{ rule: "study/folder-missing", severity: "warning" }]);
  expect((await gridCollection({ pool, contentDir, gallery: defaultGallery })).items).toEqual([]);
});

test("a folder to compare with that holds nothing is a warning that says what to do", async () => {
  const contentDir = await makeFolder({ "old/read me.txt": "x", "old/more/a.svg": drawing });
  const gallery = { ...defaultGallery, compareWith: "old" };
  const { items, problems } = await gridCollection({ pool, contentDir, gallery });
  expect(items).toEqual([]);
  expect(problems).toEqual([
    {
      rule: "study/folder-empty",
      severity: "warning",
      file: `${contentDir}/gallery.yaml`,
      reason: "There is no SVG file right in the folder old, so “compareWith” compares with nothing.",
      hint: "Put the drawings in old, or delete the line.",
    },
  ]);
});

test("links are not followed: neither the folder, nor a file in it", async () => {
  const outside = await makeFolder({ "secret.svg": drawing });
  const contentDir = await makeFolder({ "old/a.svg": drawing });
  await symlink(join(outside, "secret.svg"), join(contentDir, "old/link.svg"));
  await symlink(outside, join(contentDir, "away"));
  const gridOf = (compareWith: string) =>
    gridCollection({ pool, contentDir, gallery: { ...defaultGallery, compareWith } });
  expect(await gridOf("old")).toMatchObject({ items: [{ file: "old/a.svg" }], problems: [] });
  expect(await gridOf("away")).toMatchObject({
    items: [],
    problems: [{ rule: "study/link", severity: "warning" }],
  });
});

test("five hundred drawings", async () => {
  const shade = (index: number) => `#${(0x10_00_00 + index * 7919).toString(16).slice(-6)}`;
  const files = Array.from({ length: 500 }, (_, index): [string, string] => [
    `old/${index}.svg`,
    drawing.replace("#7a1020", shade(index)),
  ]);
  const contentDir = await makeFolder(Object.fromEntries(files));
  const told: number[] = [];
  const { items, problems } = await gridCollection({
    pool,
    contentDir,
    gallery: { ...defaultGallery, compareWith: "old" },
    onProgress: (done) => void told.push(done),
  });
  expect(problems).toEqual([]);
  expect(new Set(items.map(({ file }) => file)).size).toBe(500);
  expect(told).toEqual(Array.from({ length: 500 }, (_, index) => index + 1));
});

test("a folder to compare with that is not there: the place in gallery.yaml, and the folder that is most likely meant", async () => {
  const contentDir = await makeFolder({ "collection/a.svg": drawing });
  const compareWithAt = { place: { line: 3, column: 14 }, sourceLine: "compareWith: colection" };
  const gallery = { ...defaultGallery, compareWith: "colection", compareWithAt };
  const { problems } = await gridCollection({ pool, contentDir, gallery });
  expect(problems).toMatchObject([
    { rule: "study/folder-missing", ...compareWithAt, hint: "Type: compareWith: collection" },
  ]);
});

test("drawings that pages show are measured once, be they flags or their own", async () => {
  const contentDir = await makeFolder({
    "flags/a.svg": drawing,
    "pages/own.svg": drawing,
    "pages/torn.svg": "<svg",
  });
  const ground = { pool, contentDir, gallery: defaultGallery, onProgress: () => expect.unreachable() };
  const { items } = await measureFlags({ ...ground, onProgress: () => undefined }, new Set());
  const list = (...paths: readonly string[]) =>
    paths.map((inner) => ({ name: inner, file: inner, root: contentDir, inner }));
  const shown = await measureShown(ground, list("flags/a.svg", "pages/own.svg", "pages/torn.svg"), items);
  expect(shown.items.map(({ file, outcome }) => [file, outcome.value?.measure.clarity])).toEqual([
    ["flags/a.svg", 100],
    ["pages/own.svg", 100],
    ["pages/torn.svg", undefined],
  ]);
  expect(shown.items[0]).toBe(items[0]);
  expect(shown.problems.map(({ severity, file }) => [severity, file])).toEqual([
    ["warning", "pages/torn.svg"],
  ]);
  expect(await measureShown(ground, [], items)).toEqual({ items: [], problems: [] });
});
