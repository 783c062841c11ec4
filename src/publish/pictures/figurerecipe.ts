// Floor 9. The figures of a study as SVG files of their own, as recipes: edge map, ruler, matrix.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import { linkFrom } from "../../views/address.ts";
import { lessonFiles } from "../../views/show/lessonfile.ts";
import { formatShowPath } from "../../views/show/showpage.ts";
import { presentRuler, type RulerView } from "../../views/study/contrastruler.ts";
import { presentMatrix } from "../../views/study/matrixview.ts";
import { presentFigures } from "../../views/study/studypage.ts";
import { formatOf } from "../../words/format.ts";
import { nameStudy } from "../../words/namedresult.ts";
import type { Say } from "../../words/say.ts";
import { formatTitle } from "../../words/title.ts";
import { arrangeMap, arrangeRuler } from "./chartscene.ts";
import { type Drawn, findFrom } from "./drawnsource.ts";
import { arrangeMatrix, measureMatrix } from "./matrixscene.ts";
import type { SceneItem } from "./picturescene.ts";
import type { DrawnFile } from "./recipe.ts";

/** Units of the figures, which have no pixels of their own. */
const figureWidth = 1200;
const figureUnit = 20;
const matrixPixels = 13;

/** Edge map, ruler and matrix as SVG files, as far as the study has them. */
export function listFigures(result: StudyResult, gallery: Gallery, drawn: Drawn): readonly DrawnFile[] {
  const format = formatOf(gallery);
  const named = nameStudy(result, format);
  const { say } = format;
  const path = formatShowPath(result.study.slug);
  const find = findFrom(path, drawn);
  const { ruler, edgeMap } = presentFigures(named, gallery, linkFrom(path), format);
  const title = formatTitle(result.study, format);
  const matrix = presentMatrix(named, linkFrom(path), format);
  const files: DrawnFile[] = [];
  if (ruler !== undefined) {
    const width = (figureWidth - 90) / 2;
    const ground = find(edgeMap.panels[0].ground);
    const mapHeight = (width * ground.proportions[0]) / ground.proportions[1];
    const items = [
      ...arrangeMap(edgeMap, 0, ground, { x: 30, y: 30, width, height: mapHeight }),
      ...arrangeMap(edgeMap, 1, find(edgeMap.panels[1].ground), {
        x: 60 + width,
        y: 30,
        width,
        height: mapHeight,
      }),
      sayAt(say("still.original"), 30, mapHeight + 40, "start"),
      sayAt(say("still.redesign"), 60 + width, mapHeight + 40, "start"),
    ];
    files.push(frame(lessonFiles.map, edgeMap.title, title, mapHeight + 60, items, say));
    files.push(frameRuler(ruler, title, say));
  }
  const picture = result.ranking?.matrix?.picture;
  if (matrix !== undefined && picture !== undefined) {
    const box = { x: 30, y: 20, width: figureWidth - 60 };
    const height = measureMatrix(matrix, box.width, matrixPixels);
    const items = arrangeMatrix(matrix, picture, { ...box, height }, matrixPixels, say);
    files.push(frame(lessonFiles.matrix, matrix.title, title, height + 30, items, say));
  }
  return files;
}

/** The ruler alone, as every study with an edge has it. */
export function listRuler(result: StudyResult, gallery: Gallery): readonly DrawnFile[] {
  const format = formatOf(gallery);
  const link = linkFrom(formatShowPath(result.study.slug));
  const ruler = presentRuler(nameStudy(result, format), link, format);
  return ruler === undefined ? [] : [frameRuler(ruler, formatTitle(result.study, format), format.say)];
}

function frameRuler(ruler: RulerView, title: string, say: Say): DrawnFile {
  const height = 6 * figureUnit + ruler.rows.length * 4 * figureUnit;
  const box = { x: 30, y: 30, width: figureWidth - 60, height: height - 60 };
  return frame(lessonFiles.ruler, ruler.title, title, height, arrangeRuler(ruler, box, figureUnit, say), say);
}

/** The figure `what` of the study `title`, with a line under it that says what a redesign is. */
function frame(
  path: string,
  what: string,
  title: string,
  height: number,
  items: readonly SceneItem[],
  say: Say,
): DrawnFile {
  const note = say("still.unofficial");
  const high = Math.round(height) + 40;
  const mark = sayAt(note, figureWidth - 30, high - 30, "end", true);
  const scene = { width: figureWidth, height: high, direction: "ltr" as const, items: [...items, mark] };
  return { path, recipe: { kind: "figure", scene, title: say("still.figure", { what, title }), note } };
}

function sayAt(
  text: string,
  x: number,
  y: number,
  anchor: "start" | "middle" | "end",
  isQuiet = false,
): SceneItem {
  return {
    kind: "text",
    text,
    x,
    y,
    pixels: 14,
    family: "sans",
    isQuiet,
    anchor,
    width: figureWidth,
    most: 20,
  };
}
