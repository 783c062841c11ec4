import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { listFiles, markerName, OutputError, writeOutput } from "../../src/site/output.ts";

let room: string;
let site: string;
beforeEach(async () => {
  room = await mkdtemp(path.join(tmpdir(), "counterchange-output-"));
  site = path.join(room, "_site");
});
afterEach(() => rm(room, { recursive: true, force: true }));

const writePage = (text: string) => (folder: string) => writeFile(path.join(folder, "index.html"), text);

test("writes a folder that is not there, with its marker, and leaves nothing beside it", async () => {
  await writeOutput(site, [], writePage("new"));
  expect(await listFiles(site)).toEqual([markerName, "index.html"]);
  expect(await readdir(room)).toEqual(["_site"]);
});

test("replaces what we wrote before: pages that are no longer written are gone", async () => {
  await writeOutput(site, [], async (folder) => {
    await mkdir(path.join(folder, "old"));
    await writeFile(path.join(folder, "old", "index.html"), "old");
  });
  await writeOutput(site, [], writePage("new"));
  expect(await listFiles(site)).toEqual([markerName, "index.html"]);
  expect(await readdir(site)).not.toContain("old");
});

test("refuses a folder without our marker and keeps every file in it", async () => {
  await mkdir(site);
  await writeFile(path.join(site, "thesis.txt"), "precious");
  await expect(writeOutput(site, [], writePage("new"))).rejects.toThrow(/thesis\.txt/);
  expect(await readFile(path.join(site, "thesis.txt"), "utf8")).toBe("precious");
  expect(await readdir(room)).toEqual(["_site"]);
});

test("refuses our own folder once someone has put a file into it", async () => {
  await writeOutput(site, [], writePage("new"));
  await writeFile(path.join(site, "CNAME"), "flags.example");
  await expect(writeOutput(site, [], writePage("newer"))).rejects.toThrow(OutputError);
  expect(await readFile(path.join(site, "index.html"), "utf8")).toBe("new");
});

test("takes an empty folder", async () => {
  await mkdir(site);
  await writeOutput(site, [], writePage("new"));
  expect(await readFile(path.join(site, "index.html"), "utf8")).toBe("new");
});

test("refuses a file, and a link to a folder", async () => {
  await writeFile(site, "a file");
  await expect(writeOutput(site, [], writePage("new"))).rejects.toThrow(/not a folder/);
  const link = path.join(room, "link");
  await mkdir(path.join(room, "elsewhere"));
  await symlink(path.join(room, "elsewhere"), link);
  await expect(writeOutput(link, [], writePage("new"))).rejects.toThrow(/not a folder/);
});

test("refuses to mix with the content: the same folder, one inside it, one around it", async () => {
  const content = path.join(room, "content");
  await mkdir(content);
  for (const target of [content, path.join(content, "_site"), room]) {
    await expect(writeOutput(target, [content], writePage("new"))).rejects.toThrow(OutputError);
  }
  expect(await readdir(content)).toEqual([]);
});

test("a folder whose name only begins like the content's is no part of it", async () => {
  await writeOutput(path.join(room, "content-site"), [path.join(room, "content")], writePage("new"));
  expect(await readdir(room)).toEqual(["content-site"]);
});

test("keeps the old site when writing fails, and cleans up", async () => {
  await writeOutput(site, [], writePage("old"));
  const fail = async (folder: string) => {
    await writePage("half")(folder);
    throw new Error("disk full");
  };
  await expect(writeOutput(site, [], fail)).rejects.toThrow("disk full");
  expect(await readFile(path.join(site, "index.html"), "utf8")).toBe("old");
  expect(await readdir(room)).toEqual(["_site"]);
});
