// Floor 4. How alike two flags look as a whole: mean ΔE00 over a coarse grid in cloth colours, three ways round.

import type { Cloth } from "../colour/cloth.ts";
import type { LinearRgb } from "../colour/colour.ts";
import { measureLabDifference } from "../colour/difference.ts";
import { checkRange } from "../colour/range.ts";
import { type Lab, labOf } from "../colour/space.ts";

/** The cells of a flag at common proportions: distinct colours, and which one each cell has (−1: no flag there). */
export interface FlagGrid {
  readonly columns: number;
  readonly rows: number;
  readonly labs: readonly Lab[];
  readonly cells: Int16Array<ArrayBufferLike>;
}

/** How the other flag is turned: as it is, seen from behind, or hoisted upside down (the hoist stays at the left). */
export type Orientation = "as it is" | "mirrored" | "upside down";

export const orientations: readonly Orientation[] = ["as it is", "mirrored", "upside down"];

/** Fields along and down a flag whose lightness a bound looks at. */
const fieldsAcross = 4;

/** What {@link evenLightness} is made smaller by, so that no pair of L* is over its ΔL* / S_L: the worst, 48 and 100, needs 0.9778. */
const evenScale = 0.977;

/** Most pairs of colours that are kept while two grids are compared. */
const mostKept = 4096;

/** What a cell counts where only one of the two flags covers it: as black against white. */
const oneSided = 100;

/**
 * Works a flag's cells out for comparison. `cells` run row by row from the upper hoist, in linear light; null where the
 * flag does not reach. Colours are taken as cloth: each component from the reflectance of black cloth to that of white.
 *
 * Throws RangeError where there are not `columns` × `rows` cells, or a component is not 0 to 1.
 */
export function prepareGrid(
  columns: number,
  rows: number,
  cells: readonly (LinearRgb | null)[],
  cloth: Cloth,
): FlagGrid {
  if (cells.length !== columns * rows)
    throw new RangeError(`a grid of ${columns} × ${rows} needs ${columns * rows} cells, got ${cells.length}`);
  const labs: Lab[] = [];
  const known = new Map<string, number>();
  const numbers = cells.map((cell) => {
    if (cell === null) return -1;
    const key = `${cell.linearR} ${cell.linearG} ${cell.linearB}`;
    const number = known.get(key) ?? labs.push(labOf(dye(cell, cloth))) - 1;
    known.set(key, number);
    return number;
  });
  return { columns, rows, labs, cells: Int16Array.from(numbers) };
}

/**
 * Returns mean ΔE00 between two grids of one size, `other` turned as `orientation` says; a cell that only one flag covers
 * counts 100. Gives up, with Infinity, as soon as the mean is sure to be over `limit`.
 *
 * Throws RangeError where the grids differ in size.
 */
export function compareGrids(
  one: FlagGrid,
  other: FlagGrid,
  orientation: Orientation = "as it is",
  limit = Number.POSITIVE_INFINITY,
  known = openDifferences(one, other),
): number {
  const { columns, rows, cells } = one;
  if (columns !== other.columns || rows !== other.rows) {
    throw new RangeError(
      `grids must have one size, got ${columns} × ${rows} and ${other.columns} × ${other.rows}`,
    );
  }
  const stride = other.labs.length + 1;
  // Sums in another order differ in their last digits, and equals must stay equal.
  const most = limit * cells.length + 1e-6;
  let sum = 0;
  for (const at of visitingOrder(cells.length)) {
    const a = cells[at] as number;
    const b = other.cells[turn(at, columns, rows, orientation)] as number;
    const key = (a + 1) * stride + b + 1;
    let difference = known?.[key] ?? -1;
    if (difference < 0) {
      difference = differ(one.labs[a], other.labs[b]);
      if (known !== undefined) known[key] = difference;
    }
    sum += difference;
    if (sum > most) return Number.POSITIVE_INFINITY;
  }
  return Math.round((sum / cells.length) * 1e9) / 1e9;
}

