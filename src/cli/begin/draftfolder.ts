// Floor 11. The folder in which begin lays its files ready, named by its process; and those that killed processes left behind.
import { mkdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { readFolder } from "../../content/disk/readfile.ts";
import { formatHolder, lookAtHolder, nameSelf, parseHolder } from "../../publish/folder/lockowner.ts";

const beginning = ".counterchange-begin-";
const lock = "lock.";

/** Makes a hidden folder in `root` that no other process has, and returns its path. */
export async function makeWork(root: string): Promise<string> {
  const folder = join(root, `${beginning}${formatHolder(await nameSelf()).slice(lock.length)}`);
  await mkdir(folder);
  return folder;
}

/**
 * Removes from `root` the folders of processes that have ended. One that may be in use, or that holds anything but what is
 * laid ready under numbers, stays; so does one of another machine. Never throws: what cannot be removed stays too.
 */
export async function sweepLeavings(root: string): Promise<void> {
  const entries = await readFolder(root);
  for (const { name, kind } of "kind" in entries ? [] : entries) {
    if (kind !== "folder" || !name.startsWith(beginning)) continue;
    const holder = parseHolder(`${lock}${name.slice(beginning.length)}`);
    if (holder === undefined || (await lookAtHolder(holder)) !== "gone") continue;
    const inner = await readFolder(root, name);
    if ("kind" in inner || !inner.every((entry) => /^\d{1,2}$/.test(entry.name))) continue;
    await rm(join(root, name), { recursive: true, force: true }).catch(() => undefined);
  }
}
