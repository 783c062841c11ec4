// Floor 5. The content folder → its gallery and its studies. The only file of this floor that opens files.
import { constants, type Dirent } from "node:fs";
import { lstat, open, readdir } from "node:fs/promises";
import { join, resolve } from "node:path";
import { hasError, type Outcome, type Problem } from "../problem/problem.ts";
import { contentIsFile, contentMissing, drawingMissing, studiesMissing, studyMissing } from "./absent.ts";
import {
  describeDrawingFailure,
  describeFailure,
  drawingBytes,
  type FileFailure,
  folderNamed,
} from "./file.ts";
import { checkFolderDrawings, type FolderDrawing } from "./flags.ts";
import { defaultGallery, missingGallery, parseGallery } from "./gallery.ts";
import { checkStudyFiles, checkStudyFolders, type Entry, linkProblem } from "./listing.ts";
import { parseStudy, type StudyOrigin } from "./parse.ts";
import { compareNames } from "./slug.ts";
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
 * Reads `gallery.yaml` and every `studies/<slug>/study.md` of `contentDir`. Never throws for what is in the folder:
 * a study with an error is left out and its problems are returned. The order of the folder on the disk changes nothing.
 *
 * Problems: `study/content-missing`, `study/studies-missing`, `study/gallery-missing`, `study/study-missing`,
 * `study/drawing-missing`, `study/drawing-size`, `study/unreadable`, and those of `parseGallery`,
 * `checkStudyFolders`, `checkStudyFiles` and `parseStudy`.
 */
export async function loadGallery(contentDir: string): Promise<LoadedGallery> {
  const shown = contentDir.replace(/\\/g, "/").replace(/(.)\/+$/, "$1");
  const root = resolve(contentDir);
  if (!(await readFolder(root))) {
    const isFile = (await kindOf(root)) === "file";
    const problem = isFile ? contentIsFile(shown) : contentMissing(shown, root);
    return { gallery: defaultGallery, studies: [], folders: [], problems: [problem] };
  }

  const { gallery, problems } = await loadSettings(root, shown);
  const folder = `${shown}/studies`;
  const entries =
    (await kindOf(join(root, "studies"))) === "link" ? "link" : await readFolder(join(root, "studies"));
  const none = { gallery, studies: [], folders: [] };
  if (entries === "link") return { ...none, problems: [...problems, linkProblem(folder)] };
  if (!entries) return { ...none, problems: [...problems, studiesMissing(folder)] };

  const listing = checkStudyFolders(folder, entries);
  const found = [...problems, ...listing.problems];
  const studies: Study[] = [];
  for (const slug of listing.slugs) {
    const { value, problems: more } = await loadStudy(root, shown, slug, gallery.palette);
    found.push(...more);
    if (value) studies.push(value);
  }
  const folders = entries.filter(({ kind }) => kind === "folder").map(({ name }) => name);
  return { gallery, studies, folders: folders.sort(compareNames), problems: found };
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
  return { value: undefined, problems: [describeDrawingFailure(file, read, resolve(file))] };
}

/**
 * Lists the drawings in `inner`, a folder of the content folder such as `flags`, by name; undefined where there is no such
 * folder. A link on the way there is not followed. Everything that is wrong is a warning: no study depends on it.
 *
 * Problems: `study/link` and those of `checkFolderDrawings`.
 */
export async function listFolder(
  contentDir: string,
  inner: string,
  hasStrictNames: boolean,
): Promise<Outcome<readonly FolderDrawing[]>> {
  const shown = `${contentDir.replace(/\\/g, "/").replace(/(.)\/+$/, "$1")}/${inner}`;
  let path = resolve(contentDir);
  for (const part of inner.split("/")) {
    path = join(path, part);
    if ((await kindOf(path)) === "link")
      return { value: [], problems: [{ ...linkProblem(shown), severity: "warning" }] };
  }
  const entries = await readFolder(path);
  if (!entries) return { value: undefined, problems: [] };
  const { names, problems } = checkFolderDrawings(shown, entries, hasStrictNames);
  return {
    value: names.map((name) => ({ name, file: `${shown}/${name}`, path: join(path, name) })),
    problems,
  };
}

