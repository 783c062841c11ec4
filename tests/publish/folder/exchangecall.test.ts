import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { exchangeFolders, listPrograms } from "../../../src/publish/folder/exchangecall.ts";
import { makeRoom } from "../room.ts";

/** On this system a program can do it: Debian has Perl, newer systems a mv that can. */
const isPossible = process.platform === "linux" && (process.arch === "x64" || process.arch === "arm64");

test.runIf(isPossible)(
  "two folders get each other's name, with blanks, quotes and letters of any kind in it",
  async () => {
    const room = await makeRoom();
    const [a, b] = [path.join(room, '-n o\'ne "ü" $x'), path.join(room, "two")];
    for (const folder of [a, b]) {
      await mkdir(folder);
      await writeFile(path.join(folder, "name"), path.basename(folder));
    }
    await exchangeFolders(a, b);
    expect(await readFile(path.join(b, "name"), "utf8")).toBe(path.basename(a));
    expect(await readFile(path.join(a, "name"), "utf8")).toBe("two");
    await exchangeFolders(a, b);
    expect(await readFile(path.join(a, "name"), "utf8")).toBe(path.basename(a));
  },
);

test("where there is nothing to exchange with, nothing is moved", async () => {
  const room = await makeRoom();
  await mkdir(path.join(room, "one"));
  await expect(exchangeFolders(path.join(room, "one"), path.join(room, "two"))).rejects.toThrow();
  expect(await readdir(room)).toEqual(["one"]);
});

// Sources: Linux, arch/x86/entry/syscalls/syscall_64.tbl (316 renameat2) and include/uapi/asm-generic/unistd.h (276);
// xnu, bsd/kern/syscalls.master (488 renameatx_np). Nothing is known of Windows, so nothing is tried there.
test("each system has its own number, and one that is not known has none", () => {
  const scripts = (platform: string, arch: string) =>
    listPrograms(platform, arch).map((words) => words.join(" ").replace(/, \$ARGV.*/, ""));
  expect(scripts("linux", "x64")).toEqual([
    "mv --exchange --no-target-directory --",
    "perl -e exit(syscall(316, -100",
  ]);
  expect(scripts("linux", "arm64").at(-1)).toBe("perl -e exit(syscall(276, -100");
  expect(scripts("darwin", "arm64")).toEqual(["perl -e exit(syscall(488, -2"]);
  expect(scripts("win32", "x64")).toEqual([]);
  expect(scripts("linux", "mips")).toEqual(["mv --exchange --no-target-directory --"]);
});
