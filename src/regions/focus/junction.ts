// Floor 3. Junctions: points where three regions or more meet, and how much of the surroundings of each belongs to whom.
// Where one line ends at another, what lies beyond the other is in front: it has half of what is around, the rest share.
import type { RegionIndex, RegionMap } from "../component.ts";

/** A corner of pixels: the one right below it has the place (x, y). `regions` are those that meet there, −1 for transparent. */
export interface Junction {
  readonly x: number;
  readonly y: number;
  readonly regions: readonly RegionIndex[];
}

/** Returns the junctions of each region. Linear in runs. */
export function findJunctions({ runs, regionOf }: RegionMap): ReadonlyMap<RegionIndex, readonly Junction[]> {
  const { width, height, rowStart, start } = runs;
  const found = new Map<RegionIndex, Junction[]>();
  for (let y = 1; y < height; y += 1) {
    let above = rowStart[y - 1] as number;
    let below = rowStart[y] as number;
    const end = rowStart[y + 1] as number;
    while (below < end) {
      const toAbove = (start[above + 1] as number) + width;
      const toBelow = start[below + 1] as number;
      const at = Math.min(toAbove, toBelow);
      if (at === (y + 1) * width) break;
      const [left, lower] = [regionOf[above] as RegionIndex, regionOf[below] as RegionIndex];
      if (toAbove === at) above += 1;
      if (toBelow === at) below += 1;
      const regions = [
        ...new Set([left, lower, regionOf[above] as RegionIndex, regionOf[below] as RegionIndex]),
      ];
      if (regions.length < 3) continue;
      const junction = { x: at - y * width, y, regions };
      for (const region of regions) {
        const own = found.get(region);
        if (own === undefined) found.set(region, [junction]);
        else own.push(junction);
      }
    }
  }
  return found;
}

/** Returns the share of each region in the disc of `radius` pixels around a junction, of what lies within the picture. */
export function shareAround(
  map: RegionMap,
  { x, y }: Junction,
  radius: number,
): ReadonlyMap<RegionIndex, number> {
  const { width, height } = map.runs;
  const shares = new Map<RegionIndex, number>();
  let count = 0;
  for (let py = Math.max(0, Math.ceil(y - radius)); py < Math.min(height, y + radius); py += 1) {
    const reach = Math.sqrt(Math.max(0, radius ** 2 - (py + 0.5 - y) ** 2));
    const from = Math.max(0, Math.round(x - reach));
    const to = Math.min(width, Math.round(x + reach));
    count += Math.max(0, to - from);
    eachRun(map, py, from, to, (region, pixels) => shares.set(region, (shares.get(region) ?? 0) + pixels));
  }
  for (const [region, pixels] of shares) shares.set(region, pixels / count);
  return shares;
}

/** Visits the runs of row `y` between two columns, the first of them found by halving. */
function eachRun(
  { runs, regionOf }: RegionMap,
  y: number,
  from: number,
  to: number,
  visit: (region: RegionIndex, pixels: number) => void,
): void {
  const row = y * runs.width;
  let low = runs.rowStart[y] as number;
  let high = runs.rowStart[y + 1] as number;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((runs.start[middle] as number) <= row + from) low = middle;
    else high = middle;
  }
  for (let at = from; at < to; low += 1) {
    const end = Math.min(to, (runs.start[low + 1] as number) - row);
    visit(regionOf[low] as RegionIndex, end - at);
    at = end;
  }
}
