// Floor 8. What a flag of the survey is called, and where it is shown: names come from credits, folders and files.

import type { NearFlag } from "../../analysis/likeness/likenessdata.ts";
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { SurveyEntry } from "../../analysis/survey/surveyentry.ts";
import type { Measure } from "../../measure/measurement.ts";
import type { Format } from "../../words/format.ts";
import { capitalise } from "../../words/phrase.ts";
import { formatTitle } from "../../words/title.ts";
import { formatStudyPath } from "../status.ts";

/** A flag that a page can show. Both paths are site paths; `page` tells of it. */
export interface ShownFlag {
  readonly name: string;
  readonly drawing: string;
  readonly page: string;
  readonly measure: Measure;
}

/** Site path of the survey, and of the drawings of flags that have no study. */
export const surveyPath = "/survey/";
export const flagDrawings = `${surveyPath}flags/`;

/** Returns what the flag is called: by its first study, else as the credit there says, else by its folder or file. */
export function nameEntry(entry: SurveyEntry, studies: readonly StudyResult[]): string {
  const [slug] = entry.slugs;
  const study = studies.find((result) => result.study.slug === slug)?.study;
  const name = study?.flag ?? study?.credit?.title;
  if (name !== undefined) return name;
  return nameFile(entry.flag.file.startsWith("studies/") && slug !== undefined ? slug : entry.flag.file);
}

/** Returns what a drawing is called that has no name: `flags/old-quay.svg` is `Old quay`. */
export function nameFile(path: string): string {
  const stem = path.slice(path.lastIndexOf("/") + 1).replace(/\.svg$/i, "");
  return capitalise(stem.replaceAll("-", " "));
}

/** Returns the site path of the page that tells of the flag. */
export function placeEntry(entry: SurveyEntry): string {
  const [slug] = entry.slugs;
  return slug === undefined ? `${surveyPath}#${anchorOf(entry)}` : formatStudyPath(slug);
}

/** Returns the id of the flag's row in the survey. */
export function anchorOf({ flag: { file } }: SurveyEntry): string {
  return `flag-${file.replace(/\.svg$/i, "").replaceAll("/", "-")}`;
}

/** Returns the site path of the flag's drawing. */
export function placeDrawing(entry: SurveyEntry): string {
  const [slug] = entry.slugs;
  if (slug !== undefined) return `${formatStudyPath(slug)}original.svg`;
  return `${flagDrawings}${entry.flag.file.split("/").at(-1) ?? ""}`;
}

/** Returns the flag that a redesign is near to, or undefined where the site has no picture of it. */
export function findShown(
  near: NearFlag,
  all: Pick<GalleryResult, "studies" | "survey">,
  format: Format,
): ShownFlag | undefined {
  if (near.origin === "redesign") {
    const result = all.studies.find(({ study }) => study.slug === near.slug);
    if (result === undefined) return undefined;
    const page = formatStudyPath(result.study.slug);
    const name = format.say("near.redesign", { study: formatTitle(result.study, format) });
    return { name, drawing: `${page}redesign.svg`, page, measure: result.comparison.after };
  }
  const entry = all.survey?.entries.find(({ flag }) => flag.file === near.file);
  if (entry === undefined) return undefined;
  return {
    name: nameEntry(entry, all.studies),
    drawing: placeDrawing(entry),
    page: placeEntry(entry),
    measure: entry.measure,
  };
}
