// Small random maps, and what the fast code of the regions promises, worked out the slow way: by looking at every pixel.
import fc from "fast-check";
import type { LabelMap } from "../../src/regions/labelmap.ts";
import { drawMap } from "./picture.ts";

const shape = fc.record({
  isDisc: fc.boolean(),
  x: fc.integer({ min: -4, max: 28 }),
  y: fc.integer({ min: -4, max: 24 }),
  width: fc.integer({ min: 1, max: 16 }),
  height: fc.integer({ min: 1, max: 16 }),
  label: fc.integer({ min: 0, max: 3 }),
});

/** Maps of up to 26 × 22 pixels with rectangles, discs and single pixels of the labels `least` to 3. */
export const smallMaps = (least: 0 | 1): fc.Arbitrary<LabelMap> =>
  fc
    .record({
      width: fc.integer({ min: 1, max: 26 }),
      height: fc.integer({ min: 1, max: 22 }),
      shapes: fc.array(shape, { maxLength: 7 }),
    })
    .map(({ width, height, shapes }) =>
      drawMap(width, height, (x, y) => {
        const hit = shapes.findLast((one) =>
          one.isDisc
            ? Math.hypot(x - one.x, y - one.y) < one.width / 2
            : x > one.x && x < one.x + one.width && y > one.y && y < one.y + one.height,
        );
        return Math.max(least, hit?.label ?? 1);
      }),
    );

export const xOf = ({ width }: LabelMap, at: number): number => at % width;
export const yOf = ({ width }: LabelMap, at: number): number => Math.floor(at / width);

/** The label of a pixel; −1 beyond the border. */
export function labelAt({ width, height, labels }: LabelMap, x: number, y: number): number {
  return x < 0 || y < 0 || x >= width || y >= height ? -1 : (labels[y * width + x] ?? -1);
}

/** Pixels that share a side with `at`, −1 for each that would lie beyond the border. */
export function sidesOf(map: LabelMap, at: number): readonly number[] {
  const x = xOf(map, at);
  const y = yOf(map, at);
  return [
    x > 0 ? at - 1 : -1,
    x + 1 < map.width ? at + 1 : -1,
    y > 0 ? at - map.width : -1,
    y + 1 < map.height ? at + map.width : -1,
  ];
}

/** Index of the 4-connected part of each pixel, numbered in reading order of their first pixels; −1 if transparent. */
export function floodParts(map: LabelMap): readonly number[] {
  const part = new Array<number>(map.labels.length).fill(-1);
  let count = 0;
  for (let first = 0; first < part.length; first += 1) {
    if (part[first] !== -1 || map.labels[first] === 0) continue;
    part[first] = count;
    const open = [first];
    for (const at of open) {
      for (const next of sidesOf(map, at)) {
        if (next < 0 || part[next] !== -1 || map.labels[next] !== map.labels[first]) continue;
        part[next] = count;
        open.push(next);
      }
    }
    count += 1;
  }
  return part;
}

const slope = fc.record({
  x: fc.integer({ min: 0, max: 130 }),
  y: fc.integer({ min: 0, max: 90 }),
  degrees: fc.integer({ min: 0, max: 359 }),
  /** Half of the opening of a wedge in degrees; half of the thickness of a strip. */
  opening: fc.integer({ min: 2, max: 60 }),
  half: fc.integer({ min: 1, max: 20 }).map((quarters) => quarters / 4),
  kind: fc.constantFrom("wedge", "strip", "disc"),
  label: fc.integer({ min: 0, max: 3 }),
});

/** Maps of 130 × 90 pixels with wedges, strips and discs at any angle: most of them thin somewhere and thick elsewhere. */
export const slopedMaps: fc.Arbitrary<LabelMap> = fc
  .array(slope, { minLength: 1, maxLength: 4 })
  .map((slopes) =>
    drawMap(130, 90, (x, y) => {
      const hit = slopes.findLast((one) => {
        const angle = (one.degrees * Math.PI) / 180;
        const along = (x - one.x) * Math.cos(angle) + (y - one.y) * Math.sin(angle);
        const across = Math.abs((y - one.y) * Math.cos(angle) - (x - one.x) * Math.sin(angle));
        if (one.kind === "strip") return across < one.half;
        if (one.kind === "disc") return Math.hypot(along, across) < 4 * one.half;
        return along > 0 && across < along * Math.tan((one.opening * Math.PI) / 180);
      });
      return hit?.label ?? 1;
    }),
  );

/**
 * The pixels of parts thinner than `thickness`: no disc of that diameter lies in their paint that comes within √2 / 2 of
 * n − 1 of them, where n is the thickness rounded up. Its centre is on a pixel or on a pixel corner, and pixels of other
 * paints are half of the thickness and 0.45 pixels away at least; from a corner, whose nearest pixels lie half a pixel
 * aside, by Pythagoras a little more (see thickness.ts).
 */
export function openByDisc(map: LabelMap, thickness: number): readonly number[] {
  if (thickness <= 1) return [];
  const reach = (Math.SQRT2 * (Math.ceil(thickness) - 1)) / 2 + 0.05;
  const apart = thickness / 2 + 0.45;
  const onPixels = keptBy(map, 0, apart, reach);
  const onCorners = keptBy(map, 0.5, Math.hypot(apart, 0.5), reach);
  return [...map.labels.keys()].filter(
    (at) => map.labels[at] !== 0 && !onPixels.has(at) && !onCorners.has(at),
  );
}

/** Pixels within `reach` of a place of their paint from which no other pixel is nearer than `apart`. */
function keptBy(map: LabelMap, half: number, apart: number, reach: number): ReadonlySet<number> {
  const all = [...map.labels.keys()];
  const outside = offsetsWithin(apart - 1e-9, -half);
  const fits = all.map((at) =>
    outside.every(([dx, dy]) => labelAt(map, xOf(map, at) + dx, yOf(map, at) + dy) === map.labels[at]),
  );
  const around = offsetsWithin(reach, half);
  const isKept = (at: number): boolean =>
    around.some(([dx, dy]) => {
      const [x, y] = [xOf(map, at) + dx, yOf(map, at) + dy];
      return labelAt(map, x, y) === map.labels[at] && fits[y * map.width + x] === true;
    });
  return new Set(all.filter(isKept));
}

/** Whole offsets at most `radius` from the point (shift, shift). */
function offsetsWithin(radius: number, shift: number): readonly (readonly [number, number])[] {
  const span = Math.ceil(radius) + 1;
  const found: (readonly [number, number])[] = [];
  for (let dy = -span; dy <= span; dy += 1)
    for (let dx = -span; dx <= span; dx += 1)
      if (Math.hypot(dx - shift, dy - shift) <= radius) found.push([dx, dy]);
  return found;
}
