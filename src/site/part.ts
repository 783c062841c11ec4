// Floor 6. One part of a site: the pages and files of some studies, those of the gallery as a whole, or both.
import type { GalleryResult } from "../study/result.ts";
import type { Store } from "../study/store.ts";
import { letterPages } from "./assets.ts";
import type { SiteFile } from "./file.ts";
import { keepPictures } from "./kept.ts";
import type { Lettering } from "./lettering.ts";
import { listFilesBeside } from "./list.ts";
import { renderPages, templatesDir } from "./pages.ts";
import { presentSite, type SitePart } from "./present/site.ts";

/** A part as files, the pages first; and the letters that its pages set. */
export interface ListedPart {
  readonly files: readonly SiteFile[];
  readonly pages: number;
  readonly lettering: Lettering;
}

/** Lists a part of a site; `others` are the letters of the parts before it, whose fonts the shared part publishes. */
export async function listPart(
  result: GalleryResult,
  { base, store }: { readonly base?: string | undefined; readonly store?: Store | undefined },
  part: SitePart,
  others: readonly Lettering[] = [],
): Promise<ListedPart> {
  const view = presentSite(result, base, part);
  const pages = await renderPages(view, part.isShared);
  const lettering = await letterPages(templatesDir, pages);
  const beside = await listFilesBeside(result, view, part, [...others, lettering]);
  return { files: keepPictures([...pages, ...beside], store), pages: pages.length, lettering };
}
