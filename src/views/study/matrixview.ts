// Floor 8. The matrix: every single change of a study at once, each a small flag with its clarity and an address.

import {
  cellGap,
  type Matrix,
  type MatrixCell,
  type MatrixRow,
} from "../../analysis/options/optionmatrix.ts";
import type { StudyRanking } from "../../analysis/options/studyranking.ts";
import type { StudyResult } from "../../analysis/result.ts";
import type { Hex } from "../../colour/colour.ts";
import type { Format } from "../../words/format.ts";
import type { Swatch } from "../../words/paintname.ts";
import type { Linker } from "../address.ts";
import { formatChangesPath, formatStudyPath } from "../status.ts";

/** The picture of a study's matrix, in the study's folder. */
export const matrixFile = "matrix.webp";

/** One change. `box` is its flag's place in the picture, as a viewBox; `notes` are the author's other options. */
export interface CellView {
  readonly id: string;
  readonly box: string;
  readonly clarity: string;
  /** Whether none of its row that has a place is clearer, as the percentages are printed. */
  readonly isBest: boolean;
  readonly isOwn: boolean;
  /** Whether it makes two colours of the flag one. */
  readonly merges: boolean;
  /** Why it has no place, where it has none. */
  readonly unranked: string | undefined;
  readonly notes: readonly NoteMark[];
}

/** The number that readers meet it by, and its anchor, by the author's own order. */
export interface NoteMark {
  readonly number: number;
  readonly id: string;
}

export interface MatrixView {
  readonly title: string;
  /** Address of the page whose matrix has the anchors. */
  readonly page: string;
  readonly src: string;
  readonly width: number;
  readonly height: number;
  /** `code` where another column has the same name; no `hex` where each row has a colour of its own. */
  readonly columns: readonly { readonly hex: Hex | null; readonly name: string; readonly code?: string }[];
  readonly rows: readonly (Swatch & { readonly id: string; readonly cells: readonly (CellView | null)[] })[];
  /** Whether there is room for larger flags. */
  readonly isFew: boolean;
  readonly caption: readonly string[];
  /** Where there is no room for columns, and each row is a block: the first before them, the others behind. */
  readonly captionOfBlocks: readonly string[];
}

/** Most columns that leave room for larger flags: those of the usual palette. */
const fewColumns = 13;

/** The matrix of a study, or undefined where no change was tried. */
export function presentMatrix(result: StudyResult, link: Linker, format: Format): MatrixView | undefined {
  const { ranking, study } = result;
  const matrix = ranking?.matrix;
  if (ranking === undefined || matrix === undefined) return undefined;
  const { columns, rows, cellWidth, cellHeight } = matrix;
  const order = orderColumns(columns, result, ranking);
  const noteOrder = orderNoted(result);
  return {
    title: format.say("matrix.title"),
    page: link(formatChangesPath(study.slug)),
    src: link(`${formatStudyPath(study.slug)}${matrixFile}`),
    width: columns.length * (cellWidth + cellGap),
    height: rows.length * (cellHeight + cellGap),
    columns: order.flatMap((at): MatrixView["columns"] => {
      const column = columns[at];
      if (column === undefined) return [];
      if (column.hex === null) return [{ hex: null, name: format.say("matrix.ownHue") }];
      const authors = listAuthors(result, ranking);
      const others = columns.filter(
        (other) => other !== column && "name" in other && other.name === column.name,
      );
      if (others.length === 0) return [column];
      const isAuthors = authors.includes(column.hex);
      const isAlone = others.every(({ hex }) => hex === null || authors.includes(hex) !== isAuthors);
      if (!isAlone) return [{ ...column, code: column.hex }];
      return [isAuthors ? { ...column, name: format.say("matrix.studys", { name: column.name }) } : column];
    }),
    rows: rows.map((row, at) => {
      const best = format.percent(findHighest(row));
      return {
        id: row.id,
        hex: row.hex,
        name: row.name,
        cells: order.map((column) => {
          const cell = row.cells[column];
          if (!cell) return null;
          const shown = presentCell(cell, row, boxOf(matrix, at, column), result, ranking, noteOrder, format);
          return { ...shown, isBest: cell.isRanked && shown.clarity === best };
        }),
      };
    }),
    isFew: columns.length <= fewColumns,
    caption: describeMatrix(matrix, result, ranking, format, true),
    captionOfBlocks: describeMatrix(matrix, result, ranking, format, false),
  };
}

/** What the study changes to comes first, then what its author tried, then the others as they come. */
function orderColumns(
  columns: Matrix["columns"],
  result: StudyResult,
  ranking: StudyRanking,
): readonly number[] {
  const first = listAuthors(result, ranking);
  const rank = (at: number): number => {
    const hex = columns[at]?.hex;
    const found = hex ? first.indexOf(hex) : -1;
    return found < 0 ? first.length : found;
  };
  return [...columns.keys()].sort((one, other) => rank(one) - rank(other));
}

