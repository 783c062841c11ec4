// Floor 6. What is for machines: feeds, sitemap, data with their schemas, pictures to take away, the icon.
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import type { GalleryResult, StudyResult } from "../study/result.ts";
import type { Gallery } from "../study/study.ts";
import { formatCanonical } from "./address.ts";
import { type Address, formatEdgesTable, formatStudiesData, formatStudyData } from "./data.ts";
import { formatAtom, formatJsonFeed, formatSitemap } from "./feed.ts";
import { fileOf, type SiteFile } from "./file.ts";
import { iconSvg } from "./icon.ts";
import { encodeDrawing } from "./images.ts";
import { orderStudies } from "./present/card.ts";
import { pngFiles, pngSize } from "./present/notes.ts";
import type { SiteView } from "./present/site.ts";
import { formatStudyPath } from "./present/status.ts";
import { unofficial } from "./unofficial.ts";

const iconPixels = 96;

/** All of it; the schemas come from `schemaDirs`. */
export async function listMachineFiles(
  { gallery, studies }: GalleryResult,
  view: SiteView,
  schemaDirs: readonly string[],
): Promise<readonly SiteFile[]> {
  const address = (to: string) => formatCanonical(gallery.address, to) ?? to;
  const facts = {
    title: gallery.title,
    description: gallery.description,
    language: gallery.language,
    publisher: gallery.society ?? gallery.title,
    address,
  };
  const icon = { width: iconPixels, height: iconPixels };
  return [
    fileOf("feed.xml", () => formatAtom(facts, view.studies)),
    fileOf("feed.json", () => formatJsonFeed(facts, view.studies)),
    fileOf("sitemap.xml", () => formatSitemap(listPages(view, address))),
    fileOf("studies.json", () => formatStudiesData(orderStudies(studies), gallery, address)),
    fileOf("assets/icon.svg", () => iconSvg),
    fileOf("assets/icon.png", () => encodeDrawing(iconSvg, icon)),
    ...(await listSchemas(schemaDirs)),
    ...studies.flatMap((result) => listStudyFiles(result, gallery, address)),
  ];
}

function listStudyFiles(result: StudyResult, gallery: Gallery, address: Address): readonly SiteFile[] {
  const { drawings, comparison, study } = result;
  const folder = formatStudyPath(study.slug);
  const size = pngSize(comparison.before.proportions);
  return [
    fileOf(`${folder}study.json`, () => formatStudyData(result, gallery, address)),
    fileOf(`${folder}edges.csv`, () => formatEdgesTable(result)),
    fileOf(`${folder}${pngFiles.original}`, () => encodeDrawing(drawings.original, size)),
    fileOf(`${folder}${pngFiles.redesign}`, () => encodeDrawing(drawings.redesign, size, unofficial)),
  ];
}

/** Every page that says where it stands; `lastmod` only where the study has a date. */
function listPages(view: SiteView, address: Address) {
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

async function listSchemas(folders: readonly string[]): Promise<readonly SiteFile[]> {
  const lists = await Promise.all(
    folders.map(async (folder) =>
      (await readdir(folder))
        .filter((file) => file.endsWith(".schema.json"))
        .map((file) => fileOf(`schemas/${file}`, () => readFile(path.join(folder, file)))),
    ),
  );
  return lists.flat();
}
