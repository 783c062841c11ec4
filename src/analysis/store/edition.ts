// Floor 6. Which edition of the measure this is: a digest of all the code that has a part in a figure, so that nobody has
// to remember a number when it changes.
import { createHash, type Hash } from "node:crypto";
import { dirname, join } from "node:path";
import { findOwnPackage, readOwnSources } from "../../content/disk/packagefile.ts";

const source = join(import.meta.dirname, "../..");

/** The floors that measure. */
const floors = ["problem", "colour", "svg", "regions", "measure", "content", "analysis"];

let found: string | undefined;
let foundSite: string | undefined;

/**
 * Returns the edition as hex: of the sources of floors 0 to 6, of the installed versions of the libraries they import and
 * of those that these need, and of the engine that does the arithmetic. Worked out once in a process, in some ten
 * milliseconds.
 */
export function findEdition(): string {
  found ??= digestSources(source, floors);
  return found;
}

/** The same with the floor that makes pictures, which may hold anything that has a part in one. */
export function findSiteEdition(): string {
  foundSite ??= createHash("sha256")
    .update(`${findEdition()} ${digestSources(source, ["words", "views", "publish"])}`)
    .digest("hex");
  return foundSite;
}

/** The same for the `folders` of another source folder, whose libraries are looked for from there upwards. */
export function digestSources(sourceDir: string, folders: readonly string[]): string {
  const hash = createHash("sha256");
  add(hash, "engine", `${process.versions.node} ${process.versions.v8} ${process.platform} ${process.arch}`);
  const libraries = new Set<string>();
  for (const folder of folders) {
    for (const [name, text] of readOwnSources(join(sourceDir, folder), ".ts")) {
      add(hash, `${folder}/${name}`, text);
      for (const library of listLibraries(text)) libraries.add(library);
    }
  }
  const versions = new Map<string, string>();
  for (const library of libraries) collectVersions(library, sourceDir, versions);

  for (const [folder, version] of [...versions].sort(([a], [b]) => (a < b ? -1 : 1)))
    add(hash, folder, version);
  return hash.digest("hex");
}

/** Lengths keep one text from running into the next. */
function add(hash: Hash, name: string, text: string): void {
  hash.update(`${name}\n${text.length}\n${text}\n`);
}

/** Names of the packages that a module imports. */
function listLibraries(text: string): readonly string[] {
  const imports = text.matchAll(/(?:\bfrom|\bimport)[\s(]*"((?:@[^"/]+\/)?[^".:/]+)(?:\/[^"]*)?"/g);
  return [...imports].map(([, name]) => name ?? "");
}

/** Adds `name version` of a package and of all it needs to run, each as it is found from `folder` upwards. */
function collectVersions(name: string, folder: string, versions: Map<string, string>): void {
  const found = findPackage(name, folder);
  if (found === undefined) return;
  const { home, text } = found;
  const { version, dependencies, optionalDependencies }: PackageFile = JSON.parse(text);
  const key = `${name} ${String(version)}`;
  if (versions.has(key)) return;
  versions.set(key, String(version));
  for (const needed of Object.keys({ ...dependencies, ...optionalDependencies }))
    collectVersions(needed, home, versions);
}

interface PackageFile {
  readonly version?: unknown;
  readonly dependencies?: object;
  readonly optionalDependencies?: object;
}

function findPackage(name: string, folder: string): ReturnType<typeof findOwnPackage> {
  const found = findOwnPackage(join(folder, "node_modules", name));
  if (found !== undefined || dirname(folder) === folder) return found;
  return findPackage(name, dirname(folder));
}
