// Floor 11. The command survey: every flag of a folder, least clear first, with the colour to change first.
import { join } from "node:path";
import { runOrdered } from "../analysis/jobs/orderedqueue.ts";
import type { Store } from "../analysis/store/resultstore.ts";
import { formatCsv } from "../analysis/survey/csv.ts";
import { formatSurveyData } from "../analysis/survey/surveydata.ts";
import type { Survey, SurveyedFlag } from "../analysis/survey/surveyflags.ts";
import { type FileFailure, nameFailure } from "../content/disk/filefailure.ts";
import { withSlashes } from "../content/disk/pathname.ts";
import { walkTree } from "../content/disk/walkfolder.ts";
import type { Outcome } from "../problem/problem.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { manifestName } from "../publish/folder/manifest.ts";
import { openCache } from "./cacheoption.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { readLooking } from "./lookoption.ts";
import { count, statusOf } from "./text/exitstatus.ts";
import { describeSurvey, listPartlyTried } from "./text/surveytext.ts";

export async function run(given: Given, output: Output): Promise<number> {
  const [folder = ""] = given.operands;
  const looking = readLooking(given);
  const { switches } = given;
  if (switches.has("json") && switches.has("csv"))
    throw new UsageError("--json and --csv are two forms of one thing.", "Give one of them.");
  const files = await listDrawings(folder);
  const store = await openCache(given, folder, output);
  const survey = await surveyDrawings(files, looking, output, store);
  await store?.close();
  if (switches.has("json")) output.data(formatSurveyData(survey));
  else if (switches.has("csv")) output.data(`${formatCsv(survey)}\r`);
  else {
    if (survey.flags.length > 0) output.data(`${describeSurvey(survey, output)}\n`);
    const partly = listPartlyTried(survey);
    if (partly.length > 0) output.data(`${partly.join("\n")}\n`);
    output.data(`${count(survey.flags.length, "flag", "flags")} of ${count(files.length, "file", "files")}.`);
  }
  if (survey.failed.length > 0) output.message(formatProblems(survey.failed.map(({ problem }) => problem)));
  return statusOf(survey.failed.map(({ problem }) => problem));
}

async function surveyDrawings(
  files: readonly string[],
  looking: ReturnType<typeof readLooking>,
  output: Output,
  store: Store | undefined,
): Promise<Survey> {
  const [{ Desk }, { defaultLimits }, { collectSurvey }] = await Promise.all([
    import("./drawingjob.ts"),
    import("../analysis/jobs/pool.ts"),
    import("../analysis/survey/surveyflags.ts"),
  ]);
  const desk = new Desk(looking, store);
  const surveyed: { readonly file: string; readonly outcome: Outcome<SurveyedFlag> }[] = [];
  try {
    await runOrdered(
      files,
      defaultLimits.size + 1,
      (file) => desk.survey(file),
      (outcome, index) => {
        surveyed.push({ file: files[index] ?? "", outcome });
        output.progress(index + 1, files.length, "drawings");
      },
    );
  } finally {
    desk.close();
  }
  return collectSurvey(surveyed);
}

/** Every SVG file in the folder and the folders in it, sorted. Links, hidden folders and sites in it are passed over. Throws UsageError. */
async function listDrawings(folder: string): Promise<readonly string[]> {
  const files: string[] = [];
  const sites: string[] = [];
  for await (const found of walkTree(folder, isSeen)) {
    if ("failure" in found) throw explain(folder, join(folder, found.path), found.failure);
    if (found.path.endsWith(`/${manifestName}`)) sites.push(found.path.slice(0, -manifestName.length));
    else if (found.kind === "file" && /\.svg$/i.test(found.path)) files.push(found.path);
  }
  const drawings = files.filter((file) => !sites.some((site) => file.startsWith(site)));
  if (drawings.length === 0)
    throw new UsageError(`There is no SVG file in ${folder}.`, "Name the folder with the drawings.");
  return drawings.map((file) => withSlashes(join(folder, file))).sort();
}

function isSeen(name: string): boolean {
  return !/^[._]/.test(name) && name !== "node_modules";
}

function explain(folder: string, at: string, failure: FileFailure): UsageError {
  if (failure.kind === "missing")
    return new UsageError(`There is no folder ${folder}.`, "Name the folder with the drawings.");
  if (failure.kind === "other" || failure.kind === "link")
    return new UsageError(
      `${folder} is a file; survey takes a folder.`,
      `Type: counterchange measure ${folder}`,
    );
  return new UsageError(`${at} could not be read: ${nameFailure(failure)}.`, "Check that you may read it.");
}
