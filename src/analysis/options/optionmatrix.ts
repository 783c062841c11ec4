// Floor 6. Every single change of a drawing at once, as one picture of small flags: a row for each colour that is changed,
// a column for each replacement.
import type { Hex } from "../../colour/colour.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { roundMark } from "../../measure/clarity.ts";
import type { Candidate } from "../../measure/options/candidate.ts";
import type { Ranking } from "../../measure/options/rank.ts";
import type { Option } from "../../measure/options/tryoptions.ts";
import { encodePng, type Raster } from "../../regions/raster.ts";
import { layFramed, Thumbnail } from "../../regions/thumbnail.ts";
import type { OpenedDrawing } from "../drawing/opendrawing.ts";
import type { OptionsReport } from "./rankoptions.ts";

/** A column: a colour that is put in, or, where `hex` is null, each row's own hue in another shade. */
export type MatrixColumn = { readonly hex: Hex; readonly name: string } | { readonly hex: null };

/**
 * A change: its clarity in percent, the part of a charge's outline that merges, 0 to 1, and whether it is ranked. `isBest`:
 * no option of its row does better, in whole percent of clarity and then of strength.
 */
export interface MatrixCell extends Pick<Option, "with" | "name" | "clarity" | "mergedOutline"> {
  readonly isRanked: boolean;
  /** Whether it makes two colours of the flag one. */
  readonly merges: boolean;
  readonly isBest: boolean;
}

/** A row: the paint that is changed, with a cell a column; null where a colour would stay, or nearly, or was not tried. */
export interface MatrixRow {
  readonly id: string;
  readonly hex: Hex;
  readonly name: string;
  readonly cells: readonly (MatrixCell | null)[];
}

/**
 * `picture` is a PNG in base64: the flag at row r, column c begins at (c · (cellWidth + gap) + gap / 2, r · (cellHeight +
 * gap) + gap / 2) pixels; round it its own outermost pixels are repeated, so that no neighbour bleeds in where it is scaled.
 * `leftOut`: the rows and columns beyond those that are drawn.
 */
export interface Matrix {
  readonly columns: readonly MatrixColumn[];
  readonly rows: readonly MatrixRow[];
  readonly cellWidth: number;
  readonly cellHeight: number;
  readonly picture: string;
  readonly leftOut: { readonly rows: number; readonly columns: number };
}

/** Pixels of a flag: its area is that of one of 2 to 3 this high, whatever its proportions. */
const cellSize = 64;

/** Pixels between two flags. */
export const cellGap = 4;

/** Most rows and columns: beyond, no cell can be made out. */
const most = { rows: 12, columns: 24 };

/**
 * Draws the options of an opened drawing, the colour to change first on top; undefined where there are none. `author`:
 * changes of whole paints that the author names; those that are no option get cells of their own.
 */
export async function drawMatrix(
  opened: OpenedDrawing,
  report: OptionsReport,
  palette: readonly Candidate[],
  author: Ranking = { options: [], vanishing: [] },
): Promise<Matrix | undefined> {
  const tried = [...report.options, ...report.vanishing];
  const named = [...author.options, ...author.vanishing].filter(
    (one) => !tried.some((other) => isOne(one, other)),
  );
  const all = [...tried, ...named];
  const unranked = new Set<Option>([...report.vanishing, ...author.vanishing]);
  const ids = [...new Set(all.map(({ id }) => id))];
  const { columns, leftOut } = listColumns(tried, named, report, palette);
  const rows = report.shades
    .filter(({ id }) => ids.slice(0, most.rows).includes(id))
    .sort((one, other) => ids.indexOf(one.id) - ids.indexOf(other.id))
    .map(({ id, hex, name }): MatrixRow => {
      const own = all.filter((option) => option.id === id);
      const best = report.options.find((option) => option.id === id);
      const cells = columns.map((column) => {
        const option = own.find((one) => belongsTo(one, column));
        return option === undefined ? null : describeCell(option, best, !unranked.has(option));
      });
      return { id, hex, name, cells };
    });
  if (rows.length === 0) return undefined;
  const thumbnail = shrink(opened);
  const picture = await encodePng(paintCells(opened, rows, columns.length, thumbnail));
  return {
    columns,
    rows,
    cellWidth: thumbnail.width,
    cellHeight: thumbnail.height,
    picture: picture.toString("base64"),
    leftOut: { rows: Math.max(0, ids.length - most.rows), columns: leftOut },
  };
}

