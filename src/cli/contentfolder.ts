// Floor 11. Which content folder a command works in when none is named, and what of it a site must not be written over.
import { join, resolve } from "node:path";
import { packageFolder } from "../content/disk/packagefile.ts";
import { kindOf } from "../content/disk/readfile.ts";
import type { Given } from "./command.ts";

/** Where a site goes unless somebody says otherwise. */
export const usualSite = "published";

/** The help of the operand that names it. */
export const contentHelp =
  "CONTENT is the folder with gallery.yaml and studies/. Where none is named, it is the current folder if that is one, else content.";

/**
 * Returns the content folder: the one that was named, else the current folder where it holds `gallery.yaml` or `studies/`,
 * else `content`, whether it is there or not. `folder` is the working folder.
 */
export async function findContent(given: Pick<Given, "operands">, folder = process.cwd()): Promise<string> {
  return given.operands[0] ?? ((await isContent(folder)) ? "." : "content");
}

/** Returns the folder a new study goes to: as `findContent`, but the current folder where there is no content yet. */
export async function findPlace(folder = process.cwd()): Promise<string> {
  if (await isContent(folder)) return ".";
  return (await isContent(join(folder, "content"))) || resolve(folder) === packageFolder ? "content" : ".";
}

/**
 * Returns what a site written to `out` has to stay clear of: the whole content folder, or, where `out` is `published` at
 * the top of it, what is read as content.
 */
export function listKeepOut(content: string, out: string): readonly string[] {
  if (resolve(out) !== resolve(content, usualSite)) return [content];
  return ["gallery.yaml", "studies", "flags"].map((name) => join(content, name));
}

async function isContent(folder: string): Promise<boolean> {
  const kinds = await Promise.all(["gallery.yaml", "studies"].map((name) => kindOf(join(folder, name))));
  return kinds.some((kind) => kind !== undefined);
}
