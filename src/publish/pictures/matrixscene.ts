// Floor 9. The matrix of a study → what lies where: small flags, a row for each colour, a column for each replacement.
import type { CellView, MatrixView } from "../../views/study/matrixview.ts";
import type { Say } from "../../words/say.ts";
import { label } from "./chartscene.ts";
import { ink } from "./paper.ts";
import type { Box, SceneItem } from "./picturescene.ts";

/** Heights of a line of text, in sizes of type. */
const [headLines, cellLines] = [2.7, 2.1];
/** Width of the names of colours, in sizes of type. */
const nameSize = 9;
/** Width of a letter on average, in sizes of type (common practice, no source). */
const letterSize = 0.5;

/** Returns how high the matrix is where its flags fill their columns, in the unit of `width`. */
export function measureMatrix(matrix: MatrixView, width: number, pixels: number): number {
  const { wide, high } = proportionOf(matrix);
  const column = (width - nameSize * pixels) / matrix.columns.length;
  return (
    headLines * pixels + matrix.rows.length * (((column - 0.5 * pixels) * high) / wide + cellLines * pixels)
  );
}

/** Arranges the matrix in `box`, in type of `pixels`. `picture` is that of all its flags, a PNG in base64. */
export function arrangeMatrix(
  matrix: MatrixView,
  picture: string,
  box: Box,
  pixels: number,
  say: Say,
): readonly SceneItem[] {
  const column = (box.width - nameSize * pixels) / matrix.columns.length;
  const height = Math.min(box.height, measureMatrix(matrix, box.width, pixels));
  const head = box.y + (box.height - height) / 2;
  const top = head + headLines * pixels;
  const row = (head + height - top) / matrix.rows.length;
  const placeOf = (line: number, at: number): Box => ({
    x: box.x + nameSize * pixels + at * column + 0.25 * pixels,
    y: top + line * row,
    width: column - 0.5 * pixels,
    height: row - cellLines * pixels,
  });
  const cells = matrix.rows.flatMap((one, line) =>
    one.cells.map((cell, at) => ({ cell, place: placeOf(line, at) })),
  );
  const flags = cells.map(({ cell, place }) => (cell === null ? "" : drawCell(cell, place, pixels)));
  const whole = `<defs><image id="all" width="${matrix.width}" height="${matrix.height}" href="data:image/png;base64,${picture}"/></defs>`;
  return [
    { kind: "shape", svg: `${whole}${flags.join("")}` },
    ...nameColumns(matrix, (at) => placeOf(0, at), head, pixels),
    ...matrix.rows.flatMap(({ hex, name }, line) => {
      const { y, height } = placeOf(line, 0);
      const side = 1.6 * pixels;
      return [
        drawSwatch({ x: box.x, y: y + (height - side) / 2, width: side, height: side }, hex),
        label(
          name,
          box.x + side + 0.5 * pixels,
          y + height / 2 - 0.7 * pixels,
          pixels,
          (nameSize - 3) * pixels,
          {
            most: 3 * pixels,
          },
        ),
      ];
    }),
    ...cells.map(({ cell, place }) => sayCell(cell, place, pixels, say)),
  ];
}

/** Names that are wider than their columns stand in two lines, one up, one down. */
function nameColumns(
  { columns }: MatrixView,
  placeOf: (at: number) => Box,
  y: number,
  pixels: number,
): readonly SceneItem[] {
  const isWide = columns.some(({ name }, at) => name.length * letterSize * pixels > placeOf(at).width);
  return columns.map(({ name }, at) => {
    const { x, width } = placeOf(at);
    const line = isWide && at % 2 === 0 ? 0 : 1.25;
    return label(name, x + width / 2, y + line * pixels, pixels, 2 * width, {
      anchor: "middle",
      isQuiet: true,
    });
  });
}

/** A flag on the mat, framed where it is the study's own, with a line under the number that is the best of its row. */
function drawCell({ box, isOwn, isBest, clarity }: CellView, place: Box, pixels: number): string {
  const [x, y] = [Math.round(place.x), Math.round(place.y)];
  const [width, height] = [Math.round(place.width), Math.round(place.height)];
  const frame = isOwn
    ? `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="none" stroke="${ink.text}" stroke-width="3"/>`
    : "";
  const half = (clarity.length * letterSize * pixels) / 2 + 0.2 * pixels;
  const low = Math.round(y + height + 1.55 * pixels);
  const line = isBest
    ? `<path d="M${Math.round(x + width / 2 - half)} ${low}h${Math.round(2 * half)}" stroke="${ink.text}" stroke-width="${Math.max(2, Math.round(pixels / 8))}"/>`
    : "";
  return `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${ink.mat}"/><svg x="${x + 3}" y="${y + 3}" width="${width - 6}" height="${height - 6}" viewBox="${box}"><use href="#all"/></svg>${frame}${line}`;
}

/** White cloth is told from the paper by its frame. */
function drawSwatch({ x, y, width, height }: Box, fill: string): SceneItem {
  return {
    kind: "shape",
    svg: `<rect x="${Math.round(x)}" y="${Math.round(y)}" width="${Math.round(width)}" height="${Math.round(height)}" fill="${fill}" stroke="${ink.edge}"/>`,
  };
}

function sayCell(cell: CellView | null, { x, y, width, height }: Box, pixels: number, say: Say): SceneItem {
  const says = cell === null ? "–" : cell.unranked === undefined ? cell.clarity : say("still.merges");
  return label(says, x + width / 2, y + height + 0.2 * pixels, pixels, width, {
    anchor: "middle",
    isQuiet: cell?.isBest !== true,
  });
}

function proportionOf({ rows }: MatrixView): { readonly wide: number; readonly high: number } {
  const shown = rows.flatMap(({ cells }) => cells).find((cell) => cell !== null);
  const [, , wide = 3, high = 2] = (shown?.box ?? "").split(" ").map(Number);
  return { wide, high };
}
