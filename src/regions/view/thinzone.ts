// Floor 3, part of step 3. Where anything thin can be at all, so that the rest of the flag need not be looked at.
import { eachShortColumn, type Runs } from "../runs.ts";

/**
 * Square blocks of 2^`bits` pixels. `near[block]` is 1 within a block of a thin part, `wide[block]` within two.
 * Blocks are numbered row by row, `columns` in a row.
 */
export interface Zone {
  readonly bits: number;
  readonly columns: number;
  readonly near: Uint8Array;
  readonly wide: Uint8Array;
  readonly isEmpty: boolean;
}

/**
 * A part thinner than n is at most √2 · n long in rows or in columns, whatever its slope; twice n leaves room for
 * tips and for curves.
 */
const slack = 2;

/** Finds the zone of all parts thinner than `n` pixels. Linear in runs and in the cracks between them. */
export function findZone(runs: Runs, n: number): Zone {
  const bits = Math.max(4, Math.ceil(Math.log2(n + 4)));
  const columns = (runs.width >> bits) + 1;
  const rows = (runs.height >> bits) + 1;
  const thin = new Uint8Array(columns * rows);
  markShortRows(runs, slack * n, thin, bits, columns);
  markShortColumns(runs, slack * n, thin, bits, columns);
  const near = widen(thin, columns, rows);
  return { bits, columns, near, wide: widen(near, columns, rows), isEmpty: !thin.includes(1) };
}

function markShortRows(
  { width, count, start, label }: Runs,
  short: number,
  thin: Uint8Array,
  bits: number,
  columns: number,
): void {
  for (let run = 0; run < count; run += 1) {
    const from = start[run] as number;
    const to = start[run + 1] as number;
    if (to - from >= short || label[run] === 0) continue;
    const y = (from / width) | 0;
    const row = (y >> bits) * columns;
    for (let block = (from - y * width) >> bits; block <= (to - 1 - y * width) >> bits; block += 1)
      thin[row + block] = 1;
  }
}

function markShortColumns(runs: Runs, short: number, thin: Uint8Array, bits: number, columns: number): void {
  eachShortColumn(runs, short - 1, (x, top, bottom) => {
    for (let block = top >> bits; block <= (bottom - 1) >> bits; block += 1)
      thin[block * columns + (x >> bits)] = 1;
  });
}

function widen(blocks: Uint8Array, columns: number, rows: number): Uint8Array {
  const wider = new Uint8Array(blocks.length);
  for (let y = 0; y < rows; y += 1) {
    for (let x = 0; x < columns; x += 1) {
      if (blocks[y * columns + x] !== 1) continue;
      for (let ny = Math.max(0, y - 1); ny <= Math.min(rows - 1, y + 1); ny += 1) {
        wider.fill(1, ny * columns + Math.max(0, x - 1), ny * columns + Math.min(columns - 1, x + 1) + 1);
      }
    }
  }
  return wider;
}
