// Floor 6. A content folder → the published folder, in one call.
import { analyseGallery } from "../study/run.ts";
import { type BuildReport, publishGallery } from "./publish.ts";

export interface BuildOptions {
  /** The path under which a host will show the site; default is that of the gallery's address. */
  readonly base?: string;
  /** Publish drafts as well. */
  readonly drafts?: boolean;
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
  const result = await analyseGallery(contentDir, { drafts: options.drafts ?? false });
  const base = options.base === undefined ? {} : { base: options.base };
  return publishGallery(result, outDir, { ...base, keepOut: [contentDir] });
}
