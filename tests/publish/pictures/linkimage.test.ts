import { readFile } from "node:fs/promises";
import sharp from "sharp";
import { beforeAll, expect, test } from "vitest";
import { listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import { type Fonts, layLinkPicture, unpackFonts } from "../../../src/publish/pictures/linkimage.ts";
import { encodeLayout, setText } from "../../../src/publish/pictures/pixelpicture.ts";
import { Easel } from "../../../src/publish/pictures/renderdrawing.ts";
import { presentSite } from "../../../src/views/siteview.ts";
import { makeAll } from "../making.ts";
import { galleryResult, studyResult } from "../sample.ts";

const drawLinkPicture = async (...parts: Parameters<typeof layLinkPicture>) => {
  return encodeLayout(await layLinkPicture(...parts), "note");
};
const easel = new Easel();

let fonts: Fonts;
beforeAll(async () => {
  fonts = await unpackFonts();
});

const view = presentSite(galleryResult, undefined);
const [study] = view.studies;
if (study === undefined) throw new Error("one study");

async function readPixel(png: Buffer, x: number, y: number): Promise<readonly number[]> {
  const { data, info } = await sharp(png).raw().toBuffer({ resolveWithObject: true });
  const at = (y * info.width + x) * info.channels;
  return [...data.subarray(at, at + 3)];
}

test("1200 by 630 pixels, without loss, and light enough to be fetched for a link", async () => {
  const pictures = [...view.studies, ...view.edges].map(({ picture }) => picture);
  expect(pictures.map(({ file }) => file)).toEqual([
    "studies/a-square/link.png",
    "studies/a-square/edges/12235c-ffffff/link.png",
    "studies/a-square/edges/12235c-c8202f/link.png",
  ]);
  const made = await makeAll(
    listDrawn(studyResult, galleryResult.gallery).filter(({ recipe }) => recipe.kind === "link"),
  );
  expect([...made.keys()]).toEqual(pictures.map(({ file }) => file));
  for (const png of made.values()) {
    const { format, width, height } = await sharp(png).metadata();
    expect({ format, width, height }).toEqual({ format: "png", width: 1200, height: 630 });
    expect(png.byteLength).toBeLessThan(150_000);
    expect(png.includes("Unofficial study")).toBe(true);
    // On either side of the middle: the square, in its own colour before and after; then the mat.
    expect(await readPixel(png, 600 - 20, 36 + 180)).toEqual([0xc8, 0x20, 0x2f]);
    expect(await readPixel(png, 600 + 20, 36 + 180)).toEqual([0xf4, 0xc4, 0x30]);
    expect(await readPixel(png, 70, 36 + 180)).toEqual([0x77, 0x77, 0x77]);
  }
});

test("in a gallery that runs from right to left the original is on the right", async () => {
  const size = { width: 446, height: 297 };
  const flags = [
    await easel.render(studyResult.drawings.original, size),
    await easel.render(studyResult.drawings.redesign, size),
  ] as const;
  const png = await drawLinkPicture({ ...study.picture, direction: "rtl" }, flags, fonts);
  expect(await readPixel(png, 600 - 20, 36 + 180)).toEqual([0xf4, 0xc4, 0x30]);
  expect(await readPixel(png, 600 + 20, 36 + 180)).toEqual([0xc8, 0x20, 0x2f]);
});

test.each(["W".repeat(200), "a ".repeat(100).trim(), "<b>&amp;</b> & <span", "ש. כהן"])(
  "a title %j stays in its room",
  async (title) => {
    const size = { width: 446, height: 297 };
    const flag = await easel.render(studyResult.drawings.original, size);
    const png = await drawLinkPicture({ ...study.picture, title, subtitle: "A" }, [flag, flag], fonts);
    const { data, info } = await sharp(png).greyscale().raw().toBuffer({ resolveWithObject: true });
    // The gap between the two columns, from the captions to the foot, stays paper.
    let darkest = 255;
    for (let y = 412; y < 570; y += 1)
      for (let x = 592; x < 608; x += 1)
        darkest = Math.min(darkest, data[(y * info.width + x) * info.channels] ?? 0);
    expect(darkest).toBeGreaterThan(240);
  },
);

test("text is set in the bundled font, not in one of the machine's", async () => {
  const set = (font: "Source Serif 4" | "Source Sans 3", fontFile: string) =>
    setText({ text: "Hamburgefonts", font, fontFile, pixels: 100, hex: "#000000", width: 2000 });
  const [serif, sans] = [await set("Source Serif 4", fonts.serif), await set("Source Sans 3", fonts.sans)];
  // The advance of the letters, by the fonts' own tables; ink is a little narrower, and pairs are kerned.
  const widthOf = async (file: string) => measureAdvance(await readFile(file), "Hamburgefonts") * 100;
  expect(Math.abs(serif.width - (await widthOf(fonts.serif)))).toBeLessThan(25);
  expect(Math.abs(sans.width - (await widthOf(fonts.sans)))).toBeLessThan(25);
  expect(serif.width).not.toBe(sans.width);
});

/** Source: OpenType 1.9, tables cmap (format 4), hhea, hmtx, head. */
function measureAdvance(font: Buffer, text: string): number {
  const table = (tag: string): number => {
    for (let index = 0; index < font.readUInt16BE(4); index += 1)
      if (font.toString("latin1", 12 + 16 * index, 16 + 16 * index) === tag)
        return font.readUInt32BE(12 + 16 * index + 8);
    throw new Error(`no table ${tag}`);
  };
  const cmap = table("cmap");
  const formats = Array.from({ length: font.readUInt16BE(cmap + 2) }, (_, index) =>
    font.readUInt32BE(cmap + 4 + 8 * index + 4),
  );
  const sub = cmap + (formats.find((offset) => font.readUInt16BE(cmap + offset) === 4) ?? 0);
  const segments = font.readUInt16BE(sub + 6) / 2;
  const glyphOf = (code: number): number => {
    for (let index = 0; index < segments; index += 1) {
      if (font.readUInt16BE(sub + 14 + 2 * index) < code) continue;
      const start = font.readUInt16BE(sub + 16 + 2 * segments + 2 * index);
      const delta = font.readUInt16BE(sub + 16 + 4 * segments + 2 * index);
      const rangeAt = sub + 16 + 6 * segments + 2 * index;
      const range = font.readUInt16BE(rangeAt);
      if (code < start) return 0;
      return range === 0
        ? (code + delta) % 65536
        : font.readUInt16BE(rangeAt + range + 2 * (code - start)) + delta;
    }
    return 0;
  };
  const long = font.readUInt16BE(table("hhea") + 34);
  const advance = (glyph: number) => font.readUInt16BE(table("hmtx") + 4 * Math.min(glyph, long - 1));
  const units = font.readUInt16BE(table("head") + 18);
  return [...text].reduce((sum, letter) => sum + advance(glyphOf(letter.charCodeAt(0))), 0) / units;
}
