// Floor 4, step 1. The edge table: which paints there are, how much they cover and how long they meet. Geometry only,
// so one table serves the original, the redesign, every option and every kind of vision.
import { type List, listed, type PaintIndex, type Rank } from "../svg/paintnumber.ts";

/** A paint as the table knows it. `share` is a fraction of the flag's area in the full drawing. */
export interface TablePaint {
  readonly id: string;
  readonly share: number;
  readonly touchesBorder: boolean;
  /** Whether nothing of it is left in the distance view, as a paint of its own or joined to one that is. */
  readonly vanishes: boolean;
  /** Paints of one group, the largest of them, are one in the original: near-equal shades, and a paint with its selected part. */
  readonly group: PaintIndex;
}

/** Two paints that meet, the larger paint first. Lengths in flag heights. */
export interface TableEdge {
  readonly a: Rank;
  readonly b: Rank;
  readonly length: number;
  /** The part of `length` with the focus on at least one side. */
  readonly focusLength: number;
}

/**
 * The focus from one distance: how much of its area is left (0 to 1), how far the largest of its pieces reaches that are
 * left by half or more (the longer side of the box around the whole piece, in flag heights), and its edges.
 */
export interface FocusStep {
  readonly distance: number;
  readonly left: number;
  readonly span: number;
  readonly edges: readonly TableEdge[];
}

/** A stretch of a charge's outline: the two paints that meet there, and its length in flag heights. */
export type OutlineEdge = Pick<TableEdge, "a" | "b" | "length">;

/** What has to be seen. `share` is a fraction of the flag's area; a step for each distance, nearest first. */
export interface TableFocus {
  readonly source: "found" | "named" | "none";
  readonly share: number;
  /** The outline of each charge; of the focus as a whole where no piece of it is large enough to be one. */
  readonly charges: readonly (readonly OutlineEdge[])[];
  readonly steps: readonly FocusStep[];
}

export interface EdgeTable {
  readonly paints: List<Rank, TablePaint>;
  readonly edges: readonly TableEdge[];
  readonly focus: TableFocus;
  /** Which paint each of `paints` is. */
  readonly order: List<Rank, PaintIndex>;
}

/** Returns whether the two paints of an edge are one in the original: then they make no edge there. */
export function isOne({ paints }: EdgeTable, { a, b }: Pick<TableEdge, "a" | "b">): boolean {
  return paints[a]?.group === paints[b]?.group;
}

/** A traced line between two paints. Length in pixels; shares 0 to 1, those of outlines by charge. */
export interface SeenLine {
  readonly a: PaintIndex;
  readonly b: PaintIndex;
  readonly length: number;
  readonly focusShare: number;
  readonly outlineShares: readonly number[];
}

/** The focus as the raster saw it from one distance, its lines on a flag `heightPixels` high. `left` and `span` as in FocusStep. */
export interface SeenStep {
  readonly distance: number;
  readonly left: number;
  readonly span: number;
  readonly heightPixels: number;
  readonly lines: readonly SeenLine[];
}

/** What the raster saw. */
export interface SeenGeometry {
  readonly heightPixels: number;
  readonly flagPixels: number;
  readonly pixels: List<PaintIndex, number>;
  readonly touchesBorder: List<PaintIndex, boolean>;
  /** Whether a paint shows in the distance view, and the paint it is one with in the original. */
  readonly remains: List<PaintIndex, boolean>;
  readonly group: List<PaintIndex, PaintIndex>;
  readonly lines: readonly SeenLine[];
  readonly focus: {
    readonly source: TableFocus["source"];
    readonly pixels: number;
    readonly chargeCount: number;
    readonly steps: readonly SeenStep[];
  };
  /** The paint that a paint is the selected part of, if any. */
  readonly part: List<PaintIndex, PaintIndex | undefined>;
}

/**
 * Orders paints by area, gives them their ids and adds up the lines of each pair.
 *
 * Ids: `p1`, `p2` … by area, largest first, a paint and its selected part counted together; the part has the id of its
 * paint with an `s` behind it. A paint that shows nowhere is left out.
 */
