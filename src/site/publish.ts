// Floor 6. An analysed gallery → the published folder: results become views, views pages, and the whole is swapped in.
import { writeFile } from "node:fs/promises";
import path from "node:path";
import Eleventy from "@11ty/eleventy";
import { register } from "tsx/esm/api";
import type { GalleryResult, StudyResult } from "../study/result.ts";
import { writeAssets } from "./assets.ts";
import { drawingFiles, optionFiles, writeCrops, writeDrawings } from "./drawings.ts";
import { writeStrip } from "./images.ts";
import { writeLinkPictures } from "./linkpicture.ts";
import { writeMachineFiles } from "./machine.ts";
import { writeOutput } from "./output.ts";
import { formatHeaders } from "./policy.ts";
import { presentSite, type SiteView } from "./present/site.ts";
import { writeSurvey } from "./survey.ts";

/** What was published, and on how many pages. */
export interface BuildReport {
  readonly result: GalleryResult;
  readonly pages: number;
}

const root = path.resolve(import.meta.dirname, "../..");
const templatesDir = path.join(root, "templates");
/** The data of a study are those of the commands, so that their schemas are published beside our own. */
const schemaDirs = [path.join(root, "src/cli/schema"), path.join(root, "src/site/schema")];

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
  let pages = 0;
  const keepOut = [...options.keepOut, templatesDir, path.join(root, "src")];
  await writeOutput(outDir, keepOut, async (freshDir) => {
    pages = await writePages(view, freshDir);
    await writeAssets(templatesDir, freshDir);
    await writePictures(result.studies, view, freshDir);
    await writeSurvey(result, freshDir);
    await writeMachineFiles(result, view, schemaDirs, freshDir);
    await writeFile(path.join(freshDir, "_headers"), formatHeaders([...drawingFiles, ...optionFiles]));
  });
  return { result, pages };
}

async function writePictures(
  studies: readonly StudyResult[],
  view: SiteView,
  freshDir: string,
): Promise<void> {
  for (const study of studies) {
    await writeDrawings(study, freshDir);
    await writeCrops(study, freshDir);
    await writeStrip(study, freshDir);
    const pages = [...view.studies, ...view.edges].filter(({ slug }) => slug === study.study.slug);
    await writeLinkPictures(
      study,
      pages.map(({ picture }) => picture),
      freshDir,
    );
  }
}

/** Eleventy imports the templates itself: with tsx registered it can, whoever started us. */
async function writePages(view: SiteView, freshDir: string): Promise<number> {
  const unregister = register();
  try {
    const eleventy = new Eleventy(templatesDir, freshDir, {
      configPath: path.join(root, "eleventy.config.ts"),
      quietMode: true,
      config: (config) => config.addGlobalData("site", view),
    });
    // Standard output belongs to the command.
    eleventy.disableLogger();
    const [, written] = await eleventy.write();
    return written.length;
  } finally {
    await unregister();
  }
}
