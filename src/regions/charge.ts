// Floor 3, step 4b. What of a group of regions inside the flag is a field, a part of a division, or a hole, and so no charge.
import { findBoxes, heightOf, joinBoxes, widthOf } from "./box.ts";
import type { RegionMap } from "./component.ts";
import type { Box } from "./crop.ts";
import { findJunctions, type Junction, shareAround } from "./junction.ts";

/** A region over this share of the flag is a field within a bordure, not a charge; and so is a group over the next. */
const [largestRegion, largestGroup] = [0.35, 0.5] as const;
/** A box is filled by an upright rectangle from this share on; one that spans so much of the flag's width or height is a panel. */
const [rectangle, panelSpan] = [0.93, 0.75] as const;
/** Pieces are of one size where areas and sides of the boxes differ by no more than this share. */
const likeSize = 0.08;
/** A hole is even: what is left around it, and how much of their boxes hole and charge fill, differ by no more than this share. */
const evenness = 0.1;
/** Where more than this share of a charge has the paint of the field, it is a figure in outline, seen through. */
const mostSeenThrough = 0.4;
/** A region is in front where it has this share of a disc around a junction; radii in flag heights. */
const [front, overReach, bandReach] = [0.4, 0.007, 0.025] as const;
/** A plain shape has no more runs than this for each row it reaches. */
const plain = 1.1;
/** A point between two fields has no more than this share of a larger disc, and is so near to the border, in flag heights. */
const [wedge, wedgeReach, wedgeNear] = [0.22, 0.03, 0.06] as const;

/** What is known of the regions of one map while charges are looked for. */
export class Surroundings {
  readonly regions: RegionMap["regions"];
  readonly boxes: readonly Box[];
  private readonly map: RegionMap;
  /** How many runs each region has. */
  private readonly runCounts: Int32Array;
  private readonly junctions: ReadonlyMap<number, readonly Junction[]>;
  private readonly outside: ReadonlyMap<number, readonly number[]>;
  private readonly runs: RegionMap["runs"];
  private readonly flagPixels: number;

  constructor(map: RegionMap, flagPixels: number) {
    this.map = map;
    this.junctions = findJunctions(map);
    this.runCounts = new Int32Array(map.regions.length);
    for (const index of map.regionOf)
      if (index >= 0) this.runCounts[index] = (this.runCounts[index] ?? 0) + 1;
    this.regions = map.regions;
    this.boxes = findBoxes(map);
    this.runs = map.runs;
    this.flagPixels = flagPixels;
    const outside = new Map<number, number[]>();
    for (const [index, { label, touchesOutside }] of map.regions.entries())
      if (touchesOutside) outside.set(label, [...(outside.get(label) ?? []), index]);
    this.outside = outside;
  }

  neighboursOf(index: number): ReadonlySet<number> {
    return this.regions[index]?.neighbours ?? new Set();
  }

  pixelsOf(members: Iterable<number>): number {
    let sum = 0;
    for (const index of members) sum += this.regions[index]?.pixels ?? 0;
    return sum;
  }

  boxOf(members: readonly number[]): Box {
    return joinBoxes(members.flatMap((index) => this.boxes[index] ?? []));
  }

  /** Members that meet a region outside the group. */
  rimOf(group: readonly number[]): readonly number[] {
    const own = new Set(group);
    return group.filter((index) => [...this.neighboursOf(index)].some((next) => !own.has(next)));
  }

  /** Whether a group is a field within a bordure: far too large for a charge, or a rectangle nearly as wide or high as the flag. */
  isField(group: readonly number[]): boolean {
    const pixels = this.pixelsOf(group);
    if (pixels > largestGroup * this.flagPixels) return true;
    if (group.some((index) => this.pixelsOf([index]) > largestRegion * this.flagPixels)) return true;
    const box = this.boxOf(group);
    const spans =
      widthOf(box) >= panelSpan * this.runs.width || heightOf(box) >= panelSpan * this.runs.height;
    return spans && pixels >= rectangle * areaOf(box);
  }

  /**
   * Returns the members that are parts of a division of the flag: pieces of a quartered canton or of a chequered field,
   * which repeat, in paint and size, regions that reach the border; and bands that run behind the fields around.
   */
  findDivisions(group: readonly number[]): readonly number[] {
    const own = new Set(group);
    return group.filter((index) => this.repeatsBorder(index) || this.isBand(index, own));
  }

  /**
   * Whether a member runs from one field to another behind them: it meets three or more, is in front of none, and is plain,
   * in one run in nearly each row.
   */
  private isBand(index: number, group: ReadonlySet<number>): boolean {
    const box = this.boxes[index];
    if (box === undefined || (this.runCounts[index] ?? 0) > plain * heightOf(box)) return false;
    const fields = new Set<number>();
    for (const junction of this.junctions.get(index) ?? []) {
      const around = junction.regions.filter((region) => !group.has(region));
      if (around.length < 2) continue;
      const shares = shareAround(this.map, junction, bandReach * this.runs.height);
      const own = shares.get(index) ?? 0;
      if (own >= front || around.every((region) => (shares.get(region) ?? 0) < front)) return false;
      for (const region of around) fields.add(region);
    }
    return fields.size > 2;
  }

