// Floor 3, step 4b. What inside the flag is a field or a part of its division, and so no charge. All shares are our own
// judgement.

import type { RegionIndex } from "../component.ts";
import type { Box } from "../mapcrop.ts";
import { areaOf, heightOf, widthOf } from "./box.ts";
import type { Surroundings } from "./surroundings.ts";

/** A region over this share of the flag is a field within a bordure, not a charge; and so is a group over the next. */
const [largestRegion, largestGroup] = [0.35, 0.5] as const;
/** An upright rectangle fills this share of its box; one with so much of the flag, and of its width or height, is a panel. */
const [rectangle, leastPanel, panelSpan] = [0.93, 0.1, 0.75] as const;
/** Pieces are of one size where areas and sides of the boxes differ by no more than this share. */
const likeSize = 0.08;
/** A region is in front where it has this share of a disc around a junction, of a radius in flag heights. */
const [front, bandReach] = [0.4, 0.025] as const;
/** A band has this share of the flag. */
const leastBand = 0.01;
/** A plain shape has no more runs than this for each row it reaches. */
const plain = 1.1;
/** A point between two fields has no more than this share of a disc, and is so near to the border, in flag heights. */
const [wedge, wedgeReach, wedgeNear] = [0.22, 0.03, 0.06] as const;

/**
 * Whether a group is a field: far too large for a charge, or a rectangle nearly as wide or high as the flag (a panel within
 * a bordure); or a wedge that reaches the border.
 */
export function isField(around: Surroundings, group: readonly RegionIndex[]): boolean {
  const pixels = around.pixelsOf(group);
  if (pixels > largestGroup * around.flagPixels) return true;
  if (group.some((index) => around.regionOf(index).pixels > largestRegion * around.flagPixels)) return true;
  const box = around.boxOf(group);
  const spans = widthOf(box) >= panelSpan * around.width || heightOf(box) >= panelSpan * around.height;
  const isPanel = spans && pixels >= leastPanel * around.flagPixels && pixels >= rectangle * areaOf(box);
  return isPanel || isWedge(around, group);
}

/** Whether a group ends in points beside the border, between two fields that part there: it reaches the border with them. */
function isWedge(around: Surroundings, group: readonly RegionIndex[]): boolean {
  const own = new Set(group);
  const ends = group
    .flatMap((index) => around.junctionsOf(index))
    .filter(({ regions }) => regions.filter((index) => !own.has(index)).length > 1);
  return (
    ends.length > 1 &&
    ends.every((junction) => {
      const { x, y } = junction;
      if (Math.min(x, y, around.width - x, around.height - y) > wedgeNear * around.height) return false;
      const shares = around.sharesAt(junction, wedgeReach);
      return group.reduce((sum, index) => sum + (shares.get(index) ?? 0), 0) <= wedge;
    })
  );
}

/**
 * Finds, in groups, parts of a division of the flag: pieces of a quartered canton or of a chequered field, which repeat, in
 * paint and size, regions that reach the border; and bands that run behind the fields around.
 */
export class Divisions {
  private readonly around: Surroundings;
  /** Boxes of the regions that reach the border, by label and size: see {@link sizeOf}. */
  private readonly atBorder = new Map<string, { readonly pixels: number; readonly box: Box }[]>();
  private readonly runCounts: Int32Array;

  constructor(around: Surroundings) {
    this.around = around;
    const { regions, regionOf } = around.map;
    this.runCounts = new Int32Array(regions.length);
    for (const index of regionOf)
      if (index >= 0) this.runCounts[index] = (this.runCounts[index] as number) + 1;
    for (const [index, { label, pixels, touchesOutside }] of regions.entries()) {
      if (!touchesOutside) continue;
      const key = `${label} ${sizeOf(pixels)}`;
      const alike = this.atBorder.get(key) ?? [];
      alike.push({ pixels, box: around.boxOf([index]) });
      this.atBorder.set(key, alike);
    }
  }

  /** Returns the members that are parts of a division. */
  find(group: readonly RegionIndex[]): readonly RegionIndex[] {
    const own = new Set(group);
    return group.filter((index) => this.repeatsBorder(index) || this.isBand(index, own));
  }

  private repeatsBorder(index: RegionIndex): boolean {
    const { label, pixels } = this.around.regionOf(index);
    const box = this.around.boxOf([index]);
    const size = sizeOf(pixels);
    return [size - 1, size, size + 1].some((near) =>
      this.atBorder
        .get(`${label} ${near}`)
        ?.some(
          (twin) =>
            isLike(twin.pixels, pixels) &&
            isLike(widthOf(twin.box), widthOf(box)) &&
            isLike(heightOf(twin.box), heightOf(box)),
        ),
    );
  }

  /**
   * Whether a member runs from one field to another behind them: it meets three or more, is in front of none, and is plain,
   * in one run in nearly each row.
   */
  private isBand(index: RegionIndex, group: ReadonlySet<RegionIndex>): boolean {
    if (this.around.regionOf(index).pixels < leastBand * this.around.flagPixels) return false;
    const rows = heightOf(this.around.boxOf([index]));
    if ((this.runCounts[index] as number) > plain * rows) return false;
    const fields = new Set<RegionIndex>();
    for (const junction of this.around.junctionsOf(index)) {
      const outer = junction.regions.filter((region) => !group.has(region));
      if (outer.length < 2) continue;
      const shares = this.around.sharesAt(junction, bandReach);
      if ((shares.get(index) ?? 0) >= front) return false;
      if (outer.every((region) => (shares.get(region) ?? 0) < front)) return false;
      for (const region of outer) fields.add(region);
    }
    return fields.size > 2;
  }
}

/** A whole number that differs by one at most for areas that are alike. */
function sizeOf(pixels: number): number {
  return Math.round(Math.log(pixels) / -Math.log(1 - likeSize));
}

function isLike(one: number, other: number): boolean {
  return Math.abs(one - other) <= likeSize * Math.max(one, other);
}
