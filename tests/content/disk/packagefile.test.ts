import { symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { findOwnPackage, listOwn, readOwn, readOwnSources } from "../../../src/content/disk/packagefile.ts";
import { makeFolder } from "../folder.ts";

test("files are read and listed in the order of their names", async () => {
  const root = await makeFolder({ "b.ts": "b", "a.ts": "a", "c.txt": "c" });
  expect(await listOwn(root)).toEqual(["a.ts", "b.ts", "c.txt"]);
  expect(await listOwn(root, ".ts")).toEqual(["a.ts", "b.ts"]);
  expect(String(await readOwn(join(root, "c.txt")))).toBe("c");
  expect(readOwnSources(root, ".ts")).toEqual([
    ["a.ts", "a"],
    ["b.ts", "b"],
  ]);
  await expect(readOwn(join(root, "d"))).rejects.toThrow("ENOENT");
});

test("a package is found through the link that a package manager made", async () => {
  const root = await makeFolder({ "kept/one/package.json": "{}", "empty/.keep": "" });
  await symlink("kept/one", join(root, "one"));
  expect(findOwnPackage(join(root, "one"))?.home).toMatch(/kept[/\\]one$/);
  expect(findOwnPackage(join(root, "one"))?.text).toBe("{}");
  expect(findOwnPackage(join(root, "empty"))).toBeUndefined();
});
