// Floor 9. Views → pages, by Eleventy. It gets finished values and gives text back; it writes nothing.
import path from "node:path";
import { pathToFileURL } from "node:url";
import Eleventy, { type UserConfig } from "@11ty/eleventy";
import { programFolder } from "../content/disk/packagefile.ts";
import { findWay, withSlashes } from "../content/disk/pathname.ts";
import type { SiteView } from "../views/siteview.ts";
import { createSay, type Say, type Worded } from "../words/say.ts";
import { fileOf, type SiteFile } from "./folder/sitefile.ts";

/** Eleventy's input: pages, parts, figures, styles and scripts. */
export const templatesDir = path.join(programFolder, "templates");

/** What its types leave out. */
interface Timed {
  readonly benchmarkManager?: { get(name: string): { setIsVerbose(isVerbose: boolean): void } };
}

/** What templates/parts/words.tsx offers. */
export type RenderPage = (say: Say, page: unknown) => string;

/** The template that shows each part of a view. */
const templates: Readonly<Record<keyof SiteView, string>> = {
  front: "front",
  studies: "study",
  changes: "changes",
  shows: "show",
  sheets: "sheet",
  makers: "maker",
  edges: "edge",
  moved: "moved",
  series: "series",
  rivals: "rivals",
  seriesSheets: "seriessheet",
  seriesShows: "seriesshow",
  votes: "vote",
  shelves: "shelf",
  shelfIndexes: "shelves",
  survey: "survey",
  method: "method",
  rules: "rules",
  pages: "own",
  takePart: "takepart",
  missing: "missing",
};

/** Renders every page of what `view` has of a site. */
export async function renderPages(
  view: Partial<SiteView>,
  { language, words }: Worded,
): Promise<readonly SiteFile[]> {
  try {
    const { renderPage } = (await import(
      pathToFileURL(path.join(templatesDir, "parts", "words.js")).href
    )) as {
      readonly renderPage: RenderPage;
    };
    const say = createSay(language, words);
    // Nothing is ever written there: it only takes part in the paths that Eleventy gives back.
    const nowhere = path.join(programFolder, "nowhere");
    const eleventy = new Eleventy(templatesDir, nowhere, {
      // None that lies in the working folder.
      configPath: "",
      quietMode: true,
      config: (config) => {
        readTemplates(config, (page) => renderPage(say, page));
        // On a slow machine it tells how long helpers of ours took, and was made before it heard of the quiet mode.
        (config as Timed).benchmarkManager?.get("Configuration").setIsVerbose(false);
        config.addGlobalData("site", view);
        for (const [part, name] of Object.entries(templates))
          if (!(part in view)) config.ignores.add(matchTemplate(name));
      },
    });
    // Standard output belongs to the command.
    eleventy.disableLogger();
    const pages = await eleventy.toJSON();
    const files = pages.map(({ outputPath, content }) => {
      return fileOf(findWay(outputPath, nowhere) ?? outputPath, () => content);
    });
    // Eleventy gives them in the order in which they happened to be done.
    return files.sort((a, b) => (a.path < b.path ? -1 : 1));
  } catch (error) {
    // Eleventy says that a template threw; what it threw says why.
    throw error instanceof Error && "originalError" in error ? (error.originalError ?? error) : error;
  }
}

/** Our pages alone, rendered on the server, and nothing looked up beside them: what contributors write comes in as data. */
function readTemplates(config: UserConfig, renderText: (page: unknown) => string): void {
  config.addExtension(["11ty.js"], {
    key: "11ty.js",
    compile: () =>
      async function render(data) {
        return flatten(renderText(await this.defaultRenderer(data)));
      },
  });
  config.setTemplateFormats(["11ty.js"]);
  config.setDataFileSuffixes([]);
  config.setUseGitIgnore(false);
  // An installed copy lives in node_modules, which Eleventy would pass over.
  config.ignores.delete("**/node_modules/**");
}

/** Returns the text in one piece: as it was put together, the thousands it is made of would stay in memory with it. */
function flatten(text: string): string {
  return Buffer.from(text).toString();
}

/** The pattern of one template, as Eleventy writes its path: from the working folder. */
function matchTemplate(name: string): string {
  const file = path.relative("", path.join(templatesDir, "pages", `${name}.11ty.js`));
  return withSlashes(file).replace(/[^\w./-]/g, "\\$&");
}
