// Floor 9. A font as its package brings it → the file with fewer letters that is published. Alone imports subset-font.
import { createHash } from "node:crypto";
import path from "node:path";
import { readOwn } from "../../content/disk/packagefile.ts";
import { type Face, findFontFolder } from "../../views/fontface.ts";
import { fileOf, type SiteFile } from "../folder/sitefile.ts";

/**
 * What the fonts can do that pages ask for: what browsers ask for by themselves, and lining figures of one width
 * (`font-variant-numeric` in templates/styles). Each figure of another width would be one more glyph to send.
 * Source: CSS Fonts 4, 7.1, default features; 6.7, numerical formatting.
 */
const features = [
  ...["ccmp", "locl", "rlig", "liga", "clig", "calt", "rclt", "kern", "mark", "mkmk"],
  ...["lnum", "tnum"],
];

/** The file of `face` with all its letters. */
export function wholeFont(face: Face): SiteFile {
  return fileOf(pathOf(face), () => readFont(face));
}

/** The file of `face` with `letters` alone, as far as the font has them; with all where it cannot be cut down. */
export function subsetFont(face: Face, letters: string): SiteFile {
  return {
    ...fileOf(pathOf(face), async () => cutDown(await readFont(face), letters)),
    findRecipe: async () => {
      const font = createHash("sha256")
        .update(await readFont(face))
        .digest("hex");
      return { font, letters, features };
    },
    spare: () => readFont(face),
  };
}

/**
 * Returns a WOFF2 font with `letters` alone, as far as `font` has them, and with what it knows of how to set them. Throws
 * where `font` is none, or what became of it is none.
 */
export async function cutDown(font: Uint8Array, letters: string): Promise<Uint8Array> {
  // Loaded when the first font is made: most builds have them all from before.
  const { default: subset } = await import("subset-font");
  const made = await subset(Buffer.from(font), letters, { targetFormat: "woff2", keepFeatures: features });
  if (made.toString("latin1", 0, 4) !== "wOF2") throw new Error("what was left of a font is no font");
  return made.length < font.length ? made : font;
}

function pathOf({ file }: Face): string {
  return `assets/fonts/${file}`;
}

function readFont({ family, file }: Face): Promise<Uint8Array> {
  return readOwn(path.join(findFontFolder(family), "files", file));
}
