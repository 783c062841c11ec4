import { mkdir, readFile, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import {
  describeFile,
  formatManifest,
  listFiles,
  listForeign,
  manifestName,
  readManifest,
} from "../../../src/publish/folder/manifest.ts";
import { makeRoom } from "../room.ts";
import { readSchemas } from "../schemas.ts";

// FIPS 180-4, example of the secure hash standard for “abc”.
const abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

test("a file is described by its bytes, text as UTF-8", () => {
  expect(describeFile("a.txt", "abc")).toEqual({ path: "a.txt", size: 3, sha256: abc });
  expect(describeFile("a.txt", Buffer.from("abc"))).toEqual({ path: "a.txt", size: 3, sha256: abc });
  expect(describeFile("u", "ü").size).toBe(2);
});

test("the order of the files changes nothing", () => {
  const entries = ["b", "a/c", "a", "Z"].map((file) => describeFile(file, file));
  const text = formatManifest(entries);
  expect(formatManifest([...entries].reverse())).toBe(text);
  const parsed: { files: { path: string }[] } = JSON.parse(text);
  expect(parsed.files.map((file) => file.path)).toEqual(["Z", "a", "a/c", "b"]);
  expect(JSON.parse(formatManifest([])).files).toEqual([]);
});

test("it is what its schema describes, and the schema can be failed", async () => {
  const name = "manifest.schema.json";
  const file = path.join(import.meta.dirname, "../../../src/publish/schema", name);
  const findFaults = readSchemas(new Map([[name, await readFile(file, "utf8")]]));
  const text = formatManifest([describeFile("a/b", "x")]);
  expect(findFaults(name, text)).toEqual([]);
  expect(findFaults(name, text.replace('"size":1', '"size":"1"'))).toHaveLength(1);
});

test.each([
  ["as it is written", formatManifest([describeFile("a/b", "x")]), ["a/b", manifestName]],
  ["a path a line, as before version 0.2", "a/b\nc\n", ["", "a/b", "c", manifestName]],
  ["JSON of something else", '{ "a": 1 }', undefined],
  ["JSON that is cut short", '{ "files": [', undefined],
])("reads it %s", async (_, text, paths) => {
  const room = await makeRoom();
  await writeFile(path.join(room, manifestName), text);
  const found = await readManifest(room);
  expect(found === undefined ? undefined : [...found].sort()).toEqual(
    paths === undefined ? undefined : [...paths].sort(),
  );
});

test("what is not named is foreign, but for what file managers leave; links are listed and not followed", async () => {
  const room = await makeRoom();
  expect(await readManifest(room)).toBeUndefined();
  await mkdir(path.join(room, "a"));
  for (const file of ["a/ours", "a/theirs", ".DS_Store", "a/Thumbs.db", "a/._ours"])
    await writeFile(path.join(room, file), "x");
  await symlink("/", path.join(room, "link"));
  await writeFile(path.join(room, manifestName), formatManifest([describeFile("a/ours", "x")]));
  expect(await listForeign(room, await readManifest(room))).toEqual(["a/theirs", "link"]);
  expect(await listForeign(room)).toEqual([manifestName, "a/ours", "a/theirs", "link"]);
  expect(await listForeign(room, undefined, 2)).toHaveLength(2);
  expect(await listFiles(room)).toContain("link");
});
