// Floor 4. The flags that look most like one flag, and how near is too near.
import { compareGrids, type FlagGrid, guessDistance, type Orientation } from "./likeness.ts";

/** A flag that looks like another. */
export interface Likeness {
  readonly file: string;
  /** Mean ΔE00 over the grid, from 0 for the same picture. */
  readonly deltaE00: number;
  readonly orientation: Orientation;
}

/**
 * Mean ΔE00 under which one flag is easily taken for another.
 *
 * Source: our own judgement, on all pairs of an open collection of 271 flags. Nearly all pairs under it have the same
 * fields in near-equal colours; some that people take for each other lie a little above it.
 */
export const likenessWarning = 8;

const orientations: readonly Orientation[] = ["as it is", "mirrored", "upside down"];

/**
 * Returns the `count` flags of `index` that are nearest to `grid`, each the way round in which it is nearest, nearest
 * first; equals in the order of the index. Exact: the guess only says where to look first, so that most comparisons can
 * be given up early.
 */
export function findNearest(
  grid: FlagGrid,
  index: readonly { readonly file: string; readonly grid: FlagGrid }[],
  count = 3,
): readonly Likeness[] {
  const views = index.flatMap(({ file, grid: other }, at) =>
    orientations.map((orientation) => ({
      file,
      other,
      at,
      orientation,
      guess: guessDistance(grid, other, orientation),
    })),
  );
  const best = new Map<number, Likeness>();
  const sorted = (): readonly (readonly [number, Likeness])[] =>
    [...best].sort(([x, one], [y, other]) => one.deltaE00 - other.deltaE00 || x - y);
  let limit = Number.POSITIVE_INFINITY;
  for (const { file, other, at, orientation } of views.sort((x, y) => x.guess - y.guess)) {
    const known = best.get(at);
    const deltaE00 = compareGrids(grid, other, orientation, Math.min(limit, known?.deltaE00 ?? limit));
    if (deltaE00 > limit || !isBetter({ file, deltaE00, orientation }, known)) continue;
    best.set(at, { file, deltaE00, orientation });
    limit = sorted()[count - 1]?.[1].deltaE00 ?? Number.POSITIVE_INFINITY;
  }
  return sorted()
    .slice(0, count)
    .map(([, likeness]) => likeness);
}

/** Nearer, or as near and turned less. */
function isBetter(one: Likeness, known: Likeness | undefined): boolean {
  if (known === undefined || one.deltaE00 !== known.deltaE00)
    return one.deltaE00 < (known?.deltaE00 ?? Number.POSITIVE_INFINITY);
  return orientations.indexOf(one.orientation) < orientations.indexOf(known.orientation);
}
