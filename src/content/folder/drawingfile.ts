// Floor 5. A drawing that somebody named on the command line. By itself, because who measures one file loads no gallery.
import { resolve } from "node:path";
import type { Outcome } from "../../problem/problem.ts";
import { describeDrawingFailure, drawingBytes, folderNamed } from "../disk/filefailure.ts";
import { readNamed } from "../disk/readfile.ts";
import { findDrawingNear } from "./nearby.ts";

/**
 * Returns the bytes of a drawing that somebody named: a regular file, or a link to one, of at most 512 KB.
 *
 * Problems: `study/drawing-missing`, `study/folder-named`, `study/drawing-size`, `study/not-a-file`,
 * `study/unreadable`.
 */
export async function readDrawing(file: string): Promise<Outcome<Uint8Array>> {
  const read = await readNamed(resolve(file), drawingBytes);
  if ("bytes" in read) return { value: read.bytes, problems: [] };
  if (read.kind === "folder") return { value: undefined, problems: [folderNamed(file)] };
  const problem = describeDrawingFailure(file, read, resolve(file));
  const near = read.kind === "missing" ? await findDrawingNear(file) : undefined;
  const hint = near === undefined ? problem.hint : `${problem.hint}\nA drawing that is there: ${near}`;
  return { value: undefined, problems: [{ ...problem, ...(hint === undefined ? {} : { hint }) }] };
}
