// Floor 6. Views → pages, by Eleventy. It gets finished values and gives text back; it writes nothing.
import path from "node:path";
import Eleventy from "@11ty/eleventy";
import { register } from "tsx/esm/api";
import { fileOf, type SiteFile } from "./file.ts";
import type { SiteView } from "./present/site.ts";

const root = path.resolve(import.meta.dirname, "../..");

/** Eleventy's input: pages, parts, figures, styles and scripts. */
export const templatesDir = path.join(root, "templates");

/** The templates of pages that are one for each study or edge; all others show the gallery as a whole. */
const ofStudies = ["study.11ty.tsx", "edge.11ty.tsx", "moved.11ty.tsx"];

/** Renders every page of `view`, or those of its studies alone. Eleventy imports the templates itself: with tsx registered it can, whoever started us. */
export async function renderPages(view: SiteView, isShared = true): Promise<readonly SiteFile[]> {
  // The JSX settings are ours, not those of the folder we happen to be called from.
  const unregister = register({ tsconfig: path.join(root, "tsconfig.json") });
  try {
    // Nothing is ever written there: it only takes part in the paths that Eleventy gives back.
    const nowhere = path.join(root, "_site");
    const eleventy = new Eleventy(templatesDir, nowhere, {
      configPath: path.join(root, "eleventy.config.ts"),
      quietMode: true,
      config: (config) => config.addGlobalData("site", view),
    });
    // Standard output belongs to the command.
    eleventy.disableLogger();
    const isWanted = ({ inputPath }: { readonly inputPath: string }): boolean =>
      isShared || ofStudies.includes(path.basename(inputPath));
    const pages = await eleventy.toJSON();
    const files = pages.filter(isWanted).map(({ outputPath, content }) => {
      const sitePath = path.relative(nowhere, path.resolve(outputPath)).split(path.sep).join("/");
      return fileOf(sitePath, () => content);
    });
    // Eleventy gives them in the order in which they happened to be done.
    return files.sort((a, b) => (a.path < b.path ? -1 : 1));
  } finally {
    await unregister();
  }
}
