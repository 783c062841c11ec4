import { chmod, mkdir, readdir, readFile, stat, symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { layOut, type Piece } from "../../../src/cli/begin/layout.ts";
import { UsageError } from "../../../src/cli/command.ts";
import { makeFolder } from "../../content/folder.ts";

const study: Piece = { path: "studies/a", content: new Map([["study.md", "text"]]) };
const settings: Piece = { path: "gallery.yaml", content: "title: x\n" };
const list = async (root: string) => (await readdir(root, { recursive: true })).sort();

test("everything is put in its place, and nothing is left beside it", async () => {
  const root = join(await makeFolder({}), "new/gallery");
  await layOut(root, [study, settings, { path: "b", content: new Uint8Array([0, 255]) }]);
  expect(await list(root)).toEqual(["b", "gallery.yaml", "studies", "studies/a", "studies/a/study.md"]);
  expect(await readFile(join(root, "studies/a/study.md"), "utf8")).toBe("text");
  expect([...(await readFile(join(root, "b")))]).toEqual([0, 255]);
});

test("where the last piece has no place the first are taken away again, and what was there stays", async () => {
  const root = await makeFolder({ "gallery.yaml": "title: mine\n" });
  await expect(layOut(root, [study, settings])).rejects.toThrow(/gallery.yaml” is in the way/);
  expect(await list(root)).toEqual(["gallery.yaml"]);
  expect(await readFile(join(root, "gallery.yaml"), "utf8")).toBe("title: mine\n");
});

test("of those who begin a gallery at the same time each gets a study, and the gallery is made once", async () => {
  const root = join(await makeFolder({}), "gallery");
  const shared = (text: string): readonly Piece[] => [
    { path: ".schemas", content: new Map([["a.json", text]]), isShared: true },
    { path: "gallery.yaml", content: text, isShared: true },
  ];
  const names = ["a", "b", "c", "d"];
  await Promise.all(
    names.map((name) => layOut(root, [...shared(name), { ...study, path: `studies/${name}` }])),
  );
  expect((await readdir(join(root, "studies"))).sort()).toEqual(names);
  expect((await readdir(root)).sort()).toEqual([".schemas", "gallery.yaml", "studies"]);
  expect(names).toContain(await readFile(join(root, "gallery.yaml"), "utf8"));
  await expect(layOut(root, [...shared("e"), study])).rejects.toThrow(/studies\/a” is in the way/);
  expect(names).toContain(await readFile(join(root, ".schemas/a.json"), "utf8"));
});

test("a file takes the place of another only where that is as it was, and gives it back where all fails", async () => {
  const root = await makeFolder({ "series/six.md": "old" });
  const file = join(root, "series/six.md");
  await chmod(file, 0o640);
  const piece = (was: string): Piece => ({
    path: "series/six.md",
    content: "new",
    instead: new TextEncoder().encode(was),
  });
  const bad: Piece = { path: "x".repeat(300), content: "" };
  await expect(layOut(root, [piece("old"), bad])).rejects.toThrow(UsageError);
  expect(await readFile(file, "utf8")).toBe("old");
  await expect(layOut(root, [study, piece("edited meanwhile")])).rejects.toThrow(
    /six.md” was edited meanwhile/,
  );
  expect(await list(root)).toEqual(["series", "series/six.md"]);
  await layOut(root, [piece("old")]);
  expect([await readFile(file, "utf8"), (await stat(file)).mode & 0o777]).toEqual(["new", 0o640]);
  expect(await list(root)).toEqual(["series", "series/six.md"]);
});

test("folders that were made for nothing go again, and a folder that was there stays", async () => {
  const root = await makeFolder({});
  await mkdir(join(root, "gallery"));
  const bad: Piece = { path: "x".repeat(300), content: "" };
  await expect(layOut(join(root, "gallery/inner/most"), [study, bad])).rejects.toThrow(UsageError);
  expect(await list(root)).toEqual(["gallery"]);
});

test("an empty folder is not replaced either, nor a link to nowhere", async () => {
  const root = await makeFolder({});
  await mkdir(join(root, "studies/a"), { recursive: true });
  await expect(layOut(root, [study])).rejects.toThrow(/studies\/a” is in the way/);
  await symlink(join(root, "nowhere"), join(root, "gallery.yaml"));
  await expect(layOut(root, [settings])).rejects.toThrow(/in the way/);
  expect(await list(root)).toEqual(["gallery.yaml", "studies", "studies/a"]);
});

test("a file where a folder has to be", async () => {
  const root = await makeFolder({ studies: "" });
  await expect(layOut(root, [study])).rejects.toThrow(/studies” is in the way/);
  await expect(layOut(join(root, "studies"), [study])).rejects.toThrow(/studies” is in the way/);
  expect(await list(root)).toEqual(["studies"]);
});
