import { readFile, readlink, stat } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { disk } from "../../../src/publish/folder/writedisk.ts";
import { makeRoom } from "../room.ts";

const modeOf = async (file: string) => ((await stat(file)).mode & 0o777).toString(8);

test.skipIf(process.platform === "win32")(
  "everyone may read what is written, whatever the umask",
  async () => {
    const room = await makeRoom();
    const before = process.umask(0o077);
    try {
      await disk.makeFolder(path.join(room, "tight"));
      await disk.write(path.join(room, "tight/file"), "x");
      process.umask(0);
      await disk.makeFolder(path.join(room, "loose"));
      await disk.write(path.join(room, "loose/file"), "x");
    } finally {
      process.umask(before);
    }
    for (const name of ["tight", "loose"]) {
      expect(await modeOf(path.join(room, name))).toBe("755");
      expect(await modeOf(path.join(room, name, "file"))).toBe("644");
    }
  },
);

test("writes text as UTF-8 and bytes as they are, and never over a file", async () => {
  const room = await makeRoom();
  const file = path.join(room, "file");
  await disk.write(file, "ü");
  expect([...(await disk.read(file))]).toEqual([0xc3, 0xbc]);
  await expect(disk.write(file, "x")).rejects.toMatchObject({ code: "EEXIST" });
  await disk.write(path.join(room, "bytes"), Uint8Array.of(0, 255));
  expect([...(await disk.read(path.join(room, "bytes")))]).toEqual([0, 255]);
});

test("flushes a file and a folder; what is not there is a fault", async () => {
  const room = await makeRoom();
  await disk.write(path.join(room, "file"), "x");
  await disk.flush(path.join(room, "file"));
  await disk.flush(room);
  await expect(disk.flush(path.join(room, "none"))).rejects.toMatchObject({ code: "ENOENT" });
});

test("a link is relative where its text is, and is removed without what it leads to", async () => {
  const room = await makeRoom();
  await disk.makeFolder(path.join(room, "folder"));
  await disk.write(path.join(room, "folder/file"), "x");
  await disk.link("folder", path.join(room, "link"));
  expect(await readlink(path.join(room, "link"))).toBe("folder");
  await disk.remove(path.join(room, "link"));
  expect(await readFile(path.join(room, "folder/file"), "utf8")).toBe("x");
  await disk.remove(path.join(room, "folder"));
  await disk.remove(path.join(room, "folder"));
});
