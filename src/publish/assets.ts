// Floor 9. The files every page shares: styles, fonts and their licence, the script for pages opened from a disk.
import path from "node:path";
import { listOwn, programFolder, readOwn } from "../content/disk/packagefile.ts";
import type { Theme } from "../content/gallery/themekey.ts";
import { type Face, faces, familiesOf, findFontFolder, formatFaces } from "../views/fontface.ts";
import { fileOf, type SiteFile } from "./folder/sitefile.ts";
import { collectLettering, type Lettering, lettersOf } from "./fonts/lettering.ts";
import { subsetFont, wholeFont } from "./fonts/subset.ts";
import { formatTheme } from "./themestyle.ts";

/** Imports code of the floors below, so it is as `cli/compile.mjs` bundled it, wherever the other templates come from. */
const bundled = "takepart.js";

/** For pages opened from a disk; for words that are looked for in lists and survey; for lists; for a study; for its pair; for its steps; for the survey; for the vote; for the rules; to take part. */
const scripts: readonly string[] = [
  "local.js",
  "find.js",
  "list.js",
  "study.js",
  "swap.js",
  "show.js",
  "survey.js",
  "vote.js",
  "rules.js",
  bundled,
];

/** Order matters: later sheets build on earlier ones. */
const styleOrder = [
  "base",
  "page",
  "plate",
  "pair",
  "table",
  "figure",
  "ruler",
  "gain",
  "front",
  "shelf",
  "series",
  "rivals",
  "study",
  "show",
  "edge",
  "refer",
  "options",
  "survey",
  "print",
];
/** What only the pages of method, rules, taking part and votes, sheets, and a gallery's own pages need: no study page waits for it. */
const explaining: readonly string[] = ["method", "rules", "own", "takepart", "vote", "sheet", "maker"];

/**
 * The files of `assets/`, from the templates at `templatesDir`, with every font there is: any page can be shown with them.
 * A part that is missing throws when it is made.
 */
export function listAssets(templatesDir: string, theme?: Theme): readonly SiteFile[] {
  return listWith(templatesDir, faces, faces.map(wholeFont), theme);
}

/** Returns the letters that `pages` set, with those that styles and scripts write. */
export async function readLettering(
  templatesDir: string,
  pages: readonly SiteFile[],
  theme: Theme = {},
): Promise<Lettering> {
  const texts = await Promise.all(pages.map(async (page) => String(await page.make())));
  const written = await Promise.all([
    joinStyles(templatesDir, [...styleOrder, ...explaining]),
    ...scripts.map((file) => readText(findScript(templatesDir, file))),
  ]);
  return collectLettering(texts, written, familiesOf(theme));
}

/** The same for a site whose pages set `lettering`: the fonts that they need, with these letters. */
export function listAssetsFor(
  templatesDir: string,
  lettering: Lettering,
  theme?: Theme,
): readonly SiteFile[] {
  const needed = faces.flatMap((face) => {
    const letters = lettersOf(face, lettering);
    return letters === undefined ? [] : [{ face, font: subsetFont(face, letters) }];
  });
  return listWith(
    templatesDir,
    needed.map(({ face }) => face),
    needed.map(({ font }) => font),
    theme,
  );
}

function listWith(
  templatesDir: string,
  used: readonly Face[],
  fonts: readonly SiteFile[],
  theme: Theme = {},
): readonly SiteFile[] {
  return [
    fileOf(
      "assets/site.css",
      async () => `${formatFaces(used)}\n${await joinStyles(templatesDir, styleOrder, formatTheme(theme))}`,
    ),
    fileOf("assets/method.css", () => joinStyles(templatesDir, explaining)),
    ...scripts.map((file) => fileOf(`assets/${file}`, () => readOwn(findScript(templatesDir, file)))),
    ...fonts,
    fileOf("assets/fonts/OFL.txt", joinLicences),
  ];
}

function findScript(templatesDir: string, file: string): string {
  const folder = file === bundled ? path.join(programFolder, "templates") : templatesDir;
  return path.join(folder, "client", file);
}

/** With `theme` behind the first sheet, so that those for paper have the last word. */
async function joinStyles(templatesDir: string, names: readonly string[], theme = ""): Promise<string> {
  const stylesDir = path.join(templatesDir, "styles");
  const found = (await listOwn(stylesDir)).map((file) => path.basename(file, ".css"));
  const unlisted = found.filter((name) => ![...styleOrder, ...explaining].includes(name));
  if (unlisted.length > 0)
    throw new Error(`style sheets without a place in the order: ${unlisted.join(", ")}`);
  const sheets = await Promise.all(names.map((name) => readText(path.join(stylesDir, `${name}.css`))));
  const [first = "", ...others] = sheets;
  return [`${first}${theme}`, ...others].map(shorten).join("\n");
}

/** Without comments, indents and the line ends that mean nothing: every page waits for this file. */
function shorten(sheet: string): string {
  return sheet
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/\n\s*/g, "\n")
    .replace(/(?<=[{};])\n|\n(?=\})/g, "")
    .replace(/(?<=[:,]) | (?=\{)/g, "")
    .replace(/;(?=\})/g, "")
    .trim();
}

async function joinLicences(): Promise<string> {
  const families = ["source-serif-4", "source-sans-3"] as const;
  const texts = await Promise.all(
    families.map(async (family) => {
      const text = await readText(path.join(findFontFolder(family), "LICENSE"));
      const files = `The font files ${family}-*.woff2 in this folder, on a published site subsets of the originals`;
      return `${files}:\n\n${text.trim()}\n`;
    }),
  );
  return texts.join("\n\n");
}

async function readText(file: string): Promise<string> {
  return (await readOwn(file)).toString("utf8");
}
