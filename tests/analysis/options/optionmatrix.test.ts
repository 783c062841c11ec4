// The matrix of small drawings whose colours at a place are known without measuring anything.
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import { cellGap, drawMatrix, type Matrix } from "../../../src/analysis/options/optionmatrix.ts";
import { measureChanges, rankOpened, readPalette } from "../../../src/analysis/options/rankoptions.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import type { Hex } from "../../../src/colour/colour.ts";
import { disc, drawing, field } from "../drawing.ts";

const black: Hex = "#141414";
const red: Hex = "#c8202f";
const white: Hex = "#ffffff";
const navy: Hex = "#16285c";
const palette = new Map([
  ["white", "#ffffff"],
  ["red", "#c8202f"],
  ["navy", "#16285c"],
]);

async function draw(
  inside: string,
  colours: ReadonlyMap<string, string> = palette,
  author: readonly { replace: Hex; with: Hex; name: string }[] = [],
) {
  const options = { cloth: defaultCloth, distance: 40, palette: colours };
  const { value: opened } = await openDrawing("a.svg", drawing(inside), options);
  if (opened === undefined) throw new Error("the drawing opens");
  const report = rankOpened(opened, options);
  const named = measureChanges(opened, author, defaultCloth);
  return { report, matrix: await drawMatrix(opened, report, readPalette(colours), named) };
}

async function drawSome(...of: Parameters<typeof draw>): Promise<Matrix> {
  const { matrix } = await draw(...of);
  if (matrix === undefined) throw new Error("there are changes");
  return matrix;
}

/** Reads the picture: the colour at `x`, `y` of a cell, 0 to 1 of its flag; empty where it is transparent. */
async function readCells({ picture, cellWidth, cellHeight }: Matrix) {
  const { data, info } = await sharp(Buffer.from(picture, "base64"))
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const colourAt = (row: number, column: number, x: number, y: number): string => {
    const left = column * (cellWidth + cellGap) + cellGap / 2 + Math.floor(x * cellWidth);
    const top = row * (cellHeight + cellGap) + cellGap / 2 + Math.floor(y * cellHeight);
    const at = 4 * (top * info.width + left);
    return data[at + 3] === 0 ? "" : `#${data.subarray(at, at + 3).toString("hex")}`;
  };
  return { width: info.width, height: info.height, colourAt };
}

