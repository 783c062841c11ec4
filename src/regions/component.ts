// Floor 3, step 4a. Regions: 4-connected parts of one label, with what they cover and what lies around them.
import type { LabelMap } from "./label.ts";

export interface Region {
  readonly label: number;
  readonly pixels: number;
  /** Whether it reaches the border of the picture or a transparent part. */
  readonly touchesOutside: boolean;
  /** Indexes of the regions it shares a line with. */
  readonly neighbours: ReadonlySet<number>;
}

/** `regionOf[at]` is the index of the region of a pixel, or −1 where it is transparent. */
export interface RegionMap {
  readonly regions: readonly Region[];
  readonly regionOf: Int32Array;
}

/** Finds all regions: runs of each row are joined to those of the row above (union–find). Linear in pixels. */
export function findRegions(map: LabelMap): RegionMap {
  const runs = new Runs(map);
  return runs.collect();
}

class Runs {
  private readonly parent: number[] = [];
  private readonly label: number[] = [];
  private readonly start: number[] = [];
  private readonly end: number[] = [];
  private readonly rowStart: number[] = [];
  private readonly map: LabelMap;

  constructor(map: LabelMap) {
    this.map = map;
    for (let y = 0; y < map.height; y += 1) {
      this.rowStart.push(this.parent.length);
      this.readRow(y);
      if (y > 0) this.joinRows(y);
    }
    this.rowStart.push(this.parent.length);
  }

  private readRow(y: number): void {
    const { labels, width } = this.map;
    const row = y * width;
    let from = 0;
    for (let x = 1; x <= width; x += 1) {
      if (x < width && labels[row + x] === labels[row + from]) continue;
      this.parent.push(this.parent.length);
      this.label.push(labels[row + from] as number);
      this.start.push(row + from);
      this.end.push(row + x);
      from = x;
    }
  }

  private joinRows(y: number): void {
    this.eachContact(y, (above, below) => {
      if (this.label[above] === this.label[below]) this.union(above, below);
    });
  }

  private eachContact(y: number, visit: (above: number, below: number) => void): void {
    const { width } = this.map;
    let above = this.rowStart[y - 1] as number;
    let below = this.rowStart[y] as number;
    const aboveEnd = this.rowStart[y] as number;
    const belowEnd = this.rowStart[y + 1] ?? this.parent.length;
    while (above < aboveEnd && below < belowEnd) {
      visit(above, below);
      const endAbove = (this.end[above] as number) + width;
      const endBelow = this.end[below] as number;
      if (endAbove <= endBelow) above += 1;
      if (endBelow <= endAbove) below += 1;
    }
  }

  private find(run: number): number {
    let at = run;
    while (this.parent[at] !== at) {
      this.parent[at] = this.parent[this.parent[at] as number] as number;
      at = this.parent[at] as number;
    }
    return at;
  }

  private union(one: number, other: number): void {
    const a = this.find(one);
    const b = this.find(other);
    if (a !== b) this.parent[Math.max(a, b)] = Math.min(a, b);
  }

  collect(): RegionMap {
    const { width, height, labels } = this.map;
    const regionOf = new Int32Array(labels.length).fill(-1);
    const indexOf = new Map<number, number>();
    const regions: { label: number; pixels: number; touchesOutside: boolean; neighbours: Set<number> }[] = [];
    const runRegion = new Int32Array(this.parent.length).fill(-1);
    for (let run = 0; run < this.parent.length; run += 1) {
      const label = this.label[run] as number;
      if (label === 0) continue;
      const root = this.find(run);
      let index = indexOf.get(root);
      if (index === undefined) {
        index = regions.length;
        indexOf.set(root, index);
        regions.push({ label, pixels: 0, touchesOutside: false, neighbours: new Set() });
      }
      const from = this.start[run] as number;
      const to = this.end[run] as number;
      const region = regions[index] as (typeof regions)[number];
      region.pixels += to - from;
      const isAtSide = from % width === 0 || to % width === 0;
      if (isAtSide || from < width || from >= (height - 1) * width) region.touchesOutside = true;
      regionOf.fill(index, from, to);
      runRegion[run] = index;
    }
    this.meet(regions, runRegion);
    return { regions, regionOf };
  }

  private meet(regions: readonly { touchesOutside: boolean; neighbours: Set<number> }[], runRegion: Int32Array): void {
    const touch = (one: number, other: number): void => {
      const a = runRegion[one] as number;
      const b = runRegion[other] as number;
      if (a === b) return;
      const first = regions[a];
      const second = regions[b];
      if (first === undefined || second === undefined) {
        for (const region of [first, second]) if (region !== undefined) region.touchesOutside = true;
        return;
      }
      first.neighbours.add(b);
      second.neighbours.add(a);
    };
    for (let y = 0; y < this.map.height; y += 1) {
      for (let run = (this.rowStart[y] as number) + 1; run < (this.rowStart[y + 1] as number); run += 1) touch(run - 1, run);
      if (y > 0) this.eachContact(y, touch);
    }
  }
}
