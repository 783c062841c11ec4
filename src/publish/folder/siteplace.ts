// Floor 9. The published folder and the hidden one beside it, by name.
import { randomBytes } from "node:crypto";
import path from "node:path";

/** The published folder and what lies around it, as absolute paths. */
export interface Place {
  readonly target: string;
  readonly parent: string;
  /** Beside the target, so that renaming never crosses a file system. */
  readonly workshop: string;
  /** Marks what is ours: see foldermark.ts. */
  readonly secret: Uint8Array;
}

export function findPlace(outDir: string, secret: Uint8Array): Place {
  const target = path.resolve(outDir);
  const parent = path.dirname(target);
  return { target, parent, workshop: path.join(parent, `.counterchange-${path.basename(target)}`), secret };
}

/** Returns a path in the workshop that nobody has used: `fresh-…` and the like. */
export function nameIn(
  { workshop }: Pick<Place, "workshop">,
  kind: "fresh" | "swap" | "version" | "link" | "probe" | "old",
): string {
  return path.join(workshop, `${kind}-${randomBytes(6).toString("hex")}`);
}
