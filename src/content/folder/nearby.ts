// Floor 5. Galleries and drawings near a place where there is none: for the message that says what to type instead.
import { basename, dirname, join, relative, resolve } from "node:path";
import { findNearest } from "../../problem/knownword.ts";
import { compareText } from "../../problem/problem.ts";
import { findWay } from "../disk/pathname.ts";
import { kindOf, readFolder } from "../disk/readfile.ts";
import type { Entry } from "./listing.ts";

/** How many folders are looked into, and how many are named. */
const most = { looked: 200, named: 5 };

/** What lies in a gallery beside its settings: from such a folder the gallery is the one above. */
const parts = ["studies", "flags", ".schemas"];

/**
 * Returns the gallery that `path`, a file or folder, lies in: the nearest folder above it that has a `gallery.yaml`, where the
 * way down from there begins with a folder of galleries. As somebody in the working folder types it.
 */
export async function findGalleryAround(path: string): Promise<string | undefined> {
  const inner = resolve(path);
  for (let folder = dirname(inner); folder !== dirname(folder); folder = dirname(folder)) {
    const [first = ""] = findWay(inner, folder)?.split("/") ?? [];
    if (parts.includes(first) && (await kindOf(join(folder, "gallery.yaml"))) === "file")
      return relative("", folder) || ".";
  }
  return undefined;
}

/**
 * Returns the galleries to name where `path` is none: the one it lies in, or those beside it, the one of the most similar name
 * alone where there is such a one. As somebody in the working folder types them; at most five.
 */
export async function listGalleriesNear(path: string): Promise<readonly string[]> {
  const around = await findGalleryAround(path);
  if (around !== undefined) return [around];
  const above = dirname(resolve(path));
  const names = (await list(above)).flatMap(({ name, kind }) =>
    kind === "folder" && !/^[._]/.test(name) ? [name] : [],
  );
  const found: string[] = [];
  for (const name of names.sort(compareText).slice(0, most.looked))
    if ((await kindOf(join(above, name, "gallery.yaml"))) === "file") found.push(name);
  const near = findNearest(basename(path), found);
  return (near === undefined ? found : [near])
    .slice(0, most.named)
    .map((name) => relative("", join(above, name)) || ".");
}

/** Returns the path of the drawing beside `file` that is most likely meant, as `file` was typed. */
export async function findDrawingNear(file: string): Promise<string | undefined> {
  const names = (await list(dirname(resolve(file)))).flatMap(({ name, kind }) =>
    kind === "file" && /\.svg$/i.test(name) ? [name] : [],
  );
  const [only, ...others] = names.sort(compareText).slice(0, most.looked);
  const near = findNearest(basename(file), names) ?? (others.length === 0 ? only : undefined);
  return near === undefined ? undefined : join(dirname(file), near);
}

async function list(folder: string): Promise<readonly Entry[]> {
  const entries = await readFolder(folder);
  return "kind" in entries ? [] : entries;
}
