import { chmod, symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { listFolder, readListed } from "../../../src/content/folder/flagfolder.ts";
import { makeFolder } from "../folder.ts";

const drawing = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"/>';

test("the drawings of a folder by name, each with its bytes", async () => {
  const root = await makeFolder({ "flags/b.svg": drawing, "flags/a.svg": drawing });
  const { value, problems } = await listFolder(root, "flags", true);
  expect(problems).toEqual([]);
  expect(value?.map(({ name }) => name)).toEqual(["a.svg", "b.svg"]);
  const [first] = value ?? [];
  expect(first && new TextDecoder().decode((await readListed(first)).value)).toBe(drawing);
});

test("no folder is nothing at all; a link to one is a warning, and not followed", async () => {
  const root = await makeFolder({ "elsewhere/a.svg": drawing });
  expect(await listFolder(root, "flags", true)).toEqual({ value: undefined, problems: [] });
  await symlink(join(root, "elsewhere"), join(root, "flags"));
  const { value, problems } = await listFolder(root, "flags", true);
  expect(value).toEqual([]);
  expect(problems).toMatchObject([{ rule: "study/link", severity: "warning" }]);
});

test("a folder whose name is written in one form and lies on the disk in the other", async () => {
  const [whole, apart] = ["caf\u00e9", "cafe\u0301"];
  for (const [written, lies] of [
    [whole, apart],
    [apart, whole],
    [whole, whole],
  ] as const) {
    const root = await makeFolder({ [`sets/${lies}/a.svg`]: drawing });
    const { value, problems } = await listFolder(root, `sets/${written}`, false);
    expect([problems, value?.map(({ inner }) => inner)]).toEqual([[], [`sets/${lies}/a.svg`]]);
    expect((await readListed(value?.[0] as NonNullable<typeof value>[number])).problems).toEqual([]);
  }
  // Where both are there, each is its own; another case is another name.
  const root = await makeFolder({ [`${whole}/a.svg`]: drawing, [`${apart}/b.svg`]: drawing });
  expect((await listFolder(root, apart, false)).value?.map(({ name }) => name)).toEqual(["b.svg"]);
  expect(await listFolder(root, whole.toUpperCase(), false)).toEqual({ value: undefined, problems: [] });
});

test("a folder that may not be read is a warning, never silence", async () => {
  const root = await makeFolder({ "flags/a.svg": drawing });
  await chmod(root, 0o755);
  await chmod(join(root, "flags"), 0);
  const isRoot = process.geteuid?.() === 0;
  // The superuser may read everything, so for a moment we are somebody else.
  if (isRoot) process.seteuid?.(65534);
  try {
    const { value, problems } = await listFolder(root, "flags", true);
    expect(value).toEqual([]);
    expect(problems).toMatchObject([
      {
        rule: "study/unreadable",
        severity: "warning",
        reason: "The folder could not be read: permission denied.",
      },
    ]);
  } finally {
    if (isRoot) process.seteuid?.(0);
    await chmod(join(root, "flags"), 0o755);
  }
});

test("a drawing that has gone since is a warning", async () => {
  const root = await makeFolder({});
  const gone = { name: "a.svg", file: "content/flags/a.svg", root, inner: "flags/a.svg" };
  expect((await readListed(gone)).problems).toMatchObject([
    { rule: "study/drawing-missing", severity: "warning" },
  ]);
});
