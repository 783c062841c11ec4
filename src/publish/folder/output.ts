// Floor 9. The published folder: made beside the old one, checked, swapped in whole, and never at the cost of someone's
// files. One build at a time.
import { homedir, tmpdir } from "node:os";
import path from "node:path";
import { findHome, keyVariable, readSecret } from "../../analysis/store/signature.ts";
import { packageFolder } from "../../content/disk/packagefile.ts";
import { resolveLinks } from "../../content/disk/pathkind.ts";
import { isInside } from "../../content/disk/pathname.ts";
import { quoteText, showText } from "../../problem/quote.ts";
import { elsewhere, explainAll, OutputError } from "./diskfailure.ts";
import { findOwner, markFile } from "./foldermark.ts";
import { FreshSite } from "./freshsite.ts";
import { type Lock, LockedError, takeLock } from "./lock.ts";
import type { Holder } from "./lockowner.ts";
import { listForeign, readManifest } from "./manifest.ts";
import { addRecord } from "./publishedrecord.ts";
import { findStanding, repair, type Swapped, swapIn } from "./replacesite.ts";
import type { SiteFile } from "./sitefile.ts";
import { findPlace, nameIn, type Place } from "./siteplace.ts";
import { clearWorkshop, findFreeName, type Kept, makeWorkshop } from "./stagingfolder.ts";
import { openStanding, type StandingSite } from "./standingsite.ts";
import { type Disk, disk as realDisk } from "./writedisk.ts";

export interface OutputOptions {
  /** Folders that the site must neither hold nor lie in: the content. */
  readonly keepOut: readonly string[];
  /** Replaces a folder that holds files we did not write; it is kept under another name. */
  readonly isForced?: boolean;
  /** Hears once for whom this build waits. */
  readonly onWait?: (holder: Holder) => void;
  readonly disk?: Disk;
  /** Marks what is ours beside the target; else the user's, from the home. */
  readonly secret?: Uint8Array;
}

/** A published folder that is ours to replace, for as long as the work on it goes on. */
export interface Output {
  /** Folders that an earlier build had to leave behind, with files that we did not write. */
  readonly kept: readonly Kept[];
  /** Where something was put that lay in the place of our hidden folder and was not made with the secret. */
  readonly aside?: string;
  /** Opens the site that stands, where it was published here. */
  standing(): Promise<StandingSite | undefined>;
  /** Makes files of the site to come. Throws where one cannot be made or written: then nothing can be published. */
  add(files: readonly SiteFile[]): Promise<void>;
  /** Takes files and folders of the site to come out again, `studies/a-wheel`. */
  drop(paths: readonly string[]): Promise<void>;
  /** Makes the last files and swaps the whole in. Throws where nothing was changed. */
  publish(files?: readonly SiteFile[]): Promise<Swapped>;
}

/** So many files of others are counted before the folder is refused. */
const mostForeign = 1000;

/** Our own folders: a site in them would be read as source. */
const ownFolders = ["src", "templates", "dist"].map((folder) => path.join(packageFolder, folder));

/**
 * Runs `use` while no other build works on `outDir`, after clearing up what a killed one left there.
 *
 * Throws OutputError where `outDir` is no folder, holds files that we did not write, mixes with `keepOut` or with our own
 * folders, cannot be written to, or is held by another build for more than ten minutes.
 */
export async function withOutput<T>(
  outDir: string,
  options: OutputOptions,
  use: (output: Output) => Promise<T>,
): Promise<T> {
  const disk = explainAll(options.disk ?? realDisk, outDir);
  await checkSensible(outDir);
  for (const kept of [...options.keepOut, ...ownFolders]) await checkApart(outDir, kept);
  const secret = options.secret ?? (await readSecret(path.join(findHome(), "key")));
  if (secret === undefined) throw homeless(outDir);
  const place = findPlace(outDir, secret);
  if (options.isForced !== true) await checkOurs(outDir, place);
  let made: readonly string[] = [];
  let lock: Lock | undefined;
  const fresh = nameIn(place, "fresh");
  const site = new FreshSite(fresh, disk);
  try {
    const aside = await clearWay(outDir, place, disk);
    made = await makeWorkshop(place, disk);
    lock = await takeTurn(outDir, place, disk, options);
    const kept = await repair(place, disk);
    return await use({
      kept,
      ...(aside === undefined ? {} : { aside }),
      standing: () => openStanding(place),
      add: (files) => site.add(files),
      drop: (paths) => site.drop(paths),
      publish: async (files = []) => {
        await site.add(files);
        await site.finish();
        return publish(fresh, { outDir, place, disk, options, lock });
      },
    });
  } finally {
    await site.remove();
    await lock?.release();
    await clearWorkshop(place, made, disk);
  }
}

