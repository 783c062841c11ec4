// Floor 3. A label map as runs: stretches of one label in a row. What follows looks at runs and at where they touch,
// never again at every pixel.
import type { LabelMap } from "./labelmap.ts";
import type { Box } from "./mapcrop.ts";
import { createRepeats } from "./repeatedrow.ts";

/**
 * Runs of all rows, in reading order. Row `y` has the runs `rowStart[y]` to `rowStart[y + 1] − 1`; run `i` starts at
 * pixel `start[i]` (counted through all rows) and ends before pixel `start[i + 1]`.
 */
export interface Runs {
  readonly width: number;
  readonly height: number;
  readonly rowStart: Int32Array;
  readonly start: Int32Array;
  readonly label: Uint16Array;
  readonly count: number;
}

/** Finds the runs of a map. One pass over the pixels; rows that repeat the row above are only compared with it. */
export function findRuns({ width, height, labels }: LabelMap): Runs {
  const repeats = createRepeats(labels, width);
  const rowStart = new Int32Array(height + 1);
  let start = new Int32Array(1 << 13);
  let count = 0;
  for (let y = 0; y < height; y += 1) {
    rowStart[y] = count;
    const row = y * width;
    if (count + width + 1 >= start.length) start = grow(start, width);
    if (repeats(y)) {
      const end = count;
      for (let run = rowStart[y - 1] as number; run < end; run += 1, count += 1)
        start[count] = (start[run] as number) + width;
      continue;
    }
    let last = -1;
    for (let at = row; at < row + width; at += 1) {
      const label = labels[at] as number;
      if (label !== last) {
        start[count] = at;
        count += 1;
        last = label;
      }
    }
  }
  rowStart[height] = count;
  start[count] = width * height;
  const label = new Uint16Array(count);
  for (let run = 0; run < count; run += 1) label[run] = labels[start[run] as number] as number;
  return { width, height, rowStart, start, label, count };
}

/** Returns the runs of the map in which every run has the label that `relabel` gives it by its number. */
export function relabelRuns(runs: Runs, relabel: (run: number) => number): Runs {
  const rowStart = new Int32Array(runs.height + 1);
  const start = new Int32Array(runs.count + 1);
  const label = new Uint16Array(runs.count);
  let count = 0;
  for (let y = 0; y < runs.height; y += 1) {
    const first = count;
    rowStart[y] = first;
    for (let run = runs.rowStart[y] as number; run < (runs.rowStart[y + 1] as number); run += 1) {
      const next = relabel(run);
      if (count > first && label[count - 1] === next) continue;
      start[count] = runs.start[run] as number;
      label[count] = next;
      count += 1;
    }
  }
  rowStart[runs.height] = count;
  start[count] = runs.width * runs.height;
  return { ...runs, rowStart, start: start.subarray(0, count + 1), label: label.subarray(0, count), count };
}

/** Returns the runs of the part of a map inside `box`, which is not empty. */
export function cropRuns(runs: Runs, box: Box): Runs {
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const most = (runs.rowStart[box.bottom] as number) - (runs.rowStart[box.top] as number);
  const rowStart = new Int32Array(height + 1);
  const start = new Int32Array(most + 1);
  const label = new Uint16Array(most);
  let count = 0;
  for (let y = 0; y < height; y += 1) {
    const shift = (box.top + y) * runs.width + box.left;
    rowStart[y] = count;
    for (let run = runs.rowStart[box.top + y] as number; ; run += 1) {
      const from = (runs.start[run] as number) - shift;
      if (from >= width) break;
      if ((runs.start[run + 1] as number) - shift <= 0) continue;
      start[count] = y * width + Math.max(0, from);
      label[count] = runs.label[run] as number;
      count += 1;
      if ((runs.start[run + 1] as number) - shift >= width) break;
    }
  }
  rowStart[height] = count;
  start[count] = width * height;
  return {
    width,
    height,
    rowStart,
    start: start.subarray(0, count + 1),
    label: label.subarray(0, count),
    count,
  };
}

function grow(array: Int32Array<ArrayBuffer>, least: number): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(2 * array.length + least + 1);
  larger.set(array);
  return larger;
}

/**
 * Calls `visit(above, below, from, to)` for every run of row y − 1 and run of row y that touch; `from` to `to` are the
 * pixels of row y in which they do.
 */
export function eachContact(
  runs: Runs,
  y: number,
  visit: (above: number, below: number, from: number, to: number) => void,
): void {
  const { width, rowStart, start } = runs;
  let above = rowStart[y - 1] as number;
  let below = rowStart[y] as number;
  const belowEnd = rowStart[y + 1] as number;
  let from = y * width;
  while (below < belowEnd) {
    const endAbove = (start[above + 1] as number) + width;
    const endBelow = start[below + 1] as number;
    const to = Math.min(endAbove, endBelow);
    visit(above, below, from, to);
    if (endAbove === to) above += 1;
    if (endBelow === to) below += 1;
    from = to;
  }
}

/**
 * Calls `visit(x, top, bottom)` for every stretch of one label, none transparent, of at most `most` pixels in a column: rows
 * `top` to `bottom` − 1. Linear in runs and in the cracks between them.
 */
export function eachShortColumn(
  runs: Runs,
  most: number,
  visit: (x: number, top: number, bottom: number) => void,
): void {
  const { width, height, label, rowStart, start } = runs;
  const since = new Int32Array(width);
  for (let y = 1; y < height; y += 1) {
    const row = y * width;
    eachContact(runs, y, (above, below, from, to) => {
      if (label[above] === label[below]) return;
      for (let x = from - row; x < to - row; x += 1) {
        const top = since[x] as number;
        since[x] = y;
        if (y - top <= most && label[above] !== 0) visit(x, top, y);
      }
    });
  }
  for (let run = rowStart[height - 1] as number; run < runs.count; run += 1) {
    if (label[run] === 0) continue;
    const last = (height - 1) * width;
    for (let x = (start[run] as number) - last; x < (start[run + 1] as number) - last; x += 1)
      if (height - (since[x] as number) <= most) visit(x, since[x] as number, height);
  }
}
