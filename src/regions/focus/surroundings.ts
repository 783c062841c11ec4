// Floor 3, step 4b. What is known of the regions of one map while charges are looked for: boxes, junctions, neighbours.

import type { List } from "../../svg/paintnumber.ts";
import type { Region, RegionIndex, RegionMap } from "../component.ts";
import type { Box } from "../mapcrop.ts";
import { findBoxes, joinBoxes } from "./box.ts";
import { findJunctions, type Junction, shareAround } from "./junction.ts";

/** The regions of a map with what is asked of them more than once. A group is a list of region indexes. */
export class Surroundings {
  readonly map: RegionMap;
  readonly flagPixels: number;
  readonly width: number;
  readonly height: number;
  private readonly boxes: List<RegionIndex, Box>;
  private readonly junctions: ReadonlyMap<RegionIndex, readonly Junction[]>;

  constructor(map: RegionMap, flagPixels: number) {
    this.map = map;
    this.flagPixels = flagPixels;
    this.width = map.runs.width;
    this.height = map.runs.height;
    this.boxes = findBoxes(map);
    this.junctions = findJunctions(map);
  }

  regionOf(index: RegionIndex): Region {
    return this.map.regions[index] as Region;
  }

  pixelsOf(group: Iterable<RegionIndex>): number {
    let sum = 0;
    for (const index of group) sum += this.regionOf(index).pixels;
    return sum;
  }

  boxOf(group: readonly RegionIndex[]): Box {
    return joinBoxes(group.map((index) => this.boxes[index] as Box));
  }

  junctionsOf(index: RegionIndex): readonly Junction[] {
    return this.junctions.get(index) ?? [];
  }

  /** Share of each region in the disc around a junction; the radius is in heights of the map, and three pixels at least. */
  sharesAt(junction: Junction, radiusHeights: number): ReadonlyMap<RegionIndex, number> {
    return shareAround(this.map, junction, Math.max(3, radiusHeights * this.height));
  }

  /** Members that meet a region outside the group. */
  rimOf(group: readonly RegionIndex[]): readonly RegionIndex[] {
    const own = new Set(group);
    return group.filter((index) => [...this.regionOf(index).neighbours].some((next) => !own.has(next)));
  }

  /** The members in groups that hang together. */
  split(members: ReadonlySet<RegionIndex>): readonly (readonly RegionIndex[])[] {
    const groups: RegionIndex[][] = [];
    const seen = new Set<RegionIndex>();
    for (const start of members) {
      if (seen.has(start)) continue;
      const group = [start];
      seen.add(start);
      for (const index of group) {
        for (const next of this.regionOf(index).neighbours) {
          if (!members.has(next) || seen.has(next)) continue;
          seen.add(next);
          group.push(next);
        }
      }
      groups.push(group);
    }
    return groups;
  }
}
