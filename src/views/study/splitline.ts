// Floor 8. How one flag is divided to show original and redesign at once, where nothing can be pressed: on paper and on link pictures.
import type { StudyResult } from "../../analysis/result.ts";
import type { Format } from "../../words/format.ts";

/** A division of the field, by its heraldic name. */
export type Split = "per pale" | "per bend" | "per bend sinister" | "per fess";

export interface SplitView {
  /** For the style sheet. */
  readonly name: string;
  readonly caption: string;
}

/** Where no split leaves a third of the changed outline on each side, the least bad is taken (our own judgement). */
const enough = 1 / 3;

/** Length of a piece of a line at most, in flag heights. */
const longest = 0.02;

/** Whether a point is on the left of a division, or above it. `x` and `y` are 0 to 1, from the upper left corner. */
const isFirstSide: Readonly<Record<Split, (x: number, y: number) => boolean>> = {
  "per pale": (x) => x < 0.5,
  "per bend": (x, y) => x < y,
  "per bend sinister": (x, y) => x < 1 - y,
  "per fess": (_x, y) => y < 0.5,
};

const splits: readonly Split[] = ["per pale", "per bend", "per bend sinister", "per fess"];

/**
 * Whether a point shows the original: on the side that lines of text begin on, or above. `x` and `y` are 0 to 1, from the
 * upper left corner.
 */
export function showsOriginal(split: Split, x: number, y: number, direction: "ltr" | "rtl"): boolean {
  const isTurned = direction === "rtl" && split !== "per fess";
  return isFirstSide[split](x, y) !== isTurned;
}

/**
 * The first of *per pale*, *per bend*, *per bend sinister*, *per fess* that leaves a third or more of the outline of the
 * changed colour on each side, or, where none does, the one whose lesser side has most of it. Per pale where nothing was
 * traced. A change in a canton or at one end of the flag would be all original, or all redesign, per pale.
 */
export function chooseSplit(result: Pick<StudyResult, "comparison" | "edgeLines">): Split {
  const pieces = listPieces(result);
  const all = sum(pieces);
  const lesserSides = splits.map((split) => {
    const first = sum(pieces.filter(({ x, y }) => isFirstSide[split](x, y)));
    return all === 0 ? 0 : Math.min(first, all - first) / all;
  });
  const best = Math.max(...lesserSides);
  const at = lesserSides.findIndex((share) => share >= Math.min(enough, best));
  return splits[at] ?? "per pale";
}

/** The split as the page names it. */
export function presentSplit(
  result: Pick<StudyResult, "comparison" | "edgeLines">,
  { say }: Format,
): SplitView {
  const split = chooseSplit(result);
  return {
    name: split.replaceAll(" ", "-"),
    caption: say("pair.split"),
  };
}

interface Piece {
  /** Its middle, 0 to 1, from the upper left corner. */
  readonly x: number;
  readonly y: number;
  /** In flag heights. */
  readonly length: number;
}

/** All lines of the changed paints, cut so small that a division which one crosses finds it on both sides. */
function listPieces({
  comparison,
  edgeLines,
}: Pick<StudyResult, "comparison" | "edgeLines">): readonly Piece[] {
  const { before, after } = comparison;
  const hexes = new Map(after.colours.map(({ id, hex }) => [id, hex]));
  const changed = new Set(before.colours.filter(({ id, hex }) => hexes.get(id) !== hex).map(({ id }) => id));
  const [height, width] = before.proportions;
  return edgeLines
    .filter(({ a, b }) => changed.has(a) || changed.has(b))
    .flatMap(({ points }) => cutLine(points, width / height));
}

/** `points` in flag heights, as traced; `wide`: the width of the flag in heights. */
function cutLine(points: readonly number[], wide: number): readonly Piece[] {
  const pieces: Piece[] = [];
  for (let at = 2; at + 1 < points.length; at += 2) {
    const [fromX = 0, fromY = 0, toX = 0, toY = 0] = points.slice(at - 2, at + 2);
    const length = Math.hypot(toX - fromX, toY - fromY);
    const count = Math.max(1, Math.ceil(length / longest));
    for (let piece = 0; piece < count; piece += 1) {
      const along = (piece + 0.5) / count;
      const [x, y] = [fromX + along * (toX - fromX), fromY + along * (toY - fromY)];
      pieces.push({ x: x / wide, y, length: length / count });
    }
  }
  return pieces;
}

function sum(pieces: readonly Piece[]): number {
  return pieces.reduce((total, { length }) => total + length, 0);
}
