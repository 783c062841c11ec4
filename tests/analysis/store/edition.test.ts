import { readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  digestFloors,
  findEdition,
  findSiteEdition,
  measuring,
} from "../../../src/analysis/store/edition.ts";
import { makeFolder } from "../../content/folder.ts";

const files = {
  "node_modules/near/package.json": '{ "version": "1.0.0", "dependencies": { "deep": "^2" } }',
  "node_modules/near/node_modules/deep/package.json":
    '{ "version": "2.0.0", "optionalDependencies": { "gone": "1" } }',
  "node_modules/deep/package.json": '{ "version": "1.5.0" }',
  "node_modules/far/package.json": '{ "version": "3.0.0" }',
};

const floors = {
  colour: { digest: "1", libraries: ["near"] },
  content: { digest: "2", libraries: [] },
  views: { digest: "3", libraries: ["far"] },
};

const digest = (folder: string, changed = {}): string =>
  digestFloors({ ...floors, ...changed }, ["colour", "content"], folder);

describe("digestFloors", () => {
  test("does not depend on where the folder lies", async () => {
    expect(digest(await makeFolder(files))).toBe(digest(await makeFolder(files)));
  });

  test("another module is another edition, one of pages is not", async () => {
    const folder = await makeFolder(files);
    const before = digest(folder);
    expect(digest(folder, { content: { digest: "4", libraries: [] } })).not.toBe(before);
    expect(digest(folder, { views: { digest: "4", libraries: [] } })).toBe(before);
  });

  test.each([
    ["a library", "node_modules/near/package.json", '{ "version": "1.0.1" }', true],
    ["one that it needs", "node_modules/near/node_modules/deep/package.json", '{ "version": "2.1.0" }', true],
    ["a library of pages alone", "node_modules/far/package.json", '{ "version": "9.0.0" }', false],
    ["one that somebody else uses", "node_modules/deep/package.json", '{ "version": "9.0.0" }', false],
  ])("the version of %s", async (_, path, text, isAnother) => {
    const folder = await makeFolder(files);
    const before = digest(folder);
    await writeFile(join(folder, path), text);
    expect(digest(folder) !== before).toBe(isAnother);
  });
});

test("our own edition is found once, and names all floors up to analysis", async () => {
  expect(findEdition()).toMatch(/^[0-9a-f]{64}$/);
  expect(findEdition()).toBe(findEdition());
  // Every folder of src/ but those that only show what was measured.
  const all = await readdir(join(import.meta.dirname, "../../../src"));
  const rest = ["words", "views", "publish", "preview", "cli"];
  expect(all.filter((name) => !rest.includes(name)).sort()).toEqual([...measuring].sort());
});

test("the edition of pictures is that of more sources, and the same each time", () => {
  expect(findSiteEdition()).toMatch(/^[0-9a-f]{64}$/);
  expect(findSiteEdition()).not.toBe(findEdition());
  expect(findSiteEdition()).toBe(findSiteEdition());
});
