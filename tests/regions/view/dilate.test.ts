// Thin pixels near a place where the disc fits are kept. The whole is checked against an opening done pixel by pixel in
// thickness.test.ts; here the two halves by themselves.
import { describe, expect, test } from "vitest";
import { reclaimFromCentres, reclaimFromCorners, thin } from "../../../src/regions/view/dilate.ts";
import { drawMap } from "../picture.ts";

/** A square of label 2 from (10, 10), `side` pixels a side, on label 1. */
const square = (side: number) =>
  drawMap(40, 40, (x, y) => (x >= 10 && x < 10 + side && y >= 10 && y < 10 + side ? 2 : 1));
const pixelsOf = (map: ReturnType<typeof square>, label: number): Int32Array =>
  Int32Array.from([...map.labels.keys()].filter((at) => map.labels[at] === label));

describe("reclaimFromCentres", () => {
  test("keeps what lies within reach of a pixel on which the disc fits, and leaves what does not", () => {
    const map = square(5);
    const state = new Uint8Array(map.labels.length);
    const all = pixelsOf(map, 2);
    const middle = 12 * 40 + 12;
    const thinner = all.filter((at) => at !== middle);
    for (const at of thinner) state[at] = thin;
    // The middle pixel fits; a reach of 2 keeps the cross around it and the pixels one aside, not the corners (2, 2).
    reclaimFromCentres(map, state, thinner, 2);
    const left = [...thinner].filter((at) => state[at] === thin).map((at) => [at % 40, Math.floor(at / 40)]);
    // By hand: offsets (±1, ±2), (±2, ±1) are √5 away, (±2, ±2) √8: twelve pixels.
    expect(left).toHaveLength(12);
    expect(left).toContainEqual([10, 10]);
    expect(left).not.toContainEqual([12, 10]);
  });
});

describe("reclaimFromCorners", () => {
  test("a square of even side has its middle on a corner", () => {
    const map = square(4);
    const state = new Uint8Array(map.labels.length);
    const all = pixelsOf(map, 2);
    for (const at of all) state[at] = thin;
    // Four times the squared distance from another paint: 4 along the rim, 16 for the four pixels within.
    const distance = new Uint16Array(map.labels.length);
    for (const at of all)
      distance[at] = [11, 12].includes(at % 40) && [11, 12].includes(Math.floor(at / 40)) ? 16 : 4;
    reclaimFromCorners(map, distance, state, { thinner: all, left: all, apart: 2.45, reach: 2.2 });
    // From the middle corner the pixels outside are 2.5 straight ahead; the corners of the square are √(1.5² + 1.5²) away.
    expect([...all].filter((at) => state[at] === thin)).toEqual([]);
  });

  test("a square too small for the disc keeps nothing", () => {
    const map = square(3);
    const state = new Uint8Array(map.labels.length);
    const all = pixelsOf(map, 2);
    for (const at of all) state[at] = thin;
    const distance = new Uint16Array(map.labels.length);
    for (const at of all) distance[at] = at === 11 * 40 + 11 ? 16 : 4;
    reclaimFromCorners(map, distance, state, { thinner: all, left: all, apart: 2.45, reach: 2.2 });
    expect([...all].filter((at) => state[at] === thin)).toHaveLength(9);
  });
});
