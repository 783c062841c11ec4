import { symlinkSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readSchemas, refreshSchemas } from "../../../src/cli/begin/galleryschema.ts";
import { stampSchema } from "../../../src/content/gallery/schemastamp.ts";
import { makeFolder } from "../../content/folder.ts";

const names = ["front-matter.schema.json", "gallery.schema.json"];
const old = JSON.stringify(stampSchema({ $id: "gallery.schema.json", type: "object" }));

test("all schemas ship", async () => {
  expect([...(await readSchemas()).keys()]).toEqual([...names, "theme.schema.json", "words.schema.json"]);
});

test("a copy of an older version is written anew, and the one beside it, which is right, is not touched", async () => {
  const shipped = await readSchemas();
  const right = shipped.get("front-matter.schema.json") ?? "";
  const root = await makeFolder({
    ".schemas/gallery.schema.json": old,
    ".schemas/front-matter.schema.json": right,
  });
  const file = join(root, ".schemas/gallery.schema.json");
  expect(await refreshSchemas(root)).toEqual({ written: [file], left: [] });
  expect(await readFile(file)).toEqual(Buffer.from(shipped.get("gallery.schema.json") ?? ""));
  expect(await refreshSchemas(root)).toEqual({ written: [], left: [] });
  expect((await readdir(join(root, ".schemas"))).sort()).toEqual(names);
});

test("what an author changed stays, and nothing is added", async () => {
  const mine = old.replace("object", "array");
  const root = await makeFolder({ ".schemas/gallery.schema.json": mine });
  const file = join(root, ".schemas/gallery.schema.json");
  expect(await refreshSchemas(root)).toEqual({ written: [], left: [file] });
  expect(await readFile(file, "utf8")).toBe(mine);
  expect(await readdir(join(root, ".schemas"))).toEqual(["gallery.schema.json"]);
});

test("links are not followed, neither of the folder nor in it", async () => {
  const other = await makeFolder({ "gallery.schema.json": old, ".schemas/a.txt": "" });
  const root = await makeFolder({});
  symlinkSync(other, join(root, ".schemas"));
  symlinkSync(join(other, "gallery.schema.json"), join(other, ".schemas/gallery.schema.json"));
  expect(await refreshSchemas(root)).toEqual({ written: [], left: [] });
  expect(await refreshSchemas(other)).toEqual({ written: [], left: [] });
  expect(await readFile(join(other, "gallery.schema.json"), "utf8")).toBe(old);
  expect(await refreshSchemas(join(root, "none"))).toEqual({ written: [], left: [] });
});
