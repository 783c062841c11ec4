// Floor 3, step 4c. The charges of a focus: its connected pieces, those that are large enough, each with a mark of its own.
import { findPieces } from "./piece.ts";
import { firstCharge } from "./trace.ts";

/** Share of the focus's area from which a piece of it is a charge (our own judgement). */
const leastOfFocus = 0.1;

/** Marks as {@link traceLines} reads them, and how many charges there are. */
export interface MarkedFocus {
  readonly marks: Uint8Array;
  readonly chargeCount: number;
}

/**
 * Marks the charges of a focus (1 = in it): pieces with a tenth of its area or more. Where no piece has that, as in a
 * ring of small stars, the focus as a whole is the one charge.
 */
export function markCharges(mask: Uint8Array, width: number, height: number): MarkedFocus {
  const { pieces, pieceOf } = findPieces(mask, width, height);
  const all = pieces.reduce((sum, { pixels }) => sum + pixels, 0);
  let chargeCount = 0;
  const markOf = pieces.map(({ pixels }) => {
    if (pixels < leastOfFocus * all) return 1;
    chargeCount += 1;
    return firstCharge + chargeCount - 1;
  });
  const isWhole = chargeCount === 0 && pieces.length > 0;
  const marks = Uint8Array.from(pieceOf, (piece) =>
    piece < 0 ? 0 : isWhole ? firstCharge : (markOf[piece] as number),
  );
  return { marks, chargeCount: isWhole ? 1 : chargeCount };
}
