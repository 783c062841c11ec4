// Floor 6. An analysed gallery → the published folder: results become views, views pages, and the whole is swapped in.
import type { GalleryResult } from "../study/result.ts";
import { mostInMemory, type Spill } from "../study/spill.ts";
import type { Store } from "../study/store.ts";
import { type Output, type OutputOptions, withOutput } from "./output.ts";
import { wholeSite } from "./present/site.ts";
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
  /** Holds the results of a gallery that is too large for one process. */
  readonly spill?: Spill | undefined;
  /** Most studies that one process publishes. */
  readonly chunk?: number;
}

/** Publishes an analysed gallery to `output`. Throws what `Output.publish` throws. */
export async function publishTo(
  output: Output,
  result: GalleryResult,
  { base, store, spill, chunk = mostInMemory }: PublishOptions = {},
): Promise<BuildReport> {
  if (spill !== undefined && result.studies.length > chunk) {
    const { publishChunks } = await import("./chunk.ts");
    let pages = 0;
    const swapped = await output.publishParts(async (_, fresh) => {
      const written = await publishChunks(result, { base, store, spill, chunk, fresh });
      pages = written.pages;
      return written.entries;
    });
    return { result, pages, swapped };
  }
  // Loaded where it is needed: Eleventy and the drawing of pictures take their memory.
  const { listPart } = await import("./part.ts");
  const { files, pages } = await listPart(result, { base, store }, wholeSite);
  return { result, pages, swapped: await output.publish(files) };
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
