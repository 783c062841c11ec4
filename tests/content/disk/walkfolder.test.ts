import { mkdir, symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Walked, walkTree } from "../../../src/content/disk/walkfolder.ts";
import { failSystem } from "../../faults/system.ts";
import { makeFolder } from "../folder.ts";

async function collect(...given: Parameters<typeof walkTree>): Promise<readonly Walked[]> {
  const found: Walked[] = [];
  for await (const one of walkTree(...given)) found.push(one);
  return found.sort((a, b) => (a.path < b.path ? -1 : 1));
}

test("everything but folders that hold something, and no link is followed", async () => {
  const root = await makeFolder({ "a.txt": "", "x/b.txt": "", "x/y/c.txt": "", ".git/d": "" });
  await symlink(join(root, "x"), join(root, "x/y/back"));
  await mkdir(join(root, "x/z"));
  expect(await collect(root, (name) => !name.startsWith("."))).toEqual([
    { path: "a.txt", kind: "file" },
    { path: "x/b.txt", kind: "file" },
    { path: "x/y/back", kind: "link" },
    { path: "x/y/c.txt", kind: "file" },
    { path: "x/z", kind: "folder" },
  ]);
});

test("a folder that cannot be read is named, and the others are walked", async () => {
  const root = await makeFolder({ "a/b.txt": "", "x/c.txt": "" });
  const refused = { within: join(root, "x"), at: 1, forGood: true, code: "EACCES" };
  const { value } = await failSystem(refused, () => collect(root));
  expect(value).toEqual([
    { path: "a/b.txt", kind: "file" },
    { path: "x", failure: { kind: "unreadable", code: "EACCES" } },
  ]);
  expect(await collect(join(root, "nowhere"))).toEqual([{ path: "", failure: { kind: "missing" } }]);
});

test("whoever has seen enough stops", async () => {
  const root = await makeFolder({ "a.txt": "", "b.txt": "" });
  for await (const { path } of walkTree(root)) {
    expect(path).toMatch(/\.txt$/);
    break;
  }
});