/** Puts aside what lies in the place of the hidden folder and is not ours. Returns where it is then. */
async function clearWay(outDir: string, place: Place, disk: Disk): Promise<string | undefined> {
  const { workshop, secret } = place;
  const owner = await findOwner(workshop, secret);
  // Half written by a build that was killed; another build that is writing it goes on without.
  if (owner === "mark") await disk.remove(path.join(workshop, markFile));
  if (owner !== "others") return undefined;
  if ((await findStanding(place)) === "link")
    throw new OutputError(
      `The site cannot be written to ${outDir}: it is a link into ${workshop}, which was not made by you on this machine.`,
      `If you made it elsewhere, set ${keyVariable} to the same words there and here; if not, remove both, or name another folder with --out.`,
    );
  const aside = await findFreeName(workshop, "aside");
  await disk.rename(workshop, aside);
  return aside;
}

function homeless(outDir: string): OutputError {
  return new OutputError(
    `Nothing was written to ${outDir}: the key that marks what is ours can be neither read nor kept in ${findHome()}.`,
    `Let HOME or XDG_CACHE_HOME name a folder that can be written; or set ${keyVariable} to words of your own.`,
  );
}

async function takeTurn(outDir: string, place: Place, disk: Disk, { onWait }: OutputOptions): Promise<Lock> {
  const prepare = async () => void (await makeWorkshop(place, disk));
  try {
    const lock = await takeLock(place.workshop, {
      prepare,
      secret: place.secret,
      write: (file, text) => disk.write(file, text),
      ...(onWait === undefined ? {} : { onWait }),
    });
    // A build that ended at the same time may have removed the mark before it saw our lock.
    await prepare();
    return lock;
  } catch (error) {
    if (!(error instanceof LockedError)) throw error;
    const { pid, host } = error.holder;
    throw new OutputError(
      `The site cannot be written to ${outDir}: another run has been at work on it for ten minutes (process ${pid} on ${host}).`,
      "End that one, or name another folder with --out.",
    );
  }
}

interface Work {
  readonly outDir: string;
  readonly place: Place;
  readonly disk: Disk;
  readonly options: OutputOptions;
  readonly lock: Lock | undefined;
}

async function publish(fresh: string, work: Work): Promise<Swapped> {
  const { outDir, place, disk, options, lock } = work;
  // Once more: files may have come while we were building.
  if (options.isForced !== true) await checkOurs(outDir, place);
  if (lock === undefined || !(await lock.isHeld())) {
    throw new OutputError(
      `Nothing was written to ${outDir}: this run stood still for so long that another one took its place.`,
      "Publish again.",
    );
  }
  await addRecord(fresh, place, disk);
  return swapIn(fresh, place, disk);
}

/** A folder in which somebody is at home is never looked through: it may be the whole disk. */
async function checkSensible(outDir: string): Promise<void> {
  const at = await resolveLinks(path.resolve(outDir));
  const homes = [
    ["your home folder", homedir()],
    ["the folder you are in", process.cwd()],
    ["the folder for temporary files", tmpdir()],
  ] as const;
  for (const [name, home] of homes)
    if (isInside(await resolveLinks(path.resolve(home)), at))
      throw new OutputError(
        `The site cannot be written to ${outDir}: it would take the place of ${name}, or of one that holds it.`,
        elsewhere,
      );
}

/** Replacing a folder that holds the content would delete it; one inside the content would be read as content. */
async function checkApart(outDir: string, keptDir: string): Promise<void> {
  const [at, kept] = [await resolveLinks(path.resolve(outDir)), await resolveLinks(path.resolve(keptDir))];
  if (isInside(kept, at) || isInside(at, kept)) {
    const beside = path.join(path.dirname(path.resolve(keptDir)), "my-site");
    const isHere = isInside(await resolveLinks(path.resolve("my-site")), kept);
    throw new OutputError(
      `The site cannot be written to ${outDir}: it would mix with the folder ${quoteText(keptDir)}. Name another folder.`,
      isHere ? `Type, for example: --out ${path.relative("", beside)}` : elsewhere,
    );
  }
}

/** Throws unless the target is absent, empty, or holds nothing but what we wrote. */
async function checkOurs(outDir: string, place: Place): Promise<void> {
  const standing = await findStanding(place);
  if (standing === "nothing") return;
  if (standing === "other") {
    throw new OutputError(
      `The site cannot be written to ${outDir}: it is not a folder. Name another one.`,
      elsewhere,
    );
  }
  const foreign = await listForeign(place.target, await readManifest(place.target), mostForeign);
  if (foreign.length === 0) return;
  const least = foreign.length < mostForeign ? "" : "at least ";
  const more = foreign.length > 3 ? ` and ${least}${foreign.length - 3} more` : "";
  throw new OutputError(
    `The site cannot be written to ${outDir}: it holds what was not written here (${foreign.slice(0, 3).map(showText).join(", ")}${more}). ` +
      "Move them, or name another folder.",
    `${elsewhere}. With --force the folder is replaced, and what is in it now is kept beside it.`,
  );
}
