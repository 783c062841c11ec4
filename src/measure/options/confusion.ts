// Floor 4, for the options. What a new colour can be taken for: another colour of the flag, or its neighbour to another eye.
import type { Hex } from "../../colour/colour.ts";
import { listDeciding } from "../clarity.ts";
import type { SwatchBook } from "../colourcache.ts";
import type { PaintLook } from "../edgefigure.ts";
import { areaLimits, colourLimits } from "../limit.ts";
import { otherSide, type PaintPair, pairOf, type Subject } from "./candidate.ts";

const deficiencies = ["protan", "deutan", "tritan"] as const;

/** A pair that meets and that `sight` takes for one colour, though an eye without a deficiency tells it apart. */
export interface Confusion extends PaintPair {
  readonly sight: (typeof deficiencies)[number];
}

/**
 * Returns the colours of the flag that `next`, in place of the subject's paint, can be taken for: ΔE00 under 10 and not
 * before. The very same colour is left out (that is one colour, used twice), and paints of 0.4 % of the area or less.
 */
export function findConfusable(subject: Subject, next: Hex, book: SwatchBook): readonly PaintPair[] {
  const { table, looks, paint } = subject;
  const own = looks[paint] as PaintLook;
  return looks.flatMap((look, at) => {
    if (at === paint || (table.paints[at]?.share ?? 0) <= areaLimits.counts || look.hex === next) return [];
    const isNew =
      book.differenceOf(next, look.hex) < colourLimits.confusable &&
      book.differenceOf(own.hex, look.hex) >= colourLimits.confusable;
    const [a, b] = at < paint ? [at, paint] : [paint, at];
    return isNew ? [pairOf(subject, { a, b })] : [];
  });
}

/**
 * Returns the pairs that meet, along a deciding length, and that a colour-blind eye cannot tell apart once `next` is in
 * place: ΔE00 under 10 as it sees them, 10 or more to an eye without a deficiency, and not so before.
 */
export function findConfusions(subject: Subject, next: Hex, book: SwatchBook): readonly Confusion[] {
  const { table, looks, paint } = subject;
  const own = looks[paint] as PaintLook;
  return listDeciding(table.edges).flatMap((edge) => {
    const at = otherSide(edge, paint);
    const other = at === undefined ? undefined : looks[at];
    if (other === undefined) return [];
    return deficiencies
      .filter(
        (sight) => isConfused(next, other.hex, sight, book) && !isConfused(own.hex, other.hex, sight, book),
      )
      .map((sight) => ({ ...pairOf(subject, edge), sight }));
  });
}

function isConfused(one: Hex, other: Hex, sight: Confusion["sight"], book: SwatchBook): boolean {
  return (
    book.differenceOf(one, other) >= colourLimits.confusable &&
    book.differenceOf(one, other, sight) < colourLimits.confusable
  );
}
