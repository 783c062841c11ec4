// However the pages of a gallery are divided, and whichever process renders them, the site has the same bytes.
import path from "node:path";
import { expect, test } from "vitest";
import type { GalleryResult } from "../../src/analysis/result.ts";
import { type Division, makeTexts } from "../../src/publish/pagetext.ts";
import { keepFonts } from "../../src/publish/pictures/imagecache.ts";
import { publishGallery } from "../../src/publish/publishgallery.ts";
import { oddGallery } from "../browser/gallery.ts";
import { digest, readListed } from "../faults/whole.ts";
import { openKept } from "../kept.ts";
import { makeRoom } from "./room.ts";
import { galleryResult } from "./sample.ts";

const three: GalleryResult = { ...oddGallery, studies: [...oddGallery.studies, ...galleryResult.studies] };
/** As for a gallery of thousands: a few at a time, in processes of their own. */
const apart: Division = { here: 1, apart: 2, most: 1 };
const oneByOne: Division = { ...apart, most: 1000 };

async function make(division: Division): Promise<ReadonlyMap<string, string>> {
  const found = new Map<string, string>();
  const store = await openKept();
  const { pages } = await makeTexts(three, "/", division, async (files) => {
    for (const { path: file, make: read } of keepFonts(files, store)) found.set(file, digest(await read()));
  });
  expect([...found.keys()].filter((file) => file.endsWith(".html"))).toHaveLength(pages);
  return new Map([...found].sort());
}

test("studies that are rendered a few at a time, here or apart, give the bytes of all at once", {
  timeout: 240_000,
}, async () => {
  const whole = await make({ here: 1000, apart: 1, most: 1000 });
  expect(whole.size).toBeGreaterThan(30);
  expect(await make(oneByOne)).toEqual(whole);
  expect(await make(apart)).toEqual(whole);
});

test("a study that throws late costs itself alone, and nothing is left of what was written before", {
  timeout: 240_000,
}, async () => {
  const store = await openKept();
  const publish = async (studies: GalleryResult["studies"]) => {
    const out = path.join(await makeRoom(), "site");
    const options = { keepOut: [], store, division: oneByOne };
    const { result } = await publishGallery({ ...three, studies }, out, options);
    return { result, files: readListed(out).files };
  };
  const [sample] = galleryResult.studies;
  if (sample === undefined) throw new Error("no study");
  // The last page of all, with a number for prose: the others are written when it throws.
  const study = { ...sample.study, slug: "zz-bad", date: "1900-01-01", formerly: ["zz-worse"] };
  const bad = { ...sample, study: { ...study, body: 5 as unknown as string } };
  const good = await publish(three.studies);
  const mended = await publish([...three.studies, bad]);
  expect(mended.result.problems.map(({ rule }) => rule)).toEqual(["study/fault"]);
  expect(mended.files).toEqual(good.files);
});
