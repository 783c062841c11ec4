// Floor 9. A content folder → the published folder, in one call.
import { analyseGallery } from "../analysis/analysegallery.ts";
import { type OutputOptions, withOutput } from "./folder/output.ts";
import { withPool } from "./pictures/drawfiles.ts";
import { type BuildReport, type PublishOptions, publishTo } from "./publishgallery.ts";

/** The store keeps measurements too. */
export interface BuildOptions extends Partial<OutputOptions>, PublishOptions {
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
  const { drafts = false, store, base, keepOut = [contentDir] } = options;
  return withPool(store, (line) =>
    withOutput(outDir, { ...options, keepOut }, async (output) =>
      publishTo(output, await analyseGallery(contentDir, { drafts, line }), { line, store }, base),
    ),
  );
}
