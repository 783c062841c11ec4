// Floor 9. A finished folder takes the place of the published one, in one step where the system has such a step.
import path from "node:path";
import { readLink, statOf } from "../../content/disk/pathkind.ts";
import { kindOf, readFolder } from "../../content/disk/readfile.ts";
import { OutputError } from "./diskfailure.ts";
import { isRecorded } from "./publishedrecord.ts";
import { nameIn, type Place } from "./siteplace.ts";
import { type Kept, outgoingOf, putAway } from "./stagingfolder.ts";
import type { Disk } from "./writedisk.ts";

/** What stands at the target: nothing, a folder, a link that we made, or something that is not ours to touch. */
export type Standing = "nothing" | "folder" | "link" | "other";

export interface Swapped {
  /**
   * How it was done. `renamed`: nothing was there. `exchanged`: two folders got each other's name. `linked`: the target is
   * a link to a folder in the workshop, and was replaced by another. `moved`: two renames, the one after the other.
   */
  readonly way: "renamed" | "exchanged" | "linked" | "moved";
  /** The folder that was published before, where it held files that we did not write. */
  readonly kept?: Kept;
}

export async function findStanding({ target, parent, workshop }: Omit<Place, "secret">): Promise<Standing> {
  const kind = await kindOf(target);
  if (kind === undefined) return "nothing";
  if (kind === "folder") return "folder";
  if (kind !== "link") return "other";
  const version = path.resolve(parent, await readLink(target));
  return path.dirname(version) === workshop && /^version-/.test(path.basename(version)) ? "link" : "other";
}

/**
 * Puts `fresh`, a whole and checked folder in the workshop, in the place of the target. At every moment the target is what
 * it was or what it will be; only with the way `moved` there is a moment with nothing, and a build that is killed then is
 * mended by `repair`. Throws where nothing was changed.
 *
 * What is tried, in this order:
 * 1. `linked`: where a link of ours stands, another takes its place.
 * 2. Where the system exchanges two folders (`exchangecall.ts`: Linux by `mv` or Perl, macOS by Perl): `exchanged` with the
 *    folder that stands, `renamed` where nothing does.
 * 3. `linked`: where nothing stands and a link can take the place of a link, as it never does on Windows. So it is 1 next time.
 * 4. `renamed` where nothing stands, else `moved`.
 */
export async function swapIn(fresh: string, place: Place, disk: Disk): Promise<Swapped> {
  const standing = await findStanding(place);
  if (standing === "link") return relink(fresh, place, disk);
  const isPossible = await canExchange(place, disk);
  if (standing === "nothing") return isPossible ? rename(fresh, place, disk) : linkFirst(fresh, place, disk);
  return isPossible ? exchange(fresh, place, disk) : move(fresh, place, disk);
}

/** Tried on two folders of our own: some file systems refuse, and a bad one says yes and loses a folder. */
async function canExchange(place: Place, disk: Disk): Promise<boolean> {
  const [a, b] = [nameIn(place, "probe"), nameIn(place, "probe")];
  await disk.makeFolder(a);
  await disk.makeFolder(b);
  const [wasA, wasB] = [await statOf(a), await statOf(b)];
  try {
    await disk.exchange(a, b);
    const [isA, isB] = [await statOf(a), await statOf(b)];
    return isA?.ino === wasB?.ino && isB?.ino === wasA?.ino;
  } catch {
    return false;
  } finally {
    await disk.remove(a);
    await disk.remove(b);
  }
}

async function rename(fresh: string, place: Place, disk: Disk): Promise<Swapped> {
  await disk.rename(fresh, place.target);
  await settle(() => disk.flush(place.parent));
  return { way: "renamed" };
}

async function exchange(fresh: string, place: Place, disk: Disk): Promise<Swapped> {
  const name = nameIn(place, "swap");
  await disk.rename(fresh, name);
  const made = await statOf(name);
  try {
    await disk.exchange(name, place.target);
  } catch (error) {
    // It may have been done and not told.
    if ((await statOf(place.target))?.ino !== made?.ino) {
      await disk.rename(name, fresh);
      // Two of our own folders could be exchanged, this one cannot: two renames tell why, or do it.
      if (error instanceof Error && "code" in error && error.code === "ENOTSUP")
        return move(fresh, place, disk);
      throw error;
    }
  }
  await settle(() => disk.flush(place.parent));
  const kept = await settle(() => putAway(name, place, disk));
  return { way: "exchanged", ...(kept === undefined ? {} : { kept }) };
}

