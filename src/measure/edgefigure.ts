// Floor 4, step 3. What two paints come to where they meet: the one core of measuring, of comparing and of trying options.
import type { Hex, LinearRgb } from "../colour/colour.ts";
import { measureContrast } from "../colour/contrast.ts";
import type { List, Rank } from "../svg/paintnumber.ts";
import type { Sight, SwatchBook } from "./colourcache.ts";
import type { TableEdge } from "./edgetable.ts";
import type { PairFigures } from "./outcome.ts";

/** The part of a paint that `only` selects: `of` is the name of the whole, `called` what readers call the part. */
export interface PaintPart {
  readonly of: string;
  readonly called?: string;
}

/** A colour, and the ends it runs between where it is uneven. */
export interface Ends {
  readonly hex: Hex;
  readonly uneven: { readonly lightest: Hex; readonly darkest: Hex } | null;
}

/**
 * What a paint looks like as a whole; `beside` what it looks like along its edge with another paint, by the rank of that
 * paint, where that may be something else.
 */
export interface PaintLook extends Ends {
  readonly name: string;
  /** Absent where it is a whole paint, and after a change of it. */
  readonly part?: PaintPart;
  readonly beside?: ReadonlyMap<Rank, Ends>;
}

/** Returns what the two paints of an edge look like along it. */
export function seenAlong(
  looks: List<Rank, PaintLook>,
  { a, b }: Pick<TableEdge, "a" | "b">,
): readonly [PaintLook, PaintLook] {
  const along = (look: PaintLook, other: Rank): PaintLook =>
    look.beside === undefined ? look : { ...look, ...look.beside.get(other) };
  return [along(looks[a] as PaintLook, b), along(looks[b] as PaintLook, a)];
}

/** Returns the colours a look counts with: its own, and its ends where it is uneven. */
export function endsOf({ hex, uneven }: Ends): readonly Hex[] {
  return uneven === null ? [hex] : [hex, uneven.lightest, uneven.darkest];
}

/** The contrast of two looks in percent, and the two colours, as `sight` sees them, that have it. */
export interface SeenContrast {
  readonly contrast: number;
  readonly pair: readonly [LinearRgb, LinearRgb];
}

/** Returns the contrast of two looks: an uneven one counts with whichever of its ends is nearer to the other. */
export function contrastOf(one: Ends, other: Ends, book: SwatchBook, sight?: Sight): SeenContrast {
  let contrast = Number.POSITIVE_INFINITY;
  let pair: readonly [Hex, Hex] = [one.hex, other.hex];
  for (const a of endsOf(one)) {
    for (const b of endsOf(other)) {
      const next = measureContrast(book.reflectanceOf(a, sight), book.reflectanceOf(b, sight));
      if (next < contrast) [contrast, pair] = [next, [a, b]];
    }
  }
  return { contrast, pair: [book.seenBy(pair[0], sight), book.seenBy(pair[1], sight)] };
}

/** Returns contrast and ΔE00 of two looks. */
export function figuresOf(one: Ends, other: Ends, book: SwatchBook): PairFigures {
  return {
    contrast: contrastOf(one, other, book).contrast,
    deltaE00: book.differenceOf(one.hex, other.hex),
  };
}
