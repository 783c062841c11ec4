// Floor 3, step 4b. The focus: which pixels show what has to be seen, the charges.
import type { RegionMap } from "./component.ts";

/** A region over this share of the flag is a field within a bordure, not a charge (our own judgement). */
const largestCharge = 0.35;

/**
 * Returns the regions that are charges: those that touch neither border nor transparency, without those over 35 % of
 * the flag and without holes: regions that have the paint of a region around the charge they belong to.
 */
export function findCharges({ regions }: RegionMap, flagPixels: number): ReadonlySet<number> {
  const inner = new Set<number>();
  for (const [index, region] of regions.entries()) {
    if (!region.touchesOutside && region.pixels <= largestCharge * flagPixels) inner.add(index);
  }
  const charges = new Set<number>();
  for (const group of groupNeighbours(inner, (index) => regions[index]?.neighbours ?? [])) {
    const around = new Set<number>();
    for (const index of group)
      for (const next of regions[index]?.neighbours ?? [])
        if (!inner.has(next)) around.add(regions[next]?.label ?? 0);
    for (const index of pickCharges(group, regions, inner, around)) charges.add(index);
  }
  return charges;
}

/**
 * Regions with the paint of a field around them are the field seen through the charge. Where there are no others the
 * charge is counterchanged: then only what it encloses is field.
 */
function pickCharges(
  group: readonly number[],
  regions: RegionMap["regions"],
  inner: ReadonlySet<number>,
  around: ReadonlySet<number>,
): readonly number[] {
  const own = group.filter((index) => !around.has(regions[index]?.label ?? 0));
  if (own.length > 0) return own;
  return group.filter((index) => ![...(regions[index]?.neighbours ?? [])].every((next) => inner.has(next)));
}

function groupNeighbours(
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

/** Returns a mask (1 = focus) of the pixels whose region is in `chosen`. */
export function maskRegions({ runs, regionOf }: RegionMap, chosen: ReadonlySet<number>): Uint8Array {
  const mask = new Uint8Array(runs.width * runs.height);
  for (let run = 0; run < runs.count; run += 1) {
    if (chosen.has(regionOf[run] as number)) mask.fill(1, runs.start[run], runs.start[run + 1]);
  }
  return mask;
}

/** Returns a mask of the pixels whose label is chosen (`isChosen[label]`). */
export function maskLabels(labels: Uint16Array, isChosen: readonly boolean[]): Uint8Array {
  const chosen = Uint8Array.from(isChosen, Number);
  const mask = new Uint8Array(labels.length);
  for (let at = 0; at < labels.length; at += 1) mask[at] = chosen[labels[at] as number] as number;
  return mask;
}

/** Returns how many pixels of a mask are set. */
export function countMask(mask: Uint8Array): number {
  let count = 0;
  for (let at = 0; at < mask.length; at += 1) count += mask[at] as number;
  return count;
}
