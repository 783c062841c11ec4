// Floor 11, for the command begin. The schemas that a gallery keeps for editors: written into it, and written anew where they
// have aged. What an author has changed is left alone.
import { rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { kindOf, readRegular } from "../../content/disk/readfile.ts";
import { formatSchemas } from "../../content/gallery/editorschema.ts";
import { isAsWritten } from "../../content/gallery/schemastamp.ts";
import { english } from "../../words/en/all.ts";

/** The folder, at the top of a gallery, in which editors find the schemas. It is hidden, and never read as content. */
export const schemasFolder = ".schemas";

/** Larger files are none of ours, in bytes. */
const mostBytes = 1024 * 1024;

/** Returns the schemas of a gallery with this palette, by file name. */
export function listSchemas(palette: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  return new Map(Object.entries(formatSchemas(english, palette)));
}

/** What became of the schemas of a gallery: files written anew, and files that somebody changed and that differ from ours. */
export interface Refreshed {
  readonly written: readonly string[];
  readonly left: readonly string[];
}

/**
 * Writes anew those schemas of the gallery `content` that are just as some version of ours wrote them and differ from what
 * they are now, with its palette. Links are not followed and nothing is added. What cannot be written stays as it was.
 */
export async function refreshSchemas(
  content: string,
  palette: ReadonlyMap<string, string>,
): Promise<Refreshed> {
  const written: string[] = [];
  const left: string[] = [];
  const folder = join(content, schemasFolder);
  if ((await kindOf(folder)) !== "folder") return { written, left };
  for (const [name, text] of listSchemas(palette)) {
    const file = join(folder, name);
    const read = await readRegular(content, `${schemasFolder}/${name}`, mostBytes);
    if (!("bytes" in read)) continue;
    const there = Buffer.from(read.bytes).toString("utf8");
    if (there === text) continue;
    const isWritten = isAsWritten(there) && (await replace(file, text));
    (isWritten ? written : left).push(file);
  }
  return { written, left };
}

/** In one step: an editor reads the old file or the new one. */
async function replace(file: string, text: string): Promise<boolean> {
  const fresh = `${file}.${process.pid}.tmp`;
  try {
    await writeFile(fresh, text, { flag: "wx" });
    await rename(fresh, file);
    return true;
  } catch {
    await rm(fresh, { force: true });
    return false;
  }
}
