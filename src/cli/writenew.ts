// Floor 11. Writes files that somebody named with --out, and never over one that is there.
import { writeFile } from "node:fs/promises";
import { dirname } from "node:path";
import { makeFolders } from "../content/disk/makefolder.ts";
import { kindOf } from "../content/disk/readfile.ts";
import { quoteText } from "../problem/quote.ts";
import { UsageError } from "./command.ts";

/** Throws UsageError where `out` is no name for an SVG file, or is there already. `what` is the thing to be written. */
export async function checkFree(out: string, what: string): Promise<void> {
  if (!/\.svg$/i.test(out)) {
    throw new UsageError(
      `--out is ${quoteText(out)}; ${what} is an SVG file.`,
      "Choose a name that ends in .svg",
    );
  }
  if ((await kindOf(out)) !== undefined) throw alreadyThere(out);
}

/** Throws UsageError where one of the files is there already. */
export async function checkAllFree(files: readonly string[]): Promise<void> {
  for (const file of files) if ((await kindOf(file)) !== undefined) throw alreadyThere(file);
}

/** Writes files that must not exist, each into its folder, which is made where there is none. Throws UsageError. */
export async function writeAllNew(
  files: readonly { readonly path: string; readonly bytes: string | Uint8Array }[],
): Promise<void> {
  for (const folder of new Set(files.map(({ path }) => dirname(path))))
    await makeFolders(folder).catch(() => {
      throw new UsageError(`The folder ${quoteText(folder)} could not be made.`, "Choose another for --out.");
    });
  for (const { path, bytes } of files) await writeNew(path, bytes);
}

/** Writes a file that must not exist: the flag holds even where one has come up since we looked. Throws UsageError. */
export async function writeNew(out: string, text: string | Uint8Array): Promise<void> {
  try {
    await writeFile(out, text, { flag: "wx" });
  } catch (error) {
    const code = error instanceof Error && "code" in error ? error.code : undefined;
    if (code === "EEXIST") throw alreadyThere(out);
    if (code === "ENOENT" || code === "ENOTDIR")
      throw new UsageError(`The folder of ${quoteText(out)} does not exist.`, "Make the folder first.");
    if (code === "EACCES" || code === "EPERM" || code === "EROFS") {
      throw new UsageError(`${quoteText(out)} may not be written there.`, "Choose another folder.");
    }
    throw error;
  }
}

function alreadyThere(out: string): UsageError {
  return new UsageError(
    `${quoteText(out)} is there already, and nothing is overwritten.`,
    "Choose another name for --out.",
  );
}
