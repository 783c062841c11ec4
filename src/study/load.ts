// Floor 5. The content folder → its gallery and its studies.
import { join, resolve } from "node:path";
import { compareText, hasError, type Outcome, type Problem } from "../problem/problem.ts";
import {
  contentInside,
  contentIsFile,
  contentMissing,
  drawingMissing,
  studiesMissing,
  studyMissing,
} from "./absent.ts";
import { keepWithin } from "./budget.ts";
import { findConfusables } from "./confusable.ts";
import { findFolderFailure, kindOf, readFolder, readRegular } from "./disk.ts";
import {
  describeDrawingFailure,
  describeFailure,
  describeFolderFailure,
  drawingBytes,
  type FileFailure,
  folderNamed,
} from "./file.ts";
import { findClashes } from "./formerly.ts";
import { defaultGallery, missingGallery, parseGallery } from "./gallery.ts";
import { checkStudyFiles, checkStudyFolders, linkProblem } from "./listing.ts";
import { findDrawingNear, findGalleryAround, listGalleriesNear } from "./nearby.ts";
import { type ProseFile, parseStudy, type StudyOrigin } from "./parse.ts";
import { textFileBytes, tooLarge } from "./source.ts";
import type { Gallery, Study } from "./study.ts";

export interface LoadedGallery {
  readonly gallery: Gallery;
  /** The studies without an error, sorted by slug. */
  readonly studies: readonly Study[];
  /** The names of all folders in studies/, good or bad, sorted. */
  readonly folders: readonly string[];
  readonly problems: readonly Problem[];
}

/**
 * Reads `gallery.yaml` and every `studies/<slug>/study.md`, or `study.yaml` with `prose.md`, of `contentDir`. Never throws
 * for what is in the folder: a study with an error is left out and its problems are returned. The order of the folder on
 * the disk changes nothing.
 *
 * Problems: `study/content-missing`, `study/studies-missing`, `study/gallery-missing`, `study/study-missing`,
 * `study/drawing-missing`, `study/drawing-size`, `study/unreadable`, and those of `parseGallery`,
 * `keepWithin`, `checkStudyFolders`, `checkStudyFiles`, `parseStudy`, `findClashes` and `findConfusables`.
 */
export async function loadGallery(contentDir: string): Promise<LoadedGallery> {
  const shown = showFolder(contentDir);
  const root = resolve(contentDir);
  const absent = await checkContent(shown, root);
  if (absent) return { gallery: defaultGallery, studies: [], folders: [], problems: [absent] };

  const { value: gallery, problems } = await loadSettings(contentDir);
  const folder = `${shown}/studies`;
  const entries =
    (await kindOf(join(root, "studies"))) === "link" ? "link" : await readFolder(join(root, "studies"));
  const none = { gallery, studies: [], folders: [] };
  if (entries === "link") return { ...none, problems: [...problems, linkProblem(folder)] };
  if (!entries) {
    const failure = await findFolderFailure(join(root, "studies"));
    const problem = failure ? describeFolderFailure(folder, failure) : studiesMissing(folder);
    return { ...none, problems: [...problems, problem] };
  }

  const within = keepWithin(folder, entries, "folders");
  const listing = checkStudyFolders(folder, within.entries);
  const found = [...problems, ...within.problems, ...listing.problems];
  const studies: Study[] = [];
  for (const slug of listing.slugs) {
    const { value, problems: more } = await loadStudy(root, shown, slug, gallery.palette);
    found.push(...more);
    if (value) studies.push(value);
  }
  const folders = entries.filter(({ kind }) => kind === "folder").map(({ name }) => name);
  const clashes = findClashes(studies, folders);
  const wrong = new Set(clashes.filter(({ severity }) => severity === "error").map(({ file }) => file));
  const kept = studies.filter(({ file }) => !wrong.has(file));
  return {
    gallery,
    studies: kept,
    folders: folders.sort(compareText),
    problems: [...found, ...clashes, ...findConfusables(kept)],
  };
}

/**
 * Reads `gallery.yaml` of `contentDir`. There is always a gallery: what is wrong or missing is replaced by defaults.
 *
 * Problems: those of `parseGallery`, of the file itself, and `study/gallery-missing`.
 */
export async function loadSettings(
  contentDir: string,
): Promise<Outcome<Gallery> & { readonly value: Gallery }> {
  const file = `${showFolder(contentDir)}/gallery.yaml`;
  const read = await readRegular(join(resolve(contentDir), "gallery.yaml"), textFileBytes, false);
  if ("bytes" in read) return parseGallery(file, read.bytes);
  const entries = (await readFolder(resolve(contentDir))) ?? [];
  const names = entries.map(({ name }) => name);
  const problem = read.kind === "missing" ? missingGallery(file, names) : textFailure(file, read);
  return { value: defaultGallery, problems: [problem] };
}

/** Returns the bytes of the original drawing of a loaded study. Throws where the file has gone since. */
export async function readOriginal(study: Study): Promise<Uint8Array> {
  const read = await readRegular(study.originalPath, drawingBytes, false);
  if ("kind" in read) throw new Error(`${study.originalPath} changed while it was being read (${read.kind})`);
  return read.bytes;
}

