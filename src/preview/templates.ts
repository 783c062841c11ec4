// Floor 10. The page templates as they stand on the disk at this moment, and the pages they make of a site: the same ones,
// byte for byte, that Eleventy makes, one at a time.
import path from "node:path";
import { register } from "tsx/esm/api";
import { listOwn } from "../content/disk/packagefile.ts";
import type { SiteView } from "../views/siteview.ts";

const tsconfig = path.resolve(import.meta.dirname, "../../tsconfig.json");

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

/** Reads every template in `templatesDir` anew. Throws where one cannot be read: the message is for its author. */
export async function loadTemplates(templatesDir: string): Promise<Templates> {
  loads += 1;
  // A namespace of its own each time: what was loaded before would come back unchanged.
  const loader = register({ namespace: `templates-${loads}`, tsconfig });
  try {
    const pagesDir = path.join(templatesDir, "pages");
    const files = await listOwn(pagesDir, ".11ty.tsx");
    const [{ renderToString }, ...modules] = await Promise.all([
      loader.import("preact-render-to-string", import.meta.url),
      ...files.map((file) => loader.import(path.join(pagesDir, file), import.meta.url)),
    ]);
    return new Templates(modules.map(checkTemplate), renderToString);
  } finally {
    await loader.unregister();
  }
}

let loads = 0;

export class Templates {
  private readonly templates: readonly Template[];
  private readonly renderToString: (element: unknown) => string;

  constructor(templates: readonly Template[], renderToString: (element: unknown) => string) {
    this.templates = templates;
    this.renderToString = renderToString;
  }

  /** Lists the pages of a site. Nothing is rendered yet. */
  listPages(site: SiteView): readonly TemplatePage[] {
    return this.templates.flatMap(({ data, render }) => {
      const { pagination, permalink } = data;
      const each: readonly Props[] =
        pagination === undefined
          ? [{ site }]
          : findItems({ site }, pagination.data).map((item) => ({ site, [pagination.alias]: item }));
      return each.map((props) => ({
        path: (typeof permalink === "string" ? permalink : permalink(props)).replace(/^\//, ""),
        render: () => `<!DOCTYPE html>\n${this.renderToString(render(props))}\n`,
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
