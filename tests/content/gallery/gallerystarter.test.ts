import { expect, test } from "vitest";
import { defaultGallery, parseGallery } from "../../../src/content/gallery/galleryfile.ts";
import { galleryGuide } from "../../../src/content/gallery/gallerykey.ts";
import { writeGalleryFile } from "../../../src/content/gallery/gallerystarter.ts";

const parse = (text: string) => parseGallery("gallery.yaml", new TextEncoder().encode(text));

test("a new gallery.yaml has the usual settings and no problem", () => {
  expect(parse(writeGalleryFile("x.json"))).toEqual({ value: defaultGallery, problems: [] });
});

test("every line to fill in is right, and names a key of its own", () => {
  const text = writeGalleryFile("x.json");
  const open = text.replace(/^# ([a-zA-Z]+:)/gm, "$1");
  expect(parse(open).problems).toEqual([]);
  const keys = [...open.matchAll(/^([a-zA-Z]+):/gm)].map(([, key]) => key);
  expect(new Set(keys).size).toBe(keys.length);
  for (const key of keys) expect(Object.keys(galleryGuide.examples)).toContain(key);
});