export function tabulate(seen: SeenGeometry): EdgeTable {
  const wholes = findWholes(seen);
  const order: PaintIndex[] = [];
  const paints: TablePaint[] = [];
  const add = (index: PaintIndex, id: string): void => {
    order.push(index);
    paints.push({
      id,
      share: (seen.pixels[index] ?? 0) / Math.max(1, seen.flagPixels),
      touchesBorder: seen.touchesBorder[index] ?? false,
      vanishes: seen.remains[index] === false,
      group: seen.group[index] ?? index,
    });
  };
  for (const [rank, { members }] of wholes.entries()) {
    const id = `p${rank + 1}`;
    for (const index of members)
      add(index, members.length > 1 && seen.part[index] !== undefined ? `${id}s` : id);
  }
  const rankPair = createRanker(listed(order));
  return {
    paints: listed(paints),
    order: listed(order),
    edges: addLines(seen.lines, seen.heightPixels, rankPair),
    focus: addFocus(seen, rankPair),
  };
}

function addFocus(seen: SeenGeometry, rankPair: RankPair): TableFocus {
  const { source, pixels, chargeCount, steps } = seen.focus;
  const outlineOf = (charge: number): readonly OutlineEdge[] => {
    const lines = seen.lines.map((line) => ({
      ...line,
      length: line.length * (line.outlineShares[charge] ?? 0),
    }));
    return addLines(lines, seen.heightPixels, rankPair)
      .filter(({ length }) => length > 0)
      .map(({ a, b, length }) => ({ a, b, length }));
  };
  return {
    source,
    share: pixels / Math.max(1, seen.flagPixels),
    charges: Array.from({ length: chargeCount }, (_, charge) => outlineOf(charge)),
    steps: steps.map(({ distance, left, span, heightPixels, lines }) => ({
      distance,
      left,
      span,
      edges: addLines(lines, heightPixels, rankPair),
    })),
  };
}

function findWholes(
  seen: SeenGeometry,
): readonly { readonly members: readonly PaintIndex[]; readonly area: number }[] {
  const groups = new Map<PaintIndex, PaintIndex[]>();
  for (const [index, pixels] of seen.pixels.entries()) {
    if (pixels === 0) continue;
    const whole = seen.part[index] ?? index;
    groups.set(whole, [...(groups.get(whole) ?? []), index]);
  }
  return [...groups]
    .map(([whole, members]) => ({
      whole,
      members: members.sort(
        (a, b) => Number(seen.part[a] !== undefined) - Number(seen.part[b] !== undefined),
      ),
      area: members.reduce((sum, index) => sum + (seen.pixels[index] ?? 0), 0),
    }))
    .sort((x, y) => y.area - x.area || x.whole - y.whole);
}

type RankPair = (one: PaintIndex, other: PaintIndex) => readonly [Rank, Rank] | undefined;

/** Returns what gives the ranks of two paints, the larger paint first; undefined where one is not in the table. */
export function createRanker(order: EdgeTable["order"]): RankPair {
  const rankOf = new Map(order.map((paint, rank) => [paint, rank] as const));
  return (paint, beside) => {
    const [one, other] = [rankOf.get(paint), rankOf.get(beside)];
    if (one === undefined || other === undefined) return undefined;
    return one < other ? [one, other] : [other, one];
  };
}

function addLines(
  lines: readonly SeenLine[],
  heightPixels: number,
  rankPair: RankPair,
): readonly TableEdge[] {
  const sums = new Map<string, { a: Rank; b: Rank; length: number; focusLength: number }>();
  for (const line of lines) {
    const pair = rankPair(line.a, line.b);
    if (pair === undefined) continue;
    const [a, b] = pair;
    const sum = sums.get(`${a} ${b}`) ?? { a, b, length: 0, focusLength: 0 };
    sum.length += line.length / heightPixels;
    sum.focusLength += (line.length * line.focusShare) / heightPixels;
    sums.set(`${a} ${b}`, sum);
  }
  return [...sums.values()].sort((x, y) => y.length - x.length || x.a - y.a || x.b - y.b);
}
