// Floor 6. The drawings of a study as published files. Each redesign says in its own text that it is unofficial.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { visions } from "../colour/vision.ts";
import type { StudyResult } from "../study/result.ts";
import { formatStudyPath } from "./present/status.ts";

const unofficial = "Unofficial study: a proposal for discussion, not a flag in use.";

/** The files of a study's folder, in the order {@link writeDrawings} writes them. */
export const drawingFiles: readonly string[] = [
  "original.svg",
  "redesign.svg",
  ...visions.flatMap((vision) => [`seen-${vision}-original.svg`, `seen-${vision}-redesign.svg`]),
];

/** Writes the original, the redesign, and both as each kind of vision sees them, into the study's folder. */
export async function writeDrawings(result: StudyResult, outDir: string): Promise<void> {
  const folder = path.join(outDir, formatStudyPath(result.study.slug));
  await mkdir(folder, { recursive: true });
  const { original, redesign, seen } = result.drawings;
  const pairs = [{ original, redesign }, ...visions.map((vision) => seen[vision])];
  const texts = pairs.flatMap((pair) => [pair.original, markUnofficial(pair.redesign)]);
  for (const [index, file] of drawingFiles.entries()) {
    await writeFile(path.join(folder, file), texts[index] ?? "");
  }
}

/** Puts the sentence in a comment at the head of a drawing, after its XML declaration if it has one. */
export function markUnofficial(svg: string): string {
  const declaration = /^(?:\uFEFF)?<\?xml[^>]*\?>\s*/.exec(svg)?.[0] ?? "";
  return `${declaration}<!-- ${unofficial} -->\n${svg.slice(declaration.length)}`;
}
