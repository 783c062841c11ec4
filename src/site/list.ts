// Floor 6. Every file of the site but its pages: made when asked for, so that a build writes all and a server few.
import path from "node:path";
import type { GalleryResult, StudyResult } from "../study/result.ts";
import { listAssets, listAssetsFor } from "./assets.ts";
import { drawingFiles, listCrops, listDrawings, triedFiles } from "./drawings.ts";
import { fileOf, type SiteFile } from "./file.ts";
import { listMatrixPicture, listStrip } from "./images.ts";
import type { Lettering } from "./lettering.ts";
import { listLinkPictures } from "./linkpicture.ts";
import { listMachineFiles, listStudyFiles } from "./machine.ts";
import { templatesDir } from "./pages.ts";
import { formatHeaders } from "./policy.ts";
import { isIn, type SitePart, type SiteView, wholeSite } from "./present/site.ts";
import { listSurveyFiles } from "./survey.ts";
import { listSurveyPicture } from "./surveypicture.ts";

const source = path.resolve(import.meta.dirname, "..");
/** The data of a study are those of the commands, so that their schemas are published beside our own. */
const schemaDirs = [
  path.join(source, "cli/schema"),
  path.join(source, "site/schema"),
  path.join(source, "study/schema"),
];

/** The files beside the pages, for the part that `view` shows; fonts with the letters of `lettering` alone where it is given. */
export async function listFilesBeside(
  result: GalleryResult,
  view: SiteView,
  part: SitePart = wholeSite,
  lettering?: readonly Lettering[],
): Promise<readonly SiteFile[]> {
  const shared = part.isShared ? await listShared(result, view, lettering) : [];
  return [
    ...shared,
    ...result.studies
      .filter(({ study }) => isIn(part, study.slug))
      .flatMap((study) => [...listPictures(study, view), ...listStudyFiles(study, result.gallery)]),
  ];
}

async function listShared(
  result: GalleryResult,
  view: SiteView,
  lettering: readonly Lettering[] | undefined,
): Promise<readonly SiteFile[]> {
  return [
    ...(lettering === undefined ? listAssets(templatesDir) : listAssetsFor(templatesDir, lettering)),
    ...listSurveyFiles(result),
    ...listSurveyPicture(view.survey.picture, result.survey ?? { entries: [] }, result.studies),
    ...(await listMachineFiles(result, view, schemaDirs)),
    fileOf("_headers", () =>
      formatHeaders(
        [...drawingFiles, triedFiles],
        view.shelves.some(({ pages }) => pages) || view.shelfIndexes.some(({ pages }) => pages),
      ),
    ),
  ];
}

function listPictures(result: StudyResult, view: SiteView): readonly SiteFile[] {
  const pages = [...view.studies, ...view.edges].filter(({ slug }) => slug === result.study.slug);
  return [
    ...listDrawings(result),
    ...listCrops(result),
    ...listStrip(result),
    ...listMatrixPicture(result),
    ...listLinkPictures(
      result,
      pages.map(({ picture }) => picture),
    ),
  ];
}
