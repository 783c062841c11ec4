// Floor 3. The pieces of a mask: 4-connected parts of the focus, with how far each of them reaches.

import { type Label, labelOf, type PaintIndex, paintOf } from "../../svg/paintnumber.ts";
import { findRegions } from "../component.ts";
import type { LabelMap } from "../labelmap.ts";
import { findRuns, type Runs } from "../runs.ts";
import { findBoxes, heightOf, widthOf } from "./box.ts";

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
  return { pieces: [...pieces], runs, pieceOf: found.regionOf };
}

/**
 * Returns how much of a mask is in `remaining` too, 0 to 1, and the longest span of the pieces that are there by half or
 * more, 0 where there is none. `pieces` has the piece of each pixel as a label, 0 outside the mask; `spans` those of the whole pieces.
 */
export function measureRemaining(
  { labels }: LabelMap,
  spans: readonly number[],
  remaining: Uint8Array,
): { readonly left: number; readonly span: number } {
  const all = new Uint32Array(spans.length);
  const left = new Uint32Array(spans.length);
  for (let at = 0; at < labels.length; at += 1) {
    const piece = paintOf(labels[at] as Label);
    if (piece < 0) continue;
    all[piece] = (all[piece] as number) + 1;
    left[piece] = (left[piece] as number) + (remaining[at] as number);
  }
  const total = all.reduce((sum, pixels) => sum + pixels, 0);
  return {
    left: total === 0 ? 0 : left.reduce((sum, pixels) => sum + pixels, 0) / total,
    span: spans.reduce((most, span, piece) => {
      const has = left[piece] as number;
      return has > 0 && 2 * has >= (all[piece] as number) ? Math.max(most, span) : most;
    }, 0),
  };
}

/** The last label that a map has. */
export const mostLabels = 0xffff;

/** Returns the pieces as a map: labels count from 1 in their order, 0 outside the mask; a piece past the last label has that. */
export function labelPieces({ runs, pieceOf }: Pieces): LabelMap {
  const { width, height, count, start } = runs;
  const labels = new Uint16Array(width * height);
  for (let run = 0; run < count; run += 1)
    labels.fill(Math.min(labelOf(pieceOf[run] as PaintIndex), mostLabels), start[run], start[run + 1]);
  return { width, height, exactShare: 1, labels };
}

/** Returns the index of the piece of each pixel, −1 outside the mask. */
export function spreadPieces({ runs, pieceOf }: Pieces): Int32Array {
  const spread = new Int32Array(runs.width * runs.height);
  for (let run = 0; run < runs.count; run += 1)
    spread.fill(pieceOf[run] as number, runs.start[run], runs.start[run + 1]);
  return spread;
}
