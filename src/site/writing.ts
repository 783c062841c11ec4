// Floor 6. The files of a site → a fresh folder with its manifest, read back and checked before anyone sees it.
import path from "node:path";
import type { Disk } from "./disk.ts";
import type { SiteFile } from "./file.ts";
import { describeFile, formatManifest, listFiles, type ManifestEntry, manifestName } from "./manifest.ts";

/** Files that are read back and flushed at once: disks are quicker so. */
const atOnce = 16;

/** Files that are made at once. */
const madeAtOnce = 3;

/**
 * Makes every file in the folder `fresh`, which is not there yet, then its manifest; flushes all to the disk, reads it back
 * and compares it with the manifest. Throws where a path is not one a site can have, is there twice, or differs from
 * another by the case of its letters only; where a file is not on the disk as it was made; and what `make` throws.
 */
export async function writeFresh(files: readonly SiteFile[], fresh: string, disk: Disk): Promise<void> {
  checkPaths(files.map((file) => file.path));
  await writeParts((write) => write(files), fresh, disk);
}

/**
 * The same for a site whose files come in parts: `writeAll` hands each part to `write`, or has another process do it, and
 * returns what was written.
 */
export async function writeParts(
  writeAll: (write: WritePart) => Promise<readonly ManifestEntry[]>,
  fresh: string,
  disk: Disk,
): Promise<void> {
  await disk.makeFolder(fresh);
  const entries = await writeAll((files) => writePart(files, fresh, disk));
  const folders = checkPaths(entries.map((entry) => entry.path));
  const manifest = formatManifest(entries);
  await disk.write(path.join(fresh, manifestName), manifest);
  await checkWritten(fresh, [...entries, describeFile(manifestName, manifest)], disk);
  // The innermost first: a folder is safe once what it names is.
  for (const folder of [...folders].reverse()) await disk.flush(path.join(fresh, folder));
  await disk.flush(fresh);
}

/** Writes files of a site, and says what was written. */
export type WritePart = (files: readonly SiteFile[]) => Promise<readonly ManifestEntry[]>;

/** Makes files in the folder `fresh`, which is there, as may be folders that another part needed. */
export async function writePart(
  files: readonly SiteFile[],
  fresh: string,
  disk: Disk,
): Promise<readonly ManifestEntry[]> {
  for (const folder of checkPaths(files.map((file) => file.path)))
    await disk.makeFolder(path.join(fresh, folder)).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== "EEXIST") throw error;
    });
  const entries: ManifestEntry[] = [];
  for await (const [file, bytes] of makeAhead(files)) {
    entries.push(describeFile(file.path, bytes));
    await disk.write(path.join(fresh, file.path), bytes);
  }
  return entries;
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

/** Returns the folders that the paths need, outer ones first. Throws for a path that no site can have. */
export function checkPaths(paths: readonly string[]): readonly string[] {
  // Names that a file system without letter case, or with composed letters, takes for one.
  const fold = (text: string): string => text.normalize("NFC").toLowerCase();
  const seen = new Map<string, string>([[fold(manifestName), manifestName]]);
  const folders = new Map<string, string>();
  for (const file of paths) {
    const parts = file.split("/");
    if (parts.some((part) => part === "" || part === "." || part === ".." || /[\\\0]/.test(part)))
      throw new Error(`“${file}” is no path in a site`);
    const twin = seen.get(fold(file));
    if (twin !== undefined) throw new Error(`${file} and ${twin} would be one file`);
    seen.set(fold(file), file);
    for (let depth = 1; depth < parts.length; depth += 1) {
      const folder = parts.slice(0, depth).join("/");
      const other = folders.get(fold(folder));
      if (other !== undefined && other !== folder)
        throw new Error(`${folder} and ${other} would be one folder`);
      folders.set(fold(folder), folder);
    }
  }
  for (const [folded, folder] of folders)
    if (seen.has(folded)) throw new Error(`${folder} would be a file and a folder`);
  return [...folders.values()].sort();
}

async function checkWritten(fresh: string, entries: readonly ManifestEntry[], disk: Disk): Promise<void> {
  const wanted = entries.map((entry) => entry.path).sort();
  const found = await listFiles(fresh);
  const [asked, there] = [new Set(wanted), new Set(found)];
  const odd = [...wanted, ...found].find((file) => !asked.has(file) || !there.has(file));
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
