import path from "node:path";
import { expect, test } from "vitest";
import { publishChunks } from "../../src/site/chunk.ts";
import { publishGallery } from "../../src/site/publish.ts";
import { Spill } from "../../src/study/spill.ts";
import { emptyGallery, oddGallery } from "../browser/gallery.ts";
import { readListed } from "../faults/whole.ts";
import { makeRoom } from "./room.ts";

test("a gallery published in parts has the files and the bytes of one published at once", {
  timeout: 180_000,
}, async () => {
  const room = await makeRoom();
  const [whole, parts] = [path.join(room, "whole"), path.join(room, "parts")];
  const spill = new Spill();
  try {
    const once = await publishGallery(oddGallery, whole, { keepOut: [] });
    const chunked = await publishGallery(oddGallery, parts, { keepOut: [], spill, chunk: 1 });
    expect(oddGallery.studies.length).toBeGreaterThan(1);
    expect(chunked.pages).toBe(once.pages);
    expect(readListed(parts)).toEqual(readListed(whole));
  } finally {
    await spill.remove();
  }
});

test("what goes wrong in a part is told, and nothing is published", async () => {
  const room = await makeRoom();
  const spill = new Spill();
  try {
    const options = { base: undefined, store: undefined, spill, chunk: 1, fresh: path.join(room, "nowhere") };
    await expect(publishChunks(emptyGallery, options)).rejects.toThrow("ENOENT");
  } finally {
    await spill.remove();
  }
});
