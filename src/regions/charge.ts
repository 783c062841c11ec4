// Floor 3, step 4b. What of a group of regions inside the flag is a field, a part of a division, or a hole, and so no charge.
import { findBoxes, heightOf, joinBoxes, widthOf } from "./box.ts";
import type { RegionMap } from "./component.ts";
import type { Box } from "./crop.ts";

/** A region over this share of the flag is a field within a bordure, not a charge; and so is a group over the next. */
const [largestRegion, largestGroup] = [0.35, 0.5] as const;
/** A box is filled by an upright rectangle from this share on; one that spans so much of the flag's width or height is a panel. */
const [rectangle, panelSpan] = [0.97, 0.75] as const;
/** Pieces are of one size where areas and sides of the boxes differ by no more than this share. */
const likeSize = 0.08;
/** A hole is even: what is left around it, and how much of their boxes hole and charge fill, differ by no more than this share. */
const evenness = 0.1;

/** What is known of the regions of one map while charges are looked for. */
export class Surroundings {
  readonly regions: RegionMap["regions"];
  readonly boxes: readonly Box[];
  private readonly outside: ReadonlyMap<number, readonly number[]>;
  private readonly runs: RegionMap["runs"];
  private readonly flagPixels: number;

  constructor(map: RegionMap, flagPixels: number) {
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
   * Whether a group is a part of a division of the flag, as a piece of a quartered canton or of a chequered field: most of
   * it repeats, in paint and size, regions that reach the border.
   */
  isDivision(group: readonly number[]): boolean {
    const repeated = group.filter((index) => this.repeatsBorder(index));
    return 2 * this.pixelsOf(repeated) > this.pixelsOf(group);
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
    const field = new Set(isCounterchanged ? [] : [...rim].filter((index) => alike.has(index)));
    const inside = new Set([...alike].filter((index) => !rim.has(index)));
    for (const part of groupNeighbours(inside, (index) => this.neighboursOf(index)))
      if (this.isHole(part, group, rim)) for (const index of part) field.add(index);
    return field;
  }

  private labelOf(index: number): number {
    return this.regions[index]?.label ?? 0;
  }

  /** Whether `part` is the opening of a ring: most of what the group covers, or of its shape and in its middle. */
  private isHole(part: readonly number[], group: readonly number[], rim: ReadonlySet<number>): boolean {
    const [box, whole] = [this.boxOf(part), this.boxOf(group)];
    const filled = this.pixelsOf(this.fill(part, group, rim));
    const all = this.pixelsOf(group);
    if (filled > all / 2) return true;
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
