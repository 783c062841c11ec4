// node --import tsx tests/bench/floor.ts SITE: Eleventy alone writes every page of a built site once more, from ready texts.
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import Eleventy from "@11ty/eleventy";

const site = process.argv[2];
if (site === undefined) throw new Error("name the folder of a site");
const folder = await mkdtemp(join(tmpdir(), "counterchange-floor-"));
try {
  await mkdir(join(folder, "in"));
  await writeFile(join(folder, "package.json"), '{ "type": "module" }\n');
  const template = `export const data = { pagination: { data: "pages", size: 1, alias: "one" }, permalink: ({ one }) => one.path };
export const render = ({ one }) => one.text;\n`;
  await writeFile(join(folder, "in/page.11ty.js"), template);
  const entries = await readdir(site, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile() && entry.name.endsWith(".html"));
  const pages = await Promise.all(
    files.map(async (entry) => {
      const file = join(entry.parentPath, entry.name);
      return { path: relative(site, file), text: await readFile(file, "utf8") };
    }),
  );
  const eleventy = new Eleventy(join(folder, "in"), join(folder, "out"), {
    quietMode: true,
    config: (config) => config.addGlobalData("pages", pages),
  });
  eleventy.disableLogger();
  await eleventy.write();
} finally {
  await rm(folder, { recursive: true, force: true });
}
