// Floor 3. The pieces of a mask: 4-connected parts of the focus, with how far each of them reaches.

import { type Label, labelOf, type PaintIndex, paintOf } from "../../svg/paintnumber.ts";
import { findRegions } from "../component.ts";
import type { LabelMap } from "../labelmap.ts";
import type { Box } from "../mapcrop.ts";
import { findRuns, type Runs } from "../runs.ts";
import { giveBack, takeBytes, takeWords } from "../scratch.ts";
import { findBoxes, heightOf, joinBoxes, widthOf } from "./box.ts";

/** A 4-connected piece. `span` is the longer side of the upright box around it, in pixels. */
export interface Piece {
  readonly pixels: number;
  readonly span: number;
}

/**
 * Pieces in reading order of their first pixels, with the box around all of them, an empty one where there is none;
 * `pieceOf[run]` is the index of a run's piece, or −1 outside the mask.
 */
export interface Pieces {
  readonly pieces: readonly Piece[];
  readonly runs: Runs;
  readonly pieceOf: Int32Array;
  readonly box: Box;
}

/** Finds the pieces of a mask of `width` by `height` pixels (1 = in it). One pass over the pixels, then over the runs. */
export function findPieces(mask: Uint8Array, width: number, height: number): Pieces {
  const labels = takeWords(mask.length);
  labels.set(mask);
  const found = findPiecesOf(findRuns({ width, height, exactShare: 1, labels }));
  giveBack(labels);
  return found;
}

/** Finds the pieces of the mask that these are the runs of (label 1 = in it). Linear in runs. */
export function findPiecesOf(runs: Runs): Pieces {
  const found = findRegions(runs);
  const boxes = findBoxes(found);
  const pieces = found.regions.map(({ pixels }, index) => {
    const box = boxes[index];
    return { pixels, span: box === undefined ? 0 : Math.max(widthOf(box), heightOf(box)) };
  });
  const box = pieces.length === 0 ? { left: 0, top: 0, right: 0, bottom: 0 } : joinBoxes([...boxes]);
  return { pieces: [...pieces], runs, pieceOf: found.regionOf, box };
}

/** What of a mask is left: its share of all, 0 to 1, and the longest span of the pieces that are there by half or more. */
export interface Remaining {
  readonly left: number;
  readonly span: number;
}

/**
 * Returns how much of a mask is in `remaining` too, and the longest span of the pieces that are there by half or
 * more, 0 where there is none. `pieces` has the piece of each pixel as a label, 0 outside the mask; `spans` those of the whole pieces.
 */
export function measureRemaining(
  { labels }: Pick<LabelMap, "labels">,
  spans: readonly number[],
  remaining: Uint8Array,
): Remaining {
  const all = new Uint32Array(spans.length);
  const left = new Uint32Array(spans.length);
  for (let at = 0; at < labels.length; at += 1) {
    const piece = paintOf(labels[at] as Label);
    if (piece < 0) continue;
    all[piece] = (all[piece] as number) + 1;
    left[piece] = (left[piece] as number) + (remaining[at] as number);
  }
  return summarise(all, left, spans);
}

/** The same where nothing but the pixels `looked` can have gone, each named once. `sizes` are the pixels of the whole pieces. */
export function measureGone(
  { labels }: Pick<LabelMap, "labels">,
  spans: readonly number[],
  sizes: Uint32Array,
  looked: Int32Array,
  remaining: Uint8Array,
): Remaining {
  const left = sizes.slice();
  for (let index = 0; index < looked.length; index += 1) {
    const at = looked[index] as number;
    const piece = paintOf(labels[at] as Label);
    if (piece >= 0 && remaining[at] === 0) left[piece] = (left[piece] as number) - 1;
  }
  return summarise(sizes, left, spans);
}

function summarise(all: Uint32Array, left: Uint32Array, spans: readonly number[]): Remaining {
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
const mostLabels = 0xffff;

/** What is known of each piece that has a label of its own; those past the last label count as one. */
export function listPieces({ pieces }: Pieces): {
  readonly spans: readonly number[];
  readonly sizes: Uint32Array;
} {
  const spans = pieces.slice(0, mostLabels).map(({ span }) => span);
  const sizes = new Uint32Array(spans.length);
  for (const [piece, { pixels }] of pieces.entries()) {
    const at = Math.min(piece, mostLabels - 1);
    sizes[at] = (sizes[at] as number) + pixels;
  }
  return { spans, sizes };
}

/** The mask and its pieces inside a box: labels count from 1 in their order, 0 outside the mask; a piece past the last label has that. */
export interface CutPieces {
  readonly mask: Uint8Array;
  readonly labels: Uint16Array;
}

/** Cuts out the pixels of a box around all pieces. */
export function cutPieces({ runs, pieceOf }: Pieces, box: Box): CutPieces {
  const width = box.right - box.left;
  const mask = takeBytes(width * (box.bottom - box.top));
  const labels = takeWords(mask.length).fill(0);
  for (let y = box.top; y < box.bottom; y += 1) {
    const shift = y * runs.width + box.left - (y - box.top) * width;
    for (let run = runs.rowStart[y] as number; run < (runs.rowStart[y + 1] as number); run += 1) {
      const piece = pieceOf[run] as PaintIndex;
      if (piece < 0) continue;
      const [from, to] = [(runs.start[run] as number) - shift, (runs.start[run + 1] as number) - shift];
      mask.fill(1, from, to);
      labels.fill(Math.min(labelOf(piece), mostLabels), from, to);
    }
  }
  return { mask, labels };
}

/** Returns the index of the piece of each pixel, −1 outside the mask. */
export function spreadPieces({ runs, pieceOf }: Pieces): Int32Array {
  const spread = new Int32Array(runs.width * runs.height);
  for (let run = 0; run < runs.count; run += 1)
    spread.fill(pieceOf[run] as number, runs.start[run], runs.start[run + 1]);
  return spread;
}