/**
 * Returns the bytes of a drawing that somebody named: a regular file, or a link to one, of at most 512 KB.
 *
 * Problems: `study/drawing-missing`, `study/folder-named`, `study/drawing-size`, `study/not-a-file`,
 * `study/unreadable`.
 */
export async function readDrawing(file: string): Promise<Outcome<Uint8Array>> {
  const read = await readRegular(resolve(file), drawingBytes, true);
  if ("bytes" in read) return { value: read.bytes, problems: [] };
  if (read.kind === "folder") return { value: undefined, problems: [folderNamed(file)] };
  const problem = describeDrawingFailure(file, read, resolve(file));
  const near = read.kind === "missing" ? await findDrawingNear(file) : undefined;
  const hint = near === undefined ? problem.hint : `${problem.hint}\nA drawing that is there: ${near}`;
  return { value: undefined, problems: [{ ...problem, ...(hint === undefined ? {} : { hint }) }] };
}

/** Returns the path of a content folder as messages show it: with `/`, and none at its end. */
export function showFolder(contentDir: string): string {
  return contentDir.replace(/\\/g, "/").replace(/(?<=[^/])\/+$/, "");
}

/** Returns the problem where `root` cannot be a content folder: no folder, or one that lies in a gallery and is none. */
async function checkContent(shown: string, root: string): Promise<Problem | undefined> {
  const entries = await readFolder(root);
  if (entries) {
    const isContent = entries.some(({ name }) => name === "gallery.yaml" || name === "studies");
    const around = isContent ? undefined : await findGalleryAround(root);
    return around === undefined ? undefined : contentInside(shown, around);
  }
  const failure = await findFolderFailure(root);
  if (failure) return { ...describeFolderFailure(shown, failure), rule: "study/content-missing" };
  if ((await kindOf(root)) === "file") return contentIsFile(shown, await findGalleryAround(root));
  return contentMissing(shown, root, await listGalleriesNear(root));
}

async function loadStudy(
  root: string,
  shown: string,
  slug: string,
  palette: Gallery["palette"],
): Promise<Outcome<Study>> {
  const studyFolder = join(root, "studies", slug);
  const folder = `${shown}/studies/${slug}`;
  const entries = await readFolder(studyFolder);
  if (!entries) {
    const failure = (await findFolderFailure(studyFolder)) ?? { kind: "unreadable", code: "ENOENT" };
    return fail([describeFolderFailure(folder, failure)]);
  }

  const { problems: excess } = keepWithin(folder, entries, "files");
  if (excess.length > 0) return fail(excess);
  const listing = checkStudyFiles(folder, entries);
  const has = (name: string) => entries.some((entry) => entry.name === name);
  const name = has("study.yaml") && !has("study.md") ? "study.yaml" : "study.md";
  const file = `${folder}/${name}`;
  const read = await readRegular(join(studyFolder, name), textFileBytes, false);
  if (!("bytes" in read)) {
    if (read.kind !== "missing") return fail([...listing, ...known(listing, textFailure(file, read))]);
    const isSaid = has("prose.md") || listing.some(({ rule }) => rule === "study/study-name");
    return fail([...listing, ...(isSaid ? [] : [studyMissing(file)])]);
  }
  const prose = name === "study.yaml" && has("prose.md") ? await readProse(studyFolder, folder) : undefined;
  if (prose && "rule" in prose) return fail([...listing, ...known(listing, prose)]);
  const flagsFolder = join(root, "flags");
  const origin = { slug, file, studyFolder, flagsFolder, shownFlagsFolder: `${shown}/flags` };
  const parsed = parseStudy(origin, read.bytes, palette, prose);
  const problems = [...listing, ...parsed.problems];
  if (!parsed.value) return fail(problems);
  problems.push(...(await checkDrawing(parsed.value, origin)));
  return { value: hasError(problems) ? undefined : parsed.value, problems };
}

async function readProse(studyFolder: string, folder: string): Promise<ProseFile | Problem> {
  const file = `${folder}/prose.md`;
  const read = await readRegular(join(studyFolder, "prose.md"), textFileBytes, false);
  return "bytes" in read ? { file, bytes: read.bytes } : textFailure(file, read);
}

/** Returns the problem of a study's drawing, shown at the `original:` line or at the file itself. */
async function checkDrawing(study: Study, origin: StudyOrigin): Promise<Problem[]> {
  const inFlags = study.original.startsWith("/flags/");
  if (inFlags && (await kindOf(origin.flagsFolder)) === "link") return [linkProblem(origin.shownFlagsFolder)];
  const read = await readRegular(study.originalPath, drawingBytes, false);
  if ("bytes" in read) return [];
  if (read.kind !== "missing") return [describeDrawingFailure(study.originalFile, read, study.originalPath)];
  const entries = (await readFolder(inFlags ? origin.flagsFolder : origin.studyFolder)) ?? [];
  return [
    drawingMissing(
      study,
      entries.map((entry) => entry.name),
    ),
  ];
}

function textFailure(file: string, failure: FileFailure): Problem {
  return failure.kind === "too large" ? tooLarge(file, failure.size) : describeFailure(file, failure);
}

/** Returns the problem unless the listing has one for the same file already. */
function known(listing: readonly Problem[], problem: Problem): Problem[] {
  return listing.some((other) => other.file === problem.file) ? [] : [problem];
}

function fail(problems: readonly Problem[]): Outcome<never> {
  return { value: undefined, problems };
}
