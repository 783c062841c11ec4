// Floor 9. The figures of a study as SVG files of their own, as recipes: edge map, ruler, matrix.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import { linkFrom } from "../../views/address.ts";
import { lessonFiles } from "../../views/show/lessonfile.ts";
import { formatShowPath } from "../../views/show/showpage.ts";
import { type MatrixView, presentMatrix } from "../../views/study/matrixview.ts";
import { presentFigures } from "../../views/study/studypage.ts";
import { createFormat } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { arrangeMap, arrangeRuler } from "./chartscene.ts";
import { type Drawn, findFrom } from "./drawnsource.ts";
import type { SceneItem } from "./picturescene.ts";
import type { DrawnFile } from "./recipe.ts";
import { unofficial } from "./unofficial.ts";

/** Units of the figures, which have no pixels of their own. */
const figureWidth = 1200;
const figureUnit = 20;

/** Edge map, ruler and matrix as SVG files, as far as the study has them. */
export function listFigures(result: StudyResult, gallery: Gallery, drawn: Drawn): readonly DrawnFile[] {
  const format = createFormat(gallery.language);
  const path = formatShowPath(result.study.slug);
  const find = findFrom(path, drawn);
  const { study } = result;
  const { ruler, edgeMap } = presentFigures(result, gallery, linkFrom(path), format);
  const title = formatTitle(study);
  const matrix = presentMatrix(result, linkFrom(path), format);
  const files: DrawnFile[] = [];
  const add = (file: string, what: string, height: number, items: readonly SceneItem[]) => {
    const high = Math.round(height) + 40;
    const mark = sayAt(unofficial, figureWidth - 30, high - 30, "end", true);
    files.push({
      path: file,
      recipe: {
        kind: "figure",
        scene: { width: figureWidth, height: high, direction: "ltr", items: [...items, mark] },
        title: `${what}: ${title}`,
        note: unofficial,
      },
    });
  };
  if (ruler !== undefined) {
    const width = (figureWidth - 90) / 2;
    const ground = find(edgeMap.panels[0].ground);
    const mapHeight = (width * ground.proportions[0]) / ground.proportions[1];
    const rulerHeight = 6 * figureUnit + ruler.rows.length * 4 * figureUnit;
    add(lessonFiles.map, edgeMap.title, mapHeight + 60, [
      ...arrangeMap(edgeMap, 0, ground, { x: 30, y: 30, width, height: mapHeight }),
      ...arrangeMap(edgeMap, 1, find(edgeMap.panels[1].ground), {
        x: 60 + width,
        y: 30,
        width,
        height: mapHeight,
      }),
      sayAt("Original", 30, mapHeight + 40, "start"),
      sayAt("Redesign", 60 + width, mapHeight + 40, "start"),
    ]);
    const box = { x: 30, y: 30, width: figureWidth - 60, height: rulerHeight - 60 };
    add(lessonFiles.ruler, ruler.title, rulerHeight, arrangeRuler(ruler, box, figureUnit));
  }
  const picture = result.ranking?.matrix?.picture;
  if (matrix !== undefined && picture !== undefined) {
    const { items, height } = arrangeMatrix(matrix, picture);
    add(lessonFiles.matrix, matrix.title, height, items);
  }
  return files;
}

/** A row for each colour of the flag, a column for each replacement, a small flag and its clarity in each cell. */
function arrangeMatrix(
  matrix: MatrixView,
  picture: string,
): { readonly items: readonly SceneItem[]; readonly height: number } {
  const first = 150;
  const cell = (figureWidth - first - 30) / matrix.columns.length;
  const [, , wide = 1, high = 1] = (matrix.rows[0]?.cells.find((one) => one !== null)?.box ?? "0 0 3 2")
    .split(" ")
    .map(Number);
  const flag = { width: cell - 8, height: ((cell - 8) * high) / wide };
  const row = flag.height + 40;
  const flags = matrix.rows.flatMap(({ cells }, line) =>
    cells.flatMap((one, at) =>
      one === null
        ? []
        : [
            `<svg x="${Math.round(first + at * cell)}" y="${Math.round(60 + line * row)}" width="${flag.width.toFixed(1)}" height="${flag.height.toFixed(1)}" viewBox="${one.box}"><use href="#all"/></svg>`,
          ],
    ),
  );
  const source = `<defs><image id="all" width="${matrix.width}" height="${matrix.height}" href="data:image/png;base64,${picture}"/></defs>`;
  return {
    height: 70 + matrix.rows.length * row,
    items: [
      { kind: "shape", svg: `${source}${flags.join("")}` },
      // One up, one down: names are longer than their columns are wide.
      ...matrix.columns.map(({ name }, at) =>
        sayAt(name, first + (at + 0.5) * cell - 4, at % 2 === 0 ? 18 : 36, "middle", true),
      ),
      ...matrix.rows.flatMap(({ name, cells }, line) => [
        sayAt(name, 30, 60 + line * row + flag.height / 2 - 6, "start"),
        ...cells.map((one, at) =>
          sayAt(
            one === null ? "–" : one.clarity,
            first + (at + 0.5) * cell - 4,
            66 + line * row + flag.height,
            "middle",
            one?.isBest !== true,
          ),
        ),
      ]),
    ],
  };
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
