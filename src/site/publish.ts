// Floor 6. An analysed gallery → the published folder: results become views, views pages, and the whole is swapped in.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { GalleryResult } from "../study/result.ts";
import type { SiteFile } from "./file.ts";
import { listFilesBeside } from "./list.ts";
import { writeOutput } from "./output.ts";
import { renderPages, templatesDir } from "./pages.ts";
import { presentSite } from "./present/site.ts";

/** What was published, and on how many pages. */
export interface BuildReport {
  readonly result: GalleryResult;
  readonly pages: number;
}

/**
 * Publishes an analysed gallery to `outDir`, staying clear of the folders in `keepOut`.
 *
 * Throws OutputError, and changes nothing, where `outDir` cannot be used.
 */
export async function publishGallery(
  result: GalleryResult,
  outDir: string,
  options: { readonly base?: string; readonly keepOut: readonly string[] },
): Promise<BuildReport> {
  const view = presentSite(result, options.base);
  const keepOut = [...options.keepOut, templatesDir, path.resolve(import.meta.dirname, "..")];
  let pages = 0;
  await writeOutput(outDir, keepOut, async (freshDir) => {
    const rendered = await renderPages(view);
    pages = rendered.length;
    await writeFiles([...rendered, ...(await listFilesBeside(result, view))], freshDir);
  });
  return { result, pages };
}

/** One after another: pictures take all cores by themselves. */
async function writeFiles(files: readonly SiteFile[], folder: string): Promise<void> {
  for (const file of files) {
    const target = path.join(folder, file.path);
    await mkdir(path.dirname(target), { recursive: true });
    await writeFile(target, await file.make());
  }
}