/**
 * Returns what no mean ΔE00 of `one` and another grid of its size, in whichever of the three orientations, is under; cheap,
 * for the lightness of a few fields alone is looked at.
 *
 * ΔE00 is never under ΔL* / S_L: what chroma and hue add to its square is not negative, for the rotation term stays between
 * ±2 sin 60° and so under 2. ΔL* / S_L is never under the difference of two {@link evenLightness}. And a sum of differences is
 * never under the difference of the sums.
 */
export function boundDistance(one: FlagGrid): (other: FlagGrid) => number {
  const turned = orientations.map((orientation) => sumFields(one, orientation));
  const count = one.cells.length;
  return (other) => {
    const fields = fieldsOf(other);
    const sums = turned.map((own) =>
      own.reduce((sum, light, at) => sum + Math.abs(light - (fields[at] ?? 0)), 0),
    );
    return Math.min(...sums) / count;
  };
}

/**
 * Lightness in steps of ΔE00, which counts L* less far from 50: the integral of 1 / S_L, with |d| for d² / √(20 + d²), scaled.
 * Source of S_L: CIE 142:2001.
 */
function evenLightness(l: number): number {
  return (Math.sign(l - 50) * evenScale * Math.log(1 + 0.015 * Math.abs(l - 50))) / 0.015;
}

/** Sums of even lightness by field. A cell without a flag counts as grey: nearer to any other than `oneSided`. */
function sumFields({ columns, rows, labs, cells }: FlagGrid, orientation: Orientation): Float64Array {
  const sums = new Float64Array(fieldsAcross * fieldsAcross);
  for (let at = 0; at < cells.length; at += 1) {
    const column = Math.floor(((at % columns) * fieldsAcross) / columns);
    const row = Math.floor((Math.floor(at / columns) * fieldsAcross) / rows);
    const lab = labs[cells[turn(at, columns, rows, orientation)] as number];
    const field = row * fieldsAcross + column;
    sums[field] = (sums[field] ?? 0) + (lab === undefined ? 0 : evenLightness(lab.l));
  }
  return sums;
}

const fieldsOfGrids = new WeakMap<FlagGrid, Float64Array>();

function fieldsOf(grid: FlagGrid): Float64Array {
  const fields = fieldsOfGrids.get(grid) ?? sumFields(grid, "as it is");
  fieldsOfGrids.set(grid, fields);
  return fields;
}

/** Where the differences of two grids' colours are kept, for all three orientations; undefined where there are too many. */
export function openDifferences(one: FlagGrid, other: FlagGrid): Float64Array | undefined {
  const size = (one.labs.length + 1) * (other.labs.length + 1);
  return size <= mostKept ? new Float64Array(size).fill(-1) : undefined;
}

function differ(one: Lab | undefined, other: Lab | undefined): number {
  if (one === undefined || other === undefined) return one === other ? 0 : oneSided;
  return measureLabDifference(one, other);
}

function dye({ linearR, linearG, linearB }: LinearRgb, { black, white }: Cloth): LinearRgb {
  const dyed = (component: number): number =>
    checkRange("reflectance", black + (white - black) * component, 0, 100) / 100;
  return {
    linearR: dyed(linearR),
    linearG: dyed(linearG),
    linearB: dyed(linearB),
  };
}

function turn(at: number, columns: number, rows: number, orientation: Orientation): number {
  const column = at % columns;
  const row = (at - column) / columns;
  if (orientation === "mirrored") return row * columns + columns - 1 - column;
  return orientation === "upside down" ? (rows - 1 - row) * columns + column : at;
}

const orders = new Map<number, Int32Array>();

/** All cells, far apart ones first, so that flags that differ show it early. */
function visitingOrder(count: number): Int32Array {
  const known = orders.get(count);
  if (known !== undefined) return known;
  const golden = 0.618_033_988_749_895;
  const order = Int32Array.from({ length: count }, (_, at) => at).sort(
    (a, b) => ((a * golden) % 1) - ((b * golden) % 1),
  );
  orders.set(count, order);
  return order;
}
