// Floor 5. What is on the disk: files that are really files, folders, links. Contributed content is opened here only.
import { constants, type Dirent } from "node:fs";
import { lstat, open, readdir } from "node:fs/promises";
import type { FileFailure } from "./file.ts";
import type { Entry } from "./listing.ts";

/**
 * Returns the bytes of a regular file of at most `most` bytes, or why there are none. No link is followed unless `follow`
 * says so, and no pipe waited for.
 */
export async function readRegular(
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

/** Returns what is in a folder, in no order, or undefined where it is none that can be read. */
export async function readFolder(path: string): Promise<Entry[] | undefined> {
  try {
    const entries = await readdir(path, { withFileTypes: true });
    return entries.map((entry) => ({ name: entry.name, kind: nameKind(entry) }));
  } catch {
    return undefined;
  }
}

/** Returns why a folder that is there cannot be read, or undefined where it can be or where there is none. */
export async function findFolderFailure(path: string): Promise<FileFailure | undefined> {
  try {
    await readdir(path);
    return undefined;
  } catch (error) {
    const code = codeOf(error);
    return code === "ENOENT" || code === "ENOTDIR" ? undefined : { kind: "unreadable", code };
  }
}

/** Returns what is at `path`, not followed if it is a link, or undefined where nothing is. */
export async function kindOf(path: string): Promise<Entry["kind"] | undefined> {
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
