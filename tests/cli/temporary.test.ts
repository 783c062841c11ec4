import { execFileSync } from "node:child_process";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { checkTemporary } from "../../src/cli/temporary.ts";
import { makeFolder } from "../content/folder.ts";
import { rightGallery } from "../content/mistakes.ts";
import { failSystem, writingCalls } from "../faults/system.ts";
import { runShell } from "./run.ts";

afterEach(() => void vi.unstubAllEnvs());

test("where there is room nothing is said and nothing left", async () => {
  const folder = await makeFolder({});
  vi.stubEnv("TMPDIR", folder);
  await checkTemporary();
  expect(await readdir(folder)).toEqual([]);
});

test.each(["ENOSPC", "EROFS"])("a folder that takes nothing is named: %s", async (code) => {
  const folder = await makeFolder({});
  vi.stubEnv("TMPDIR", folder);
  const { error } = await failSystem({ within: folder, at: 1, code, calls: writingCalls }, checkTemporary);
  expect(error).toMatchObject({ message: expect.stringContaining(`${code} at “${folder}`) });
  vi.stubEnv("TMPDIR", join(folder, "nowhere"));
  await expect(checkTemporary()).rejects.toThrow("there is no such file or folder");
});

const refusals: readonly (readonly [what: string, line: string, said: RegExp])[] = [
  [
    "TMPDIR is not there",
    "TMPDIR=/nowhere counterchange publish",
    /^The computer could not do the work: there is no/,
  ],
  [
    "TMPDIR takes no folder",
    "TMPDIR=/proc/self counterchange publish",
    /^The computer could not do the work: /,
  ],
  [
    "HOME takes no folder",
    "HOME=/proc/self counterchange publish",
    /^Nothing was written to published: the key that/,
  ],
  [
    "few files may be open",
    "ulimit -n 40; counterchange publish",
    /too many files are open|too many open files/,
  ],
  [
    "hardly a file may be open",
    "ulimit -n 25; counterchange publish",
    /too many files are open|too many open files/,
  ],
  [
    "studies is a pipe",
    "rmdir content/studies; mkfifo content/studies; counterchange publish",
    /no folder; a folder of that name/,
  ],
  ["the site would be the disk", "counterchange publish --out /", /it would take the place of/],
];

test.each(refusals)("a sentence, status 2, and nothing published: %s", async (_, line, said) => {
  const folder = await makeFolder({ "content/gallery.yaml": rightGallery });
  execFileSync("mkdir", [join(folder, "content/studies")]);
  const { status, messages } = await runShell(
    folder,
    `unset XDG_CACHE_HOME\nexport HOME=${await makeFolder({})}\n${line}`,
  );
  expect(messages).toMatch(said);
  expect(messages).not.toContain("fault of Counterchange");
  expect(status).toBe(2);
  expect(await readdir(folder)).not.toContain("published");
});
