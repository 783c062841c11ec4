import { symlink } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import {
  findOwnPackage,
  listOwn,
  packageFolder,
  programFolder,
  readOwn,
} from "../../../src/content/disk/packagefile.ts";
import { makeFolder } from "../folder.ts";

test("files are read and listed in the order of their names", async () => {
  const root = await makeFolder({ "b.ts": "b", "a.ts": "a", "c.txt": "c" });
  expect(await listOwn(root)).toEqual(["a.ts", "b.ts", "c.txt"]);
  expect(await listOwn(root, ".ts")).toEqual(["a.ts", "b.ts"]);
  expect(String(await readOwn(join(root, "c.txt")))).toBe("c");
  await expect(readOwn(join(root, "d"))).rejects.toThrow("ENOENT");
});

test("the package and its program are found from the sources and from the program alike", async () => {
  expect(packageFolder).toBe(join(import.meta.dirname, "../../.."));
  const compiled = pathToFileURL(join(programFolder, "src/content/disk/packagefile.js")).href;
  expect(await import(/* @vite-ignore */ compiled)).toMatchObject({ packageFolder, programFolder });
});

test("a package is found through the link that a package manager made", async () => {
  const root = await makeFolder({ "kept/one/package.json": "{}", "empty/.keep": "" });
  await symlink("kept/one", join(root, "one"));
  expect(findOwnPackage(join(root, "one"))?.home).toMatch(/kept[/\\]one$/);
  expect(findOwnPackage(join(root, "one"))?.text).toBe("{}");
  expect(findOwnPackage(join(root, "empty"))).toBeUndefined();
});
