// Floor 4, step 1. The edge table: which paints there are, how much they cover and how long they meet. Geometry only,
// so one table serves the original, the redesign, every option and every kind of vision.

/** A paint as the table knows it. `share` is a fraction of the flag's area in the full drawing. */
export interface TablePaint {
  readonly id: string;
  readonly share: number;
  readonly touchesBorder: boolean;
  /** Whether nothing of it is left in the distance view, as a paint of its own or joined to one that is. */
  readonly vanishes: boolean;
  /** Paints of one group are one paint in the original: near-equal shades, and a paint with its selected part. */
  readonly group: number;
}

/** Two paints that meet, as indexes into `paints`, the larger paint first. Lengths in flag heights. */
export interface TableEdge {
  readonly a: number;
  readonly b: number;
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

/** A stretch of a charge's outline: the two paints that meet there, by index, and its length in flag heights. */
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
  readonly paints: readonly TablePaint[];
  readonly edges: readonly TableEdge[];
  readonly focus: TableFocus;
  /** `order[i]` is the index, in the order the caller gave, of `paints[i]`. */
  readonly order: readonly number[];
}

/** Returns whether the two paints of an edge are one in the original: then they make no edge there. */
export function isOne({ paints }: EdgeTable, { a, b }: Pick<TableEdge, "a" | "b">): boolean {
  return paints[a]?.group === paints[b]?.group;
}

/** A traced line between two paints, named by index. Length in pixels; shares 0 to 1, those of outlines by charge. */
export interface SeenLine {
  readonly a: number;
  readonly b: number;
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

/** What the raster saw. Arrays run over the paints in the caller's order; lines name paints by index. */
export interface SeenGeometry {
  readonly heightPixels: number;
  readonly flagPixels: number;
  readonly pixels: readonly number[];
  readonly touchesBorder: readonly boolean[];
  /** Whether a paint shows in the distance view, and the index of the paint it is one with in the original. */
  readonly remains: readonly boolean[];
  readonly group: readonly number[];
  readonly lines: readonly SeenLine[];
  readonly focus: {
    readonly source: TableFocus["source"];
    readonly pixels: number;
    readonly chargeCount: number;
    readonly steps: readonly SeenStep[];
  };
  /** `part[i]` is the index of the paint that paint i is the selected part of, if any. */
  readonly part: readonly (number | undefined)[];
}

/**
 * Orders paints by area, gives them their ids and adds up the lines of each pair.
 *
 * Ids: `p1`, `p2` … by area, largest first, a paint and its selected part counted together; the part has the id of its
 * paint with an `s` behind it. A paint that shows nowhere is left out.
 */
export function tabulate(seen: SeenGeometry): EdgeTable {
  const wholes = findWholes(seen);
  const order: number[] = [];
  const paints: TablePaint[] = [];
  const add = (index: number, id: string): void => {
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
  return {
    paints,
    order,
    edges: addLines(seen.lines, seen.heightPixels, order),
    focus: addFocus(seen, order),
  };
}

function addFocus(seen: SeenGeometry, order: readonly number[]): TableFocus {
  const { source, pixels, chargeCount, steps } = seen.focus;
  const outlineOf = (charge: number): readonly OutlineEdge[] => {
    const lines = seen.lines.map((line) => ({
      ...line,
      length: line.length * (line.outlineShares[charge] ?? 0),
    }));
    return addLines(lines, seen.heightPixels, order)
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
      edges: addLines(lines, heightPixels, order),
    })),
  };
}

function findWholes(
  seen: SeenGeometry,
): readonly { readonly members: readonly number[]; readonly area: number }[] {
  const groups = new Map<number, number[]>();
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

function addLines(
  lines: readonly SeenLine[],
  heightPixels: number,
  order: readonly number[],
): readonly TableEdge[] {
  const rankOf = new Map(order.map((index, rank) => [index, rank]));
  const sums = new Map<string, { a: number; b: number; length: number; focusLength: number }>();
  for (const line of lines) {
    const one = rankOf.get(line.a);
    const other = rankOf.get(line.b);
    if (one === undefined || other === undefined) continue;
    const a = Math.min(one, other);
    const b = Math.max(one, other);
    const sum = sums.get(`${a} ${b}`) ?? { a, b, length: 0, focusLength: 0 };
    sum.length += line.length / heightPixels;
    sum.focusLength += (line.length * line.focusShare) / heightPixels;
    sums.set(`${a} ${b}`, sum);
  }
  return [...sums.values()].sort((x, y) => y.length - x.length || x.a - y.a || x.b - y.b);
}
