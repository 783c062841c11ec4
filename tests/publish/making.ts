// Test support. Files of the site, made and put in a map or a folder.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { SiteFile } from "../../src/publish/folder/sitefile.ts";
import { makeFiles } from "../../src/publish/pictures/makefiles.ts";
import type { DrawnFile } from "../../src/publish/pictures/recipe.ts";

/** Makes one file here; what is drawn as a child process would. */
export async function makeFile(file: SiteFile | DrawnFile): Promise<string | Uint8Array> {
  if ("make" in file) return file.make();
  const input = { file: file.path, bytes: Buffer.from(""), recipes: [file.recipe], isTrial: false };
  const { value, problems } = await makeFiles(input);
  if (value?.[0] === undefined) throw new Error(problems.map(({ reason }) => reason).join("\n"));
  return value[0];
}

/** Makes files by the same recipe once: the studies of a large sample have one drawing. */
function makeOnce(): typeof makeFile {
  const made = new Map<string, Promise<string | Uint8Array>>();
  return (file) => {
    if ("make" in file) return makeFile(file);
    const key = JSON.stringify(file.recipe);
    const found = made.get(key) ?? makeFile(file);
    made.set(key, found);
    return found;
  };
}

/** Makes every file; returns its bytes by path. */
export async function makeAll(
  files: readonly (SiteFile | DrawnFile)[],
): Promise<ReadonlyMap<string, Buffer>> {
  const made = new Map<string, Buffer>();
  const make = makeOnce();
  for (const file of files) {
    if (made.has(file.path)) throw new Error(`${file.path} is there twice`);
    made.set(file.path, Buffer.from((await make(file)) as string));
  }
  return made;
}

/** Makes every file and writes it into `folder`. */
export async function writeAll(files: readonly (SiteFile | DrawnFile)[], folder: string): Promise<void> {
  for (const [file, bytes] of await makeAll(files)) {
    await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
    await writeFile(path.join(folder, file), bytes);
  }
}
