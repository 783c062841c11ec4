import { mkdir, rename, symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readLink, resolveLinks, statOf } from "../../../src/content/disk/pathkind.ts";
import { makeFolder } from "../folder.ts";

test("one thing has one number under every name; a link is told as a link", async () => {
  const root = await makeFolder({ "a.txt": "abc" });
  const before = await statOf(join(root, "a.txt"));
  expect(before).toMatchObject({ size: 3, isFile: true });
  expect(Math.abs((before?.changed ?? 0) - Date.now())).toBeLessThan(60_000);
  await rename(join(root, "a.txt"), join(root, "b.txt"));
  expect((await statOf(join(root, "b.txt")))?.ino).toBe(before?.ino);
  expect(await statOf(join(root, "a.txt"))).toBeUndefined();
  await symlink("b.txt", join(root, "link"));
  expect((await statOf(join(root, "link")))?.isFile).toBe(false);
  expect(await readLink(join(root, "link"))).toBe("b.txt");
  await expect(readLink(join(root, "b.txt"))).rejects.toThrow("EINVAL");
});

test("a path without links, as far as it exists", async () => {
  const root = await resolveLinks(await makeFolder({}));
  await mkdir(join(root, "folder"));
  await symlink("folder", join(root, "link"));
  expect(await resolveLinks(join(root, "link/new/newer"))).toBe(join(root, "folder/new/newer"));
  expect(await resolveLinks("/")).toBe("/");
});
