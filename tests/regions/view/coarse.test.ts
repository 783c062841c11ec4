// Thin parts on coarser maps. 720 pixels high, an arcminute is 16.76 pixels from 80 flag heights away (720 · 80 · 0.00029089),
// 33.51 from 160 and 67.02 from 320; maps have blocks of 2, 4 and 8 pixels there, and depth is measured pixel by pixel.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { coarsen } from "../../../src/regions/view/coarse.ts";
import { measureDepth } from "../../../src/regions/view/depth.ts";
import { openByDisc, slopedMaps } from "../naive.ts";
import { drawMap } from "../picture.ts";

const steps = [
  { thinnest: 16.76, factor: 2 },
  { thinnest: 33.51, factor: 4 },
  { thinnest: 67.02, factor: 8 },
] as const;
type Step = { readonly thinnest: number; readonly factor: number };

/** The coarse map, and for each of its pixels whether it is thin. */
function look(fine: LabelMap, { thinnest, factor }: Step) {
  const { map, thinParts } = coarsen(fine, measureDepth(fine), factor);
  const thinner = new Set(thinParts.findThinner(thinnest / factor));
  return { map, isThin: (at: number) => thinner.has(at) };
}

/** Share of the pixels of `label`, where `isMeant` (in pixels of the fine map), that stay. */
function leftOf(
  fine: LabelMap,
  step: Step,
  label: number,
  isMeant: (x: number, y: number) => boolean = () => true,
): number {
  const { map, isThin } = look(fine, step);
  const own = [...map.labels.keys()].filter((at) => {
    const [x, y] = [at % map.width, Math.floor(at / map.width)];
    return map.labels[at] === label && isMeant((x + 0.5) * step.factor, (y + 0.5) * step.factor);
  });
  expect(own.length).toBeGreaterThan(0);
  return own.filter((at) => !isThin(at)).length / own.length;
}

describe("a stripe", () => {
  // At 0.9 of the thickness it has gone, at 1.1 it stays, whatever its slope and wherever it lies between the blocks.
  const degrees = [0, 7, 15, 22.5, 30, 38, 45, 52, 60, 75, 83, 90];
  test.each(steps.flatMap((step) => degrees.map((slope) => ({ ...step, slope }))))(
    "at $slope degrees, of $thinnest pixels: gone and there within a tenth",
    ({ slope, ...step }) => {
      const sine = Math.sin((slope * Math.PI) / 180);
      const cosine = Math.cos((slope * Math.PI) / 180);
      for (const shift of [0, 0.7, 1.3]) {
        const left = (thickness: number): number =>
          leftOf(
            drawMap(400, 400, (x, y) =>
              Math.abs(cosine * (y - 200 - shift) - sine * (x - 200)) < thickness / 2 ? 2 : 1,
            ),
            step,
            2,
          );
        expect(left(0.9 * step.thinnest)).toBeLessThan(0.5);
        expect(left(1.1 * step.thinnest)).toBeGreaterThan(0.5);
      }
    },
  );
});

describe("an outline one pixel wide", () => {
  // A disc of paint 1 on a field of paint 1, with a ring of paint 2 between the two, 1 pixel wide.
  const ringed = (radius: number, gap = 1): LabelMap =>
    drawMap(420, 420, (x, y) => {
      const away = Math.hypot(x - 210.3, y - 209.4);
      return away > radius && away < radius + gap ? 2 : 1;
    });
  const within = (radius: number) => (x: number, y: number) => Math.hypot(x - 210.3, y - 209.4) < radius - 4;

  test.each(steps)("still parts two areas of one paint on a map of blocks of $factor", (step) => {
    const [thin, thick] = [0.42 * step.thinnest, 0.62 * step.thinnest];
    // 0.84 of the thickness across: gone, but for what lies within √2 / 2 of the thickness of a place outside the ring where
    // the disc fits, half of it beyond the ring: 0.21 of the thickness, and a pixel of the map.
    const core = (x: number, y: number) =>
      Math.hypot(x - 210.3, y - 209.4) < thin - 0.21 * step.thinnest - step.factor;
    expect(leftOf(ringed(thin), step, 1, core)).toBe(0);
    // 1.24 across: there.
    expect(leftOf(ringed(thick), step, 1, within(thick))).toBeGreaterThan(0.95);
    // The field around it stays.
    const around = (x: number, y: number) => Math.hypot(x - 210, y - 210) > 120;
    expect(leftOf(ringed(thin), step, 1, around)).toBeGreaterThan(0.9);
    // And where there is no ring the disc is the field.
    expect(leftOf(ringed(thin, 0), step, 1, within(thin))).toBe(1);
  });

  test("the ring goes itself", () => {
    const { map, isThin } = look(ringed(150), steps[2]);
    for (const [at, label] of map.labels.entries()) if (label === 2) expect(isThin(at)).toBe(true);
  });

  test.each(steps)(
    "many of them side by side: thin bands of one paint go on a map of blocks of $factor",
    (step) => {
      const banded = (width: number) =>
        drawMap(400, 400, (x) => (Math.floor(x) % (width + 1) === width ? 2 : 1));
      expect(leftOf(banded(Math.floor(0.9 * step.thinnest)), step, 1)).toBe(0);
      expect(leftOf(banded(Math.ceil(1.1 * step.thinnest)), step, 1)).toBeGreaterThan(0.8);
    },
  );
});

test("transparent pixels are never thin", () => {
  const { map, isThin } = look(
    drawMap(200, 200, (x, y) => (x < 60 && y < 6 ? 0 : 1)),
    steps[1],
  );
  for (const [at, label] of map.labels.entries()) if (label === 0) expect(isThin(at)).toBe(false);
});

test("on any map of wedges, strips and discs it is what a disc on every pixel finds, but for a tenth of the thickness", () => {
  const thinnest = 17;
  fc.assert(
    fc.property(slopedMaps, (fine) => {
      const { map, isThin } = look(fine, { thinnest, factor: 2 });
      // Thin even at a tenth less, and thick even at a tenth more, is certain; what lies between may fall to either side.
      const [surely, perhaps] = [openByDisc(fine, 0.88 * thinnest), openByDisc(fine, 1.12 * thinnest)].map(
        (pixels) => new Set(pixels),
      );
      let [certain, wrong] = [0, 0];
      for (const [at, label] of map.labels.entries()) {
        if (label === 0) continue;
        const x = 2 * (at % map.width) + 1;
        const y = 2 * Math.floor(at / map.width) + 1;
        const place = y * fine.width + x;
        if (surely?.has(place) !== perhaps?.has(place)) continue;
        certain += 1;
        if (surely?.has(place) !== isThin(at)) wrong += 1;
      }
      // Pixels along an edge between the two.
      expect(wrong).toBeLessThanOrEqual(0.03 * certain + 8);
    }),
    { numRuns: 12, seed: 5 },
  );
});