function isOne(one: Option, other: Option): boolean {
  return one.id === other.id && one.with === other.with;
}

/** The palette, the flag's own colours, as they are tried and called by options; the author's; the kept hue. */
function listColumns(
  tried: readonly Option[],
  named: readonly Option[],
  { shades }: OptionsReport,
  palette: readonly Candidate[],
): { readonly columns: readonly MatrixColumn[]; readonly leftOut: number } {
  const names = new Map(
    tried.flatMap(({ kind, with: next, name }) => (kind === "keptHue" ? [] : [[next, name] as const])),
  );
  const found = new Map<Hex, MatrixColumn>();
  for (const { hex } of [...palette, ...shades]) {
    const name = names.get(hex);
    if (name !== undefined) found.set(hex, { hex, name });
  }
  const last = new Map<Hex | null, MatrixColumn>();
  for (const { with: hex, name } of named) if (!found.has(hex)) last.set(hex, { hex, name });
  if (tried.some(({ kind }) => kind === "keptHue")) last.set(null, { hex: null });
  const room = Math.max(0, most.columns - last.size);
  return {
    columns: [...[...found.values()].slice(0, room), ...last.values()],
    leftOut: Math.max(0, found.size - room),
  };
}

function belongsTo({ kind, with: next }: Option, { hex }: MatrixColumn): boolean {
  return hex === null ? kind === "keptHue" : kind !== "keptHue" && next === hex;
}

function describeCell(option: Option, best: Option | undefined, isRanked: boolean): MatrixCell {
  const { with: next, name, clarity, mergedOutline, merged } = option;
  const isBest = isRanked && isAsGood(option, best);
  return { with: next, name, clarity, mergedOutline, isRanked, merges: merged.length > 0, isBest };
}

function isAsGood(option: Option, best: Option = option): boolean {
  const lead = roundMark(option.clarity) - roundMark(best.clarity);
  return (lead || roundMark(option.strength) - roundMark(best.strength)) >= 0;
}

function shrink({ inspection: { map } }: OpenedDrawing): Thumbnail {
  const scale = Math.min(1, Math.sqrt((cellSize * cellSize * 1.5) / (map.width * map.height)));
  const [width, height] = [map.width, map.height].map((size) => Math.max(1, Math.round(size * scale)));
  return new Thumbnail(map, width ?? 1, height ?? 1);
}

/** Cells without a change stay transparent. */
function paintCells(
  { inspection }: OpenedDrawing,
  rows: readonly MatrixRow[],
  columnCount: number,
  thumbnail: Thumbnail,
): Raster {
  const { shapes, looks } = inspection.ground.scene;
  const [wide, high] = [thumbnail.width + cellGap, thumbnail.height + cellGap];
  const all: Raster = {
    width: columnCount * wide,
    height: rows.length * high,
    rgba: new Uint8Array(4 * columnCount * wide * rows.length * high),
  };
  for (const [row, { hex, cells }] of rows.entries()) {
    for (const [column, cell] of cells.entries()) {
      if (cell === null) continue;
      const colours = shapes.paints.map(({ flat, declared }, at) =>
        linearOf(flat && declared === hex ? cell.with : (looks[at]?.hex ?? "#000000")),
      );
      layFramed(all, thumbnail.paint(colours), column * wide, row * high, cellGap / 2);
    }
  }
  return all;
}
