// Floor 11, for the command begin. The schemas that a gallery keeps for editors: copied into it, and copied anew where they have
// aged. What an author has changed is left alone.
import { rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { listOwn, readOwn } from "../../content/disk/packagefile.ts";
import { kindOf, readRegular } from "../../content/disk/readfile.ts";
import { isAsWritten } from "../../content/gallery/schemastamp.ts";

/** The folder, at the top of a gallery, in which editors find the schemas. It is hidden, and never read as content. */
export const schemasFolder = ".schemas";

/** Larger files are none of ours, in bytes. */
const mostBytes = 1024 * 1024;

const source = join(import.meta.dirname, "../../content/schema");

/** Returns the schemas that ship, by file name. */
export async function readSchemas(): Promise<ReadonlyMap<string, Uint8Array>> {
  const read = new Map<string, Uint8Array>();
  for (const name of await listOwn(source, ".schema.json")) read.set(name, await readOwn(join(source, name)));
  return read;
}

/** What became of the schemas of a gallery: files written anew, and files that somebody changed and that differ from ours. */
export interface Refreshed {
  readonly written: readonly string[];
  readonly left: readonly string[];
}

/**
 * Writes anew those schemas of the gallery `content` that are just as some version of ours wrote them and differ from those
 * that ship now. Links are not followed and nothing is added. What cannot be written stays as it was.
 */
export async function refreshSchemas(content: string): Promise<Refreshed> {
  const written: string[] = [];
  const left: string[] = [];
  const folder = join(content, schemasFolder);
  if ((await kindOf(folder)) !== "folder") return { written, left };
  for (const [name, bytes] of await readSchemas()) {
    const file = join(folder, name);
    const read = await readRegular(content, `${schemasFolder}/${name}`, mostBytes);
    if (!("bytes" in read)) continue;
    const there = Buffer.from(read.bytes);
    if (there.equals(bytes)) continue;
    const isWritten = isAsWritten(there.toString("utf8")) && (await replace(file, bytes));
    (isWritten ? written : left).push(file);
  }
  return { written, left };
}

/** In one step: an editor reads the old file or the new one. */
async function replace(file: string, bytes: Uint8Array): Promise<boolean> {
  const fresh = `${file}.${process.pid}.tmp`;
  try {
    await writeFile(fresh, bytes, { flag: "wx" });
    await rename(fresh, file);
    return true;
  } catch {
    await rm(fresh, { force: true });
    return false;
  }
}
