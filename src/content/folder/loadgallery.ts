// Floor 5. The content folder → its gallery and its studies.
import { basename, dirname, join, type PlatformPath, resolve } from "node:path";
import { compareText, hasError, type Outcome, type Problem } from "../../problem/problem.ts";
import {
  describeDrawingFailure,
  describeFolderFailure,
  drawingBytes,
  type FileFailure,
} from "../disk/filefailure.ts";
import { withSlashes } from "../disk/pathname.ts";
import { kindOf, readFolder, readRegular } from "../disk/readfile.ts";
import { defaultGallery, missingGallery, parseGallery } from "../gallery/galleryfile.ts";
import { type LogoFile, loadLogo } from "../gallery/logofile.ts";
import { loadNominations, type Nomination } from "../gallery/nominationfile.ts";
import { loadTheme } from "../gallery/themefile.ts";
import { loadWords } from "../gallery/wordsfile.ts";
import { listMenu, loadPages } from "../page/loadpages.ts";
import type { Page } from "../page/pagefile.ts";
import { loadSeries } from "../series/loadseries.ts";
import type { Series } from "../series/series.ts";
import { loadAnswers } from "../study/answerfile.ts";
import type { Gallery, Study } from "../study/study.ts";
import { type ProseFile, parseStudy, type StudyOrigin } from "../study/studyfile.ts";
import { describeTextFailure, textFileBytes } from "../text/textsource.ts";
import { loadVotes } from "../vote/loadvotes.ts";
import {
  contentInside,
  contentIsFile,
  contentMissing,
  drawingMissing,
  studiesMissing,
  studyMissing,
} from "./absent.ts";
import { type AddressNotes, loadAddresses } from "./addressfile.ts";
import { findConfusables } from "./confusable.ts";
import type { FolderDrawing } from "./flagfiles.ts";
import { dropTaken, findClashes, findUnfollowed } from "./formerly.ts";
import { keepWithin } from "./gallerybudget.ts";
import { checkStudyFiles, checkStudyFolders, linkProblem } from "./listing.ts";
import { findGalleryAround, listGalleriesNear } from "./nearby.ts";

export interface LoadedGallery {
  readonly gallery: Gallery;
  /** The studies without an error, sorted by slug. */
  readonly studies: readonly Study[];
  /** The series without an error, sorted by slug; studies in them may have one. */
  readonly series: readonly Series[];
  /** The gallery's own pages without an error, in their order. */
  readonly pages: readonly Page[];
  /** The drawings that those pages show. */
  readonly drawings: readonly FolderDrawing[];
  /** Flags of flags/ that readers named. */
  readonly nominations: readonly Nomination[];
  /** Absent where there is none that can be read. */
  readonly logo?: LogoFile;
  /** The list of addresses; absent where there is none. */
  readonly addresses?: AddressNotes;
  /** The names of all folders in studies/, good or bad, sorted. */
  readonly folders: readonly string[];
  readonly problems: readonly Problem[];
}

/**
 * Reads `gallery.yaml`, every `studies/<slug>/study.md`, or `study.yaml` with `prose.md`, every series and every page of `contentDir`. Never throws
 * for what is in the folder: a study with an error is left out and its problems are returned. The order of the folder on
 * the disk changes nothing.
 *
 * Problems: `study/content-missing`, `study/studies-missing`, `study/gallery-missing`, `study/study-missing`,
 * `study/drawing-missing`, `study/drawing-size`, `study/unreadable`, and those of `parseGallery`,
 * `keepWithin`, `checkStudyFolders`, `checkStudyFiles`, `parseStudy`, `loadAnswers`, `loadSeries`, `loadPages`, `loadVotes`, `loadNominations`, `loadWords`, `loadLogo`, `loadTheme`, `loadAddresses`, `findClashes`, `findUnfollowed` and `findConfusables`.
 */