  /** Whether a group ends in points beside the border, between two fields that part there: it reaches the border with them. */
  isWedge(group: readonly number[]): boolean {
    const own = new Set(group);
    const ends = group
      .flatMap((index) => this.junctions.get(index) ?? [])
      .filter(({ regions }) => regions.filter((index) => !own.has(index)).length > 1);
    const { width, height } = this.runs;
    return (
      ends.length > 1 &&
      ends.every((junction) => {
        const { x, y } = junction;
        if (Math.min(x, y, width - x, height - y) > wedgeNear * height) return false;
        const shares = shareAround(this.map, junction, wedgeReach * height);
        return group.reduce((sum, index) => sum + (shares.get(index) ?? 0), 0) <= wedge;
      })
    );
  }

  private repeatsBorder(index: number): boolean {
    const [region, box] = [this.regions[index], this.boxes[index]];
    if (region === undefined || box === undefined) return false;
    return (this.outside.get(region.label) ?? []).some((other) => {
      const [twin, twinBox] = [this.regions[other], this.boxes[other]];
      return (
        twin !== undefined &&
        twinBox !== undefined &&
        isLike(twin.pixels, region.pixels) &&
        isLike(widthOf(twinBox), widthOf(box)) &&
        isLike(heightOf(twinBox), heightOf(box))
      );
    });
  }

  /**
   * Returns the members that are no charge: in the paint of a field around the group, and either cut off from that field at
   * the rim of the charge, or seen through the even opening of a ring. A charge whose whole rim has the paints of the fields
   * is counterchanged, and the rim is its own.
   */
  findFieldWithin(group: readonly number[]): ReadonlySet<number> {
    const own = new Set(group);
    const rim = new Set(this.rimOf(group));
    const around = new Set<number>();
    for (const index of rim)
      for (const next of this.neighboursOf(index)) if (!own.has(next)) around.add(this.labelOf(next));
    const alike = new Set(group.filter((index) => around.has(this.labelOf(index))));
    const isCounterchanged = [...rim].every((index) => alike.has(index));
    const cutOff = (index: number): boolean => alike.has(index) && !this.liesOver(index, own);
    const field = new Set(isCounterchanged ? [] : [...rim].filter(cutOff));
    const inside = new Set([...alike].filter((index) => !rim.has(index)));
    const isThin = this.pixelsOf(inside) > mostSeenThrough * this.pixelsOf(group);
    for (const part of groupNeighbours(inside, (index) => this.neighboursOf(index)))
      if (isThin || this.isHole(part, group, rim)) for (const index of part) field.add(index);
    return field;
  }

  /** Whether a member on the rim lies in front, at most of the points where it meets what is around the group. */
  private liesOver(index: number, group: ReadonlySet<number>): boolean {
    let [over, under] = [0, 0];
    for (const junction of this.junctions.get(index) ?? []) {
      if (junction.regions.every((region) => group.has(region))) continue;
      const shares = shareAround(this.map, junction, Math.max(3, overReach * this.runs.height));
      if ((shares.get(index) ?? 0) >= front) over += 1;
      else if (Math.max(...shares.values()) >= front) under += 1;
    }
    return over > under;
  }

  private labelOf(index: number): number {
    return this.regions[index]?.label ?? 0;
  }

  /** Whether `part` is the opening of an even ring: of the shape of the whole, and in its middle. */
  private isHole(part: readonly number[], group: readonly number[], rim: ReadonlySet<number>): boolean {
    const [box, whole] = [this.boxOf(part), this.boxOf(group)];
    const filled = this.pixelsOf(this.fill(part, group, rim));
    const all = this.pixelsOf(group);
    const isCentred =
      Math.abs(box.left + box.right - whole.left - whole.right) <= 2 * evenness * widthOf(box) &&
      Math.abs(box.top + box.bottom - whole.top - whole.bottom) <= 2 * evenness * heightOf(box);
    return isCentred && Math.abs(filled / areaOf(box) - all / areaOf(whole)) <= evenness;
  }

  /** `part` with the members that are reached from the rim through it alone. */
  private fill(
    part: readonly number[],
    group: readonly number[],
    rim: ReadonlySet<number>,
  ): readonly number[] {
    const reached = new Set(part);
    const waiting = [...rim].filter((index) => !reached.has(index));
    for (const index of waiting) reached.add(index);
    const own = new Set(group);
    for (const index of waiting)
      for (const next of this.neighboursOf(index))
        if (own.has(next) && !reached.has(next)) {
          reached.add(next);
          waiting.push(next);
        }
    return [...part, ...group.filter((index) => !reached.has(index))];
  }
}

function areaOf(box: Box): number {
  return widthOf(box) * heightOf(box);
}

function isLike(one: number, other: number): boolean {
  return Math.abs(one - other) <= likeSize * Math.max(one, other);
}

/** Returns the members in groups that hang together. */
export function groupNeighbours(
  members: ReadonlySet<number>,
  neighboursOf: (index: number) => Iterable<number>,
): readonly (readonly number[])[] {
  const groups: number[][] = [];
  const seen = new Set<number>();
  for (const start of members) {
    if (seen.has(start)) continue;
    const group = [start];
    seen.add(start);
    for (const index of group) {
      for (const next of neighboursOf(index)) {
        if (!members.has(next) || seen.has(next)) continue;
        seen.add(next);
        group.push(next);
      }
    }
    groups.push(group);
  }
  return groups;
}
