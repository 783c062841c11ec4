// Floor 6. The files every page shares: styles, fonts and their licence, the script for pages opened from a disk.
import { readdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { fileOf, type SiteFile } from "./file.ts";

export interface FontFile {
  /** Package of @fontsource. */
  readonly family: "source-serif-4" | "source-sans-3";
  readonly file: string;
  /** Whether every page needs it at once. */
  readonly preload: boolean;
}

/** The fonts the style sheet names. All but the preloaded ones are fetched only by pages that need
 * their letters. */
export const fontFiles: readonly FontFile[] = [
  { family: "source-serif-4", file: "source-serif-4-latin-400-normal.woff2", preload: true },
  { family: "source-sans-3", file: "source-sans-3-latin-400-normal.woff2", preload: true },
  { family: "source-serif-4", file: "source-serif-4-latin-400-italic.woff2", preload: false },
  { family: "source-serif-4", file: "source-serif-4-latin-600-normal.woff2", preload: false },
  { family: "source-serif-4", file: "source-serif-4-latin-ext-400-normal.woff2", preload: false },
  { family: "source-sans-3", file: "source-sans-3-latin-ext-400-normal.woff2", preload: false },
  { family: "source-serif-4", file: "source-serif-4-greek-400-normal.woff2", preload: false },
  { family: "source-sans-3", file: "source-sans-3-greek-400-normal.woff2", preload: false },
];

/** For pages opened from a disk; for lists; for a study; for the survey. */
const scripts = ["local.js", "list.js", "study.js", "survey.js"];

/** Order matters: later sheets build on earlier ones. */
const styleOrder = [
  "base",
  "page",
  "plate",
  "table",
  "figure",
  "gain",
  "front",
  "shelf",
  "study",
  "edge",
  "look",
  "options",
  "survey",
  "method",
  "rules",
  "print",
];

/** The files of `assets/`, from the templates at `templatesDir`. A part that is missing throws when it is made. */
export function listAssets(templatesDir: string): readonly SiteFile[] {
  return [
    fileOf("assets/site.css", () => joinStyles(path.join(templatesDir, "styles"))),
    ...scripts.map((file) =>
      fileOf(`assets/${file}`, () => readFile(path.join(templatesDir, "client", file))),
    ),
    ...fontFiles.map(({ family, file }) =>
      fileOf(`assets/fonts/${file}`, () => readFile(path.join(findFontFolder(family), "files", file))),
    ),
    fileOf("assets/fonts/OFL.txt", joinLicences),
  ];
}

async function joinStyles(stylesDir: string): Promise<string> {
  const found = (await readdir(stylesDir)).map((file) => path.basename(file, ".css")).sort();
  const unlisted = found.filter((name) => !styleOrder.includes(name));
  if (unlisted.length > 0)
    throw new Error(`style sheets without a place in the order: ${unlisted.join(", ")}`);
  const sheets = await Promise.all(
    styleOrder.map((name) => readFile(path.join(stylesDir, `${name}.css`), "utf8")),
  );
  return sheets.map(shorten).join("\n");
}

/** Without comments and indents: every page waits for this file. */
function shorten(sheet: string): string {
  return sheet
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/\n\s*/g, "\n")
    .trim();
}

async function joinLicences(): Promise<string> {
  const families = ["source-serif-4", "source-sans-3"] as const;
  const texts = await Promise.all(
    families.map(async (family) => {
      const text = await readFile(path.join(findFontFolder(family), "LICENSE"), "utf8");
      return `The font files ${family}-*.woff2 in this folder:\n\n${text.trim()}\n`;
    }),
  );
  return texts.join("\n\n");
}

/** The folder of an installed font family. */
export function findFontFolder(family: FontFile["family"]): string {
  return path.dirname(createRequire(import.meta.url).resolve(`@fontsource/${family}/package.json`));
}
