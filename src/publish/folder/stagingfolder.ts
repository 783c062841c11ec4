// Floor 9. The hidden folder beside the published one: where the next site is made, and where the one before is kept.
import { rmdir } from "node:fs/promises";
import path from "node:path";
import { kindOf, readFolder } from "../../content/disk/readfile.ts";
import { formatMark, markFile } from "./foldermark.ts";
import { listForeign, readManifest } from "./manifest.ts";
import { isRecorded } from "./publishedrecord.ts";
import { nameIn, type Place } from "./siteplace.ts";
import type { Disk } from "./writedisk.ts";

/** A folder that held files we did not write, and is kept under a name of its own. */
export interface Kept {
  readonly folder: string;
  readonly files: readonly string[];
}

/**
 * Makes the workshop, marked as ours, and every folder on the way to it that is not there. Returns the folders it made,
 * outermost first.
 */
export async function makeWorkshop({ workshop, secret }: Place, disk: Disk): Promise<readonly string[]> {
  const missing: string[] = [];
  for (let folder = workshop; (await kindOf(folder)) === undefined; folder = path.dirname(folder))
    missing.unshift(folder);
  for (const folder of missing) await disk.makeFolder(folder).catch(ignoreExisting);
  const file = path.join(workshop, markFile);
  if ((await kindOf(file)) === undefined)
    await disk.write(file, await formatMark(workshop, secret)).catch(ignoreExisting);
  return missing;
}

/** Removes the workshop where there is nothing left in it, then those of `made` that are empty. Never throws. */
export async function clearWorkshop({ workshop }: Place, made: readonly string[], disk: Disk): Promise<void> {
  try {
    const entries = await readFolder(workshop);
    if ("kind" in entries || entries.some(({ name }) => name !== markFile)) return;
    await disk.remove(path.join(workshop, markFile));
    // Fails where another build has come in meanwhile, as it should.
    await rmdir(workshop);
    for (const folder of [...made].reverse()) if (folder !== workshop) await rmdir(folder);
  } catch {
    return;
  }
}

/** Where the site before the present one is kept until the next build: whoever is copying it finishes the copy. */
export function previousOf({ workshop }: Place): string {
  return path.join(workshop, "previous");
}

/** The published folder, while two renames are on their way: see replacesite.ts. */
export function outgoingOf({ workshop }: Place): string {
  return path.join(workshop, "outgoing");
}

/**
 * Puts away a folder that was published. One with files that we did not write, of which a manifest that we did not write says
 * nothing, gets a name beside the target and is kept
 * for good; any other is the one before until the next build, or is removed where `isLeft` says that it is a leaving.
 */
export async function putAway(
  folder: string,
  place: Place,
  disk: Disk,
  isLeft = false,
): Promise<Kept | undefined> {
  const ours = (await isRecorded(folder, place)) ? await readManifest(folder) : undefined;
  const files = await listForeign(folder, ours);
  if (files.length > 0) {
    const kept = await findFreeName(place.target, "kept");
    await disk.rename(folder, kept);
    return { folder: kept, files };
  }
  const old = nameIn(place, "old");
  if (isLeft) {
    // First out of the way: a program of a killed build may still know its name.
    await disk.rename(folder, old);
  } else {
    const previous = previousOf(place);
    if ((await kindOf(previous)) !== undefined) await disk.rename(previous, old);
    await disk.rename(folder, previous);
  }
  await disk.remove(old);
  return undefined;
}

/** Returns a name beside `file` that nothing has: `file-kept`, `file-kept-2`. */
export async function findFreeName(file: string, ending: "kept" | "aside"): Promise<string> {
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? `${file}-${ending}` : `${file}-${ending}-${number}`;
    if ((await kindOf(name)) === undefined) return name;
  }
}

function ignoreExisting(error: unknown): undefined {
  if (error instanceof Error && "code" in error && error.code === "EEXIST") return undefined;
  throw error;
}
