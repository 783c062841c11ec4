import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { cutDown, subsetFont, wholeFont } from "../../../src/publish/fonts/subset.ts";
import { keepFonts } from "../../../src/publish/pictures/imagecache.ts";
import { faces } from "../../../src/views/fontface.ts";
import { readFeatures, readLetters, unpackWoff2 } from "../glyph.ts";

function pathOf(family: string, file: string): string {
  const home = createRequire(import.meta.url).resolve(`@fontsource/${family}/package.json`);
  return path.join(path.dirname(home), "files", file);
}

const serif = await readFile(pathOf("source-serif-4", "source-serif-4-latin-400-normal.woff2"));
const codes = (letters: string): readonly number[] =>
  [...letters].map((letter) => letter.codePointAt(0) ?? 0).sort((a, b) => a - b);
const lettersIn = async (font: Uint8Array) => [...readLetters(await unpackWoff2(font))].sort((a, b) => a - b);

describe("a font that is cut down", () => {
  test("has the letters that were asked for and no others; what it never had, it has not", async () => {
    expect(await lettersIn(await cutDown(serif, " Aéz–Ł旗"))).toEqual(codes(" Aéz–"));
  });

  test("sets them as it did: kerning, ligatures, marks", async () => {
    const before = readFeatures(await unpackWoff2(serif));
    const after = readFeatures(await unpackWoff2(await cutDown(serif, "AVfiflTo0123456789\u0304\u0308")));
    for (const tag of ["kern", "liga", "mark"]) {
      expect([...before]).toContain(tag);
      expect([...after]).toContain(tag);
    }
  });

  test("is the same each time", async () => {
    const once = await cutDown(serif, "Abc é");
    await cutDown(serif, "other letters");
    expect(Buffer.from(await cutDown(serif, "Abc é")).equals(once)).toBe(true);
  });

  test("is never larger than it was", async () => {
    const all = (await lettersIn(serif)).map((code) => String.fromCodePoint(code)).join("");
    const made = await cutDown(serif, all);
    expect(made.length).toBeLessThanOrEqual(serif.length);
    expect(await lettersIn(made)).toEqual(await lettersIn(serif));
  });
});

test.each([
  ["nothing", Buffer.alloc(0)],
  ["a text", Buffer.from("no font at all")],
  ["half a font", serif.subarray(0, serif.length / 2)],
])("%s is refused", async (_, bytes) => {
  await expect(cutDown(bytes, "abc")).rejects.toThrow();
});

const [face] = faces;
if (face === undefined) throw new Error("there are faces");

test("whole fonts are those of the package, byte for byte, under the same name", async () => {
  for (const one of faces) {
    const file = wholeFont(one);
    expect(file.path).toBe(`assets/fonts/${one.file}`);
    expect(Buffer.from(await file.make()).equals(await readFile(pathOf(one.family, one.file)))).toBe(true);
  }
});

test("a recipe names the font, its letters and nothing that changes from build to build", async () => {
  const recipe = await subsetFont(face, "ab").findRecipe?.();
  expect(recipe).toMatchObject({ font: expect.stringMatching(/^[0-9a-f]{64}$/), letters: "ab" });
  expect(await subsetFont(face, "ab").findRecipe?.()).toEqual(recipe);
  expect(await subsetFont(face, "abc").findRecipe?.()).not.toEqual(recipe);
});

test("where a font cannot be cut down, the whole of it is published", async () => {
  const file = { ...subsetFont(face, "ab"), make: () => Promise.reject(new Error("harfbuzz is at a loss")) };
  const [published] = keepFonts([file], undefined);
  expect(Buffer.from((await published?.make()) ?? "").equals(serif)).toBe(true);
});
