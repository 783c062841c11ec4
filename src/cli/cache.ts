// Floor 7. Where measurements are kept from one run to the next, unless somebody says otherwise.
import { homedir } from "node:os";
import { isAbsolute, join, relative, resolve, sep } from "node:path";
import type { Store } from "../study/store.ts";
import { type Given, type Option, UsageError } from "./command.ts";

export const cacheOption: Option = {
  value: "DIR",
  help: "Where measurements are kept (default .cache/counterchange; off keeps none).",
};

/**
 * Opens the folder in which measurements are kept: the one of `--cache`, else `.cache/counterchange` in the working folder,
 * else, where that lies in `content`, one in the user's home. With `isReadOnly` nothing is written.
 *
 * Returns undefined where none is wanted or none can be had. Throws UsageError where `--cache` lies in `content`.
 */
export async function openCache(
  given: Given,
  content: string,
  isReadOnly = false,
): Promise<Store | undefined> {
  const { cache } = given.values;
  if (cache === "off") return undefined;
  const home = join(process.env["XDG_CACHE_HOME"] || join(homedir(), ".cache"), "counterchange");
  const folder = cache ?? join(".cache", "counterchange");
  if (cache !== undefined && isInside(cache, content)) {
    throw new UsageError(
      `--cache is ${cache}, inside ${content}: what is kept must not mix with what authors write.`,
      "Name a folder elsewhere, or type: --cache off",
    );
  }
  const { openStore } = await import("../study/store.ts");
  return openStore({
    folder: isInside(folder, content) ? join(home, "kept") : folder,
    secretFile: join(home, "key"),
    isReadOnly,
  });
}

function isInside(inner: string, outer: string): boolean {
  const way = relative(resolve(outer), resolve(inner));
  return way !== ".." && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}
