// Floor 6. Writes what is for machines: feeds, sitemap, data with their schemas, pictures to take away, the icon.
import { copyFile, mkdir, readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { GalleryResult, StudyResult } from "../study/result.ts";
import { formatCanonical } from "./address.ts";
import { formatEdgesTable, formatStudiesData, formatStudyData } from "./data.ts";
import { formatAtom, formatJsonFeed, formatSitemap } from "./feed.ts";
import { iconSvg } from "./icon.ts";
import { encodeDrawing } from "./images.ts";
import { orderStudies } from "./present/card.ts";
import { pngFiles, pngSize } from "./present/notes.ts";
import type { SiteView } from "./present/site.ts";
import { formatStudyPath } from "./present/status.ts";
import { unofficial } from "./unofficial.ts";

const iconPixels = 96;

/** Writes all of it into the site at `outDir`; the schemas come from `schemaDirs`. */
export async function writeMachineFiles(
  { gallery, studies }: GalleryResult,
  view: SiteView,
  schemaDirs: readonly string[],
  outDir: string,
): Promise<void> {
  const address = (to: string) => formatCanonical(gallery.address, to) ?? to;
  const write = (file: string, text: string | Buffer) => writeFile(path.join(outDir, file), text);
  const facts = {
    title: gallery.title,
    description: gallery.description,
    language: gallery.language,
    publisher: gallery.society ?? gallery.title,
    address,
  };
  await write("feed.xml", formatAtom(facts, view.studies));
  await write("feed.json", formatJsonFeed(facts, view.studies));
  await write("sitemap.xml", formatSitemap(listPages(view, address)));
  await write("studies.json", formatStudiesData(orderStudies(studies), gallery, address));
  await write("assets/icon.svg", iconSvg);
  await write("assets/icon.png", await encodeDrawing(iconSvg, { width: iconPixels, height: iconPixels }));
  await copySchemas(schemaDirs, path.join(outDir, "schemas"));
  for (const result of studies) {
    const folder = path.join(outDir, formatStudyPath(result.study.slug));
    await writeFile(path.join(folder, "study.json"), formatStudyData(result, gallery, address));
    await writeFile(path.join(folder, "edges.csv"), formatEdgesTable(result));
    await writePngs(result, folder);
  }
}

async function writePngs({ drawings, comparison }: StudyResult, folder: string): Promise<void> {
  const size = pngSize(comparison.before.proportions);
  await writeFile(path.join(folder, pngFiles.original), await encodeDrawing(drawings.original, size));
  await writeFile(
    path.join(folder, pngFiles.redesign),
    await encodeDrawing(drawings.redesign, size, unofficial),
  );
}

/** Every page that says where it stands; `lastmod` only where the study has a date. */
function listPages(view: SiteView, address: (to: string) => string) {
  const studies = view.studies.map(({ slug, date }) => ({
    url: address(`/studies/${slug}/`),
    ...(date === undefined ? {} : { date: date.iso }),
  }));
  const others = [...view.edges, ...view.shelves].map(({ folder }) => ({ url: address(`/${folder}/`) }));
  return [
    { url: address("/") },
    { url: address("/survey/") },
    { url: address("/method/") },
    ...studies,
    ...others,
  ];
}

async function copySchemas(from: readonly string[], to: string): Promise<void> {
  await mkdir(to, { recursive: true });
  for (const folder of from)
    for (const file of await readdir(folder))
      if (file.endsWith(".schema.json")) await copyFile(path.join(folder, file), path.join(to, file));
}
