// Floor 4, for the options. What a new colour can be taken for: another colour of the flag, or its neighbour to another eye.
import type { Hex } from "../../colour/colour.ts";
import { listDeciding } from "../clarity.ts";
import type { PaintLook } from "../measurelooks.ts";
import { otherSide, type Subject } from "./candidate.ts";
import { type PaintPair, pairOf } from "./paintpair.ts";
import type { Sight, SwatchBook } from "./swatchbook.ts";

/** A pair that meets and that `sight` takes for one colour, though an eye without a deficiency tells it apart. */
export interface Confusion extends PaintPair {
  readonly sight: Exclude<Sight, "normal">;
}

/** Share of the flag's area over which a paint counts as one of its colours. */
export const leastShare = 0.004;

/** ΔE00 under which two colours are easily taken for each other (our own judgement). */
const confusableColour = 10;

const deficiencies = ["protan", "deutan", "tritan"] as const;

/**
 * Returns the colours of the flag that `next`, in place of the subject's paint, can be taken for: ΔE00 under 10 and not
 * before. The very same colour is left out (that is one colour, used twice), and paints of 0.4 % of the area or less.
 */
export function findConfusable(
  { table, looks, paint }: Subject,
  next: Hex,
  book: SwatchBook,
): readonly PaintPair[] {
  const own = looks[paint] as PaintLook;
  return looks.flatMap((look, at) => {
    if (at === paint || (table.paints[at]?.share ?? 0) <= leastShare || look.hex === next) return [];
    const isNew =
      book.differenceOf(next, look.hex) < confusableColour &&
      book.differenceOf(own.hex, look.hex) >= confusableColour;
    return isNew
      ? [
          pairOf(table, looks, {
            a: Math.min(at, paint),
            b: Math.max(at, paint),
          }),
        ]
      : [];
  });
}

/**
 * Returns the pairs that meet, along a deciding length, and that a colour-blind eye cannot tell apart once `next` is in
 * place: ΔE00 under 10 as it sees them, 10 or more to an eye without a deficiency, and not so before.
 */
export function findConfusions(
  { table, looks, paint }: Subject,
  next: Hex,
  book: SwatchBook,
): readonly Confusion[] {
  const own = looks[paint] as PaintLook;
  return listDeciding(table.edges).flatMap((edge) => {
    const at = otherSide(edge, paint);
    const other = at === undefined ? undefined : looks[at];
    if (other === undefined) return [];
    return deficiencies
      .filter(
        (sight) => isConfused(next, other.hex, sight, book) && !isConfused(own.hex, other.hex, sight, book),
      )
      .map((sight) => ({ ...pairOf(table, looks, edge), sight }));
  });
}

function isConfused(one: Hex, other: Hex, sight: Confusion["sight"], book: SwatchBook): boolean {
  return (
    book.differenceOf(one, other) >= confusableColour &&
    book.differenceOf(one, other, sight) < confusableColour
  );
}
