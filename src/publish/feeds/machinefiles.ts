// Floor 9. What is for machines: feeds, sitemap, data with their schemas, pictures to take away, the icon.
import path from "node:path";
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { listOwn, readOwn } from "../../content/disk/packagefile.ts";
import type { Gallery } from "../../content/study/study.ts";
import { formatCanonical, locate } from "../../views/address.ts";
import { orderStudies } from "../../views/front/card.ts";
import { listStudyPages } from "../../views/pageaddress.ts";
import { partPath } from "../../views/pageframe.ts";
import { formatWords, wordsFile } from "../../views/searchwords.ts";
import { formatSeriesPath } from "../../views/series/seriespage.ts";
import { formatSheetPath } from "../../views/sheet/sheetpage.ts";
import { decisionsPath } from "../../views/shelf/shelf.ts";
import { lessonFiles, stillsFolder } from "../../views/show/lessonfile.ts";
import { presentShow } from "../../views/show/showpage.ts";
import type { SharedPages, StudyPages } from "../../views/siteview.ts";
import { formatStudyPath } from "../../views/status.ts";
import { formatVotePath } from "../../views/vote/votepage.ts";
import { formatOf } from "../../words/format.ts";
import { nameStudy } from "../../words/namedresult.ts";
import { fileOf, type SiteFile } from "../folder/sitefile.ts";
import { iconSvg } from "../pictures/icon.ts";
import { formatEdgesTable } from "./edgescsv.ts";
import { formatAtom, formatDecisions, formatJsonFeed } from "./feed.ts";
import { type Address, formatStudiesData, formatStudyData } from "./sitedata.ts";
import { formatSitemaps } from "./sitemap.ts";
import { formatScript } from "./speakerscript.ts";

/** What a view has for machines: the studies are those that are new, or all. */
type View = SharedPages & Pick<StudyPages, "studies">;

/** All of it but the files of each study; the schemas come from `schemaDirs`. */
export async function listMachineFiles(
  { gallery, studies, series, pages }: GalleryResult,
  view: View,
  schemaDirs: readonly string[],
): Promise<readonly SiteFile[]> {
  const linksOf = locateFrom(gallery);
  return [
    ...listSubscriptions(gallery, studies, view),
    fileOf("robots.txt", () => formatRobots(formatCanonical(gallery.address, "/sitemap.xml"))),
    fileOf("studies.json", () =>
      formatStudiesData(orderStudies(studies), series ?? [], view.votes, gallery, linksOf("/studies.json")),
    ),
    fileOf(wordsFile, () => formatWords(orderStudies(studies), formatOf(gallery), pages)),
    fileOf("assets/icon.svg", () => iconSvg),
    ...(await listSchemas(schemaDirs, gallery)),
  ];
}

/** Every search engine may read everything. Sources: RFC 9309, section 2.2; sitemaps.org, protocol 0.9, for the last line. */
function formatRobots(sitemap: string | undefined): string {
  const rules = "User-agent: *\nAllow: /\n";
  return sitemap === undefined ? rules : `${rules}\nSitemap: ${sitemap}\n`;
}

/** For the file at a site path: what its links are. */
function locateFrom({ address }: Gallery): (from: string) => Address {
  return (from) => (to) => locate(address, from, to);
}

/** Feeds and sitemap; none where the gallery has no address, because neither an id nor a link in them could be right. */
function listSubscriptions(
  gallery: Gallery,
  studies: readonly StudyResult[],
  view: View,
): readonly SiteFile[] {
  if (formatCanonical(gallery.address, "/") === undefined) return [];
  const address = (to: string) => formatCanonical(gallery.address, to) ?? to;
  const facts = {
    title: gallery.title,
    description: gallery.description,
    format: formatOf(gallery),
    publisher: gallery.society ?? gallery.title,
    address,
  };
  const decided = view.shelves.find(({ folder }) => folder === decisionsPath.slice(1, -1))?.cards ?? [];
  const maps = formatSitemaps(listPages(orderStudies(studies), view, address), address);
  return [
    fileOf("feed.xml", () => formatAtom(facts, view.studies, view.series)),
    ...(decided.length === 0 ? [] : [fileOf("decisions.xml", () => formatDecisions(facts, decided))]),
    fileOf("feed.json", () => formatJsonFeed(facts, view.studies, view.series)),
    ...maps.map(({ file, text }) => fileOf(file, () => text)),
  ];
}

/** The data of one study. */
export function listStudyFiles(result: StudyResult, gallery: Gallery): readonly SiteFile[] {
  const folder = formatStudyPath(result.study.slug);
  const format = formatOf(gallery);
  const data = `${folder}study.json`;
  return [
    fileOf(data, () => formatStudyData(result, gallery, locateFrom(gallery)(data))),
    fileOf(`${folder}edges.csv`, () => formatEdgesTable(result)),
    ...(result.study.downloads === true
      ? [
          fileOf(`${folder}${stillsFolder}${lessonFiles.script}`, () =>
            formatScript(presentShow(nameStudy(result, format), gallery, format), format),
          ),
        ]
      : []),
  ];
}

/** Every page that says where it stands; `lastmod` only where the study has a date. */
function listPages(
  results: readonly StudyResult[],
  { series, rivals, votes, shelfIndexes, shelves, pages, takePart }: View,
  address: Address,
) {
  const studies = results.map(({ study: { slug, date } }) => ({
    url: address(formatStudyPath(slug)),
    ...(date === undefined ? {} : { date }),
  }));
  const below = results.flatMap((result) =>
    listStudyPages(result)
      .slice(1)
      .map((path) => ({ url: address(path) })),
  );
  const lessons = series.flatMap(({ slug, date }) => [
    { url: address(formatSeriesPath(slug)), ...(date === undefined ? {} : { date: date.iso }) },
    { url: address(`${formatSeriesPath(slug)}show/`) },
    { url: address(formatSheetPath(formatSeriesPath(slug))) },
  ]);
  const part = takePart.map(() => ({ url: address(partPath) }));
  const others = [...pages, ...rivals, ...shelfIndexes, ...shelves].map(({ folder }) => ({
    url: address(`/${folder}/`),
  }));
  return [
    { url: address("/") },
    { url: address("/survey/") },
    { url: address("/method/") },
    { url: address("/rules/") },
    ...part,
    ...lessons,
    ...votes.map(({ slug }) => ({ url: address(formatVotePath(slug)) })),
    ...studies,
    ...below,
    ...others,
  ];
}

/**
 * The schemas. Where the gallery has an address, each has its own as `$id`; else the `$id` is the bare name, which is
 * relative to wherever it was found. Either way their `$ref`s lead to each other. Source: JSON Schema 2020-12, section 8.2.
 */
async function listSchemas(folders: readonly string[], gallery: Gallery): Promise<readonly SiteFile[]> {
  const lists = await Promise.all(
    folders.map(async (folder) =>
      (await listOwn(folder, ".schema.json")).map((file) =>
        fileOf(`schemas/${file}`, async () => {
          const text = (await readOwn(path.join(folder, file))).toString("utf8");
          const id = formatCanonical(gallery.address, `/schemas/${file}`) ?? file;
          return text.replace(`"$id": "${file}"`, () => `"$id": ${JSON.stringify(id)}`);
        }),
      ),
    ),
  );
  return lists.flat();
}
