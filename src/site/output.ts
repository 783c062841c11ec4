// Floor 6. The published folder: built beside the old one, swapped in whole, and never at the cost of someone's files.
import { lstat, mkdir, mkdtemp, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";

/** Lists, a path a line, every file that we wrote. A folder without it is not ours. */
export const markerName = ".counterchange-site";

/** The folder cannot be used; the message says why and what to do. */
export class OutputError extends Error {}

/**
 * Runs `write` on a fresh folder beside `outDir`, then puts that folder in its place. Where `write` fails, the old
 * folder stays as it was.
 *
 * Throws OutputError where `outDir` is no folder, holds files that we did not write, or holds or lies in `keepOut`.
 */
export async function writeOutput(
  outDir: string,
  keepOut: readonly string[],
  write: (freshDir: string) => Promise<void>,
): Promise<void> {
  const target = path.resolve(outDir);
  for (const kept of keepOut) checkApart(target, path.resolve(kept));
  await checkOurs(target);
  const parent = path.dirname(target);
  await mkdir(parent, { recursive: true });
  // Beside the target, so that renaming never crosses a file system.
  const work = await mkdtemp(path.join(parent, `.${path.basename(target)}-building-`));
  try {
    const fresh = path.join(work, "new");
    await mkdir(fresh);
    await write(fresh);
    const files = await listFiles(fresh);
    await writeFile(path.join(fresh, markerName), `${files.join("\n")}\n`);
    // Once more: files may have come while we were building.
    const exists = await checkOurs(target);
    if (exists) await rename(target, path.join(work, "old"));
    try {
      await rename(fresh, target);
    } catch (error) {
      if (exists) await rename(path.join(work, "old"), target);
      throw error;
    }
  } finally {
    await rm(work, { recursive: true, force: true });
  }
}

/** Every file under `folder`, as paths with `/`, in code unit order. Links are listed, never followed. */
export async function listFiles(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => !entry.isDirectory())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"))
    .sort();
}

/** Replacing a folder that holds the content would delete it; one inside the content would be read as content. */
function checkApart(target: string, kept: string): void {
  const isInside = (inner: string, outer: string) => `${inner}${path.sep}`.startsWith(`${outer}${path.sep}`);
  if (isInside(kept, target) || isInside(target, kept)) {
    throw new OutputError(
      `The site cannot be written to ${target}: it would mix with ${kept}. Name another folder.`,
    );
  }
}

/** Returns whether the folder exists. Throws unless it is absent, empty, or holds nothing but what we wrote. */
async function checkOurs(target: string): Promise<boolean> {
  const found = await lstat(target).catch(ignoreMissing);
  if (found === undefined) return false;
  if (!found.isDirectory()) {
    throw new OutputError(`The site cannot be written to ${target}: it is not a folder. Name another one.`);
  }
  const files = await listFiles(target);
  if (files.length === 0) return true;
  const marker = await readFile(path.join(target, markerName), "utf8").catch(ignoreMissing);
  const ours = new Set([...(marker ?? "").split("\n"), ...(marker === undefined ? [] : [markerName])]);
  const foreign = files.filter((file) => !ours.has(file));
  if (foreign.length > 0) {
    const named = foreign.slice(0, 3).join(", ");
    const more = foreign.length > 3 ? ` and ${foreign.length - 3} more` : "";
    throw new OutputError(
      `The site cannot be written to ${target}: it holds files that were not written here (${named}${more}). ` +
        "Move them, or name another folder.",
    );
  }
  return true;
}

function ignoreMissing(error: unknown): undefined {
  if (error instanceof Error && "code" in error && error.code === "ENOENT") return undefined;
  throw error;
}
