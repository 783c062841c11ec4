import { expect, test } from "vitest";
import { chipX, placeArcs, type Stand } from "../../../src/site/present/arc.ts";
import { createFormat } from "../../../src/site/present/format.ts";

const stand = (hex: Stand["hex"], y: number): Stand => ({ hex, name: hex, reflectance: 0, x: chipX, y });
const stands = [stand("#ffffff", 20), stand("#aaaaaa", 120), stand("#555555", 300), stand("#333333", 306)];
const hexes = stands.map(({ hex }) => hex);
const joins = hexes.flatMap((from, index) =>
  hexes.slice(index + 1).map((to) => ({ from, to, length: 1, contrast: 50 })),
);
const arcs = placeArcs(joins, stands, (x) => x, 380, createFormat("en"));

test("every pair that meets is joined, from the middle of one chip to the middle of the other", () => {
  expect(arcs.length).toBe(6);
  for (const arc of arcs) expect(arc.path).toMatch(/^M186 [\d.]+H186C[-\d. ]+H186$/);
});

test("no contrast hides another, and none leaves the panel", () => {
  for (const [index, arc] of arcs.entries()) {
    expect(arc.textX).toBeGreaterThan(20);
    for (const other of arcs.slice(index + 1)) {
      const apart = Math.abs(arc.textY - other.textY) >= 14 || Math.abs(arc.textX - other.textX) >= 25;
      expect(apart, `${arc.path} and ${other.path}`).toBe(true);
    }
  }
});

test("a paint that does not stand on the scale has no arc", () => {
  expect(
    placeArcs(
      [{ from: "#ffffff", to: "#123456", length: 1, contrast: 9 }],
      stands,
      (x) => x,
      380,
      createFormat("en"),
    ),
  ).toEqual([]);
});
