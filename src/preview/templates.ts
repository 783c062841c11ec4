// Floor 10. The page templates as they stand on the disk at this moment, and the pages they make of a site: the same ones,
// byte for byte, that Eleventy makes, one at a time.
import path from "node:path";
import { pathToFileURL } from "node:url";
import { listOwn, packageFolder, programFolder } from "../content/disk/packagefile.ts";
import { kindOf } from "../content/disk/readfile.ts";
import type { RenderPage } from "../publish/renderpages.ts";
import type { SiteView } from "../views/siteview.ts";
import type { Say } from "../words/say.ts";

const tsconfig = path.join(packageFolder, "tsconfig.json");

/** A page that can be made. `path` as in the published folder: `studies/a-wheel/index.html`. */
export interface TemplatePage {
  readonly path: string;
  render(): string;
}

/** What a template gets: the site, and its own page of it under a name of its own. */
type Props = Readonly<Record<string, unknown>>;

interface Template {
  readonly data: {
    readonly permalink: string | ((props: Props) => string);
    readonly pagination?: { readonly data: string; readonly size: number; readonly alias: string };
  };
  readonly render: (props: Props) => unknown;
}

/** Returns our own templates: in a checkout the sources, which may be edited, else as they were compiled. */
export async function findTemplates(): Promise<string> {
  const sources = path.join(packageFolder, "templates");
  return (await kindOf(sources)) === "folder" ? sources : path.join(programFolder, "templates");
}

/** Reads every template in `templatesDir` anew. Throws where one cannot be read: the message is for its author. */
export async function loadTemplates(templatesDir: string): Promise<Templates> {
  const pagesDir = path.join(templatesDir, "pages");
  const compiled = await listOwn(pagesDir, ".11ty.js");
  if (compiled.length === 0) return loadSources(pagesDir);
  const files = compiled.map((file) => pathToFileURL(path.join(pagesDir, file)).href);
  const words = pathToFileURL(path.join(templatesDir, "parts", "words.js")).href;
  return load(words, files, (file) => import(file));
}

/** The same of TSX, which only a checkout has, and what reads it. */
async function loadSources(pagesDir: string): Promise<Templates> {
  const { register } = await import("tsx/esm/api");
  loads += 1;
  // A namespace of its own each time: what was loaded before would come back unchanged.
  const loader = register({ namespace: `templates-${loads}`, tsconfig });
  try {
    const files = (await listOwn(pagesDir, ".11ty.tsx")).map((file) => path.join(pagesDir, file));
    const words = path.join(pagesDir, "../parts/words.tsx");
    return await load(words, files, (file) => loader.import(file, import.meta.url));
  } finally {
    await loader.unregister();
  }
}

async function load(
  words: string,
  files: readonly string[],
  read: (file: string) => Promise<unknown>,
): Promise<Templates> {
  const [rendering, ...modules] = await Promise.all([words, ...files].map(read));
  const { renderPage } = rendering as { readonly renderPage: RenderPage };
  return new Templates(modules.map(checkTemplate), renderPage);
}

let loads = 0;

export class Templates {
  private readonly templates: readonly Template[];
  private readonly renderPage: RenderPage;

  constructor(templates: readonly Template[], renderPage: RenderPage) {
    this.templates = templates;
    this.renderPage = renderPage;
  }

  /** Lists the pages of a site, in the words of `say`. Nothing is rendered yet. */
  listPages(site: SiteView, say: Say): readonly TemplatePage[] {
    return this.templates.flatMap(({ data, render }) => {
      const { pagination, permalink } = data;
      const each: readonly Props[] =
        pagination === undefined
          ? [{ site }]
          : findItems({ site }, pagination.data).map((item) => ({ site, [pagination.alias]: item }));
      return each.map((props) => ({
        path: (typeof permalink === "string" ? permalink : permalink(props)).replace(/^\//, ""),
        render: () => this.renderPage(say, render(props)),
      }));
    });
  }
}

function checkTemplate(found: unknown): Template {
  const { data, render } = found as Partial<Template>;
  if (data?.permalink === undefined || typeof render !== "function")
    throw new TypeError("a page template must export data with a permalink, and render");
  if (data.pagination !== undefined && data.pagination.size !== 1)
    throw new TypeError("a page template must show one thing a page");
  return { data, render };
}

/** Returns the list at a dotted path: `site.studies`. */
function findItems(props: Props, dotted: string): readonly unknown[] {
  let found: unknown = props;
  for (const key of dotted.split(".")) found = (found as Props | undefined)?.[key];
  if (!Array.isArray(found)) throw new TypeError(`a page template asks for ${dotted}, which is no list`);
  return found;
}
