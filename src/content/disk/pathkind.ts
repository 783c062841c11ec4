// Floor 5. What is at a path, without opening it: links are told and not followed.
import { existsSync, realpathSync } from "node:fs";
import { lstat, readlink, realpath } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** `ino` and `dev` are the same for one thing under two names. `size` in bytes, `changed` in milliseconds. */
export interface Found {
  readonly ino: bigint;
  readonly dev: bigint;
  readonly size: number;
  readonly changed: number;
  readonly isFile: boolean;
}

/** Returns what the system knows of what is at `path`, or undefined where nothing is to be found. */
export async function statOf(path: string): Promise<Found | undefined> {
  const found = await lstat(path, { bigint: true }).catch(() => undefined);
  if (found === undefined) return undefined;
  const { ino, dev, size, mtimeMs } = found;
  return { ino, dev, size: Number(size), changed: Number(mtimeMs), isFile: found.isFile() };
}

/** Returns the text of a link. Throws the error of the system where there is none. */
export function readLink(path: string): Promise<string> {
  return readlink(path);
}

/** Returns the path without links, as far as it exists. */
export async function resolveLinks(path: string): Promise<string> {
  const parent = dirname(path);
  if (parent === path) return path;
  return realpath(path).catch(async () => join(await resolveLinks(parent), basename(path)));
}

/** As `resolveLinks`, for one that cannot wait, with the letters' case as on the disk; where nothing is there, the path as it is. */
export function resolveLinksNow(path: string): string {
  return existsSync(path) ? realpathSync.native(path) : path;
}
