// Floor 9. The files of the survey beside its page: drawings of the flags that have no study, and all numbers as CSV and JSON.

import type { GalleryResult } from "../../analysis/result.ts";
import { formatCsv } from "../../analysis/survey/csv.ts";
import { formatSurveyData } from "../../analysis/survey/surveydata.ts";
import type { Survey } from "../../analysis/survey/surveyflags.ts";
import { locate } from "../../views/address.ts";
import { placeDrawing, surveyPath } from "../../views/survey/flagname.ts";
import { surveyFiles } from "../../views/survey/surveypage.ts";
import { fileOf, type SiteFile } from "../folder/sitefile.ts";

const schemaPath = "/schemas/survey.schema.json";

/** The files of the survey. Without a survey they are there, and empty. */
export function listSurveyFiles({ gallery, survey }: GalleryResult): readonly SiteFile[] {
  const { entries, failed } = survey ?? { entries: [], failed: [] };
  const plain: Survey = { flags: entries.map(({ flag }) => flag), failed };
  const json = `${surveyPath}${surveyFiles.json}`;
  const schema = locate(gallery.address, json, schemaPath);
  return [
    fileOf(`${surveyPath}${surveyFiles.csv}`, () => `${formatCsv(plain)}\r\n`),
    fileOf(json, () => `${formatSurveyData(plain, schema)}\n`),
    ...entries.flatMap((entry) =>
      entry.drawing === undefined ? [] : [fileOf(placeDrawing(entry), () => entry.drawing ?? "")],
    ),
  ];
}
