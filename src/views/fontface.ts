// Floor 8. The faces of the two typefaces: which file of which package has which letters, and the rules by which a style
// sheet takes letters from it.
import { createRequire } from "node:module";
import path from "node:path";
import { type Family, familyNames } from "../content/gallery/fontfamily.ts";
import type { Theme } from "../content/gallery/themekey.ts";

type Script = "latin" | "latin-ext" | "greek";

/** Weight and slant, as a style sheet asks for them. */
export type Cut = "400 normal" | "400 italic" | "600 normal" | "600 italic";

export interface Face {
  /** Package of @fontsource. */
  readonly family: Family;
  readonly script: Script;
  readonly cut: Cut;
  /** The name of the file, in the package and on the site. */
  readonly file: string;
  /** Whether every page needs it at once, and readers type in it. */
  readonly isMain: boolean;
}

const families = ["source-serif-4", "source-sans-3"] as const;
const scripts = ["latin", "latin-ext", "greek"] as const;
const cuts = ["400 normal", "400 italic", "600 normal", "600 italic"] as const;

/** What style sheets call the family that gives Greek pages their Δ. */
const deltaNames: Readonly<Record<Family, string>> = {
  "source-serif-4": "Serif Delta",
  "source-sans-3": "Sans Delta",
};

/**
 * Letters of a script as pairs of first and last, no letter in two scripts.
 * Source: unicode.json of the packages, which says what their files have.
 */
const ranges: Readonly<Record<Script, readonly (readonly [number, number])[]>> = {
  latin: [
    [0x00, 0xff],
    [0x131, 0x131],
    [0x152, 0x153],
    [0x2bb, 0x2bc],
    [0x2c6, 0x2c6],
    [0x2da, 0x2da],
    [0x2dc, 0x2dc],
    [0x304, 0x304],
    [0x308, 0x308],
    [0x329, 0x329],
    [0x2000, 0x206f],
    [0x20ac, 0x20ac],
    [0x2122, 0x2122],
    [0x2191, 0x2191],
    [0x2193, 0x2193],
    [0x2212, 0x2212],
    [0x2215, 0x2215],
    [0xfeff, 0xfeff],
    [0xfffd, 0xfffd],
  ],
  "latin-ext": [
    [0x100, 0x130],
    [0x132, 0x151],
    [0x154, 0x2ba],
    [0x1e00, 0x1e9f],
    [0x1ef2, 0x1eff],
    [0x20a0, 0x20ab],
    [0x20ad, 0x20c0],
  ],
  greek: [[0x370, 0x3ff]],
};

/** The Δ of ΔE00 alone would fetch a Greek font for one triangle: only Greek pages take it from there. */
export const delta = "Δ";

/** Every face that a page may ask for; the main ones first. */
export const faces: readonly Face[] = scripts.flatMap((script) =>
  cuts.flatMap((cut) =>
    families.map((family) => ({
      family,
      script,
      cut,
      file: `${family}-${script}-${cut.replace(" ", "-")}.woff2`,
      isMain: script === "latin" && cut === "400 normal",
    })),
  ),
);

/** Whether a browser takes the letter with this code point from faces of `script`. */
export function isInScript(script: Script, code: number): boolean {
  return ranges[script].some(([first, last]) => first <= code && code <= last);
}

/** The families of running text and of headings. */
export function familiesOf({ text, headings = text }: Theme): {
  readonly text: Family;
  readonly headings: Family;
} {
  return { text: findFamily(text), headings: findFamily(headings) };
}

function findFamily(name: string | undefined): Family {
  return name === familyNames["source-sans-3"] ? "source-sans-3" : "source-serif-4";
}

/** The `@font-face` rules of `used`, for a style sheet beside the folder `fonts`. */
export function formatFaces(used: readonly Face[]): string {
  return used
    .flatMap((face) => {
      const [own, greek] = [familyNames[face.family], deltaNames[face.family]];
      if (face.script !== "greek") return [formatRule(face, own, ranges[face.script])];
      const code = delta.codePointAt(0) ?? 0;
      const others = ranges.greek.flatMap(
        ([first, last]) =>
          [
            [first, code - 1],
            [code + 1, last],
          ] as const,
      );
      return [formatRule(face, own, others), formatRule(face, greek, [[code, code]])];
    })
    .join("\n");
}

function formatRule(face: Face, name: string, letters: readonly (readonly [number, number])[]): string {
  const [weight, style] = face.cut.split(" ");
  const hex = (code: number): string => code.toString(16).toUpperCase().padStart(4, "0");
  const range = letters.map(([first, last]) =>
    first === last ? `U+${hex(first)}` : `U+${hex(first)}-${hex(last)}`,
  );
  return `@font-face {
font-family: "${name}";
src: url("fonts/${face.file}") format("woff2");
font-weight: ${weight};
font-style: ${style};
font-display: swap;
unicode-range: ${range.join(", ")};
}`;
}

/** The folder of an installed font family. */
export function findFontFolder(family: Family): string {
  return path.dirname(createRequire(import.meta.url).resolve(`@fontsource/${family}/package.json`));
}
