// Floor 6. An analysed gallery → the published folder: results become views, views pages, and the whole is swapped in.
import type { GalleryResult } from "../study/result.ts";
import type { Store } from "../study/store.ts";
import type { SiteFile } from "./file.ts";
import { keepPictures } from "./kept.ts";
import { listFilesBeside } from "./list.ts";
import { type Output, type OutputOptions, withOutput } from "./output.ts";
import { renderPages } from "./pages.ts";
import { presentSite } from "./present/site.ts";
import type { Swapped } from "./swap.ts";

/** What was published, on how many pages, and how it took the place of the site before. */
export interface BuildReport {
  readonly result: GalleryResult;
  readonly pages: number;
  readonly swapped: Swapped;
}

/** What a site is published with. */
export interface PublishOptions {
  /** The path under which a host will show the site; default is that of the gallery's address. */
  readonly base?: string | undefined;
  /** Pictures that were made before. */
  readonly store?: Store | undefined;
}

/** Publishes an analysed gallery to `output`. Throws what `Output.publish` throws. */
export async function publishTo(
  output: Output,
  result: GalleryResult,
  { base, store }: PublishOptions = {},
): Promise<BuildReport> {
  const { files, pages } = await listSite(result, base);
  return { result, pages, swapped: await output.publish(keepPictures(files, store)) };
}

/**
 * Publishes an analysed gallery to `outDir`, staying clear of the folders in `keepOut`.
 *
 * Throws OutputError, and changes nothing, where `outDir` cannot be used.
 */
export async function publishGallery(
  result: GalleryResult,
  outDir: string,
  options: OutputOptions & PublishOptions,
): Promise<BuildReport> {
  return withOutput(outDir, options, (output) => publishTo(output, result, options));
}

/** Returns every file of the site, the pages first, and how many pages there are. */
export async function listSite(
  result: GalleryResult,
  base?: string,
): Promise<{ readonly files: readonly SiteFile[]; readonly pages: number }> {
  const view = presentSite(result, base);
  const pages = await renderPages(view);
  return { files: [...pages, ...(await listFilesBeside(result, view, pages))], pages: pages.length };
}
