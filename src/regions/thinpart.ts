// Floor 3, a check on step 2. Parts of the label map so thin that screens show them as a mixture with what is beside them.
import type { LabelMap } from "./labelmap.ts";
import { eachShortColumn, findRuns, type Runs } from "./runs.ts";
import { giveBack, takeBytes } from "./scratch.ts";

/**
 * Returns how many pixels with a label lie in a stretch of it, along the row or the column, of at most `most` pixels. `runs`
 * are those of the map. Linear in runs and in the cracks between them.
 */
export function countThin(map: LabelMap, most: number, runs: Runs = findRuns(map)): number {
  const { width, start, label } = runs;
  const thin = takeBytes(map.labels.length);
  let count = 0;
  for (let run = 0; run < runs.count; run += 1) {
    const [from, to] = [start[run] as number, start[run + 1] as number];
    if (to - from > most || label[run] === 0) continue;
    thin.fill(1, from, to);
    count += to - from;
  }
  eachShortColumn(runs, most, (x, top, bottom) => {
    for (let at = top * width + x; at < bottom * width; at += width) {
      count += 1 - (thin[at] as number);
      thin[at] = 1;
    }
  });
  giveBack(thin);
  return count;
}
