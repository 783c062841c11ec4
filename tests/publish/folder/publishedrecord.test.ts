import { appendFile, mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { beforeEach, expect, test } from "vitest";
import { describeFile, formatManifest, manifestName } from "../../../src/publish/folder/manifest.ts";
import { addRecord, isRecorded, recordFile } from "../../../src/publish/folder/publishedrecord.ts";
import { findPlace, type Place } from "../../../src/publish/folder/siteplace.ts";
import { makeWorkshop } from "../../../src/publish/folder/stagingfolder.ts";
import { disk } from "../../../src/publish/folder/writedisk.ts";
import { makeRoom } from "../room.ts";

let place: Place;
beforeEach(async () => {
  place = findPlace(path.join(await makeRoom(), "site"), new Uint8Array(32));
  await makeWorkshop(place, disk);
});

async function makeSite(name: string): Promise<string> {
  const folder = path.join(place.parent, name);
  await mkdir(folder);
  await writeFile(path.join(folder, manifestName), formatManifest([describeFile("index.html", name)]));
  return folder;
}

test("what was published is known again, and nothing else", async () => {
  const [ours, theirs] = [await makeSite("ours"), await makeSite("theirs")];
  await addRecord(ours, place, disk);
  expect(await isRecorded(ours, place)).toBe(true);
  expect(await isRecorded(theirs, place)).toBe(false);
  expect(await isRecorded(ours, { ...place, secret: new Uint8Array(32).fill(1) })).toBe(false);
  await appendFile(path.join(ours, manifestName), " ");
  expect(await isRecorded(ours, place)).toBe(false);
  await expect(addRecord(place.parent, place, disk)).rejects.toThrow("cannot be read again");
});

test("the last sixteen are remembered, and a record that is no record is as none", async () => {
  const first = await makeSite("first");
  await addRecord(first, place, disk);
  for (let number = 0; number < 16; number += 1)
    await addRecord(await makeSite(`site-${number}`), place, disk);
  const file = path.join(place.workshop, recordFile);
  expect((await readFile(file, "utf8")).trim().split("\n")).toHaveLength(16);
  expect(await isRecorded(first, place)).toBe(false);
  expect(await isRecorded(path.join(place.parent, "site-0"), place)).toBe(true);
  await writeFile(file, "x".repeat(1_000_000));
  expect(await isRecorded(path.join(place.parent, "site-0"), place)).toBe(false);
});
