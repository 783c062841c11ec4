import { symlinkSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { listSchemas, refreshSchemas } from "../../../src/cli/begin/galleryschema.ts";
import { defaultPalette } from "../../../src/content/gallery/palette.ts";
import { stampSchema } from "../../../src/content/gallery/schemastamp.ts";
import { makeFolder } from "../../content/folder.ts";

const names = ["front-matter.schema.json", "gallery.schema.json"];
const old = JSON.stringify(stampSchema({ $id: "gallery.schema.json", type: "object" }));

test("all schemas that ship, word for word", async () => {
  const listed = listSchemas(defaultPalette);
  expect([...listed.keys()]).toEqual([...names, "theme.schema.json", "words.schema.json"]);
  const shipped = join(import.meta.dirname, "../../../src/content/schema");
  for (const [name, text] of listed)
    expect(JSON.parse(text)).toEqual(JSON.parse(await readFile(join(shipped, name), "utf8")));
});

test("of another palette only what it names is written anew", async () => {
  const root = await makeFolder(
    Object.fromEntries([...listSchemas(defaultPalette)].map(([name, text]) => [`.schemas/${name}`, text])),
  );
  const file = join(root, ".schemas/front-matter.schema.json");
  const palette = new Map([["chalk", "#fefefe"]]);
  expect(await refreshSchemas(root, palette)).toEqual({ written: [file], left: [] });
  const { properties } = JSON.parse(await readFile(file, "utf8"));
  expect(properties.change.properties.with.examples.slice(0, 2)).toEqual(["chalk", "aliceblue"]);
  expect(await refreshSchemas(root, palette)).toEqual({ written: [], left: [] });
});

test("a copy of an older version is written anew, and the one beside it, which is right, is not touched", async () => {
  const shipped = listSchemas(defaultPalette);
  const right = shipped.get("front-matter.schema.json") ?? "";
  const root = await makeFolder({
    ".schemas/gallery.schema.json": old,
    ".schemas/front-matter.schema.json": right,
  });
  const file = join(root, ".schemas/gallery.schema.json");
  expect(await refreshSchemas(root, defaultPalette)).toEqual({ written: [file], left: [] });
  expect(await readFile(file, "utf8")).toBe(shipped.get("gallery.schema.json"));
  expect(await refreshSchemas(root, defaultPalette)).toEqual({ written: [], left: [] });
  expect((await readdir(join(root, ".schemas"))).sort()).toEqual(names);
});

test("what an author changed stays, and nothing is added", async () => {
  const mine = old.replace("object", "array");
  const root = await makeFolder({ ".schemas/gallery.schema.json": mine });
  const file = join(root, ".schemas/gallery.schema.json");
  expect(await refreshSchemas(root, defaultPalette)).toEqual({ written: [], left: [file] });
  expect(await readFile(file, "utf8")).toBe(mine);
  expect(await readdir(join(root, ".schemas"))).toEqual(["gallery.schema.json"]);
});

test("links are not followed, neither of the folder nor in it", async () => {
  const other = await makeFolder({ "gallery.schema.json": old, ".schemas/a.txt": "" });
  const root = await makeFolder({});
  symlinkSync(other, join(root, ".schemas"));
  symlinkSync(join(other, "gallery.schema.json"), join(other, ".schemas/gallery.schema.json"));
  expect(await refreshSchemas(root, defaultPalette)).toEqual({ written: [], left: [] });
  expect(await refreshSchemas(other, defaultPalette)).toEqual({ written: [], left: [] });
  expect(await readFile(join(other, "gallery.schema.json"), "utf8")).toBe(old);
  expect(await refreshSchemas(join(root, "none"), defaultPalette)).toEqual({ written: [], left: [] });
});
