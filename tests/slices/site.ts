// Test support. A published folder as a digest for each file.
import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
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
