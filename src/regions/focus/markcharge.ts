// Floor 3, step 4c. The charges of a focus: its connected pieces, those that are large enough, each with a mark of its own.

import { firstCharge } from "../traceline.ts";
import type { Pieces } from "./piece.ts";

/** Share of the focus's area from which a piece of it is a charge (our own judgement). */
const leastOfFocus = 0.1;

/** Marks as {@link traceLines} reads them, and how many charges there are. */
export interface MarkedFocus {
  readonly marks: Uint8Array;
  readonly chargeCount: number;
}

/**
 * Marks the charges of a focus: those of its pieces with a tenth of its area or more. Where no piece has that, as in a
 * ring of small stars, the focus as a whole is the one charge.
 */
export function markCharges({ pieces, runs, pieceOf }: Pieces): MarkedFocus {
  const all = pieces.reduce((sum, { pixels }) => sum + pixels, 0);
  const charges = pieces.flatMap(({ pixels }, piece) => (pixels >= leastOfFocus * all ? [piece] : []));
  const markOf = pieces.map((_, piece) => firstCharge + charges.indexOf(piece));
  const marks = new Uint8Array(runs.width * runs.height);
  for (let run = 0; run < runs.count; run += 1) {
    const piece = pieceOf[run] as number;
    if (piece < 0) continue;
    const mark = charges.length === 0 ? firstCharge : (markOf[piece] as number);
    marks.fill(mark, runs.start[run], runs.start[run + 1]);
  }
  return {
    marks,
    chargeCount: Math.max(charges.length, Math.min(1, pieces.length)),
  };
}
