// Floor 3, step 4b. The focus: which pixels show what has to be seen, the charges.
import type { List, PaintIndex } from "../../svg/paintnumber.ts";
import type { RegionIndex, RegionMap } from "../component.ts";
import { Divisions, isField } from "./division.ts";
import { findFieldWithin } from "./hole.ts";
import { Surroundings } from "./surroundings.ts";

/** All charges together are no focus under this share of the flag (our own judgement). */
const leastFocus = 0.002;
/** What is under the one share of the largest charge and the other of the flag is a speck beside it (our own judgement). */
const [leastBeside, leastCharge] = [0.01, 0.0005] as const;
/** Fields within fields are looked into so often and no further; what falls into more regions shows noise and no charge. */
const [deepest, mostRegions] = [8, 50_000] as const;

/**
 * Returns the regions that are charges: those that touch neither border nor transparency, with what they enclose, without
 * fields within a bordure and parts of a division (what lies on them is looked at the same way), the field seen through a
 * charge, and specks.
 */
export function findCharges(map: RegionMap, flagPixels: number): ReadonlySet<RegionIndex> {
  if (map.regions.length > mostRegions) return new Set();
  const around = new Surroundings(map, flagPixels);
  const divisions = new Divisions(around);
  const charges: { readonly members: readonly RegionIndex[]; readonly pixels: number }[] = [];
  let inner = new Set(
    [...map.regions.keys()].filter((index) => map.regions[index]?.touchesOutside === false),
  );
  for (let depth = 0; depth < deepest && inner.size > 0; depth += 1) {
    const next = new Set<RegionIndex>();
    for (const group of around.split(inner)) {
      const ground = new Set(isField(around, group) ? around.rimOf(group) : divisions.find(group));
      if (ground.size > 0) {
        for (const index of group) if (!ground.has(index)) next.add(index);
        continue;
      }
      const field = findFieldWithin(around, group);
      const members = group.filter((index) => !field.has(index));
      charges.push({ members, pixels: around.pixelsOf(members) });
    }
    inner = next;
  }
  const largest = charges.reduce((most, { pixels }) => Math.max(most, pixels), 0);
  const least = Math.min(leastBeside * largest, leastCharge * flagPixels);
  const kept = charges.filter(({ pixels }) => pixels >= least).flatMap(({ members }) => members);
  return new Set(around.pixelsOf(kept) < leastFocus * flagPixels ? [] : kept);
}

/** Returns a mask (1 = focus) of the pixels whose region is in `chosen`. */
export function maskRegions({ runs, regionOf }: RegionMap, chosen: ReadonlySet<RegionIndex>): Uint8Array {
  const mask = new Uint8Array(runs.width * runs.height);
  for (let run = 0; run < runs.count; run += 1) {
    if (chosen.has(regionOf[run] as RegionIndex)) mask.fill(1, runs.start[run], runs.start[run + 1]);
  }
  return mask;
}

/** Returns a mask of the pixels whose paint is chosen. */
export function maskLabels(labels: Uint16Array, isChosen: List<PaintIndex, boolean>): Uint8Array {
  const chosen = Uint8Array.from([false, ...isChosen], Number);
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
