// Floor 3. The pieces of a mask: 4-connected parts of the focus, with how far each of them reaches.
import { findBoxes, heightOf, widthOf } from "./box.ts";
import { findRegions } from "./component.ts";
import { findRuns } from "./runs.ts";

/** A 4-connected piece. `span` is the longer side of the upright box around it, in pixels. */
export interface Piece {
  readonly pixels: number;
  readonly span: number;
}

/** Pieces in reading order of their first pixels; `pieceOf[at]` is the index of a pixel's piece, or −1 outside the mask. */
export interface Pieces {
  readonly pieces: readonly Piece[];
  readonly pieceOf: Int32Array;
}

/** Finds the pieces of a mask of `width` by `height` pixels (1 = in it). One pass over the pixels, then over the runs. */
export function findPieces(mask: Uint8Array, width: number, height: number): Pieces {
  const runs = findRuns({ width, height, exactShare: 1, labels: new Uint16Array(mask) });
  const found = findRegions(runs);
  const boxes = findBoxes(found);
  const pieces = found.regions.map(({ pixels }, index) => {
    const box = boxes[index];
    return { pixels, span: box === undefined ? 0 : Math.max(widthOf(box), heightOf(box)) };
  });
  const pieceOf = new Int32Array(mask.length).fill(-1);
  for (let run = 0; run < runs.count; run += 1) {
    const index = found.regionOf[run] as number;
    if (index >= 0) pieceOf.fill(index, runs.start[run], runs.start[run + 1]);
  }
  return { pieces, pieceOf };
}
