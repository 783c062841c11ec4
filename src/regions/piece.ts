// Floor 3. The pieces of a mask: 4-connected parts of the focus, with how far each of them reaches.
import { findBoxes, heightOf, widthOf } from "./box.ts";
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
  const found = findRegions(runs);
  const boxes = findBoxes(found);
  const pieces = found.regions.map(({ pixels }, index) => {
    const box = boxes[index];
    return { pixels, span: box === undefined ? 0 : Math.max(widthOf(box), heightOf(box)) };
  });
  return { pieces, runs, pieceOf: found.regionOf };
}

/** Returns the index of the piece of each pixel, −1 outside the mask. */
export function spreadPieces({ runs, pieceOf }: Pieces): Int32Array {
  const spread = new Int32Array(runs.width * runs.height);
  for (let run = 0; run < runs.count; run += 1)
    spread.fill(pieceOf[run] as number, runs.start[run], runs.start[run + 1]);
  return spread;
}
