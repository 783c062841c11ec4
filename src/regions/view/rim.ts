// Floor 3, part of step 3. The pixels on either side of every line.
import type { LabelMap } from "../labelmap.ts";
import { PixelList } from "../pixellist.ts";
import { eachContact, type Runs } from "../runs.ts";
import { giveBack, takeBytes } from "../scratch.ts";
import type { Zone } from "./thinzone.ts";

/** Returns the pixels of the wide zone with a neighbour of another label, once each. Transparent ones are among them. */
export function findRim({ labels }: LabelMap, runs: Runs, { wide, bits, columns }: Zone): Int32Array {
  const { width, label, start, rowStart } = runs;
  const seen = takeBytes(labels.length);
  const rim = new PixelList();
  const add = (at: number): void => {
    if (seen[at] === 1) return;
    seen[at] = 1;
    rim.add(at);
  };
  for (let y = 0; y < runs.height; y += 1) {
    const row = (y >> bits) * columns;
    if (!wide.subarray(row, row + columns).includes(1)) continue;
    for (let run = (rowStart[y] as number) + 1; run < (rowStart[y + 1] as number); run += 1) {
      const at = start[run] as number;
      if (wide[row + ((at - y * width) >> bits)] !== 1) continue;
      add(at - 1);
      add(at);
    }
    if (y === 0) continue;
    eachContact(runs, y, (above, below, from, to) => {
      if (label[above] === label[below]) return;
      for (let at = from; at < to; at += 1) {
        if (wide[row + ((at - y * width) >> bits)] !== 1) continue;
        add(at - width);
        add(at);
      }
    });
  }
  giveBack(seen);
  return rim.pixels;
}
