// Floor 3, step 4b. What a charge encloses or cuts off in the paint of a field around it: its own, or the field seen through.
import type { Label } from "../../svg/paintnumber.ts";
import type { RegionIndex } from "../component.ts";
import { areaOf, heightOf, widthOf } from "./box.ts";
import type { Surroundings } from "./surroundings.ts";

/** A hole lies in the middle, and fills its box as the whole does, within these shares (our own judgement). */
const evenness = 0.1;
/** Where more than this share of a charge has the paint of the field, it is a figure in outline (our own judgement). */
const mostSeenThrough = 0.4;
/** A region is in front where it has this share of a disc around a junction, of a radius in flag heights. */
const [front, reach] = [0.4, 0.007] as const;

/**
 * Returns the members of a charge that are field: in the paint of a field around the group, and either behind the charge at
 * its rim, or seen through the even opening of a ring or between the lines of a figure in outline. What else is enclosed in
 * such a paint, as a star on a disc, is the charge's own. One whose whole rim has the paints of the fields is counterchanged,
 * and the rim its own.
 */
export function findFieldWithin(
  around: Surroundings,
  group: readonly RegionIndex[],
): ReadonlySet<RegionIndex> {
  const own = new Set(group);
  const rim = new Set(around.rimOf(group));
  const paints = new Set<Label>();
  for (const index of rim)
    for (const next of around.regionOf(index).neighbours)
      if (!own.has(next)) paints.add(around.regionOf(next).label);
  const alike = group.filter((index) => paints.has(around.regionOf(index).label));
  const atRim = alike.filter((index) => rim.has(index));
  const inside = new Set(alike.filter((index) => !rim.has(index)));
  const isCounterchanged = atRim.length === rim.size;
  const behind = isCounterchanged ? [] : atRim.filter((index) => !liesOver(around, index, own));
  const isOutline = around.pixelsOf(inside) > mostSeenThrough * around.pixelsOf(group);
  const holes = around.split(inside).filter((part) => isOutline || isHole(around, part, group, rim));
  return new Set([...behind, ...holes.flat()]);
}

/** Whether a member on the rim lies in front, at most of the points where it meets what is around the group. */
function liesOver(around: Surroundings, index: RegionIndex, group: ReadonlySet<RegionIndex>): boolean {
  let [over, under] = [0, 0];
  for (const junction of around.junctionsOf(index)) {
    if (junction.regions.every((region) => group.has(region))) continue;
    const shares = around.sharesAt(junction, reach);
    if ((shares.get(index) ?? 0) >= front) over += 1;
    else if (Math.max(...shares.values()) >= front) under += 1;
  }
  return over > under;
}

/** Whether `part` is the opening of an even ring: in the middle of the whole, and of its shape. */
function isHole(
  around: Surroundings,
  part: readonly RegionIndex[],
  group: readonly RegionIndex[],
  rim: ReadonlySet<RegionIndex>,
): boolean {
  const [box, whole] = [around.boxOf(part), around.boxOf(group)];
  const isCentred =
    Math.abs(box.left + box.right - whole.left - whole.right) <= 2 * evenness * widthOf(box) &&
    Math.abs(box.top + box.bottom - whole.top - whole.bottom) <= 2 * evenness * heightOf(box);
  if (!isCentred) return false;
  const filled = around.pixelsOf(fill(around, part, group, rim)) / areaOf(box);
  return Math.abs(filled - around.pixelsOf(group) / areaOf(whole)) <= evenness;
}

/** `part` with the members that are reached from the rim through it alone. */
function fill(
  around: Surroundings,
  part: readonly RegionIndex[],
  group: readonly RegionIndex[],
  rim: ReadonlySet<RegionIndex>,
): readonly RegionIndex[] {
  const inPart = new Set(part);
  const others = new Set(group.filter((index) => !inPart.has(index)));
  const enclosed = around.split(others).filter((other) => !other.some((index) => rim.has(index)));
  return [...part, ...enclosed.flat()];
}
