import { execFileSync } from "node:child_process";
import { mkdir, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { kindOf, readFolder, readRegular } from "../../src/study/disk.ts";
import { makeFolder } from "./folder.ts";

/** One of each: a file, a folder, links to both and to nothing, a pipe. */
async function makeOneOfEach(): Promise<string> {
  const root = await makeFolder({ "a.txt": "abc", "folder/b.txt": "" });
  await symlink(join(root, "a.txt"), join(root, "link"));
  await symlink(join(root, "folder"), join(root, "far"));
  await symlink(join(root, "nowhere"), join(root, "dangling"));
  execFileSync("mkfifo", [join(root, "pipe")]);
  return root;
}

test("a file is read, and nothing else", async () => {
  const root = await makeOneOfEach();
  const read = (name: string, follow = false) => readRegular(join(root, name), 3, follow);
  expect(await read("a.txt")).toEqual({ bytes: Buffer.from("abc") });
  expect(await read("nowhere")).toEqual({ kind: "missing" });
  expect(await read("a.txt/b")).toEqual({ kind: "missing" });
  expect(await read("folder")).toEqual({ kind: "folder" });
  expect(await read("link")).toEqual({ kind: "link" });
  expect(await read("dangling")).toEqual({ kind: "link" });
  expect(await read("pipe")).toEqual({ kind: "other" });
  expect(await read("link", true)).toEqual({ bytes: Buffer.from("abc") });
  expect(await read("dangling", true)).toEqual({ kind: "missing" });
  await writeFile(join(root, "a.txt"), "abcd");
  expect(await read("a.txt")).toEqual({ kind: "too large", size: 4 });
});

test("what a folder holds, by kind", async () => {
  const root = await makeOneOfEach();
  const entries = (await readFolder(root)) ?? [];
  expect(Object.fromEntries(entries.map(({ name, kind }) => [name, kind]))).toEqual({
    "a.txt": "file",
    folder: "folder",
    link: "link",
    far: "link",
    dangling: "link",
    pipe: "other",
  });
  expect(await readFolder(join(root, "a.txt"))).toBeUndefined();
  expect(await readFolder(join(root, "nowhere"))).toBeUndefined();
  await mkdir(join(root, "empty"));
  expect(await readFolder(join(root, "empty"))).toEqual([]);
});

test("what is at a path is not followed", async () => {
  const root = await makeOneOfEach();
  expect(await kindOf(join(root, "far"))).toBe("link");
  expect(await kindOf(join(root, "nowhere"))).toBeUndefined();
});
