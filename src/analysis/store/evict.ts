// Floor 6. Keeps the folder of what is kept under its size: what was not used for longest goes first, and what no build
// used for a month goes anyway.
import { constants } from "node:fs";
import { rm } from "node:fs/promises";
import { join } from "node:path";
import { statOf } from "../../content/disk/pathkind.ts";
import { openBelow, readFolder } from "../../content/disk/readfile.ts";

/** The end of an entry's name. Nothing else is ever deleted but our own files that were not finished. */
export const entryEnding = ".entry";
export const unfinishedEnding = ".tmp";

/** An unfinished file is given up after this time, in milliseconds. */
const giveUp = 3_600_000;

/** An entry that was not used for this time, in milliseconds, belongs to a study as it was once. */
const outlived = 30 * 86_400_000;

interface Entry {
  readonly path: string;
  readonly bytes: number;
  /** When it was last used, in milliseconds. */
  readonly used: number;
}

/** Returns whether the folder was not swept for an hour. */
export async function isDue(folder: string, now: number): Promise<boolean> {
  const swept = await statOf(join(folder, "swept"));
  return swept === undefined || Math.abs(now - swept.changed) > giveUp;
}

/**
 * Deletes entries that were not used for 30 days; then more, until no more than four fifths of `most` bytes are left, if
 * there are more than `most`; and files that were not finished long ago. Never throws: somebody else may be sweeping too.
 */
export async function sweep(folder: string, most: number, now: number): Promise<void> {
  const entries: Entry[] = [];
  for (const name of await listNames(folder, "")) {
    if (!/^[0-9a-f]{2}$/.test(name)) continue;
    for (const inner of await listNames(folder, name)) {
      const found = await look(join(folder, name, inner));
      if (found === undefined) continue;
      const age = now - found.used;
      const isEntry = inner.endsWith(entryEnding);
      if (isEntry ? age > outlived : inner.endsWith(unfinishedEnding) && age > giveUp)
        await remove(found.path);
      else if (isEntry) entries.push(found);
    }
  }
  let total = entries.reduce((sum, { bytes }) => sum + bytes, 0);
  if (total > most) {
    for (const { path, bytes } of entries.sort((a, b) => a.used - b.used)) {
      if (total <= 0.8 * most) break;
      await remove(path);
      total -= bytes;
    }
  }
  // Whatever else is called so is left as it is, and swept beside each time.
  const stamp = await openBelow(folder, "swept", constants.O_WRONLY | constants.O_CREAT);
  if ("kind" in stamp) return;
  await stamp.handle.utimes(now / 1000, now / 1000).catch(() => undefined);
  await stamp.handle.close();
}

async function listNames(folder: string, inner: string): Promise<readonly string[]> {
  const entries = await readFolder(folder, inner);
  return "kind" in entries ? [] : entries.map(({ name }) => name);
}

async function look(path: string): Promise<Entry | undefined> {
  const found = await statOf(path);
  return found?.isFile ? { path, bytes: found.size, used: found.changed } : undefined;
}

async function remove(path: string): Promise<void> {
  await rm(path, { force: true }).catch(() => undefined);
}
