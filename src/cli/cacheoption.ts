// Floor 11. Where measurements are kept from one run to the next, unless somebody says otherwise.
import { join } from "node:path";
import type { Store, StoreOptions } from "../analysis/store/resultstore.ts";
import { findHome, keyVariable } from "../analysis/store/signature.ts";
import { isInside } from "../content/disk/pathname.ts";
import { kindOf } from "../content/disk/readfile.ts";
import { type Given, type Option, type Output, UsageError } from "./command.ts";

export const cacheOption: Option = {
  value: "DIR",
  help: "Where measurements are kept (default .cache/counterchange; off keeps none).",
};

/**
 * Opens the folder in which measurements are kept: the one of `--cache`, else `.cache/counterchange` in the working folder,
 * else, where that lies in `content` or `.cache` is a link, one in the user's home. `how` is for the store.
 *
 * Returns undefined where none is wanted or none can be had. Throws UsageError where `--cache` lies in `content`.
 */
export async function openCache(
  given: Given,
  content: string,
  output: Pick<Output, "message">,
  how: Pick<StoreOptions, "isReadOnly" | "most"> = {},
): Promise<Store | undefined> {
  const { cache } = given.values;
  if (cache === "off") return undefined;
  const home = findHome();
  const folder = cache ?? join(".cache", "counterchange");
  // A link there may have come with the folder, and lead anywhere.
  const isLed = cache === undefined && ((await kindOf(".cache")) ?? "folder") !== "folder";
  if (cache !== undefined && isInside(cache, content)) {
    throw new UsageError(
      `--cache is ${cache}, inside ${content}: what is kept must not mix with what authors write.`,
      "Name a folder elsewhere, or type: --cache off",
    );
  }
  const { openStore } = await import("../analysis/store/resultstore.ts");
  return openStore({
    folder: isLed || isInside(folder, content) ? join(home, "kept") : folder,
    secretFile: join(home, "key"),
    ...how,
    onAside: (aside) =>
      output.message(
        `${folder} was not made here by you, or on a machine with your ${keyVariable}: it was put aside as ${aside}, and nothing of it is used.\n    Delete it, unless it holds something that you know.`,
      ),
  });
}