/** Returns the bytes of a drawing of a folder. Problems, as warnings: those of readDrawing; `study/link`. */
export async function readListed({ file, path }: FolderDrawing): Promise<Outcome<Uint8Array>> {
  const read = await readRegular(path, drawingBytes, false);
  if ("bytes" in read) return { value: read.bytes, problems: [] };
  return {
    value: undefined,
    problems: [{ ...describeDrawingFailure(file, read, path), severity: "warning" }],
  };
}

async function loadSettings(
  root: string,
  shown: string,
): Promise<{ gallery: Gallery; problems: readonly Problem[] }> {
  const file = `${shown}/gallery.yaml`;
  const read = await readRegular(join(root, "gallery.yaml"), textFileBytes, false);
  if ("bytes" in read) {
    const { value, problems } = parseGallery(file, read.bytes);
    return { gallery: value, problems };
  }
  return {
    gallery: defaultGallery,
    problems: [read.kind === "missing" ? missingGallery(file) : textFailure(file, read)],
  };
}

async function loadStudy(
  root: string,
  shown: string,
  slug: string,
  palette: Gallery["palette"],
): Promise<Outcome<Study>> {
  const studyFolder = join(root, "studies", slug);
  const folder = `${shown}/studies/${slug}`;
  const file = `${folder}/study.md`;
  const entries = await readFolder(studyFolder);
  if (!entries) return fail([describeFailure(folder, { kind: "unreadable", code: "EACCES" })]);

  const listing = checkStudyFiles(folder, entries);
  const read = await readRegular(join(studyFolder, "study.md"), textFileBytes, false);
  if (!("bytes" in read)) {
    if (read.kind !== "missing") return fail([...listing, ...known(listing, textFailure(file, read))]);
    return fail([...listing, studyMissing(file)]);
  }
  const flagsFolder = join(root, "flags");
  const origin = { slug, file, studyFolder, flagsFolder, shownFlagsFolder: `${shown}/flags` };
  const parsed = parseStudy(origin, read.bytes, palette);
  const problems = [...listing, ...parsed.problems];
  if (!parsed.value) return fail(problems);
  problems.push(...(await checkDrawing(parsed.value, origin)));
  return { value: hasError(problems) ? undefined : parsed.value, problems };
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

/** Opens a regular file without following a link (unless asked to) and without waiting for a pipe. */
async function readRegular(
  path: string,
  most: number,
  follow: boolean,
): Promise<{ bytes: Uint8Array } | FileFailure> {
  try {
    if (!follow && (await lstat(path)).isSymbolicLink()) return { kind: "link" };
    // O_NOFOLLOW closes the gap between the look and the opening; where a system has none, the look alone decides.
    const noFollow = follow ? 0 : (constants.O_NOFOLLOW ?? 0);
    const handle = await open(path, constants.O_RDONLY | noFollow | (constants.O_NONBLOCK ?? 0));
    try {
      const stats = await handle.stat();
      if (!stats.isFile()) return { kind: stats.isDirectory() ? "folder" : "other" };
      if (stats.size > most) return { kind: "too large", size: stats.size };
      const bytes = await handle.readFile();
      return bytes.length > most ? { kind: "too large", size: bytes.length } : { bytes };
    } finally {
      await handle.close();
    }
  } catch (error) {
    const code = codeOf(error);
    if (code === "ENOENT" || code === "ENOTDIR") return { kind: "missing" };
    if (code === "ELOOP") return { kind: "link" };
    return code === "EISDIR" ? { kind: "folder" } : { kind: "unreadable", code };
  }
}

async function readFolder(path: string): Promise<Entry[] | undefined> {
  try {
    const entries = await readdir(path, { withFileTypes: true });
    return entries.map((entry) => ({ name: entry.name, kind: nameKind(entry) }));
  } catch {
    return undefined;
  }
}

async function kindOf(path: string): Promise<Entry["kind"] | undefined> {
  return lstat(path).then(nameKind, () => undefined);
}

function nameKind(entry: Pick<Dirent, "isSymbolicLink" | "isFile" | "isDirectory">): Entry["kind"] {
  if (entry.isSymbolicLink()) return "link";
  return entry.isFile() ? "file" : entry.isDirectory() ? "folder" : "other";
}

/** Returns the code of a file system error, `ENOENT`; anything else is a fault of ours and is thrown again. */
function codeOf(error: unknown): string {
  if (error instanceof Error && "code" in error && typeof error.code === "string") return error.code;
  throw error;
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
