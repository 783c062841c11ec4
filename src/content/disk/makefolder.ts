// Floor 5. Makes a folder of our own with those that it lies in.
import { mkdir } from "node:fs/promises";
import { dirname } from "node:path";

/**
 * Makes `folder` and every folder on the way to it. Throws the error of the system: Node's own way of doing it never ends
 * where a folder is there and none can be made in it, as in /proc.
 */
export async function makeFolders(folder: string, mode = 0o777): Promise<void> {
  try {
    await mkdir(folder, { mode });
  } catch (error) {
    const code = error instanceof Error && "code" in error ? error.code : undefined;
    if (code === "EEXIST") return;
    if (code !== "ENOENT" || dirname(folder) === folder) throw error;
    await makeFolders(dirname(folder), mode);
    await mkdir(folder, { mode }).catch((again: NodeJS.ErrnoException) => {
      // Somebody else may have made it in this moment.
      if (again.code !== "EEXIST") throw again;
    });
  }
}
