// Floor 6. The files of the survey beside its page: drawings of the flags that have no study, and all numbers as CSV and JSON.
import { plainProblem } from "../problem/plain.ts";
import { formatCsv } from "../study/csv.ts";
import type { GalleryResult } from "../study/result.ts";
import type { Survey } from "../study/survey.ts";
import { fileOf, type SiteFile } from "./file.ts";
import { placeDrawing, surveyPath } from "./present/flagname.ts";
import { surveyFiles } from "./present/survey.ts";

/** The files of the survey. Without a survey they are there, and empty. */
export function listSurveyFiles({ survey }: GalleryResult): readonly SiteFile[] {
  const { entries, failed } = survey ?? { entries: [], failed: [] };
  const plain: Survey = { flags: entries.map(({ flag }) => flag), failed };
  return [
    fileOf(`${surveyPath}${surveyFiles.csv}`, () => `${formatCsv(plain)}\r\n`),
    fileOf(`${surveyPath}${surveyFiles.json}`, () => formatJson(plain)),
    ...entries.flatMap((entry) =>
      entry.drawing === undefined ? [] : [fileOf(placeDrawing(entry), () => entry.drawing ?? "")],
    ),
  ];
}

/** As the command `survey --json` prints it; files by their path in the content folder. */
function formatJson({ flags, failed }: Survey): string {
  const plain = failed.map(({ file, problem }) => ({ file, problem: plainProblem(problem) }));
  return `${JSON.stringify({ flags, failed: plain }, null, 2)}\n`;
}
