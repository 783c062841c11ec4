// Floor 5. A folder of drawings in the content folder, `flags/` or another → its drawings, and the bytes of each.
import { join, resolve } from "node:path";
import type { Outcome } from "../../problem/problem.ts";
import { describeDrawingFailure, describeFolderFailure, drawingBytes } from "../disk/filefailure.ts";
import { readFolder, readRegular } from "../disk/readfile.ts";
import { checkFolderDrawings, type FolderDrawing } from "./flagfiles.ts";
import { keepWithin } from "./gallerybudget.ts";
import { linkProblem } from "./listing.ts";
import { showFolder } from "./loadgallery.ts";

/**
 * Lists the drawings in `named`, a folder of the content folder such as `flags`, by name; undefined where there is no such
 * folder. Its name may have letters of another form on the disk: some systems take accents apart (NFD). A link on the way
 * there is not followed. Everything that is wrong is a warning: no study depends on it.
 *
 * Problems: `study/link`, `study/unreadable` and those of `keepWithin` and `checkFolderDrawings`.
 */
export async function listFolder(
  contentDir: string,
  named: string,
  hasStrictNames: boolean,
): Promise<Outcome<readonly FolderDrawing[]>> {
  const root = resolve(contentDir);
  const { inner, isLink } = await findFolder(root, named);
  const shown = `${showFolder(contentDir)}/${inner}`;
  if (isLink) return { value: [], problems: [{ ...linkProblem(shown), severity: "warning" }] };
  const entries = await readFolder(root, inner);
  if ("kind" in entries) {
    if (entries.kind === "missing") return { value: undefined, problems: [] };
    return { value: [], problems: [{ ...describeFolderFailure(shown, entries), severity: "warning" }] };
  }
  const within = keepWithin(shown, entries, "drawings");
  const { names, problems } = checkFolderDrawings(shown, within.entries, hasStrictNames);
  return {
    value: names.map((name) => ({ name, file: `${shown}/${name}`, root, inner: `${inner}/${name}` })),
    problems: [...within.problems, ...problems],
  };
}

/** Follows the steps of `named` by the names that are there, up to a link. */
async function findFolder(
  root: string,
  named: string,
): Promise<{ readonly inner: string; readonly isLink: boolean }> {
  let inner = "";
  for (const step of named.split("/").filter((one) => one !== "")) {
    const entries = await readFolder(root, inner);
    const alike = ("kind" in entries ? [] : entries).filter(
      ({ name }) => name.normalize("NFC") === step.normalize("NFC"),
    );
    const found = alike.find(({ name }) => name === step) ?? alike[0];
    inner = [inner, found?.name ?? step].filter((one) => one !== "").join("/");
    if (found?.kind === "link") return { inner, isLink: true };
  }
  return { inner, isLink: false };
}

/** Returns the bytes of a drawing of a folder. Problems, as warnings: those of readDrawing; `study/link`. */
export async function readListed({ file, root, inner }: FolderDrawing): Promise<Outcome<Uint8Array>> {
  const read = await readRegular(root, inner, drawingBytes);
  if ("bytes" in read) return { value: read.bytes, problems: [] };
  return {
    value: undefined,
    problems: [{ ...describeDrawingFailure(file, read, join(root, inner)), severity: "warning" }],
  };
}
