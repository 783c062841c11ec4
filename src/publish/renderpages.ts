// Floor 9. Views → pages, by Eleventy. It gets finished values and gives text back; it writes nothing.
import path from "node:path";
import Eleventy from "@11ty/eleventy";
import { register } from "tsx/esm/api";
import type { SiteView } from "../views/siteview.ts";
import { fileOf, type SiteFile } from "./folder/sitefile.ts";

const root = path.resolve(import.meta.dirname, "../..");

/** Eleventy's input: pages, parts, figures, styles and scripts. */
export const templatesDir = path.join(root, "templates");

/** The template that shows each part of a view. */
const templates: Readonly<Record<keyof SiteView, string>> = {
  front: "front",
  studies: "study",
  changes: "changes",
  edges: "edge",
  moved: "moved",
  series: "series",
  shelves: "shelf",
  shelfIndexes: "shelves",
  survey: "survey",
  method: "method",
  rules: "rules",
  missing: "missing",
};

/**
 * Renders every page of what `view` has of a site. Eleventy imports the templates itself: with tsx registered it can, whoever
 * started us.
 */
export async function renderPages(view: Partial<SiteView>): Promise<readonly SiteFile[]> {
  // The JSX settings are ours, not those of the folder we happen to be called from.
  const unregister = register({ tsconfig: path.join(root, "tsconfig.json") });
  try {
    // Nothing is ever written there: it only takes part in the paths that Eleventy gives back.
    const nowhere = path.join(root, "_site");
    const eleventy = new Eleventy(templatesDir, nowhere, {
      configPath: path.join(root, "eleventy.config.ts"),
      quietMode: true,
      config: (config) => {
        config.addGlobalData("site", view);
        for (const [part, name] of Object.entries(templates))
          if (!(part in view)) config.ignores.add(matchTemplate(name));
      },
    });
    // Standard output belongs to the command.
    eleventy.disableLogger();
    const pages = await eleventy.toJSON();
    const files = pages.map(({ outputPath, content }) => {
      const sitePath = path.relative(nowhere, path.resolve(outputPath)).split(path.sep).join("/");
      return fileOf(sitePath, () => content);
    });
    // Eleventy gives them in the order in which they happened to be done.
    return files.sort((a, b) => (a.path < b.path ? -1 : 1));
  } catch (error) {
    // Eleventy says that a template threw; what it threw says why.
    throw error instanceof Error && "originalError" in error ? (error.originalError ?? error) : error;
  } finally {
    await unregister();
  }
}

/** The pattern of one template, as Eleventy writes its path: from the working folder. */
function matchTemplate(name: string): string {
  const file = path.relative("", path.join(templatesDir, "pages", `${name}.11ty.tsx`));
  return file
    .split(path.sep)
    .join("/")
    .replace(/[^\w./-]/g, "\\$&");
}
