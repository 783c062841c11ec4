// Test support. A published folder as a digest for each file.
import { createHash } from "node:crypto";
import { readdir, readFile, stat } from "node:fs/promises";
import { join } from "node:path";

/** Returns the SHA-256 of every file in a folder and the folders in it, by path, sorted. */
export async function readSite(folder: string): Promise<ReadonlyMap<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));
  const digests = new Map<string, string>();
  for (const path of paths.sort())
    digests.set(
      path.slice(folder.length + 1),
      createHash("sha256")
        .update(await readFile(path))
        .digest("hex"),
    );
  return digests;
}

/** Returns how many entries a folder of what is kept has, and their bytes together. */
export async function measureKept(
  folder: string,
): Promise<{ readonly entries: number; readonly bytes: number }> {
  const names = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith(".entry"));
  const sizes = await Promise.all(names.map(async (name) => (await stat(join(folder, name))).size));
  return { entries: names.length, bytes: sizes.reduce((sum, size) => sum + size, 0) };
}
