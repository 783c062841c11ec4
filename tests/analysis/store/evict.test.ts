import { execFileSync } from "node:child_process";
import { mkdir, readdir, readFile, symlink, utimes, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { isDue, sweep } from "../../../src/analysis/store/evict.ts";
import { makeFolder } from "../../content/folder.ts";

const now = Date.UTC(2026, 4, 1);
const hour = 3_600_000;

/** Writes files of so many bytes, last used so many hours ago. */
async function fill(files: Readonly<Record<string, readonly [number, number]>>): Promise<string> {
  const folder = await makeFolder({});
  for (const [name, [bytes, hours]] of Object.entries(files)) {
    const path = join(folder, name);
    await mkdir(join(path, ".."), { recursive: true });
    await writeFile(path, Buffer.alloc(bytes));
    await utimes(path, (now - hours * hour) / 1000, (now - hours * hour) / 1000);
  }
  return folder;
}

const listFiles = async (folder: string): Promise<readonly string[]> =>
  (await readdir(folder, { recursive: true })).filter((name) => /\./.test(name)).sort();

test("what was not used for longest goes, until a fifth is free", async () => {
  const folder = await fill({
    "aa/1.entry": [30, 5],
    "aa/2.entry": [30, 1],
    "bb/3.entry": [30, 9],
    "bb/4.entry": [30, 2],
  });
  await sweep(folder, 100, now);
  // 120 bytes are over 100; without the oldest 90 are left, and without the next 60, which is under 80.
  expect(await listFiles(folder)).toEqual(["aa/2.entry", "bb/4.entry"]);
});

test("nothing goes while there is room", async () => {
  const folder = await fill({ "aa/1.entry": [50, 500], "aa/2.entry": [50, 1] });
  await sweep(folder, 100, now);
  expect(await listFiles(folder)).toEqual(["aa/1.entry", "aa/2.entry"]);
});

test("what was not used for thirty days goes though there is room", async () => {
  const folder = await fill({ "aa/1.entry": [1, 721], "aa/2.entry": [1, 719], "bb/3.svg": [1, 9999] });
  await sweep(folder, 100, now);
  expect(await listFiles(folder)).toEqual(["aa/2.entry", "bb/3.svg"]);
});

test("unfinished files go after an hour; what is not ours never", async () => {
  const folder = await fill({
    "aa/1.tmp": [1, 2],
    "aa/2.tmp": [1, 0.5],
    "aa/3.svg": [500, 99],
    "abc/4.entry": [500, 99],
    "photos/5.entry": [500, 99],
    "6.entry": [500, 99],
  });
  await sweep(folder, 100, now);
  expect(await listFiles(folder)).toEqual([
    "6.entry",
    "aa/2.tmp",
    "aa/3.svg",
    "abc/4.entry",
    "photos/5.entry",
  ]);
});

test("is due once an hour, and where the clock was turned back", async () => {
  const folder = await fill({ "aa/1.entry": [1, 1] });
  expect(await isDue(folder, now)).toBe(true);
  await sweep(folder, 100, now);
  expect(await isDue(folder, now + hour / 2)).toBe(false);
  expect(await isDue(folder, now + 2 * hour)).toBe(true);
  expect(await isDue(folder, now - 2 * hour)).toBe(true);
});

test("a folder that is not there is nothing to complain of", async () => {
  await sweep(join(await makeFolder({}), "none"), 100, now);
});

test("nothing outside is deleted or emptied: links as a folder, as an entry and as the mark", async () => {
  const outside = await fill({ "1.tmp": [10, 9999], "2.entry": [10, 9999], text: [10, 9999] });
  const folder = await fill({ "bb/3.entry": [10, 9999] });
  await symlink(outside, join(folder, "aa"));
  await symlink(join(outside, "2.entry"), join(folder, "bb/2.entry"));
  await symlink(join(outside, "text"), join(folder, "swept"));
  expect(await isDue(folder, now)).toBe(true);
  await sweep(folder, 100, now);
  expect((await readdir(outside)).sort()).toEqual(["1.tmp", "2.entry", "text"]);
  expect((await readFile(join(outside, "text"))).length).toBe(10);
  expect(await readdir(join(folder, "bb"))).toEqual(["2.entry"]);
});

test("a pipe as the mark is not waited for", async () => {
  const folder = await fill({ "bb/3.entry": [10, 9999] });
  execFileSync("mkfifo", [join(folder, "swept")]);
  await sweep(folder, 100, now);
  expect(await listFiles(folder)).toEqual([]);
});
