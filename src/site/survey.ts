// Floor 6. Writes the survey beside its page: drawings of the flags that have no study, and all numbers as CSV and JSON.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { plainProblem } from "../problem/plain.ts";
import { formatCsv } from "../study/csv.ts";
import type { GalleryResult } from "../study/result.ts";
import type { Survey } from "../study/survey.ts";
import { flagDrawings, placeDrawing, surveyPath } from "./present/flagname.ts";
import { surveyFiles } from "./present/survey.ts";

/** Writes the files of the survey into the site at `outDir`. Without a survey they are there, and empty. */
export async function writeSurvey({ survey }: GalleryResult, outDir: string): Promise<void> {
  const { entries, failed } = survey ?? { entries: [], failed: [] };
  const plain: Survey = { flags: entries.map(({ flag }) => flag), failed };
  const folder = path.join(outDir, surveyPath);
  await mkdir(path.join(outDir, flagDrawings), { recursive: true });
  await writeFile(path.join(folder, surveyFiles.csv), `${formatCsv(plain)}\r\n`);
  await writeFile(path.join(folder, surveyFiles.json), formatJson(plain));
  for (const entry of entries) {
    if (entry.drawing !== undefined) await writeFile(path.join(outDir, placeDrawing(entry)), entry.drawing);
  }
}

/** As the command `survey --json` prints it; files by their path in the content folder. */
function formatJson({ flags, failed }: Survey): string {
  const plain = failed.map(({ file, problem }) => ({ file, problem: plainProblem(problem) }));
  return `${JSON.stringify({ flags, failed: plain }, null, 2)}\n`;
}
