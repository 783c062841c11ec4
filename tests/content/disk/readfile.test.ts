import { execFileSync } from "node:child_process";
import { constants } from "node:fs";
import { mkdir, rm, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import {
  comparePlace,
  kindOf,
  openBelow,
  readFolder,
  readNamed,
  readRegular,
} from "../../../src/content/disk/readfile.ts";
import { failSystem } from "../../faults/system.ts";
import { makeFolder } from "../folder.ts";

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
  const read = (name: string) => readRegular(root, name, 3);
  expect(await read("a.txt")).toEqual({ bytes: Buffer.from("abc") });
  expect(await read("nowhere")).toEqual({ kind: "missing" });
  expect(await read("a.txt/b")).toEqual({ kind: "missing" });
  expect(await read("folder")).toEqual({ kind: "folder" });
  expect(await read("link")).toEqual({ kind: "link" });
  expect(await read("dangling")).toEqual({ kind: "link" });
  expect(await read("pipe")).toEqual({ kind: "other" });
  expect(await read("far/b.txt")).toEqual({ kind: "moved" });
  expect(await readNamed(join(root, "link"), 3)).toEqual({ bytes: Buffer.from("abc") });
  expect(await readNamed(join(root, "far/b.txt"), 3)).toEqual({ bytes: Buffer.from("") });
  expect(await readNamed(join(root, "dangling"), 3)).toEqual({ kind: "missing" });
  expect(await readNamed(join(root, "pipe"), 3)).toEqual({ kind: "other" });
  expect(await readNamed("/dev/zero", 3)).toEqual({ kind: "other" });
  await writeFile(join(root, "a.txt"), "abcd");
  expect(await read("a.txt")).toEqual({ kind: "too large", size: 4 });
});

test("what a folder holds, by kind", async () => {
  const root = await makeOneOfEach();
  const entries = await readFolder(root);
  expect(
    Object.fromEntries(("kind" in entries ? [] : entries).map(({ name, kind }) => [name, kind])),
  ).toEqual({
    "a.txt": "file",
    folder: "folder",
    link: "link",
    far: "link",
    dangling: "link",
    pipe: "other",
  });
  expect(await readFolder(root, "a.txt")).toEqual({ kind: "other" });
  expect(await readFolder(root, "pipe")).toEqual({ kind: "other" });
  expect(await readFolder(root, "far")).toEqual({ kind: "link" });
  // The folder that is named may be a link.
  expect(await readFolder(join(root, "far"))).toEqual([{ name: "b.txt", kind: "file" }]);
  expect(await readFolder(root, "nowhere")).toEqual({ kind: "missing" });
  await mkdir(join(root, "empty"));
  expect(await readFolder(join(root, "empty"))).toEqual([]);
});

test("what is at a path is not followed", async () => {
  const root = await makeOneOfEach();
  expect(await kindOf(join(root, "far"))).toBe("link");
  expect(await kindOf(join(root, "nowhere"))).toBeUndefined();
});

test("a file without a size is not read without end, and a file that an editor replaced meanwhile is read", async () => {
  expect(await readNamed("/proc/self/status", 1_000_000)).toEqual({ kind: "moved" });
  const root = await makeFolder({ "a.txt": "abc" });
  const opened = await openBelow(root, "a.txt");
  if ("kind" in opened) throw new Error(opened.kind);
  await rm(join(root, "a.txt"));
  expect(opened.stats.size).toBe(3);
  await opened.handle.close();
});

// macOS keeps accents as they were typed and finds them in either form; it and Windows find a name in any case.
test.each([
  ["/g/flags/caf\u00e9.svg", "/g/flags/cafe\u0301.svg", "there"],
  ["C:\\g\\flags\\a.svg", "C:\\g\\flags\\a.svg", "there"],
  ["/g/flags/Harbour.svg", "/g/flags/harbour.svg", "missing"],
  ["/g/flags/CAFE\u0301.svg", "/g/flags/caf\u00e9.svg", "missing"],
  ["/elsewhere/harbour.svg", "/g/flags/harbour.svg", "moved"],
])("%s, looked for as %s: %s", (found, place, lies) => {
  expect(comparePlace(found, place)).toBe(lies);
});

test("nothing is made through a link", async () => {
  const root = await makeOneOfEach();
  const flags = constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL;
  expect(await openBelow(root, "far/new.txt", flags)).toEqual({ kind: "moved" });
  expect(await openBelow(root, "dangling", flags)).toMatchObject({ kind: "unreadable", code: "EEXIST" });
});

test("where the system tells no path of what is open, a link on the way is found by name", async () => {
  const root = await makeOneOfEach();
  const work = async () => [await readRegular(root, "far/b.txt", 3), await readRegular(root, "a.txt", 3)];
  const noPaths = {
    within: "/proc/self/fd",
    calls: ["readlink"],
    at: 1,
    forGood: true,
    code: "ENOENT",
  } as const;
  const { count, value } = await failSystem(noPaths, work);
  expect(value).toEqual([{ kind: "moved" }, { bytes: Buffer.from("abc") }]);
  expect(count).toBe(2);
});
