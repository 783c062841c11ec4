// Where the two open collections of real drawings lie: flag-icons (4x3 and 1x1) and svg-country-flags. 798 files.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const modules = fileURLToPath(new URL("../../node_modules/", import.meta.url));
const folders = ["flag-icons/flags/4x3", "flag-icons/flags/1x1", "svg-country-flags/svg"];

/** One drawing of a collection. `name` is its path inside node_modules. */
export interface CollectionFile {
  readonly name: string;
  readonly path: string;
}

/** Returns all drawings of both collections, by folder and then by name. */
export function listCollection(): readonly CollectionFile[] {
  return folders.flatMap((folder) =>
    readdirSync(`${modules}${folder}`)
      .filter((name) => name.endsWith(".svg"))
      .sort()
      .map((name) => ({
        name: `${folder}/${name}`,
        path: `${modules}${folder}/${name}`,
      })),
  );
}

/** Returns the drawings below any folder, by path. */
export function listFolder(folder: string): readonly CollectionFile[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".svg"))
    .sort()
    .map((name) => ({ name, path: join(folder, name) }));
}
