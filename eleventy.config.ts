// Floor 9. How Eleventy reads our templates. It never sees what contributors write: that comes in as data only.
import type { UserConfig } from "@11ty/eleventy";
import { isValidElement, type VNode } from "preact";
import { renderToString } from "preact-render-to-string";

/** Set up before any template is read: our pages alone, rendered on the server, and nothing looked up beside them. */
export default function configure(config: UserConfig): void {
  config.addExtension(["11ty.js"], {
    key: "11ty.js",
    compile: () =>
      async function render(data) {
        const page = await this.defaultRenderer(data);
        if (!isValidElement(page)) throw new TypeError("a page template must return one element");
        return flatten(`<!DOCTYPE html>\n${renderToString(page as VNode)}\n`);
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

/** Nothing here is Markdown or HTML to Eleventy. */
export const config = { markdownTemplateEngine: false, htmlTemplateEngine: false };
