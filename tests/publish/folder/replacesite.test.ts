import { lstat, mkdir, readdir, readFile, readlink, rename, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { describeFile, formatManifest, manifestName } from "../../../src/publish/folder/manifest.ts";
import { addRecord } from "../../../src/publish/folder/publishedrecord.ts";
import { findStanding, repair, swapIn } from "../../../src/publish/folder/replacesite.ts";
import { findPlace, nameIn, type Place } from "../../../src/publish/folder/siteplace.ts";
import { makeWorkshop, outgoingOf } from "../../../src/publish/folder/stagingfolder.ts";
import type { Disk } from "../../../src/publish/folder/writedisk.ts";
import { disks, systemError, watchDisk } from "../../faults/disk.ts";
import { makeRoom } from "../room.ts";

let place: Place;
beforeEach(async () => {
  place = findPlace(path.join(await makeRoom(), "site"), new Uint8Array(32));
  await makeWorkshop(place, disks.exchange);
});

async function makeSite(folder: string, text: string): Promise<string> {
  await mkdir(folder);
  await writeFile(path.join(folder, "index.html"), text);
  await writeFile(path.join(folder, manifestName), formatManifest([describeFile("index.html", text)]));
  await addRecord(folder, place, disks.exchange);
  return folder;
}
const fresh = (text: string) => makeSite(nameIn(place, "fresh"), text);
const published = () => readFile(path.join(place.target, "index.html"), "utf8");

describe("what stands at the target", () => {
  test("nothing, a folder, a file", async () => {
    expect(await findStanding(place)).toBe("nothing");
    await mkdir(place.target);
    expect(await findStanding(place)).toBe("folder");
    const file = findPlace(path.join(place.parent, "file"), place.secret);
    await writeFile(file.target, "");
    expect(await findStanding(file)).toBe("other");
  });

  test("a link of ours, even one that leads nowhere, and a link of somebody else", async () => {
    await symlink(".counterchange-site/version-000000000000", place.target);
    expect(await findStanding(place)).toBe("link");
    const other = findPlace(path.join(place.parent, "other"), place.secret);
    await symlink("/tmp", other.target);
    expect(await findStanding(other)).toBe("other");
  });
});

describe("each way", () => {
  test.each(Object.entries(disks))("by %s, three times", async (name, disk) => {
    const ways: string[] = [];
    for (const text of ["one", "two", "three"]) {
      ways.push((await swapIn(await fresh(text), place, disk)).way);
      expect(await published()).toBe(text);
    }
    expect(ways).toEqual(
      {
        exchange: ["renamed", "exchanged", "exchanged"],
        link: ["linked", "linked", "linked"],
        move: ["renamed", "moved", "moved"],
      }[name],
    );
  });

  test("as on Windows, where links can be made and nothing takes the place of one, three times", async () => {
    const windows = {
      ...disks.link,
      rename: async (from: string, to: string) => {
        if ((await lstat(to).catch(() => undefined))?.isSymbolicLink())
          throw systemError("EPERM", "rename", to);
        await rename(from, to);
      },
    };
    const ways: string[] = [];
    for (const text of ["one", "two", "three"]) {
      ways.push((await swapIn(await fresh(text), place, windows)).way);
      expect(await published()).toBe(text);
    }
    expect(ways).toEqual(["renamed", "moved", "moved"]);
    expect((await readdir(place.workshop)).filter((name) => name.startsWith("link-"))).toEqual([]);
  });

  test("a file system that says yes and does something else is found out before it costs anything", async () => {
    await swapIn(await fresh("old"), place, disks.exchange);
    const liar: Disk = {
      ...disks.exchange,
      exchange: async (a, b) => {
        await disks.exchange.remove(b);
        await rename(a, b);
      },
    };
    expect((await swapIn(await fresh("new"), place, liar)).way).toBe("moved");
    expect(await published()).toBe("new");
  });

  test("where only this folder cannot be exchanged, it is two renames", async () => {
    await swapIn(await fresh("old"), place, disks.exchange);
    const failing = watchDisk((call, at) => {
      if (call === "exchange" && at.includes("/swap-")) throw systemError("ENOTSUP", call, at);
    });
    expect((await swapIn(await fresh("new"), place, failing)).way).toBe("moved");
    expect(await published()).toBe("new");
    expect((await readdir(place.workshop)).sort()).toEqual([".gitignore", "previous", "published"]);
  });

  test("where the second of two renames fails, and its undoing too, it is said where the old site waits", async () => {
    await swapIn(await fresh("old"), place, disks.move);
    let renames = 0;
    const failing = watchDisk((call, at) => {
      if (call === "rename") renames += 1;
      if (renames > 1) throw systemError("EIO", call, at);
    }, disks.move);
    const swapped = swapIn(await fresh("new"), place, failing);
    await expect(swapped).rejects.toThrow(`it waits in ${outgoingOf(place)}`);
    await repair(place, disks.move);
    expect(await published()).toBe("old");
  });

  test("where the second of two renames fails, the first is undone", async () => {
    await swapIn(await fresh("old"), place, disks.move);
    const failing = watchDisk((call, at) => {
      if (call === "rename" && at.includes("/fresh-")) throw systemError("EACCES", call, at);
    }, disks.move);
    await expect(swapIn(await fresh("new"), place, failing)).rejects.toThrow("EACCES");
    expect(await published()).toBe("old");
  });
});

describe("a killed build is mended", () => {
  test("between two renames: the old site comes back", async () => {
    await makeSite(outgoingOf(place), "old");
    await fresh("half");
    expect(await repair(place, disks.move)).toEqual([]);
    expect(await published()).toBe("old");
    expect(await readdir(place.workshop)).toEqual([".gitignore", "published"]);
  });

  test("after two renames, or after an exchange: what was out is cleared away", async () => {
    await makeSite(place.target, "new");
    await makeSite(outgoingOf(place), "old");
    await makeSite(nameIn(place, "swap"), "old");
    for (const kind of ["fresh", "probe", "old", "link"] as const) await mkdir(nameIn(place, kind));
    await repair(place, disks.exchange);
    expect(await published()).toBe("new");
    expect(await readdir(place.workshop)).toEqual([".gitignore", "published"]);
  });

  test("the folder that the link leads to stays, another version goes", async () => {
    await swapIn(await fresh("now"), place, disks.link);
    await makeSite(nameIn(place, "version"), "never seen");
    await repair(place, disks.link);
    expect(await published()).toBe("now");
    expect((await readdir(place.workshop)).sort()).toEqual([
      ".gitignore",
      "published",
      path.basename(await readlink(place.target)),
    ]);
  });

  test("files that came in at the last moment are kept, and named", async () => {
    await makeSite(place.target, "new");
    const out = await makeSite(nameIn(place, "swap"), "old");
    await writeFile(path.join(out, "CNAME"), "flags.example");
    expect(await repair(place, disks.exchange)).toEqual([
      { folder: `${place.target}-kept`, files: ["CNAME"] },
    ]);
    expect(await readFile(`${place.target}-kept/CNAME`, "utf8")).toBe("flags.example");
  });

  test("what has another name is left alone", async () => {
    for (const name of ["notes", "fresh", "fresh-x", "swap-of-mine"])
      await mkdir(path.join(place.workshop, name));
    await repair(place, disks.exchange);
    expect((await readdir(place.workshop)).sort()).toEqual([
      ".gitignore",
      "fresh",
      "fresh-x",
      "notes",
      "swap-of-mine",
    ]);
  });
});
