import { execFileSync } from "node:child_process";
import { cp, mkdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { findOwner, formatMark, markFile } from "../../../src/publish/folder/foldermark.ts";
import { makeRoom } from "../room.ts";

const secret = new Uint8Array(32).fill(1);

async function makeMarked(): Promise<{ room: string; folder: string }> {
  const room = await makeRoom();
  const folder = path.join(room, "hidden");
  await mkdir(path.join(folder, "outgoing"), { recursive: true });
  await writeFile(path.join(folder, markFile), await formatMark(folder, secret));
  return { room, folder };
}

test("a folder with the mark of this user is ours; with that of another it is not", async () => {
  const { folder } = await makeMarked();
  expect(await readFile(path.join(folder, markFile), "utf8")).toMatch(/^\*\n/);
  expect(await findOwner(folder, secret)).toBe("ours");
  expect(await findOwner(folder, new Uint8Array(32))).toBe("others");
});

test("a copy of a marked folder is not ours", async () => {
  const { room, folder } = await makeMarked();
  await cp(folder, path.join(room, "copy"), { recursive: true });
  expect(await findOwner(path.join(room, "copy"), secret)).toBe("others");
});

test("a link, a pipe, a file, and a folder whose mark is a link are not ours", async () => {
  const { room, folder } = await makeMarked();
  await symlink(folder, path.join(room, "link"));
  execFileSync("mkfifo", [path.join(room, "pipe")]);
  await writeFile(path.join(room, "file"), "");
  for (const name of ["link", "pipe", "file"])
    expect(await findOwner(path.join(room, name), secret)).toBe("others");
  await writeFile(path.join(room, "mark"), await readFile(path.join(folder, markFile)));
  await rm(path.join(folder, markFile));
  await symlink(path.join(room, "mark"), path.join(folder, markFile));
  expect(await findOwner(folder, secret)).toBe("others");
});

test("nothing, an empty folder, and one whose mark is being written", async () => {
  const room = await makeRoom();
  const folder = path.join(room, "hidden");
  expect(await findOwner(folder, secret)).toBe("nobody");
  await mkdir(folder);
  expect(await findOwner(folder, secret)).toBe("nobody");
  await writeFile(path.join(folder, markFile), "*");
  expect(await findOwner(folder, secret)).toBe("mark");
  const found = findOwner(folder, secret);
  await writeFile(path.join(folder, markFile), await formatMark(folder, secret));
  expect(await found).toBe("ours");
});
