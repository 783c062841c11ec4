// Floor 5. The one way to files and folders that others may have written: content, what is kept, locks, the site of before.
// Below a folder that was named no link is followed, at any step of the way; pipes and devices are never opened.
import { constants, type Dirent, type Stats } from "node:fs";
import { type FileHandle, lstat, open, readdir, readlink, realpath, stat } from "node:fs/promises";
import { join } from "node:path";
import type { Entry } from "../folder/listing.ts";
import type { FileFailure } from "./filefailure.ts";

/** Something that was opened. `at` leads to it whatever becomes of its name, where the system has such a path. */
export interface Opened {
  readonly handle: FileHandle;
  readonly stats: Stats;
  readonly at: string;
}

/**
 * Opens a regular file or a folder: `inner`, a path of names below the folder `root`, or `root` itself where it is empty.
 * Links on the way to `root` are followed, those below it are not: where the opened thing really lies is asked after it is
 * open, so that exchanging a folder with a link at that moment gains nothing. `flags` as for open(2). The caller closes it.
 */
export async function openBelow(root: string, inner: string, flags = 0): Promise<Opened | FileFailure> {
  try {
    const place = join(await realpath(root), inner);
    const path = inner === "" ? place : join(root, inner);
    if ((flags & constants.O_CREAT) === 0) {
      // Opening a pipe or a device may already do something.
      const kind = nameKind(await lstat(path));
      if (kind === "link" || kind === "other") return { kind };
    }
    const handle = await open(path, flags | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0));
    const opened = await describe(handle, path, place).catch(failureOf);
    if ("kind" in opened) await handle.close();
    return opened;
  } catch (error) {
    return failureOf(error);
  }
}

/** Returns the bytes of a regular file of at most `most` bytes, or why there are none; `root` and `inner` as in `openBelow`. */
export async function readRegular(
  root: string,
  inner: string,
  most: number,
): Promise<{ bytes: Uint8Array } | FileFailure> {
  const opened = await openBelow(root, inner);
  return "kind" in opened ? opened : readOpened(opened, most);
}

/** The same of a file that somebody named, which may be a link to one. */
export async function readNamed(path: string, most: number): Promise<{ bytes: Uint8Array } | FileFailure> {
  try {
    const found = await stat(path);
    if (!found.isFile()) return { kind: found.isDirectory() ? "folder" : "other" };
    const handle = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    return await readOpened({ handle, stats: await handle.stat() }, most);
  } catch (error) {
    return failureOf(error);
  }
}

/** Returns what is in a folder, in no order, or why it cannot be told; `root` and `inner` as in `openBelow`. */
export async function readFolder(root: string, inner = ""): Promise<Entry[] | FileFailure> {
  const opened = await openBelow(root, inner, constants.O_RDONLY);
  if ("kind" in opened) return opened;
  try {
    if (!opened.stats.isDirectory()) return { kind: "other" };
    const entries = await readdir(opened.at, { withFileTypes: true });
    return entries.map((entry) => ({ name: entry.name, kind: nameKind(entry) }));
  } catch (error) {
    return failureOf(error);
  } finally {
    await opened.handle.close();
  }
}

/** Returns what is at `path`, not followed if it is a link, or undefined where nothing is. */
export async function kindOf(path: string): Promise<Entry["kind"] | undefined> {
  return lstat(path).then(nameKind, () => undefined);
}

/** Closes what it read. */
async function readOpened(
  { handle, stats }: Omit<Opened, "at">,
  most: number,
): Promise<{ bytes: Uint8Array } | FileFailure> {
  try {
    if (!stats.isFile()) return { kind: stats.isDirectory() ? "folder" : "other" };
    if (stats.size > most) return { kind: "too large", size: stats.size };
    // One byte more than there was: a file that grows meanwhile, or has no size as in /proc, is not read without end.
    const buffer = Buffer.allocUnsafe(stats.size + 1);
    let length = 0;
    while (length < buffer.length) {
      const { bytesRead } = await handle.read(buffer, length, buffer.length - length, length);
      if (bytesRead === 0) return { bytes: buffer.subarray(0, length) };
      length += bytesRead;
    }
    return { kind: "moved" };
  } catch (error) {
    return failureOf(error);
  } finally {
    await handle.close();
  }
}

/** Returns what was opened by the name `path` if it lies at `place`, a path without links. */
async function describe(handle: FileHandle, path: string, place: string): Promise<Opened | FileFailure> {
  const stats = await handle.stat();
  const at = `/proc/self/fd/${handle.fd}`;
  const really = await readlink(at).catch(() => undefined);
  // Linux tells the path of what is open, and whether it was deleted since, as by an editor that puts a new file there.
  if (really !== undefined) {
    const lies = comparePlace(really.replace(/ \(deleted\)$/, ""), place);
    return lies === "there" ? { handle, stats, at } : { kind: lies };
  }
  const [found, there] = [await realpath(path), await lstat(path)];
  const lies = comparePlace(found, place);
  if (lies !== "there") return { kind: lies };
  const isSame = there.dev === stats.dev && there.ino === stats.ino;
  return isSame ? { handle, stats, at: path } : { kind: "moved" };
}

/**
 * Returns how the place `found` of what was opened compares with `place`, where it was looked for. Some file systems take two
 * forms of a letter for one, and some its two cases too: by another case nothing is found here, so that a gallery that is right
 * on such a computer is right on all.
 */
export function comparePlace(found: string, place: string): "there" | "missing" | "moved" {
  const [a, b] = [found.normalize("NFC"), place.normalize("NFC")];
  if (a === b) return "there";
  return a.toLowerCase() === b.toLowerCase() ? "missing" : "moved";
}

function nameKind(entry: Pick<Dirent, "isSymbolicLink" | "isFile" | "isDirectory">): Entry["kind"] {
  if (entry.isSymbolicLink()) return "link";
  return entry.isFile() ? "file" : entry.isDirectory() ? "folder" : "other";
}

/** Returns what an error of the file system says; anything else is a fault of ours and is thrown again. */
function failureOf(error: unknown): FileFailure {
  if (!(error instanceof Error) || !("code" in error) || typeof error.code !== "string") throw error;
  const { code } = error;
  if (code === "ENOENT" || code === "ENOTDIR") return { kind: "missing" };
  if (code === "ELOOP") return { kind: "link" };
  return code === "EISDIR" ? { kind: "folder" } : { kind: "unreadable", code };
}
