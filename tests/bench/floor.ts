// node --import tsx tests/bench/floor.ts SITE pages|pictures: writes the pages, or the pictures, of a built site once more and does
// nothing else: Eleventy alone the pages from ready texts, sharp alone the pictures from ready pixels.
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import Eleventy from "@11ty/eleventy";
import sharp from "sharp";

const [site, what] = process.argv.slice(2);
if (site === undefined || !(what === "pages" || what === "pictures"))
  throw new Error("name the folder of a site, and pages or pictures");
const folder = await mkdtemp(join(tmpdir(), "counterchange-floor-"));
try {
  const entries = await readdir(site, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  if (what === "pages") await writePages(site, files);
  else await writePictures(files);
} finally {
  await rm(folder, { recursive: true, force: true });
}

async function writePages(root: string, files: readonly string[]): Promise<void> {
  await mkdir(join(folder, "in"));
  await writeFile(join(folder, "package.json"), '{ "type": "module" }\n');
  const template = `export const data = { pagination: { data: "pages", size: 1, alias: "one" }, permalink: ({ one }) => one.path };
export const render = ({ one }) => one.text;\n`;
  await writeFile(join(folder, "in/page.11ty.js"), template);
  const pages = await Promise.all(
    files
      .filter((file) => file.endsWith(".html"))
      .map(async (file) => ({ path: relative(root, file), text: await readFile(file, "utf8") })),
  );
  const eleventy = new Eleventy(join(folder, "in"), join(folder, "out"), {
    quietMode: true,
    config: (config) => config.addGlobalData("pages", pages),
  });
  eleventy.disableLogger();
  await eleventy.write();
}

/** As the program encodes them; to read the pixels takes the place of rendering them. */
async function writePictures(files: readonly string[]): Promise<void> {
  for (const [index, file] of files.entries()) {
    const image = sharp(file);
    if (file.endsWith(".png"))
      await image.png({ compressionLevel: 7, palette: false }).toFile(join(folder, `${index}.png`));
    if (file.endsWith(".webp"))
      await image.webp({ lossless: true, exact: true, effort: 2 }).toFile(join(folder, `${index}.webp`));
  }
}
