// Floor 9. The files of a site → a fresh folder with its manifest, read back and checked before anyone sees it.
import path from "node:path";
import { foldName } from "../../content/study/slug.ts";
import { describeFile, formatManifest, listFiles, type ManifestEntry, manifestName } from "./manifest.ts";
import type { SiteFile } from "./sitefile.ts";
import type { Disk } from "./writedisk.ts";

/** Files that are read back and flushed at once: disks are quicker so. */
const atOnce = 16;

/** Files that are made at once. */
const madeAtOnce = 3;

/** A site that is being made in the folder `fresh`, which is not there before the first file comes. */
export class FreshSite {
  private readonly fresh: string;
  private readonly disk: Disk;
  private readonly paths = new SitePaths();
  private readonly entries = new Map<string, ManifestEntry>();
  /** The last piece of work: each begins when the one before has ended well, so nothing is written after a failure. */
  private last: Promise<void> | undefined;

  constructor(fresh: string, disk: Disk) {
    this.fresh = fresh;
    this.disk = disk;
  }

  /**
   * Makes files and writes them. Throws where a path is not one a site can have, is there twice, or differs from another by
   * the case of its letters only; and what `make` throws.
   */
  add(files: readonly SiteFile[]): Promise<void> {
    return this.next(async () => {
      const { fresh, disk } = this;
      for (const folder of this.paths.add(files.map((file) => file.path)))
        await disk.makeFolder(path.join(fresh, folder));
      for await (const [file, bytes] of makeAhead(files)) {
        this.entries.set(file.path, describeFile(file.path, bytes));
        await disk.write(path.join(fresh, file.path), bytes);
      }
    });
  }

  /** Takes files and folders out again, `studies/a-wheel`, with all that is in them. */
  drop(paths: readonly string[]): Promise<void> {
    return this.next(async () => {
      for (const each of paths) await this.disk.remove(path.join(this.fresh, each));
      const gone = new Set(paths);
      for (const file of this.entries.keys()) if (isWithin(file, gone)) this.entries.delete(file);
      this.paths.drop(paths);
    });
  }

  /**
   * Writes the manifest; flushes all to the disk, reads it back and compares it with the manifest. Throws where a file is
   * not on the disk as it was made.
   */
  finish(): Promise<void> {
    return this.next(async () => {
      const { fresh, disk } = this;
      const entries = [...this.entries.values()];
      const manifest = formatManifest(entries);
      await disk.write(path.join(fresh, manifestName), manifest);
      await checkWritten(fresh, [...entries, describeFile(manifestName, manifest)], disk);
      // The innermost first: a folder is safe once what it names is.
      for (const folder of [...this.paths.listFolders()].reverse())
        await disk.flush(path.join(fresh, folder));
      await disk.flush(fresh);
    });
  }

  /** Removes the folder, once nothing is written to it any more. Never throws. */
  async remove(): Promise<void> {
    const { last } = this;
    this.last = Promise.reject(new Error("the site is not being made any more"));
    this.last.catch(() => undefined);
    await last?.catch(() => undefined);
    await this.disk.remove(this.fresh).catch(() => undefined);
  }

  private next(work: () => Promise<void>): Promise<void> {
    this.last = (this.last ?? this.disk.makeFolder(this.fresh)).then(work);
    // Whoever asked for it is told.
    this.last.catch(() => undefined);
    return this.last;
  }
}

/** Makes the files in their order, some while those before are written: a picture waits for its encoder most of the time. */
async function* makeAhead(files: readonly SiteFile[]) {
  const made: Promise<string | Uint8Array>[] = [];
  for (const [index, file] of files.entries()) {
    for (const next of files.slice(index + made.length, index + madeAtOnce)) {
      const making = next.make();
      // One that fails is told in its turn, if it comes to that.
      making.catch(() => undefined);
      made.push(making);
    }
    const bytes = await made.shift();
    if (bytes !== undefined) yield [file, bytes] as const;
  }
}

/** The paths of a site, as a file system without letter case, or with composed letters, takes them. */
export class SitePaths {
  private readonly files = new Map<string, string>([[foldName(manifestName), manifestName]]);
  private readonly folders = new Map<string, string>();

  /** Returns the folders that these paths need and those before did not, outer ones first. Throws where no site can have one. */
  add(paths: readonly string[]): readonly string[] {
    return paths.flatMap((file) => this.addOne(file)).sort();
  }

  /** All folders, outer ones first. */
  listFolders(): readonly string[] {
    return [...this.folders.values()].sort();
  }

  /** Forgets files and folders, and all in them. */
  drop(paths: readonly string[]): void {
    const gone = new Set(paths.map(foldName));
    for (const known of [this.files, this.folders])
      for (const key of known.keys()) if (isWithin(key, gone)) known.delete(key);
  }

  private addOne(file: string): readonly string[] {
    const parts = file.split("/");
    if (parts.some((part) => part === "" || part === "." || part === ".." || /[\\\0]/.test(part)))
      throw new Error(`“${file}” is no path in a site`);
    const twin = this.files.get(foldName(file));
    if (twin !== undefined) throw new Error(`${file} and ${twin} would be one file`);
    const fresh: string[] = [];
    for (let depth = 1; depth < parts.length; depth += 1) {
      const folder = parts.slice(0, depth).join("/");
      const other = this.folders.get(foldName(folder));
      if (other !== undefined && other !== folder)
        throw new Error(`${folder} and ${other} would be one folder`);
      if (this.files.has(foldName(folder))) throw new Error(`${folder} would be a file and a folder`);
      if (other === undefined) fresh.push(folder);
      this.folders.set(foldName(folder), folder);
    }
    if (this.folders.has(foldName(file))) throw new Error(`${file} would be a file and a folder`);
    this.files.set(foldName(file), file);
    return fresh;
  }
}

/** Whether `paths` has `file` or a folder that it lies in. */
function isWithin(file: string, paths: ReadonlySet<string>): boolean {
  for (let at = file.indexOf("/"); at !== -1; at = file.indexOf("/", at + 1))
    if (paths.has(file.slice(0, at))) return true;
  return paths.has(file);
}

async function checkWritten(fresh: string, entries: readonly ManifestEntry[], disk: Disk): Promise<void> {
  const wanted = new Set(entries.map((entry) => entry.path));
  const found = new Set(await listFiles(fresh));
  const odd = [...wanted, ...found].find((file) => !wanted.has(file) || !found.has(file));
  if (odd !== undefined) throw new Error(`${odd} is not where it was written, or was not written`);
  const waiting = [...entries];
  const check = async (): Promise<void> => {
    for (let entry = waiting.pop(); entry !== undefined; entry = waiting.pop()) {
      const file = path.join(fresh, entry.path);
      await disk.flush(file);
      const { size, sha256 } = describeFile(entry.path, await disk.read(file));
      if (size !== entry.size || sha256 !== entry.sha256)
        throw new Error(`${entry.path} is not on the disk as it was written`);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, check));
}
