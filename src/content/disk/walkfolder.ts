// Floor 5. A folder and all folders in it, one entry after the other: whoever has seen enough of it stops.

import type { Entry } from "../folder/listing.ts";
import type { FileFailure } from "./filefailure.ts";
import { readFolder } from "./readfile.ts";

/** An entry by its path below the folder, with `/`; or a folder there that could not be read, and why. */
export type Walked =
  | { readonly path: string; readonly kind: Entry["kind"] }
  | { readonly path: string; readonly failure: FileFailure };

/**
 * Gives everything below `root`, in no order; of folders only those that hold nothing. Links are given and not followed; a folder whose
 * name `enters` refuses is passed over.
 */
export async function* walkTree(
  root: string,
  enters: (name: string) => boolean = () => true,
): AsyncGenerator<Walked> {
  const folders = [""];
  for (let inner = folders.pop(); inner !== undefined; inner = folders.pop()) {
    const entries = await readFolder(root, inner);
    if ("kind" in entries) {
      yield { path: inner, failure: entries };
      continue;
    }
    if (inner !== "" && entries.length === 0) yield { path: inner, kind: "folder" };
    for (const { name, kind } of entries) {
      const path = inner === "" ? name : `${inner}/${name}`;
      if (kind !== "folder") yield { path, kind };
      else if (enters(name)) folders.push(path);
    }
  }
}