describe("drawMatrix", () => {
  test("every cell shows the flag with one colour replaced, and nothing else", async () => {
    const matrix = await drawSome(field(black) + disc(red));
    const { width, height, colourAt } = await readCells(matrix);
    expect([width, height]).toEqual([
      matrix.columns.length * (matrix.cellWidth + cellGap),
      matrix.rows.length * (matrix.cellHeight + cellGap),
    ]);
    expect(new Set(matrix.rows.map(({ hex }) => hex))).toEqual(new Set([black, red]));
    for (const [row, { hex, cells }] of matrix.rows.entries())
      for (const [column, cell] of cells.entries()) {
        // The middle of the disc, and the upper hoist corner.
        const seen = [colourAt(row, column, 0.5, 0.5), colourAt(row, column, 0.02, 0.02)];
        const next = cell?.with ?? "";
        const asked = cell === null ? ["", ""] : hex === red ? [next, black] : [red, next];
        expect(seen, `${hex} to ${next}`).toEqual(asked);
      }
  });

  test("flags of 2 to 3 are 64 pixels high, others have the same area", async () => {
    const { cellWidth, cellHeight } = await drawSome(field(black) + disc(red));
    expect([cellWidth, cellHeight]).toEqual([96, 64].map((size) => expect.closeTo(size, -1)));
    expect(Math.abs(cellWidth * cellHeight - 64 * 64 * 1.5)).toBeLessThan(cellWidth + cellHeight);
    expect(cellWidth / cellHeight).toBeCloseTo(1.5, 1);
  });

  test("columns: the palette, the flag's own colours, the author's, its own hue", async () => {
    // Yellow on white is weak, and a darker yellow is an olive or a brown: it has no shade of its own hue. Blue on black has.
    const gold = [{ replace: navy, with: "#e6b436" as const, name: "gold" }];
    const { columns } = await drawSome(field(black) + disc(navy), palette, gold);
    expect(columns).toEqual([
      { hex: white, name: "white" },
      { hex: red, name: "red" },
      // The palette calls it navy; the flag has it, and what the flag calls it goes first.
      { hex: navy, name: "dark blue" },
      { hex: black, name: "black" },
      { hex: "#e6b436", name: "gold" },
      { hex: null },
    ]);
    const yellow = await drawSome(field(white) + disc("#f7c81e"), new Map([["white", "#ffffff"]]));
    expect(yellow.columns.some(({ hex }) => hex === null)).toBe(false);
  });

  test("a colour has no cell in its own column; the author's has one where the author tried it", async () => {
    const { columns, rows } = await drawSome(field(black) + disc(red), palette, [
      { replace: red, with: "#e6b436", name: "gold" },
    ]);
    const cellOf = (hex: Hex, next: Hex) =>
      rows.find((row) => row.hex === hex)?.cells[columns.findIndex((column) => column.hex === next)];
    expect(cellOf(red, red)).toBeNull();
    expect(cellOf(black, "#e6b436")).toBeNull();
    expect(cellOf(red, "#e6b436")).toMatchObject({ name: "gold", isRanked: true, merges: false });
    expect(cellOf(red, white)).toMatchObject({ name: "white", clarity: 100, isRanked: true, isBest: true });
  });

  test("a charge that becomes its field is there, and is not ranked", async () => {
    const { rows, columns } = await drawSome(field(black) + disc(red));
    const at = columns.findIndex(({ hex }) => hex === black);
    const cell = rows.find(({ hex }) => hex === red)?.cells[at];
    expect(cell).toMatchObject({
      with: black,
      mergedOutline: 1,
      merges: true,
      isRanked: false,
      isBest: false,
    });
  });

  test("the author's change to a colour that is no option merges the charge too: not ranked", async () => {
    const { rows } = await drawSome(field(black) + disc(red), palette, [
      { replace: red, with: "#161616", name: "soot" },
    ]);
    const cells = rows.flatMap((row) => row.cells).filter((cell) => cell?.name === "soot");
    expect(cells).toEqual([expect.objectContaining({ isRanked: false, isBest: false })]);
  });

  test("a colour that also stands in a gradient changes where it is flat alone", async () => {
    const shade =
      '<linearGradient id="g"><stop stop-color="#c8202f"/><stop offset="1" stop-color="#c4202f"/></linearGradient>';
    const stripe = '<rect width="30" height="4" fill="url(#g)"/>';
    const matrix = await drawSome(`${shade}${field(black)}${disc(red)}${stripe}`);
    const { colourAt } = await readCells(matrix);
    const row = matrix.rows.findIndex(({ hex }) => hex === red);
    const column = matrix.columns.findIndex(({ hex }) => hex === white);
    expect(colourAt(row, column, 0.5, 0.5)).toBe(white);
    expect(colourAt(row, column, 0.1, 0.05)).not.toBe(white);
  });

  test("of too many replacements the first are drawn, and the rest counted", async () => {
    const many = new Map(
      Array.from({ length: 30 }, (_, index) => [`shade ${index}`, `#${(8 * index + 16).toString(16)}ff40`]),
    );
    const { columns, leftOut } = await drawSome(field(black) + disc(red), many, [
      { replace: red, with: "#e6b436", name: "gold" },
    ]);
    expect(columns).toHaveLength(24);
    expect(columns).toContainEqual({ hex: "#e6b436", name: "gold" });
    // 30 of the palette and two of the flag's own, gold, and its own hue where there is one.
    const hasOwnHue = columns.some(({ hex }) => hex === null);
    expect(leftOut).toEqual({ rows: 0, columns: 30 + 2 + 1 + (hasOwnHue ? 1 : 0) - 24 });
  });

  test("one colour: nothing to draw", async () => {
    expect((await draw(field(red))).matrix).toBeUndefined();
  });
});
