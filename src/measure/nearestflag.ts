// Floor 4. The flags that look most like one flag, and how near is too near.
import {
  boundDistance,
  compareGrids,
  type FlagGrid,
  type Orientation,
  openDifferences,
  orientations,
} from "./gridlikeness.ts";

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
 * Source: our own judgement, on all 36,585 pairs of an open collection of 271 flags. 144 are under it: 50 are one flag
 * under two names, most of the others have the same fields in near-equal colours; some that people take for each other
 * lie a little above it.
 */
export const likenessWarning = 8;

/** How much nearer, in mean ΔE00, a flag has to come by being turned before it is said to be turned (our own judgement). */
const worthTurning = 1;

const turns = orientations.filter((orientation) => orientation !== "as it is");

/**
 * Returns the `count` flags of `index` that are nearest to `grid`, nearest first; equals in the order of the index. A flag
 * counts as it is, or turned where that brings it nearer by a whole point: a flag that is alike both ways round is not
 * called upside down for the sake of a hair. Exact: what is left out has a bound over what was found, and of the rest most
 * comparisons are given up early.
 */
export function findNearest(
  grid: FlagGrid,
  index: readonly { readonly file: string; readonly grid: FlagGrid }[],
  count = 3,
): readonly Likeness[] {
  // Many studies show one flag: a grid that is there again gives what it gave.
  const bound = remember(boundDistance(grid));
  let limit = Number.POSITIVE_INFINITY;
  // What was over a limit is over each later one: limits only fall.
  const compare = remember((other: FlagGrid) => compareTurned(grid, other, limit));
  const ordered = index
    .map(({ file, grid: other }, at) => ({ file, other, at, bound: bound(other) }))
    .sort((x, y) => x.bound - y.bound);
  let best: readonly (Likeness & { readonly at: number })[] = [];
  for (const { file, other, at, bound: least } of ordered) {
    limit = best[count - 1]?.deltaE00 ?? Number.POSITIVE_INFINITY;
    // Rounding of a bound must not part equals.
    if (least > limit + 1e-6) break;
    const seen = compare(other);
    if (seen.deltaE00 > limit) continue;
    best = [...best, { file, ...seen, at }]
      .sort((x, y) => x.deltaE00 - y.deltaE00 || x.at - y.at)
      .slice(0, count);
  }
  return best.map(({ at: _, ...likeness }) => likeness);
}

/** Returns `work` with a memory: for the same grid it is done once. */
export function remember<T>(work: (grid: FlagGrid) => T): (grid: FlagGrid) => T {
  const known = new Map<FlagGrid, T>();
  return (grid) => {
    const found = known.get(grid) ?? work(grid);
    known.set(grid, found);
    return found;
  };
}

/** Over `limit` the number only says that it is. */
function compareTurned(grid: FlagGrid, other: FlagGrid, limit: number): Omit<Likeness, "file"> {
  const known = openDifferences(grid, other);
  let best: Omit<Likeness, "file"> = {
    deltaE00: compareGrids(grid, other, "as it is", limit, known),
    orientation: "as it is",
  };
  for (const orientation of turns) {
    const deltaE00 = compareGrids(grid, other, orientation, Math.min(limit, best.deltaE00), known);
    if (deltaE00 >= best.deltaE00 || deltaE00 > limit) continue;
    const least = deltaE00 + worthTurning;
    const isWorth = compareGrids(grid, other, "as it is", least, known) >= least;
    if (isWorth) best = { deltaE00, orientation };
  }
  return best;
}
