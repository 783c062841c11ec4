// Floor 5. What came with the package or with one that it needs: sources, templates, fonts, schemas. Nobody who writes
// content can write there, so links are followed, as package managers make them, and nothing is bounded.
import { existsSync, readdirSync, readFileSync, realpathSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { join, sep } from "node:path";

/** Returns the bytes of a file. Throws the error of the system. */
export function readOwn(file: string): Promise<Buffer> {
  return readFile(file);
}

/** Returns the names in a folder that end in `ending`, sorted. Throws the error of the system. */
export async function listOwn(folder: string, ending = ""): Promise<readonly string[]> {
  return (await readdir(folder)).filter((name) => name.endsWith(ending)).sort();
}

/** The two at once, for what is asked where nobody can wait: the name and text of every file in `folder`, however deep, that ends so. */
export function readOwnSources(
  folder: string,
  ending: string,
): readonly (readonly [name: string, text: string])[] {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => name.replaceAll(sep, "/"));
  return names.sort().map((name) => [name, readFileSync(join(folder, name), "utf8")]);
}

/** Returns where a package lies that is installed in `folder`, and the text of its package.json; undefined where none is. */
export function findOwnPackage(folder: string): { readonly home: string; readonly text: string } | undefined {
  const file = join(folder, "package.json");
  if (!existsSync(file)) return undefined;
  return { home: realpathSync(folder), text: readFileSync(file, "utf8") };
}
