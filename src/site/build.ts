// Floor 6. A content folder → the published folder, in one call.
import { analyseGallery } from "../study/run.ts";
import type { Store } from "../study/store.ts";
import { type OutputOptions, withOutput } from "./output.ts";
import { type BuildReport, publishTo } from "./publish.ts";

export interface BuildOptions extends Partial<OutputOptions> {
  /** The path under which a host will show the site; default is that of the gallery's address. */
  readonly base?: string;
  /** Publish drafts as well. */
  readonly drafts?: boolean;
  /** Measurements that were made before. */
  readonly store?: Store;
}

/**
 * Publishes the gallery in `contentDir` to `outDir`. Bad studies are left out and named in
 * `result.problems`; the others are published.
 *
 * Throws OutputError, and changes nothing, where `outDir` cannot be used.
 */
export async function buildSite(
  contentDir: string,
  outDir: string,
  options: BuildOptions = {},
): Promise<BuildReport> {
  const { base, drafts = false, store, keepOut = [contentDir] } = options;
  return withOutput(outDir, { ...options, keepOut }, async (output) => {
    const result = await analyseGallery(contentDir, { drafts, ...(store === undefined ? {} : { store }) });
    return publishTo(output, result, base);
  });
}