async function relink(fresh: string, place: Place, disk: Disk): Promise<Swapped> {
  const before = path.resolve(place.parent, await readLink(place.target));
  await putLink(fresh, place, disk);
  const kept =
    (await kindOf(before)) !== undefined ? await settle(() => putAway(before, place, disk)) : undefined;
  return { way: "linked", ...(kept === undefined ? {} : { kept }) };
}

async function linkFirst(fresh: string, place: Place, disk: Disk): Promise<Swapped> {
  if (!(await canRelink(place, disk))) return rename(fresh, place, disk);
  await putLink(fresh, place, disk);
  return { way: "linked" };
}

/** Windows makes links, and puts none in the place of another. */
async function canRelink(place: Place, disk: Disk): Promise<boolean> {
  const [a, b] = [nameIn(place, "link"), nameIn(place, "link")];
  try {
    for (const at of [a, b]) await disk.link(".", at);
    await disk.rename(a, b);
    return true;
  } catch {
    return false;
  } finally {
    for (const at of [a, b]) await disk.remove(at);
  }
}

/** The link is relative: the two may move together. It replaces the one that is there in one step. */
async function putLink(fresh: string, place: Place, disk: Disk): Promise<void> {
  const version = nameIn(place, "version");
  const link = nameIn(place, "link");
  await disk.rename(fresh, version);
  await disk.link(path.join(path.basename(place.workshop), path.basename(version)), link);
  await disk.flush(place.workshop);
  await disk.rename(link, place.target);
  await settle(() => disk.flush(place.parent));
}

async function move(fresh: string, place: Place, disk: Disk): Promise<Swapped> {
  const outgoing = outgoingOf(place);
  await disk.rename(place.target, outgoing);
  try {
    await disk.rename(fresh, place.target);
  } catch (error) {
    await disk.rename(outgoing, place.target).catch(() => {
      throw new OutputError(
        `The site cannot be written to ${place.target}, and the one before cannot be put back: it waits in ${outgoing}.`,
        "Publish again: that puts it back.",
      );
    });
    throw error;
  }
  await settle(() => disk.flush(place.parent));
  const kept = await settle(() => putAway(outgoing, place, disk));
  return { way: "moved", ...(kept === undefined ? {} : { kept }) };
}

/** The new site stands: what goes wrong from here on costs nobody anything, and the next build clears it away. */
async function settle<T>(work: () => Promise<T>): Promise<T | undefined> {
  return work().catch(() => undefined);
}

/**
 * Mends and clears what a killed build left in the workshop; the caller holds the lock. Returns the folders with files that
 * we did not write, which are kept under names of their own.
 */
export async function repair(place: Place, disk: Disk): Promise<readonly Kept[]> {
  const kept: Kept[] = [];
  const outgoing = outgoingOf(place);
  // Only a site that we published: nothing else that lies there is put before anyone's eyes.
  const isOut = (await kindOf(outgoing)) === "folder" && (await isRecorded(outgoing, place));
  if (isOut && (await findStanding(place)) === "nothing") await disk.rename(outgoing, place.target);
  const isLink = (await findStanding(place)) === "link";
  const current = isLink ? path.basename(await readLink(place.target)) : undefined;
  const entries = await readFolder(place.workshop);
  for (const { name, kind } of "kind" in entries ? [] : entries) {
    const file = path.join(place.workshop, name);
    if (/^(?:fresh|probe|link|old)-[0-9a-f]{12}$/.test(name)) await disk.remove(file);
    // Whole folders, in or out: what was out may hold files that came into it at the last moment.
    if (kind !== "folder") continue;
    if (name === "outgoing" || (/^(?:swap|version)-[0-9a-f]{12}$/.test(name) && name !== current)) {
      const found = await putAway(file, place, disk, true);
      if (found !== undefined) kept.push(found);
    }
  }
  return kept;
}
