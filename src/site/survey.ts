// Floor 6. The files of the survey beside its page: drawings of the flags that have no study, and all numbers as CSV and JSON.
import { formatCsv } from "../study/csv.ts";
import type { GalleryResult } from "../study/result.ts";
import type { Survey } from "../study/survey.ts";
import { formatSurveyData } from "../study/surveydata.ts";
import { locate } from "./address.ts";
import { fileOf, type SiteFile } from "./file.ts";
import { placeDrawing, surveyPath } from "./present/flagname.ts";
import { surveyFiles } from "./present/survey.ts";

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
