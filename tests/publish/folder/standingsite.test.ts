import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { describeFile, formatManifest, manifestName } from "../../../src/publish/folder/manifest.ts";
import { addRecord } from "../../../src/publish/folder/publishedrecord.ts";
import { findPlace } from "../../../src/publish/folder/siteplace.ts";
import { makeWorkshop } from "../../../src/publish/folder/stagingfolder.ts";
import { listPages, openStanding } from "../../../src/publish/folder/standingsite.ts";
import { disk } from "../../../src/publish/folder/writedisk.ts";
import { makeRoom } from "../room.ts";

test("a site is opened where it was published here, and its files are read as they were written", async () => {
  const place = findPlace(path.join(await makeRoom(), "site"), new Uint8Array(32));
  await makeWorkshop(place, disk);
  expect(await openStanding(place)).toBeUndefined();
  const files = { "index.html": "front", "a.svg": "drawn" };
  await mkdir(place.target);
  for (const [name, text] of Object.entries(files)) await writeFile(path.join(place.target, name), text);
  const entries = Object.entries(files).map(([name, text]) => describeFile(name, text));
  await writeFile(path.join(place.target, manifestName), formatManifest(entries));
  // Whoever brought it: the manifest fits, and was never ours.
  expect(await openStanding(place)).toBeUndefined();
  await addRecord(place.target, place, disk);
  const standing = await openStanding(place);
  expect(standing?.paths).toEqual(["a.svg", "index.html"]);
  const read = async (name: string) => Buffer.from((await standing?.read(name)) ?? "none").toString();
  await writeFile(path.join(place.target, "a.svg"), "other");
  await writeFile(path.join(place.target, "b.svg"), "new");
  expect([await read("index.html"), await read("a.svg"), await read("b.svg")]).toEqual([
    "front",
    "none",
    "none",
  ]);
});

test("the pages of a site are its folders' own", () => {
  expect(listPages(["index.html", "a/index.html", "a/b/index.html", "404.html", "a/oldindex.html"])).toEqual([
    "/",
    "/a/",
    "/a/b/",
  ]);
});
