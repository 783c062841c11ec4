import { readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { digestSources, findEdition, findSiteEdition } from "../../../src/analysis/store/edition.ts";
import { makeFolder } from "../../content/folder.ts";

const files = {
  "src/colour/a.ts":
    'import { x } from "near";\nimport type { B } from "../content/deep/b.ts";\nexport const a = x;\n',
  "src/content/deep/b.ts": 'import { readFile } from "node:fs/promises";\nexport type B = typeof readFile;\n',
  "src/views/c.ts": 'import d from "far";\nexport default d;\n',
  "node_modules/near/package.json": '{ "version": "1.0.0", "dependencies": { "deep": "^2" } }',
  "node_modules/near/node_modules/deep/package.json":
    '{ "version": "2.0.0", "optionalDependencies": { "gone": "1" } }',
  "node_modules/deep/package.json": '{ "version": "1.5.0" }',
  "node_modules/far/package.json": '{ "version": "3.0.0" }',
};

const digest = (folder: string): string => digestSources(join(folder, "src"), ["colour", "content"]);

describe("digestSources", () => {
  test("does not depend on where the folder lies", async () => {
    expect(digest(await makeFolder(files))).toBe(digest(await makeFolder(files)));
  });

  test.each([
    ["a source", "src/colour/a.ts", "export const a = 2;\n"],
    ["a source that is new", "src/content/deep/new.ts", "export const n = 1;\n"],
    ["the version of a library", "node_modules/near/package.json", '{ "version": "1.0.1" }'],
    [
      "one that a library needs",
      "node_modules/near/node_modules/deep/package.json",
      '{ "version": "2.0.1" }',
    ],
  ])("another %s is another edition", async (_, path, text) => {
    const folder = await makeFolder(files);
    const before = digest(folder);
    await writeFile(join(folder, path), text);
    expect(digest(folder)).not.toBe(before);
  });

  test.each([
    ["pages", "src/views/c.ts", "export default 1;\n"],
    ["a library of pages alone", "node_modules/far/package.json", '{ "version": "9.0.0" }'],
    ["a package that somebody else uses", "node_modules/deep/package.json", '{ "version": "9.0.0" }'],
    ["notes beside the sources", "src/colour/notes.md", "x"],
  ])("%s do not matter", async (_, path, text) => {
    const folder = await makeFolder(files);
    const before = digest(folder);
    await writeFile(join(folder, path), text);
    expect(digest(folder)).toBe(before);
  });
});

test("our own edition is found once, and names all floors up to analysis", async () => {
  expect(findEdition()).toMatch(/^[0-9a-f]{64}$/);
  expect(findEdition()).toBe(findEdition());
  // Every folder of src/ but those that only show what was measured.
  const all = await readdir(join(import.meta.dirname, "../../../src"));
  const measuring = all.filter((name) => !["words", "views", "publish", "preview", "cli"].includes(name));
  const order = ["problem", "colour", "svg", "regions", "measure", "content", "analysis"];
  expect([...measuring].sort()).toEqual([...order].sort());
  expect(findEdition()).toBe(digestSources(join(import.meta.dirname, "../../../src"), order));
});

test("the edition of pictures is that of more sources, and the same each time", () => {
  expect(findSiteEdition()).toMatch(/^[0-9a-f]{64}$/);
  expect(findSiteEdition()).not.toBe(findEdition());
  expect(findSiteEdition()).toBe(findSiteEdition());
});