/** Which of the author's options come first as readers meet them: along the rows of the matrix, then those that are not in it. */
export function orderNoted(result: StudyResult): readonly number[] {
  const { ranking } = result;
  if (ranking === undefined) return [];
  const { matrix, noted } = ranking;
  const order = matrix === undefined ? [] : orderColumns(matrix.columns, result, ranking);
  const shown = (matrix?.rows ?? []).flatMap(({ hex, cells }) =>
    order.map((column) => ({ replace: hex, with: cells[column]?.with })),
  );
  const met = shown.flatMap((cell) =>
    [...noted.keys()].filter((at) => {
      const one = noted[at];
      return one?.only === undefined && one?.replace === cell.replace && one.with === cell.with;
    }),
  );
  return [...new Set([...met, ...noted.keys()])];
}

/** The anchor of the author's option `index`, from 0. */
export function notedId(index: number): string {
  return `tried-${index + 1}`;
}

/** What the study changes to, then what its author tried. */
function listAuthors({ change }: StudyResult, { noted }: StudyRanking): readonly Hex[] {
  return [change.with, ...noted.map((one) => one.with)];
}

/** Null where none of a row has a place. */
function findHighest({ cells }: MatrixRow): number | null {
  const ranked = cells.flatMap((cell) => (cell?.isRanked ? [cell.clarity] : []));
  return ranked.length === 0 ? null : Math.max(...ranked);
}

/** The anchor of a change: `change-7a1020-ffd700`. */
export function changeId(replace: string, next: string): string {
  return `change-${replace.slice(1)}-${next.slice(1)}`;
}

/** Whether the matrix has a cell for a change. */
export function hasCell(matrix: Matrix | undefined, replace: string, next: string): boolean {
  return (
    matrix?.rows.some(({ hex, cells }) => hex === replace && cells.some((cell) => cell?.with === next)) ??
    false
  );
}

function boxOf({ cellWidth, cellHeight }: Matrix, row: number, column: number): string {
  const [x, y] = [column * (cellWidth + cellGap) + cellGap / 2, row * (cellHeight + cellGap) + cellGap / 2];
  return `${x} ${y} ${cellWidth} ${cellHeight}`;
}

function presentCell(
  cell: MatrixCell,
  row: MatrixRow,
  box: string,
  result: StudyResult,
  ranking: StudyRanking,
  noteOrder: readonly number[],
  format: Format,
): Omit<CellView, "isBest"> {
  const isHere = (change: { readonly replace: string; readonly with: string; readonly only?: string }) =>
    change.only === undefined && change.replace === row.hex && change.with === cell.with;
  return {
    id: changeId(row.hex, cell.with),
    box,
    clarity: format.percent(cell.clarity),
    isOwn: isHere(result.change),
    merges: cell.merges || !cell.isRanked,
    unranked: cell.isRanked
      ? undefined
      : format.say("matrix.unranked", { share: format.share(cell.mergedOutline) }),
    notes: noteOrder.flatMap((at, index) => {
      const noted = ranking.noted[at];
      return noted !== undefined && isHere(noted) ? [{ number: index + 1, id: notedId(at) }] : [];
    }),
  };
}

function describeMatrix(
  { rows, leftOut }: Matrix,
  { change }: StudyResult,
  { report, matrix }: StudyRanking,
  format: Format,
  hasColumns: boolean,
): readonly string[] {
  const { say } = format;
  const cells = rows.flatMap((row) => row.cells);
  const isShown = change.only === undefined && hasCell(matrix, change.replace, change.with);
  const left = [
    ...(leftOut.rows > 0 ? [say("matrix.moreColours", { count: leftOut.rows })] : []),
    ...(leftOut.columns > 0 ? [say("matrix.moreReplacements", { count: leftOut.columns })] : []),
  ];
  const clarity =
    report.clarity === null
      ? say("matrix.clarity")
      : say("matrix.clarityToday", { today: format.percent(report.clarity) });
  return [
    ...(hasColumns ? [say("matrix.reading"), clarity] : [clarity, say("matrix.readingBlocks")]),
    say("matrix.bold"),
    ...(cells.some((cell) => cell?.merges && cell.isRanked) ? [say("matrix.mergesNote")] : []),
    ...(cells.some((cell) => cell?.isRanked === false) ? [say("matrix.greyNote")] : []),
    ...(hasColumns ? [say("matrix.dash")] : []),
    ...(isShown ? [] : [say("matrix.partAlone")]),
    ...(left.length > 0 ? [say("matrix.left", { what: format.list(left) })] : []),
  ];
}
