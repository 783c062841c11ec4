// Small random maps, and what the fast code of the regions promises, worked out the slow way: by looking at every pixel.
import fc from "fast-check";
import type { LabelMap } from "../../src/regions/label.ts";
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

/**
 * The pixels of parts thinner than `n`: no disc of diameter n (0.4 pixels off: see thickness.ts) lies in their paint,
 * its centre on a pixel (n odd) or on a pixel corner (n even), that comes within √2 / 2 of n − 1 of them.
 */
export function openByDisc(map: LabelMap, n: number): readonly number[] {
  const half = n % 2 === 0 ? 0.5 : 0;
  const reach = (Math.SQRT2 * (n - 1)) / 2 + 0.05;
  const span = Math.ceil(n / 2) + 2;
  const fits = (x: number, y: number, label: number): boolean => {
    for (let dy = -span; dy <= span; dy += 1) {
      for (let dx = -span; dx <= span; dx += 1) {
        if (labelAt(map, x + dx, y + dy) !== label && Math.hypot(dx + half, dy + half) < n / 2 + 0.1)
          return false;
      }
    }
    return true;
  };
  const places = [...map.labels.keys()].filter((at) => fits(xOf(map, at), yOf(map, at), map.labels[at] ?? 0));
  return [...map.labels.keys()].filter(
    (at) =>
      map.labels[at] !== 0 &&
      !places.some(
        (place) =>
          map.labels[place] === map.labels[at] &&
          Math.hypot(xOf(map, place) - half - xOf(map, at), yOf(map, place) - half - yOf(map, at)) <= reach,
      ),
  );
}
