// Floor 9. Every file of the site but its pages and what is drawn: made when asked for, so that a build writes all and a server few.
import path from "node:path";
import type { GalleryResult } from "../analysis/result.ts";
import { labelFile } from "../views/method/workedflag.ts";
import { formatHeaders, logoPath, shownDrawings } from "../views/pagepolicy.ts";
import { lessonFiles } from "../views/show/lessonfile.ts";
import type { SharedPages, StudyPages } from "../views/siteview.ts";
import { listAssets, listAssetsFor } from "./assets.ts";
import { listMachineFiles } from "./feeds/machinefiles.ts";
import { listSurveyFiles } from "./feeds/surveyfiles.ts";
import { fileOf, type SiteFile } from "./folder/sitefile.ts";
import type { Lettering } from "./fonts/lettering.ts";
import { drawingFiles } from "./pictures/drawingrecipe.ts";
import { templatesDir } from "./renderpages.ts";

const source = path.resolve(import.meta.dirname, "..");
/** The data of a study are those of the commands, so that their schemas are published beside our own. */
const schemaDirs = [
  path.join(source, "cli/schema"),
  path.join(source, "publish/schema"),
  path.join(source, "content/schema"),
];

/** Pattern of the drawings of the author's other options, for hosts that read headers. */
const triedFiles = "tried-*";

/**
 * The files beside the pages that nothing is drawn for, but for those of each study; `view` shows at least the studies that
 * are new. The fonts have the letters of `lettering` alone where those are all there are.
 */
export async function listFilesBeside(
  result: GalleryResult,
  view: SharedPages & Pick<StudyPages, "studies">,
  lettering?: Lettering,
): Promise<readonly SiteFile[]> {
  const { logo, theme } = result.gallery;
  const drawings = [...(result.drawings ?? [])];
  return [
    ...(lettering === undefined
      ? listAssets(templatesDir, theme)
      : listAssetsFor(templatesDir, lettering, theme)),
    ...(logo === undefined ? [] : [fileOf(logoPath, () => logo.drawing)]),
    ...drawings.map(([path, { drawing }]) => fileOf(`${shownDrawings}${path}`, () => drawing)),
    ...listSurveyFiles(result),
    ...(await listMachineFiles(result, view, schemaDirs)),
    fileOf("_headers", () =>
      formatHeaders(
        [...drawingFiles, labelFile, lessonFiles.ruler, triedFiles],
        view.shelves.some(({ pages }) => pages) || view.shelfIndexes.some(({ pages }) => pages),
        view.pages.map(({ folder }) => `/${folder}/`),
      ),
    ),
  ];
}