export async function loadGallery(contentDir: string): Promise<LoadedGallery> {
  const shown = showFolder(contentDir);
  const root = resolve(contentDir);
  const absent = await checkContent(shown, root);
  const empty = { studies: [], series: [], pages: [], drawings: [], nominations: [], folders: [] };
  if (absent) return { ...empty, gallery: defaultGallery, problems: [absent] };

  const { value: settings, problems } = await loadSettings(contentDir);
  const worded = await loadWords(root, shown);
  const themed = await loadTheme(root, shown);
  const told = [...problems, ...worded.problems, ...themed.problems];
  const gallery = {
    ...settings,
    ...(worded.value && { words: worded.value }),
    ...(themed.value && { theme: themed.value }),
  };
  const folder = `${shown}/studies`;
  const entries = await readFolder(root, "studies");
  if ("kind" in entries)
    return {
      ...empty,
      gallery,
      problems: [...told, describeStudies(folder, entries)],
    };

  const within = keepWithin(folder, entries, "folders");
  const listing = checkStudyFolders(folder, within.entries);
  const found = [...told, ...within.problems, ...listing.problems];
  const studies: Study[] = [];
  for (const slug of listing.slugs) {
    const { value, problems: more } = await loadStudy(root, shown, slug, gallery.palette);
    found.push(...more);
    if (value === undefined) continue;
    const said = await loadAnswers(root, shown, slug);
    found.push(...said.problems);
    studies.push(
      said.value.length === 0 ? value : { ...value, answers: [...(value.answers ?? []), ...said.value] },
    );
  }
  const folders = entries.filter(({ kind }) => kind === "folder").map(({ name }) => name);
  const series = await loadSeries(root, shown, folders);
  const pages = await loadPages(root, shown, folders);
  const menu = listMenu(pages.value);
  const nominated = await loadNominations(root, shown);
  const voted = await loadVotes(root, shown, series.value ?? []);
  const listed = await loadAddresses(root, shown);
  const logo = await loadLogo(root, shown);
  return {
    gallery: menu.length === 0 ? gallery : { ...gallery, menu },
    series: voted.value,
    pages: pages.value,
    drawings: pages.drawings,
    nominations: nominated.value ?? [],
    studies: studies.map((study) => dropTaken(study, folders)),
    folders: folders.sort(compareText),
    ...(logo.value && { logo: logo.value }),
    ...(listed.value && { addresses: listed.value }),
    problems: [
      ...found,
      ...series.problems,
      ...pages.problems,
      ...voted.problems,
      ...nominated.problems,
      ...listed.problems,
      ...logo.problems,
      ...findClashes(studies, folders, listed.value),
      ...findUnfollowed(studies, folders),
      ...findConfusables(studies),
    ],
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
  const root = resolve(contentDir);
  const read = await readRegular(root, "gallery.yaml", textFileBytes);
  if ("bytes" in read) return parseGallery(file, read.bytes);
  const problem =
    read.kind === "missing" ? missingGallery(file, await listNames(root)) : describeTextFailure(file, read);
  return { value: defaultGallery, problems: [problem] };
}

/** Returns the bytes of the original drawing of a loaded study. Throws where the file has gone since. */
export async function readOriginal(study: Study): Promise<Uint8Array> {
  const read = await readStudyDrawing(study);
  if ("kind" in read) throw new Error(`${study.originalPath} changed while it was being read (${read.kind})`);
  return read.bytes;
}

/** Returns the path of a content folder as messages show it: with `/`, and none at its end. */
export function showFolder(contentDir: string, flavour?: PlatformPath): string {
  return withSlashes(contentDir, flavour).replace(/(?<=[^/])\/+$/, "");
}

/** Returns the problem where `root` cannot be a content folder: no folder, or one that lies in a gallery and is none. */
async function checkContent(shown: string, root: string): Promise<Problem | undefined> {
  const entries = await readFolder(root);
  if (!("kind" in entries)) {
    const isContent = entries.some(({ name }) => name === "gallery.yaml" || name === "studies");
    const around = isContent ? undefined : await findGalleryAround(root);
    return around === undefined ? undefined : contentInside(shown, around);
  }
  if ((await kindOf(root)) === "file") return contentIsFile(shown, await findGalleryAround(root));
  if (entries.kind === "missing") return contentMissing(shown, root, await listGalleriesNear(root));
  return { ...describeFolderFailure(shown, entries), rule: "study/content-missing" };
}

/** A gallery whose studies are not to be had is not published without them. */
function describeStudies(folder: string, failure: FileFailure): Problem {
  if (failure.kind === "missing") return studiesMissing(folder);
  const problem = failure.kind === "link" ? linkProblem(folder) : describeFolderFailure(folder, failure);
  return { ...problem, rule: "study/content-missing" };
}

async function loadStudy(
  root: string,
  shown: string,
  slug: string,
  palette: Gallery["palette"],
): Promise<Outcome<Study>> {
  const inner = `studies/${slug}`;
  const folder = `${shown}/studies/${slug}`;
  const entries = await readFolder(root, inner);
  if ("kind" in entries) return fail([describeFolderFailure(folder, entries)]);

  const { problems: excess } = keepWithin(folder, entries, "files");
  if (excess.length > 0) return fail(excess);
  const listing = checkStudyFiles(folder, entries);
  const has = (name: string) => entries.some((entry) => entry.name === name);
  const name = has("study.yaml") && !has("study.md") ? "study.yaml" : "study.md";
  const file = `${folder}/${name}`;
  const read = await readRegular(root, `${inner}/${name}`, textFileBytes);
  if (!("bytes" in read)) {
    if (read.kind !== "missing")
      return fail([...listing, ...known(listing, describeTextFailure(file, read))]);
    const isSaid = has("prose.md") || listing.some(({ rule }) => rule === "study/study-name");
    return fail([...listing, ...(isSaid ? [] : [studyMissing(file)])]);
  }
  const prose = name === "study.yaml" && has("prose.md") ? await readProse(root, inner, folder) : undefined;
  if (prose && "rule" in prose) return fail([...listing, ...known(listing, prose)]);
  const [studyFolder, flagsFolder] = [join(root, inner), join(root, "flags")];
  const origin = { slug, file, studyFolder, flagsFolder, shownFlagsFolder: `${shown}/flags` };
  const parsed = parseStudy(origin, read.bytes, palette, prose);
  const problems = [...listing, ...parsed.problems];
  if (!parsed.value) return fail(problems);
  problems.push(...(await checkDrawing(parsed.value, origin)));
  return { value: hasError(problems) ? undefined : parsed.value, problems };
}

async function readProse(root: string, inner: string, folder: string): Promise<ProseFile | Problem> {
  const file = `${folder}/prose.md`;
  const read = await readRegular(root, `${inner}/prose.md`, textFileBytes);
  return "bytes" in read ? { file, bytes: read.bytes } : describeTextFailure(file, read);
}

/** Returns the problem of a study's drawing, shown at the `original:` line or at the file itself. */
async function checkDrawing(study: Study, origin: StudyOrigin): Promise<Problem[]> {
  const inFlags = study.original.startsWith("/flags/");
  if (inFlags && (await kindOf(origin.flagsFolder)) === "link") return [linkProblem(origin.shownFlagsFolder)];
  const read = await readStudyDrawing(study);
  if ("bytes" in read) return [];
  if (read.kind !== "missing") return [describeDrawingFailure(study.originalFile, read, study.originalPath)];
  return [drawingMissing(study, await listNames(inFlags ? origin.flagsFolder : origin.studyFolder))];
}

/** A drawing lies in a folder of the content folder, `flags/`, or in one of a folder there, `studies/ferry/`. */
function readStudyDrawing({ original, originalPath, slug }: Study): ReturnType<typeof readRegular> {
  const inFlags = original.startsWith("/");
  const inner = `${inFlags ? "flags" : `studies/${slug}`}/${basename(originalPath)}`;
  return readRegular(join(dirname(originalPath), inFlags ? ".." : "../.."), inner, drawingBytes);
}

async function listNames(folder: string): Promise<readonly string[]> {
  const entries = await readFolder(folder);
  return "kind" in entries ? [] : entries.map(({ name }) => name);
}

/** Returns the problem unless the listing has one for the same file already. */
function known(listing: readonly Problem[], problem: Problem): Problem[] {
  return listing.some((other) => other.file === problem.file) ? [] : [problem];
}

function fail(problems: readonly Problem[]): Outcome<never> {
  return { value: undefined, problems };
}
