// Floor 3. A label map as runs: stretches of one label in a row. What follows looks at runs and at where they touch,
// never again at every pixel.
import type { LabelMap } from "./labelmap.ts";

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
  const bytes = Buffer.from(labels.buffer, labels.byteOffset, labels.byteLength);
  const rowStart = new Int32Array(height + 1);
  let start = new Int32Array(1 << 13);
  let count = 0;
  for (let y = 0; y < height; y += 1) {
    rowStart[y] = count;
    const row = y * width;
    if (count + width + 1 >= start.length) start = grow(start, width);
    if (y > 0 && bytes.compare(bytes, 2 * (row - width), 2 * row, 2 * row, 2 * (row + width)) === 0) {
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
