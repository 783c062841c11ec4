import { readdir } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { FreshSite, SitePaths } from "../../../src/publish/folder/freshsite.ts";
import { listFiles, manifestName, readManifest } from "../../../src/publish/folder/manifest.ts";
import { fileOf } from "../../../src/publish/folder/sitefile.ts";
import { disk } from "../../../src/publish/folder/writedisk.ts";
import { watchDisk } from "../../faults/disk.ts";
import { makeRoom } from "../room.ts";

test("returns the folders that are needed, outer ones first", () => {
  expect(new SitePaths().add(["a/b/c.html", "index.html", "a/d.html", "e/f.html"])).toEqual([
    "a",
    "a/b",
    "e",
  ]);
  expect(new SitePaths().add([])).toEqual([]);
});

test.each([
  [["a", "a"], "a and a would be one file"],
  [["a/B", "a/b"], "a/b and a/B would be one file"],
  [["\u00e9", "e\u0301"], "would be one file"],
  [["a/x", "A/y"], "A and a would be one folder"],
  [["a", "a/b"], "a would be a file and a folder"],
  [[".Counterchange-Site"], `.Counterchange-Site and ${manifestName} would be one file`],
  [["../a"], "no path in a site"],
  [["a//b"], "no path in a site"],
  [["/a"], "no path in a site"],
  [["a\\b"], "no path in a site"],
  [["a/"], "no path in a site"],
  [[""], "no path in a site"],
])("refuses %j", (paths, message) => {
  expect(() => new SitePaths().add(paths)).toThrow(message);
});

test("every file and every folder is flushed after the last write, inner folders before outer ones", async () => {
  const fresh = path.join(await makeRoom(), "fresh");
  const calls: string[] = [];
  const watched = watchDisk(
    (call, at) => void calls.push(`${call} ${path.relative(fresh, at) || "."}`),
    disk,
  );
  const site = new FreshSite(fresh, watched);
  await site.add([fileOf("a/b/c", () => "1")]);
  await site.add([fileOf("d", () => "2")]);
  await site.finish();
  const last = calls.findLastIndex((line) => line.startsWith("write "));
  const flushed = calls.slice(last).filter((line) => line.startsWith("flush "));
  expect(flushed.slice(0, 3).sort()).toEqual([`flush ${manifestName}`, "flush a/b/c", "flush d"].sort());
  expect(flushed.slice(3)).toEqual(["flush a/b", "flush a", "flush ."]);
  expect(await listFiles(fresh)).toEqual([manifestName, "a/b/c", "d"]);
});

test("nothing is made where two paths are one", async () => {
  const room = await makeRoom();
  let made = 0;
  const file = (name: string) =>
    fileOf(name, () => {
      made += 1;
      return "";
    });
  const site = new FreshSite(path.join(room, "fresh"), disk);
  await expect(site.add([file("a"), file("A")])).rejects.toThrow("one file");
  // Nor is anything after a failure.
  await expect(site.add([file("b")])).rejects.toThrow("one file");
  await site.remove();
  expect([made, await readdir(room)]).toEqual([0, []]);
});

test("a folder that is dropped is not in the site, and its name is free again", async () => {
  const fresh = path.join(await makeRoom(), "fresh");
  const site = new FreshSite(fresh, disk);
  await site.add([fileOf("a/b/c", () => "1"), fileOf("ab/d", () => "2")]);
  await site.drop(["a"]);
  await site.add([fileOf("A", () => "3")]);
  await site.finish();
  expect(await listFiles(fresh)).toEqual([manifestName, "A", "ab/d"]);
  expect([...((await readManifest(fresh)) ?? [])].sort()).toEqual([manifestName, "A", "ab/d"]);
});
