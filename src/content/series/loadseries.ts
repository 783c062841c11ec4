// Floor 5. The folder series/ of a content folder → its series, each with the studies and flags that are there.
import { join } from "node:path";
import { findNearest } from "../../problem/knownword.ts";
import { compareText, hasError, type Outcome, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { describeFolderFailure } from "../disk/filefailure.ts";
import { kindOf, readFolder, readRegular } from "../disk/readfile.ts";
import { listNames } from "../folder/absent.ts";
import { isEditorFile } from "../folder/editorfile.ts";
import { keepWithin } from "../folder/gallerybudget.ts";
import { type Entry, leftovers, linkProblem, listDevice } from "../folder/listing.ts";
import { isSlug, proposeSlug } from "../study/slug.ts";
import { describeTextFailure, textFileBytes } from "../text/textsource.ts";
import { type Series, studyOf, subjectOf } from "./series.ts";
import { parseSeries } from "./seriesfile.ts";

/**
 * Reads every `series/<slug>.md` of the content folder `root`, shown as `shown`, sorted by slug. `studies` are the names of
 * all folders in studies/, good or bad: a series is left out whose studies nobody knows.
 *
 * Problems: those of `keepWithin` and `parseSeries`, of files and folders as in a study; `series/file-name`,
 * `series/unknown-study`, `series/flag-missing`.
 */
export async function loadSeries(
  root: string,
  shown: string,
  studies: readonly string[],
): Promise<Outcome<readonly Series[]>> {
  const folder = `${shown}/series`;
  const entries = await readFolder(root, "series");
  if ("kind" in entries) {
    if (entries.kind === "missing") return { value: [], problems: [] };
    const told = entries.kind === "link" ? linkProblem(folder) : describeFolderFailure(folder, entries);
    return { value: [], problems: [told] };
  }
  const within = keepWithin(folder, entries, "files");
  const problems: Problem[] = [...within.problems];
  const found: Series[] = [];
  for (const entry of [...within.entries].sort((a, b) => compareText(a.name, b.name))) {
    if (leftovers.includes(entry.name) || isEditorFile(entry.name)) continue;
    const slug = entry.name.replace(/\.md$/, "");
    const read = await readSeries(root, `${folder}/${entry.name}`, slug, entry);
    problems.push(...read.problems);
    if (read.value === undefined) continue;
    const wrong = await checkEntries(read.value, root, studies);
    problems.push(...wrong);
    if (!hasError(wrong)) found.push(read.value);
  }
  return { value: found, problems };
}

async function readSeries(root: string, file: string, slug: string, entry: Entry): Promise<Outcome<Series>> {
  const fail = (problem: Problem): Outcome<never> => ({ value: undefined, problems: [problem] });
  if (entry.kind === "link") return fail(linkProblem(file));
  const [device] = listDevice("series/file-name", file, entry.name);
  if (device !== undefined) return fail(device);
  if (!entry.name.endsWith(".md") || !isSlug(slug)) return fail(wrongName(file, entry.name));
  const read = await readRegular(root, `series/${entry.name}`, textFileBytes);
  if ("bytes" in read) return parseSeries(slug, file, read.bytes);
  return fail(describeTextFailure(file, read));
}

function wrongName(file: string, name: string): Problem {
  const slug = proposeSlug(name.replace(/\.[a-z0-9]{1,8}$/i, ""));
  return report("series/file-name", file, {
    reason: `${quoteText(name)} is no name of a series: small letters, digits and single hyphens, with .md behind.`,
    hint: `Rename it to: ${slug ?? "six-flags"}.md`,
  });
}

async function checkEntries(series: Series, root: string, studies: readonly string[]): Promise<Problem[]> {
  const problems = series.entries.map(async (entry, index): Promise<Problem | undefined> => {
    const at = { file: series.file, ...series.places[index] };
    const study = studyOf(entry);
    if (study !== undefined) return studies.includes(study) ? undefined : unknownStudy(at, study, studies);
    const flag = subjectOf(entry);
    const kind = await kindOf(join(root, flag));
    return kind === "file" ? undefined : flagMissing(at, flag, await listFlags(root));
  });
  return (await Promise.all(problems)).filter((problem) => problem !== undefined);
}

type At = Pick<Problem, "file" | "place" | "sourceLine" | "lineOffset">;

function unknownStudy(at: At, study: string, studies: readonly string[]): Problem {
  const name = study.replace(/^.*\//, "");
  const near = studies.includes(name) ? name : findNearest(name, studies);
  return report("series/unknown-study", at, {
    reason: `There is no study ${quoteText(study)}.`,
    hint: near === undefined ? `The studies are: ${listNames(studies)}` : `Type: ${near}`,
  });
}

function flagMissing(at: At, flag: string, flags: readonly string[]): Problem {
  const near = findNearest(flag.replace("flags/", ""), flags);
  return report("series/flag-missing", at, {
    reason: `The drawing ${quoteText(`/${flag}`)} is not in the folder flags.`,
    hint: near === undefined ? `The drawings there are: ${listNames(flags)}` : `Type: flag: /flags/${near}`,
  });
}

async function listFlags(root: string): Promise<readonly string[]> {
  const entries = await readFolder(root, "flags");
  return "kind" in entries ? [] : entries.map(({ name }) => name).filter((name) => name.endsWith(".svg"));
}
