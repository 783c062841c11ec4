// Floor 5. Every single change of a drawing at once, as one picture of small flags: a row for each colour that is changed,
// a column for each replacement.
import type { Hex } from "../colour/colour.ts";
import { linearOf } from "../colour/parse.ts";
import type { Candidate } from "../measure/candidate.ts";
import type { Option } from "../measure/options.ts";
import { encodePng, type Raster } from "../regions/raster.ts";
import { Thumbnail } from "../regions/thumbnail.ts";
import type { OpenedDrawing } from "./open.ts";
import type { OptionsReport } from "./options.ts";

/** A column: a colour of the palette or of the flag, or, where `hex` is null, each row's own hue in another shade. */
export interface MatrixColumn {
  readonly hex: Hex | null;
  readonly name: string;
}

/**
 * A row: the paint that is changed, with an option a column; null where a colour would replace itself, or one too near to
 * it. Options by which the charge vanishes are among them.
 */
export interface MatrixRow {
  readonly id: string;
  readonly hex: Hex;
  readonly name: string;
  readonly share: number;
  readonly cells: readonly (Option | null)[];
}

/** `picture` is a PNG in base64: the cell at row r, column c begins at (c · cellWidth, r · cellHeight) pixels. */
export interface Matrix {
  readonly columns: readonly MatrixColumn[];
  readonly rows: readonly MatrixRow[];
  readonly cellWidth: number;
  readonly cellHeight: number;
  readonly picture: string;
}

/** Pixels of a cell: its area is that of a flag of 2 to 3 this high, whatever its proportions. */
const cellSize = 64;

/** Most rows and columns: beyond, no cell can be made out. */
const most = { rows: 12, columns: 24 };

/** Draws the options of an opened drawing, the colour to change first on top; undefined where there are none. */
export async function drawMatrix(
  opened: OpenedDrawing,
  report: OptionsReport,
  palette: readonly Candidate[],
): Promise<Matrix | undefined> {
  const all = [...report.options, ...report.vanishing];
  if (all.length === 0) return undefined;
  const columns = listColumns(all, report, palette).slice(0, most.columns);
  const ids = [...new Set(all.map(({ id }) => id))].slice(0, most.rows);
  const rows = ids.flatMap((id): MatrixRow[] => {
    const own = all.filter((option) => option.id === id);
    const { hex, name } = report.shades.find((shade) => shade.id === id) ?? { hex: null, name: "" };
    const cells = columns.map((column) => own.find((option) => belongsTo(option, column)) ?? null);
    return hex === null ? [] : [{ id, hex, name, share: own[0]?.share ?? 0, cells }];
  });
  const { width, height } = opened.inspection.map;
  const scale = Math.min(1, Math.sqrt((cellSize * cellSize * 1.5) / (width * height)));
  const thumbnail = new Thumbnail(
    opened.inspection.map,
    Math.max(1, Math.round(width * scale)),
    Math.max(1, Math.round(height * scale)),
  );
  const picture = await encodePng(paintCells(opened, rows, columns.length, thumbnail));
  const { width: cellWidth, height: cellHeight } = thumbnail;
  return { columns, rows, cellWidth, cellHeight, picture: picture.toString("base64") };
}

/** In the order in which candidates are tried: the palette, the flag's own colours, the kept hue. */
function listColumns(
  all: readonly Option[],
  { shades }: OptionsReport,
  palette: readonly Candidate[],
): readonly MatrixColumn[] {
  const tried = new Set(all.flatMap(({ kind, with: next }) => (kind === "keptHue" ? [] : [next])));
  const columns = new Map<Hex, MatrixColumn>();
  for (const { hex, name } of [...palette, ...shades])
    if (tried.has(hex) && !columns.has(hex)) columns.set(hex, { hex, name });
  const hasKept = all.some(({ kind }) => kind === "keptHue");
  return [...columns.values(), ...(hasKept ? [{ hex: null, name: "its own hue" }] : [])];
}

function belongsTo({ kind, with: next }: Option, { hex }: MatrixColumn): boolean {
  return hex === null ? kind === "keptHue" : kind !== "keptHue" && next === hex;
}

/** Cells without an option stay empty. */
function paintCells(
  { inspection }: OpenedDrawing,
  rows: readonly MatrixRow[],
  columnCount: number,
  thumbnail: Thumbnail,
): Raster {
  const { shapes, looks } = inspection.ground.scene;
  const width = columnCount * thumbnail.width;
  const rgba = new Uint8Array(4 * width * rows.length * thumbnail.height);
  for (const [row, { hex, cells }] of rows.entries()) {
    for (const [column, option] of cells.entries()) {
      if (option === null) continue;
      const colours = shapes.paints.map(({ flat, declared }, index) =>
        linearOf(flat && declared === hex ? option.with : (looks[index]?.hex ?? "#000000")),
      );
      const flag = thumbnail.paint([undefined, ...colours]);
      for (let y = 0; y < flag.height; y += 1) {
        const line = flag.rgba.subarray(4 * y * flag.width, 4 * (y + 1) * flag.width);
        rgba.set(line, 4 * ((row * flag.height + y) * width + column * flag.width));
      }
    }
  }
  return { width, height: rows.length * thumbnail.height, rgba };
}
