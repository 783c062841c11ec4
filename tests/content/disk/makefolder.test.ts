import { stat, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { makeFolders } from "../../../src/content/disk/makefolder.ts";
import { makeFolder } from "../folder.ts";

test("a folder is made with those that it lies in, once and again", async () => {
  const folder = join(await makeFolder({}), "a/b/c");
  await Promise.all([makeFolders(folder, 0o700), makeFolders(folder, 0o700)]);
  expect((await stat(join(folder, ".."))).mode & 0o777).toBe(0o700);
  await makeFolders(folder);
});

test("where none can be made it ends, and says why", async () => {
  const root = await makeFolder({});
  await writeFile(join(root, "file"), "");
  await expect(makeFolders(join(root, "file/a/b"))).rejects.toMatchObject({ code: "ENOTDIR" });
  if (process.platform === "linux")
    await expect(makeFolders("/proc/self/a/b")).rejects.toThrow(/ENOENT|EACCES/);
});
