import { readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { addressBytes, addressFile } from "../../src/content/folder/addressfile.ts";
import { disk } from "../../src/publish/folder/writedisk.ts";
import { beginAddresses, findLacking, keepAddresses } from "../../src/publish/keepaddresses.ts";
import { makeFolder } from "../content/folder.ts";
import { systemError } from "../faults/disk.ts";

const published = new Map([
  ["/", {}],
  ["/studies/a/", {}],
]);

test("the list is begun, is not written again where it lacks nothing, and nothing else is left", async () => {
  const root = await makeFolder({});
  const write = () => Promise.reject(new Error("it is written"));
  expect(await keepAddresses(root, published)).toBeUndefined();
  expect(await readFile(path.join(root, addressFile), "utf8")).toMatch(/\n\/\n\/studies\/a\/\n$/);
  expect(await keepAddresses(root, published, { ...disk, write })).toBeUndefined();
  expect(await readdir(root)).toEqual([addressFile]);
});

test("one that cannot be written, read or added to stays as it is", async () => {
  const root = await makeFolder({ [addressFile]: "/old/" });
  for (const call of ["write", "rename"] as const) {
    const broken = { ...disk, [call]: () => Promise.reject(systemError("ENOSPC", call, addressFile)) };
    expect(await keepAddresses(root, published, broken)).toMatchObject({
      rule: "address/not-written",
      severity: "warning",
      reason: expect.stringContaining("the disk is full"),
    });
  }
  expect([await readdir(root), await readFile(path.join(root, addressFile), "utf8")]).toEqual([
    [addressFile],
    "/old/",
  ]);
  await writeFile(path.join(root, addressFile), new Uint8Array([0xff]));
  expect(await keepAddresses(root, published)).toBeUndefined();
  expect([...(await readFile(path.join(root, addressFile)))]).toEqual([0xff]);
  const full = `#${"x".repeat(addressBytes - 3)}\n`;
  await writeFile(path.join(root, addressFile), full);
  expect((await keepAddresses(root, published))?.rule).toBe("address/file-size");
  expect(await readFile(path.join(root, addressFile), "utf8")).toBe(full);
});

test("a list that is kept has to have every address; where there is none nothing is asked", () => {
  expect(findLacking("content", undefined, ["/a/"])).toBeUndefined();
  expect(findLacking("content", published, ["/", "/studies/a/"])).toBeUndefined();
  expect(findLacking("content/", published, ["/b/", "/a/", "/"])).toMatchObject({
    file: "content/addresses.txt",
    reason: "The list lacks 2 addresses of this gallery: “/a/” and so on.",
  });
});

test("a list begins with the site that stands, once, if it is of the gallery; no content folder is made for it", async () => {
  const titled = (title: string) => ({
    paths: ["index.html", "studies/a/index.html", "feed.xml"],
    read: async (file: string) =>
      file === "studies.json" ? Buffer.from(JSON.stringify({ title })) : undefined,
  });
  const standing = titled("Flags of the Sound");
  const root = await makeFolder({});
  await beginAddresses(path.join(root, "content"), standing);
  await beginAddresses(root, undefined);
  expect(await readdir(root)).toEqual([]);
  await writeFile(path.join(root, "gallery.yaml"), "title: Flags of the Sound\n");
  await beginAddresses(root, titled("Flags of the Tessary Isles"));
  await beginAddresses(root, { ...standing, read: async () => undefined });
  expect(await readdir(root)).toEqual(["gallery.yaml"]);
  await beginAddresses(root, standing);
  const text = await readFile(path.join(root, addressFile), "utf8");
  expect(text).toMatch(/\n\/\n\/studies\/a\/\n$/);
  await beginAddresses(root, { ...standing, paths: ["b/index.html"] });
  expect(await readFile(path.join(root, addressFile), "utf8")).toBe(text);
});
