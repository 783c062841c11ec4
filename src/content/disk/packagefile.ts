// Floor 5. What came with the package or with one that it needs: sources, templates, fonts, schemas. Nobody who writes
// content can write there, so links are followed, as package managers make them, and nothing is bounded.
import { existsSync, readFileSync, realpathSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { dirname, join } from "node:path";

/** The folder of this package: the nearest above this module with a package.json, whether it runs as compiled or not. */
export const packageFolder = findUpward(import.meta.dirname);

/** The program as it was compiled, with templates, styles and schemas: children and pages are always made from here. */
export const programFolder = join(packageFolder, "dist");

function findUpward(folder: string): string {
  return existsSync(join(folder, "package.json")) ? folder : findUpward(dirname(folder));
}

/** Returns the bytes of a file. Throws the error of the system. */
export function readOwn(file: string): Promise<Buffer> {
  return readFile(file);
}

/** Returns the names in a folder that end in `ending`, sorted. Throws the error of the system. */
export async function listOwn(folder: string, ending = ""): Promise<readonly string[]> {
  return (await readdir(folder)).filter((name) => name.endsWith(ending)).sort();
}

/** Returns where a package lies that is installed in `folder`, and the text of its package.json; undefined where none is. */
export function findOwnPackage(folder: string): { readonly home: string; readonly text: string } | undefined {
  const file = join(folder, "package.json");
  if (!existsSync(file)) return undefined;
  return { home: realpathSync(folder), text: readFileSync(file, "utf8") };
}
