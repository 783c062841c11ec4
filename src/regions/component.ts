// Floor 3, step 4a. Regions: 4-connected parts of one label, with what they cover and what lies around them.
import { type Label, type List, listed } from "../svg/paintnumber.ts";
import { eachContact, type Runs } from "./runs.ts";

/** Place of a region among those of a map, from 0. */
export type RegionIndex = number & { readonly kind: "region" };

export interface Region {
  readonly label: Label;
  readonly pixels: number;
  /** Whether it reaches the border of the picture or a transparent part. */
  readonly touchesOutside: boolean;
  /** The regions it shares a line with. */
  readonly neighbours: ReadonlySet<RegionIndex>;
}

/** `regionOf[run]` is the index of the region of a run, or −1 where it is transparent. */
export interface RegionMap {
  readonly runs: Runs;
  readonly regions: List<RegionIndex, Region>;
  readonly regionOf: Int32Array;
}

interface OpenRegion {
  readonly label: Label;
  pixels: number;
  touchesOutside: boolean;
  readonly neighbours: Set<RegionIndex>;
}

/** Finds all regions: runs that touch and have one label are joined (union–find). Linear in runs. */
export function findRegions(runs: Runs): RegionMap {
  const parent = joinRuns(runs);
  const regionOf = new Int32Array(runs.count).fill(-1);
  const regions: OpenRegion[] = [];
  for (let run = 0; run < runs.count; run += 1) {
    const label = runs.label[run] as Label;
    if (label === 0) continue;
    const root = findRoot(parent, run);
    let index = regionOf[root] as number;
    if (index < 0) {
      index = regions.length;
      regionOf[root] = index;
      regions.push({ label, pixels: 0, touchesOutside: false, neighbours: new Set() });
    }
    regionOf[run] = index;
    (regions[index] as OpenRegion).pixels += (runs.start[run + 1] as number) - (runs.start[run] as number);
  }
  meet(runs, regions, regionOf);
  return { runs, regions: listed(regions), regionOf };
}

function joinRuns(runs: Runs): Int32Array {
  const parent = Int32Array.from({ length: runs.count }, (_, run) => run);
  for (let y = 1; y < runs.height; y += 1) {
    eachContact(runs, y, (above, below) => {
      if (runs.label[above] !== runs.label[below]) return;
      const a = findRoot(parent, above);
      const b = findRoot(parent, below);
      if (a < b) parent[b] = a;
      else parent[a] = b;
    });
  }
  return parent;
}

function findRoot(parent: Int32Array, run: number): number {
  let at = run;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at] as number] as number;
    at = parent[at] as number;
  }
  return at;
}

function meet(runs: Runs, regions: readonly OpenRegion[], regionOf: Int32Array): void {
  const touch = (one: number, other: number): void => {
    const a = regionOf[one] as RegionIndex;
    const b = regionOf[other] as RegionIndex;
    if (a === b) return;
    const first = regions[a];
    const second = regions[b];
    if (first !== undefined && second !== undefined) {
      first.neighbours.add(b);
      second.neighbours.add(a);
    } else if (first !== undefined) first.touchesOutside = true;
    else if (second !== undefined) second.touchesOutside = true;
  };
  const touchOutside = (run: number): void => {
    const region = regions[regionOf[run] as number];
    if (region !== undefined) region.touchesOutside = true;
  };
  for (let y = 0; y < runs.height; y += 1) {
    const first = runs.rowStart[y] as number;
    const end = runs.rowStart[y + 1] as number;
    touchOutside(first);
    touchOutside(end - 1);
    for (let run = first + 1; run < end; run += 1) touch(run - 1, run);
    if (y > 0) eachContact(runs, y, touch);
    if (y === 0 || y === runs.height - 1) for (let run = first; run < end; run += 1) touchOutside(run);
  }
}
