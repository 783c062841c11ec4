import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { disk } from "../../src/site/disk.ts";
import { describeFile, formatManifest, manifestName } from "../../src/site/manifest.ts";
import {
  clearWorkshop,
  findPlace,
  makeWorkshop,
  nameIn,
  previousOf,
  putAway,
} from "../../src/site/workshop.ts";
import { makeRoom } from "./room.ts";

const secret = new Uint8Array(32);

async function makeSite(folder: string, foreign: readonly string[] = []): Promise<void> {
  await mkdir(folder, { recursive: true });
  await writeFile(path.join(folder, "index.html"), folder);
  await writeFile(path.join(folder, manifestName), formatManifest([describeFile("index.html", folder)]));
  for (const file of foreign) await writeFile(path.join(folder, file), "theirs");
}

test("lies beside the target, hidden", () => {
  const place = findPlace("/a/b/");
  expect(place).toEqual({ target: "/a/b", parent: "/a", workshop: "/a/.counterchange-b" });
});

test("is made with the folders on the way to it, and cleared away with them when empty", async () => {
  const room = await makeRoom();
  const place = findPlace(path.join(room, "a/b/site"));
  const made = await makeWorkshop(place, disk, secret);
  expect(made.map((folder) => path.relative(room, folder))).toEqual(["a", "a/b", "a/b/.counterchange-site"]);
  expect(await makeWorkshop(place, disk, secret)).toEqual([]);
  await clearWorkshop(place, made, disk);
  expect(await readdir(room)).toEqual([]);
});

test("stays where something of worth is in it", async () => {
  const room = await makeRoom();
  const place = findPlace(path.join(room, "site"));
  const made = await makeWorkshop(place, disk, secret);
  await makeSite(previousOf(place));
  await clearWorkshop(place, made, disk);
  expect((await readdir(place.workshop)).sort()).toEqual([".gitignore", "previous"]);
});

test("a site that was published is kept as the one before, in the place of the last", async () => {
  const place = findPlace(path.join(await makeRoom(), "site"));
  await makeWorkshop(place, disk, secret);
  for (const text of ["one", "two"]) {
    const folder = nameIn(place, "swap");
    await makeSite(folder);
    await writeFile(path.join(folder, "index.html"), text);
    expect(await putAway(folder, place, disk)).toBeUndefined();
  }
  expect((await readdir(place.workshop)).sort()).toEqual([".gitignore", "previous"]);
  expect(await readFile(path.join(previousOf(place), "index.html"), "utf8")).toBe("two");
});

test("a leaving is removed; with files of others in it it is kept beside the target, never removed", async () => {
  const place = findPlace(path.join(await makeRoom(), "site"));
  await makeWorkshop(place, disk, secret);
  const leaving = nameIn(place, "swap");
  await makeSite(leaving);
  expect(await putAway(leaving, place, disk, true)).toBeUndefined();
  expect(await readdir(place.workshop)).toEqual([".gitignore"]);
  for (const name of ["site-kept", "site-kept-2"]) {
    const folder = nameIn(place, "swap");
    await makeSite(folder, ["CNAME"]);
    expect(await putAway(folder, place, disk, true)).toEqual({
      folder: path.join(place.parent, name),
      files: ["CNAME"],
    });
    expect(await readFile(path.join(place.parent, name, "CNAME"), "utf8")).toBe("theirs");
  }
});
