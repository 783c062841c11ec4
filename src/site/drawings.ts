// Floor 6. The drawings of a study as published files. Each redesign carries its own note that it is unofficial.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { visions } from "../colour/vision.ts";
import type { StudyResult } from "../study/result.ts";
import { listOptionDrawings } from "./present/options.ts";
import { formatStudyPath } from "./present/status.ts";

/** The files of a study's folder, in the order {@link writeDrawings} writes them. */
export const drawingFiles: readonly string[] = [
  "original.svg",
  "redesign.svg",
  ...visions.flatMap((vision) => [`seen-${vision}-original.svg`, `seen-${vision}-redesign.svg`]),
];

/** Patterns of further files, for hosts that read headers: options and the author's own. */
export const optionFiles: readonly string[] = ["option-*", "tried-*"];

/** Writes the original, the redesign, and both as each kind of vision sees them, into the study's folder. */
export async function writeDrawings(result: StudyResult, outDir: string): Promise<void> {
  const folder = path.join(outDir, formatStudyPath(result.study.slug));
  await mkdir(folder, { recursive: true });
  const { original, redesign, seen } = result.drawings;
  const pairs = [{ original, redesign }, ...visions.map((vision) => seen[vision])];
  const texts = pairs.flatMap((pair) => [pair.original, pair.redesign]);
  for (const [index, file] of drawingFiles.entries()) {
    await writeFile(path.join(folder, file), texts[index] ?? "");
  }
  for (const { file, drawing } of listOptionDrawings(result))
    await writeFile(path.join(folder, file), drawing);
}
