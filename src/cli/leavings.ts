// Floor 7. The folder in which new lays its files ready, named by its process; and those that killed processes left behind.
import { lstat, mkdir, readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { formatHolder, lookAtHolder, nameSelf, parseHolder } from "../site/holder.ts";

const beginning = ".counterchange-new-";
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
  for (const name of await readdir(root).catch(() => [])) {
    if (!name.startsWith(beginning)) continue;
    const holder = parseHolder(`${lock}${name.slice(beginning.length)}`);
    if (holder === undefined || (await lookAtHolder(holder)) !== "gone") continue;
    const folder = join(root, name);
    if (await isOurs(folder)) await rm(folder, { recursive: true, force: true }).catch(() => undefined);
  }
}

async function isOurs(folder: string): Promise<boolean> {
  const isFolder = await lstat(folder).then(
    (found) => found.isDirectory(),
    () => false,
  );
  const names = isFolder ? await readdir(folder).catch(() => undefined) : undefined;
  return names?.every((name) => /^\d{1,2}$/.test(name)) ?? false;
}
