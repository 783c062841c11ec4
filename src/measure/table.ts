// Floor 4, step 1. The edge table: which paints there are, how much they cover and how long they meet. Geometry only,
// so one table serves the original, the redesign, every option and every kind of vision.

/** A paint as the table knows it. `share` is a fraction of the flag's area. */
export interface TablePaint {
  readonly id: string;
  readonly share: number;
  readonly touchesBorder: boolean;
}

/** Two paints that meet, as indexes into `paints`, the larger paint first. Length in flag heights. */
export interface TableEdge {
  readonly a: number;
  readonly b: number;
  readonly length: number;
}

export interface EdgeTable {
  readonly paints: readonly TablePaint[];
  readonly edges: readonly TableEdge[];
  /** `order[i]` is the index, in the order the caller gave, of `paints[i]`. */
  readonly order: readonly number[];
}

/** What the raster saw. Arrays run over the paints in the caller's order; lines name paints by index. */
export interface SeenGeometry {
  readonly heightPixels: number;
  readonly flagPixels: number;
  readonly pixels: readonly number[];
  readonly touchesBorder: readonly boolean[];
  readonly lines: readonly { readonly a: number; readonly b: number; readonly length: number }[];
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
    paints.push({ id, share: (seen.pixels[index] ?? 0) / Math.max(1, seen.flagPixels), touchesBorder: seen.touchesBorder[index] ?? false });
  };
  for (const [rank, { members }] of wholes.entries()) {
    const id = `p${rank + 1}`;
    for (const index of members) add(index, members.length > 1 && seen.part[index] !== undefined ? `${id}s` : id);
  }
  return { paints, order, edges: addLines(seen, order) };
}

function findWholes(seen: SeenGeometry): readonly { readonly members: readonly number[]; readonly area: number }[] {
  const groups = new Map<number, number[]>();
  for (const [index, pixels] of seen.pixels.entries()) {
    if (pixels === 0) continue;
    const whole = seen.part[index] ?? index;
    groups.set(whole, [...(groups.get(whole) ?? []), index]);
  }
  return [...groups]
    .map(([whole, members]) => ({
      whole,
      members: members.sort((a, b) => Number(seen.part[a] !== undefined) - Number(seen.part[b] !== undefined)),
      area: members.reduce((sum, index) => sum + (seen.pixels[index] ?? 0), 0),
    }))
    .sort((x, y) => y.area - x.area || x.whole - y.whole);
}

function addLines(seen: SeenGeometry, order: readonly number[]): readonly TableEdge[] {
  const rankOf = new Map(order.map((index, rank) => [index, rank]));
  const lengths = new Map<string, { a: number; b: number; length: number }>();
  for (const line of seen.lines) {
    const one = rankOf.get(line.a);
    const other = rankOf.get(line.b);
    if (one === undefined || other === undefined) continue;
    const a = Math.min(one, other);
    const b = Math.max(one, other);
    const sum = lengths.get(`${a} ${b}`) ?? { a, b, length: 0 };
    sum.length += line.length / seen.heightPixels;
    lengths.set(`${a} ${b}`, sum);
  }
  return [...lengths.values()].sort((x, y) => y.length - x.length || x.a - y.a || x.b - y.b);
}
