// Floor 6. The drawings of a study as published files. Each redesign carries its own note that it is unofficial.
import { visions } from "../colour/vision.ts";
import type { StudyResult } from "../study/result.ts";
import { readDrawing } from "../svg/gate.ts";
import { describeDrawing, writeRoot } from "../svg/write.ts";
import { fileOf, type SiteFile } from "./file.ts";
import { type Crop, findCrop } from "./present/crop.ts";
import { cropFiles, placeEdges } from "./present/edgekey.ts";
import { listTriedDrawings } from "./present/options.ts";
import { formatStudyPath } from "./present/status.ts";
import { unofficial } from "./unofficial.ts";

/** The files of a study's folder, in the order of {@link listDrawings}. */
export const drawingFiles: readonly string[] = [
  "original.svg",
  "redesign.svg",
  ...visions.flatMap((vision) => [`seen-${vision}-original.svg`, `seen-${vision}-redesign.svg`]),
];

/** Pattern of the drawings of the author's other options, for hosts that read headers. */
export const triedFiles = "tried-*";

/** The original, the redesign, both as each kind of vision sees them, and the author's other options. */
export function listDrawings(result: StudyResult): readonly SiteFile[] {
  const folder = formatStudyPath(result.study.slug);
  const { original, redesign, seen } = result.drawings;
  const pairs = [{ original, redesign }, ...visions.map((vision) => seen[vision])];
  const texts = pairs.flatMap((pair) => [pair.original, pair.redesign]);
  return [
    ...drawingFiles.map((file, index) => fileOf(`${folder}${file}`, () => texts[index] ?? "")),
    ...listTriedDrawings(result).map(({ file, drawing }) => fileOf(`${folder}${file}`, () => drawing)),
  ];
}

/** The place where the two paints of each edge meet, before and after. */
export function listCrops(result: StudyResult): readonly SiteFile[] {
  const { study, comparison, edgeLines, drawings } = result;
  const placeEdge = placeEdges(study.slug, comparison);
  return comparison.edges.flatMap((edge) => {
    const crop = findCrop(edgeLines, edge, comparison.before.proportions);
    if (crop === undefined) return [];
    const folder = placeEdge(edge);
    return [
      fileOf(`${folder}${cropFiles.original}`, () => cropDrawing(drawings.original, crop)),
      fileOf(`${folder}${cropFiles.redesign}`, () => cropDrawing(drawings.redesign, crop, unofficial)),
    ];
  });
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
