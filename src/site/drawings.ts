// Floor 6. The drawings of a study as published files. Each redesign carries its own note that it is unofficial.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { visions } from "../colour/vision.ts";
import type { StudyResult } from "../study/result.ts";
import { readDrawing } from "../svg/gate.ts";
import { describeDrawing, writeRoot } from "../svg/write.ts";
import { type Crop, findCrop } from "./present/crop.ts";
import { cropFiles, placeEdges } from "./present/edgekey.ts";
import { listOptionDrawings } from "./present/options.ts";
import { formatStudyPath } from "./present/status.ts";
import { unofficial } from "./unofficial.ts";

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

/** Writes the place where the two paints of each edge meet, before and after, into the edge's folder. */
export async function writeCrops(result: StudyResult, outDir: string): Promise<void> {
  const { study, comparison, edgeLines, drawings } = result;
  const placeEdge = placeEdges(study.slug, comparison);
  for (const edge of comparison.edges) {
    const crop = findCrop(edgeLines, edge, comparison.before.proportions);
    if (crop === undefined) continue;
    const folder = path.join(outDir, placeEdge(edge));
    await mkdir(folder, { recursive: true });
    await writeFile(path.join(folder, cropFiles.original), cropDrawing(drawings.original, crop));
    await writeFile(path.join(folder, cropFiles.redesign), cropDrawing(drawings.redesign, crop, unofficial));
  }
}

/** A part of a drawing that we wrote: the same shapes through a smaller window, with `note` in its metadata. */
export function cropDrawing(svg: string, { x, y, width, height }: Crop, note?: string): string {
  const { value } = readDrawing("drawing.svg", Buffer.from(svg, "utf8"));
  if (value === undefined) throw new Error("a published drawing cannot be read");
  const { viewBox } = value;
  const inUnits = (heights: number) => Number((heights * viewBox.height).toPrecision(8));
  const window = [viewBox.x + inUnits(x), viewBox.y + inUnits(y), inUnits(width), inUnits(height)];
  const { root } = note === undefined ? value : describeDrawing(value, note);
  return writeRoot(root, { viewBox: window.join(" ") });
}
