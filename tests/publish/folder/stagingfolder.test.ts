import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { describeFile, formatManifest, manifestName } from "../../../src/publish/folder/manifest.ts";
import { addRecord } from "../../../src/publish/folder/publishedrecord.ts";
import { findPlace, nameIn, type Place } from "../../../src/publish/folder/siteplace.ts";
import {
  clearWorkshop,
  makeWorkshop,
  previousOf,
  putAway,
} from "../../../src/publish/folder/stagingfolder.ts";
import { disk } from "../../../src/publish/folder/writedisk.ts";
import { makeRoom } from "../room.ts";

const secret = new Uint8Array(32);

async function makeSite(folder: string, place: Place, foreign: readonly string[] = []): Promise<void> {
  await mkdir(folder, { recursive: true });
  await writeFile(path.join(folder, "index.html"), folder);
  await writeFile(path.join(folder, manifestName), formatManifest([describeFile("index.html", folder)]));
  await addRecord(folder, place, disk);
  for (const file of foreign) await writeFile(path.join(folder, file), "theirs");
}

test("is made with the folders on the way to it, and cleared away with them when empty", async () => {
  const room = await makeRoom();
  const place = findPlace(path.join(room, "a/b/site"), secret);
  const made = await makeWorkshop(place, disk);
  expect(made.map((folder) => path.relative(room, folder))).toEqual(["a", "a/b", "a/b/.counterchange-site"]);
  expect(await makeWorkshop(place, disk)).toEqual([]);
  await clearWorkshop(place, made, disk);
  expect(await readdir(room)).toEqual([]);
});

test("stays where something of worth is in it", async () => {
  const room = await makeRoom();
  const place = findPlace(path.join(room, "site"), secret);
  const made = await makeWorkshop(place, disk);
  await makeSite(previousOf(place), place);
  await clearWorkshop(place, made, disk);
  expect((await readdir(place.workshop)).sort()).toEqual([".gitignore", "previous", "published"]);
});

test("a site that was published is kept as the one before, in the place of the last", async () => {
  const place = findPlace(path.join(await makeRoom(), "site"), secret);
  await makeWorkshop(place, disk);
  for (const text of ["one", "two"]) {
    const folder = nameIn(place, "swap");
    await makeSite(folder, place);
    await writeFile(path.join(folder, "index.html"), text);
    expect(await putAway(folder, place, disk)).toBeUndefined();
  }
  expect((await readdir(place.workshop)).sort()).toEqual([".gitignore", "previous", "published"]);
  expect(await readFile(path.join(previousOf(place), "index.html"), "utf8")).toBe("two");
});

test("a leaving is removed; with files of others in it it is kept beside the target, never removed", async () => {
  const place = findPlace(path.join(await makeRoom(), "site"), secret);
  await makeWorkshop(place, disk);
  const leaving = nameIn(place, "swap");
  await makeSite(leaving, place);
  expect(await putAway(leaving, place, disk, true)).toBeUndefined();
  expect(await readdir(place.workshop)).toEqual([".gitignore", "published"]);
  for (const name of ["site-kept", "site-kept-2"]) {
    const folder = nameIn(place, "swap");
    await makeSite(folder, place, ["CNAME"]);
    expect(await putAway(folder, place, disk, true)).toEqual({
      folder: path.join(place.parent, name),
      files: ["CNAME"],
    });
    expect(await readFile(path.join(place.parent, name, "CNAME"), "utf8")).toBe("theirs");
  }
});

test("a site whose manifest came with it is kept beside the target, and never removed", async () => {
  const place = findPlace(path.join(await makeRoom(), "site"), secret);
  const other = findPlace(path.join(await makeRoom(), "site"), new Uint8Array(32).fill(1));
  for (const each of [place, other]) await makeWorkshop(each, disk);
  for (const isLeft of [false, true]) {
    const folder = nameIn(place, "swap");
    await makeSite(folder, other);
    const kept = await putAway(folder, place, disk, isLeft);
    expect(kept?.files).toEqual([manifestName, "index.html"]);
    expect((await readdir(kept?.folder ?? "")).sort()).toEqual([manifestName, "index.html"]);
  }
  expect(await readdir(place.workshop)).toEqual([".gitignore"]);
});
