// Floor 6. Which edition of the measure this is: a digest of all the code that has a part in a figure, so that nobody has
// to remember a number when it changes.
import { createHash } from "node:crypto";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { findOwnPackage, packageFolder, programFolder } from "../../content/disk/packagefile.ts";

/** What cli/compile.mjs writes of each floor: the digest of its modules, and the packages that they import. */
type Floors = Readonly<Record<string, { readonly digest: string; readonly libraries: readonly string[] }>>;

/** The floors that measure. */
export const measuring = ["problem", "colour", "svg", "regions", "measure", "content", "analysis"] as const;

let found: string | undefined;
let foundSite: string | undefined;

/**
 * Returns the edition as hex: of the code of floors 0 to 6, of the installed versions of the libraries they import and
 * of those that these need, and of the engine that does the arithmetic. Worked out once in a process.
 */
export function findEdition(): string {
  found ??= digestFloors(readFloors(), measuring, packageFolder);
  return found;
}

/** The same with the floor that makes pictures, which may hold anything that has a part in one. */
export function findSiteEdition(): string {
  foundSite ??= digestFloors(readFloors(), [...measuring, "words", "views", "publish"], packageFolder);
  return foundSite;
}

function readFloors(): Floors {
  return createRequire(import.meta.url)(join(programFolder, "program.json")).floors;
}

/** The same for the floors `names` of any program; libraries are looked for from `folder` upwards. */
export function digestFloors(floors: Floors, names: readonly string[], folder: string): string {
  const { node, v8 } = process.versions;
  const digests = names.map((name) => [name, floors[name]?.digest]);
  const versions = new Map<string, string>();
  for (const library of new Set(names.flatMap((name) => floors[name]?.libraries ?? [])))
    collectVersions(library, folder, versions);
  const engine = [node, v8, process.platform, process.arch];
  return createHash("sha256")
    .update(JSON.stringify([engine, digests, [...versions.keys()].sort()]))
    .digest("hex");
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
