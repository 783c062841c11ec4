// Floor 3, part of step 6. The colours that a paint has along its lines, where it is not the same all over.
import type { Label } from "../svg/paintnumber.ts";
import type { LabelMap } from "./labelmap.ts";
import type { Raster } from "./raster.ts";
import { isInner, type SeenPaint, summariseSeen } from "./seencolour.ts";
import type { Line } from "./traceline.ts";

/** How far from a line, in pixels, a paint is looked at, as long as it is found there. */
const close = 3;

/**
 * Looks at the true rendering of a paint along its lines: at least 1 px inside `label` and within 3 px of a line; where
 * nothing of it lies there, because something between them vanished in the view, at the nearest of it within `reach` px.
 * `lines` are those of a view of `map`; `picture` has its size. By the label that the paint meets; labels are left out
 * along whose lines nothing is found.
 */
export function measureBeside(
  picture: Raster,
  map: LabelMap,
  lines: readonly Line[],
  label: Label,
  reach: number,
): ReadonlyMap<Label, SeenPaint> {
  const offsets = offsetsWithin(Math.max(close, reach));
  const found = new Map<Label, Set<number>>();
  for (const line of lines) {
    if (line.a !== label && line.b !== label) continue;
    const other = line.a === label ? line.b : line.a;
    const pixels = found.get(other) ?? new Set();
    found.set(other, pixels);
    eachStep(line.points, (x, y) => collect(map, label, Math.floor(x), Math.floor(y), offsets, pixels));
  }
  const seen = [...found].map(([other, pixels]) => [other, summariseSeen(picture, [...pixels])] as const);
  return new Map(seen.flatMap(([other, paint]) => (paint === null ? [] : [[other, paint]])));
}

interface Offset {
  readonly dx: number;
  readonly dy: number;
  readonly away: number;
}

/** Whole offsets no longer than `radius`, nearest first. */
function offsetsWithin(radius: number): readonly Offset[] {
  const span = Math.floor(radius);
  const found: Offset[] = [];
  for (let dy = -span; dy <= span; dy += 1) {
    for (let dx = -span; dx <= span; dx += 1) {
      const away = Math.hypot(dx, dy);
      if (away <= radius) found.push({ dx, dy, away });
    }
  }
  return found.sort((one, other) => one.away - other.away);
}

/** Adds what lies close; else what lies no further than the nearest there is. */
function collect(
  map: LabelMap,
  label: Label,
  x: number,
  y: number,
  offsets: readonly Offset[],
  pixels: Set<number>,
): void {
  let within = Number.POSITIVE_INFINITY;
  for (const { dx, dy, away } of offsets) {
    if (away > within) return;
    if (!isInner(map, x + dx, y + dy, label)) continue;
    pixels.add((y + dy) * map.width + x + dx);
    if (within === Number.POSITIVE_INFINITY) within = Math.max(close, away);
  }
}

/** Visits a path of x, y pairs pixel by pixel. */
function eachStep(points: readonly number[], visit: (x: number, y: number) => void): void {
  for (let at = 2; at < points.length; at += 2) {
    const [x0, y0] = [points[at - 2] as number, points[at - 1] as number];
    const [dx, dy] = [(points[at] as number) - x0, (points[at + 1] as number) - y0];
    const steps = Math.max(1, Math.ceil(Math.hypot(dx, dy)));
    for (let step = 0; step < steps; step += 1)
      visit(x0 + (dx * (step + 0.5)) / steps, y0 + (dy * (step + 0.5)) / steps);
  }
}
