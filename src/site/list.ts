// Floor 6. Every file of the site but its pages: made when asked for, so that a build writes all and a server few.
import path from "node:path";
import type { GalleryResult, StudyResult } from "../study/result.ts";
import { listAssets, listAssetsFor } from "./assets.ts";
import { drawingFiles, listCrops, listDrawings, triedFiles } from "./drawings.ts";
import { fileOf, type SiteFile } from "./file.ts";
import { listMatrixPicture, listStrip } from "./images.ts";
import { listLinkPictures } from "./linkpicture.ts";
import { listMachineFiles } from "./machine.ts";
import { templatesDir } from "./pages.ts";
import { formatHeaders } from "./policy.ts";
import type { SiteView } from "./present/site.ts";
import { listSurveyFiles } from "./survey.ts";
import { listSurveyPicture } from "./surveypicture.ts";

const source = path.resolve(import.meta.dirname, "..");
/** The data of a study are those of the commands, so that their schemas are published beside our own. */
const schemaDirs = [
  path.join(source, "cli/schema"),
  path.join(source, "site/schema"),
  path.join(source, "study/schema"),
];

/** The files beside the pages, for the gallery that `view` shows; the fonts for `pages` alone where those are all there are. */
export async function listFilesBeside(
  result: GalleryResult,
  view: SiteView,
  pages?: readonly SiteFile[],
): Promise<readonly SiteFile[]> {
  return [
    ...(pages === undefined ? listAssets(templatesDir) : await listAssetsFor(templatesDir, pages)),
    ...result.studies.flatMap((study) => listPictures(study, view)),
    ...listSurveyFiles(result),
    ...listSurveyPicture(view.survey.picture, result.survey ?? { entries: [] }, result.studies),
    ...(await listMachineFiles(result, view, schemaDirs)),
    fileOf("_headers", () => formatHeaders([...drawingFiles, triedFiles])),
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
