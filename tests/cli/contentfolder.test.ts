import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { findContent, findPlace, listKeepOut } from "../../src/cli/contentfolder.ts";
import { makeFolder } from "../content/folder.ts";

const none = { operands: [] };

test("what is named is taken as it is", async () => {
  const root = await makeFolder({ "gallery.yaml": "" });
  expect(await findContent({ operands: ["my/gallery"] }, root)).toBe("my/gallery");
});

test.each([
  ["gallery.yaml", ".", "."],
  ["studies/a/study.md", ".", "."],
  ["content/gallery.yaml", "content", "content"],
  ["content/studies/a/study.md", "content", "content"],
  ["content/notes.txt", "content", "."],
  ["flag.svg", "content", "."],
])("in a folder with %s commands read %s, and a new study goes to %s", async (file, read, made) => {
  const root = await makeFolder({ [file]: "" });
  expect([await findContent(none, root), await findPlace(root)]).toEqual([read, made]);
});

test("in the checkout a new study goes to content", async () => {
  const home = resolve(import.meta.dirname, "../..");
  expect([await findContent(none, home), await findPlace(home)]).toEqual(["content", "content"]);
});

test("a site stays clear of the content; published at its top stays clear of what is read", () => {
  expect(listKeepOut("content", "published")).toEqual(["content"]);
  expect(listKeepOut(".", "site")).toEqual(["."]);
  expect(listKeepOut(".", "studies/published")).toEqual(["."]);
  expect(listKeepOut(".", "./published/")).toEqual(["gallery.yaml", "studies", "flags"]);
  expect(listKeepOut("a", "a/published")).toEqual(
    ["gallery.yaml", "studies", "flags"].map((name) => join("a", name)),
  );
});
