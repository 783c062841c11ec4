// Floor 3. The pieces of a mask: 4-connected parts of the focus, with how far each of them reaches.
import { findRegions } from "./component.ts";
import { findRuns, type Runs } from "./runs.ts";

/** A 4-connected piece. `span` is the longer side of the upright box around it, in pixels. */
export interface Piece {
  readonly pixels: number;
  readonly span: number;
}

/** Pieces in reading order of their first pixels; `pieceOf[run]` is the index of a run's piece, or −1 outside the mask. */
export interface Pieces {
  readonly pieces: readonly Piece[];
  readonly runs: Runs;
  readonly pieceOf: Int32Array;
}

/** Finds the pieces of a mask of `width` by `height` pixels (1 = in it). One pass over the pixels, then over the runs. */
export function findPieces(mask: Uint8Array, width: number, height: number): Pieces {
  const runs = findRuns({ width, height, exactShare: 1, labels: new Uint16Array(mask) });
  const { regions, regionOf } = findRegions(runs);
  const boxes = regions.map(() => ({ left: width, right: 0, top: height, bottom: 0 }));
  for (let y = 0; y < height; y += 1) {
    const end = runs.rowStart[y + 1] as number;
    for (let run = runs.rowStart[y] as number; run < end; run += 1) {
      const box = boxes[regionOf[run] as number];
      if (box === undefined) continue;
      box.left = Math.min(box.left, (runs.start[run] as number) - y * width);
      box.right = Math.max(box.right, (runs.start[run + 1] as number) - y * width);
      box.top = Math.min(box.top, y);
      box.bottom = y + 1;
    }
  }
  const pieces = boxes.map(({ left, right, top, bottom }, index) => ({
    pixels: regions[index]?.pixels ?? 0,
    span: Math.max(right - left, bottom - top),
  }));
  return { pieces, runs, pieceOf: regionOf };
}
