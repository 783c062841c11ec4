// Test support. Files of the site, made and put in a map or a folder.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { SiteFile } from "../../src/site/file.ts";

/** Makes every file; returns its bytes by path. */
export async function makeAll(files: readonly SiteFile[]): Promise<ReadonlyMap<string, Buffer>> {
  const made = new Map<string, Buffer>();
  for (const file of files) {
    if (made.has(file.path)) throw new Error(`${file.path} is there twice`);
    made.set(file.path, Buffer.from(await file.make()));
  }
  return made;
}

/** Makes every file and writes it into `folder`. */
export async function writeAll(files: readonly SiteFile[], folder: string): Promise<void> {
  for (const [file, bytes] of await makeAll(files)) {
    await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
    await writeFile(path.join(folder, file), bytes);
  }
}
