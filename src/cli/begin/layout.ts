// Floor 11. New files and folders put in their places: all of them or none, and over nothing that is not named as it was.
import { constants, copyFile, link, mkdir, rename, rm, rmdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { resolveLinks } from "../../content/disk/pathkind.ts";
import { kindOf, readRegular } from "../../content/disk/readfile.ts";
import { quoteText } from "../../problem/quote.ts";
import { UsageError } from "../command.ts";
import { makeWork, sweepLeavings } from "./draftfolder.ts";

/** A file, or a folder of files by name, and where it goes in the folder that is laid out. */
export interface Piece {
  readonly path: string;
  readonly content: string | Uint8Array | ReadonlyMap<string, string | Uint8Array>;
  /** It belongs to the gallery: one that somebody else has put there meanwhile does as well. */
  readonly isShared?: boolean;
  /** What it takes the place of: a file that is no longer as it was read is left alone, and stops all. */
  readonly instead?: Uint8Array;
}

/**
 * Puts `pieces` into the folder `root`, which is made where it is not there. Everything is written beside its place first and
 * then moved; where one piece fails, what was moved before it is taken away again. What killed processes left beside the
 * places is removed.
 *
 * Throws UsageError where something is in the way, the folder may not be written to, or there is no room.
 */
export async function layOut(root: string, pieces: readonly Piece[]): Promise<void> {
  const undo: (() => Promise<unknown>)[] = [];
  try {
    await makeFolder(root, undo);
    await sweepLeavings(root);
    const work = await makeWork(root);
    undo.push(() => clear(work));
    for (const [index, { content }] of pieces.entries()) await write(join(work, String(index)), content);
    for (const [index, piece] of pieces.entries()) {
      const target = join(root, piece.path);
      await makeFolder(dirname(target), undo);
      const from = join(work, String(index));
      if (piece.instead !== undefined) undo.push(await replace(piece, piece.instead, root, work));
      else if (await put(from, target, piece)) undo.push(() => rm(target, { recursive: true, force: true }));
    }
    await clear(work);
  } catch (error) {
    for (const step of undo.reverse()) await step().catch(() => undefined);
    throw describe(error, root);
  }
}

/** What cannot be removed is swept away by a later begin, and costs nobody the study that is there or its undoing. */
async function clear(work: string): Promise<void> {
  await rm(work, { recursive: true, force: true }).catch(() => undefined);
}

/** Makes a folder and those it lies in; each of them is taken away again if it is still empty then. */
async function makeFolder(folder: string, undo: (() => Promise<unknown>)[]): Promise<void> {
  try {
    await mkdir(folder);
    undo.push(() => rmdir(folder));
  } catch (error) {
    const code = codeOf(error);
    if (code === "EEXIST" && (await isFolder(folder))) return;
    if (code !== "ENOENT" || dirname(folder) === folder) throw error;
    await makeFolder(dirname(folder), undo);
    await makeFolder(folder, undo);
  }
}

async function write(path: string, content: Piece["content"]): Promise<void> {
  if (!(content instanceof Map)) return writeFile(path, content as string | Uint8Array, { flag: "wx" });
  await mkdir(path);
  for (const [name, inner] of content) await writeFile(join(path, name), inner, { flag: "wx" });
}

/** Returns whether it was moved there: false where a shared one is there already. */
async function put(from: string, target: string, { content, isShared = false }: Piece): Promise<boolean> {
  try {
    await checkNothing(target);
    await (content instanceof Map ? rename : moveFile)(from, target);
    return true;
  } catch (error) {
    if (isShared && /^(?:EEXIST|ENOTEMPTY)$/.test(String(codeOf(error)))) return false;
    throw error;
  }
}

/** Puts `content` in the place of a file that holds `was`, whose rights it keeps. Returns what undoes it. */
async function replace(
  { path, content }: Piece,
  was: Uint8Array,
  root: string,
  work: string,
): Promise<() => Promise<void>> {
  const target = join(root, path);
  const read = await readRegular(root, path, was.length);
  if ("kind" in read || !Buffer.from(was).equals(read.bytes))
    throw Object.assign(new Error(target), { code: "ECHANGED", path: target });
  const [next, old] = [join(work, "next"), join(work, "old")];
  for (const copy of [next, old]) await copyFile(target, copy);
  await writeFile(next, content as string);
  await rename(next, target);
  return () => rename(old, target);
}

/** A link fails where the name is taken; on file systems without them a copy does too. */
async function moveFile(from: string, to: string): Promise<void> {
  try {
    await link(from, to);
  } catch (error) {
    if (codeOf(error) === "EEXIST") throw error;
    await copyFile(from, to, constants.COPYFILE_EXCL);
  }
}

/** Renaming a folder over an empty one would replace it without a word. */
async function checkNothing(target: string): Promise<void> {
  if ((await kindOf(target)) !== undefined)
    throw Object.assign(new Error(target), { code: "EEXIST", path: target });
}

async function isFolder(path: string): Promise<boolean> {
  return (await kindOf(await resolveLinks(path))) === "folder";
}

function describe(error: unknown, root: string): unknown {
  const code = codeOf(error);
  const at = error instanceof Error && "dest" in error ? error.dest : (error as { path?: unknown }).path;
  const where = quoteText(typeof at === "string" ? at : root);
  if (code === "EEXIST" || code === "ENOTEMPTY" || code === "ENOTDIR")
    return new UsageError(
      `${where} is in the way, and nothing is overwritten.`,
      "Choose another place or name.",
    );
  if (code === "ECHANGED") return new UsageError(`${where} was edited meanwhile.`, "Type it again.");
  if (code === "EACCES" || code === "EPERM" || code === "EROFS")
    return new UsageError(`${where} may not be written.`, "Choose another folder with --content.");
  if (code === "ENAMETOOLONG")
    return new UsageError(`${where} is too long for a name here.`, "Choose a shorter one.");
  if (code === "ENOSPC" || code === "EDQUOT")
    return new UsageError(
      `${where} could not be written: the disk is full.`,
      "Make room, and type it again.",
    );
  if (typeof code === "string" && /^E[A-Z]+$/.test(code))
    return new UsageError(`${where} could not be written: ${code}.`, "Mend that, and type it again.");
  return error;
}

function codeOf(error: unknown): unknown {
  return error instanceof Error && "code" in error ? error.code : undefined;
}
