import { expect, test } from "vitest";
import { type Curve, placeLabels } from "../../../src/site/present/arclabel.ts";

const room = { leftmost: 2, rightmost: 198 };
const arc = (from: number, to: number, control: number, text = "65"): Curve => ({
  start: { x: 186, y: from },
  end: { x: 186, y: to },
  control,
  width: 6,
  text,
});

test("an arc alone has its contrast outside, at its middle, clear of its stroke", () => {
  const [label] = placeLabels([arc(20, 320, 26)], [], room);
  // A cubic's middle lies three quarters of the way to its control points: 186 − 0.75 · 160 = 66; half a stroke is 3.
  expect(label?.y).toBeCloseTo(170, 5);
  expect(label?.x).toBeLessThan(66 - 3);
  expect(label?.x).toBeGreaterThan(66 - 3 - 10);
});

test("of two arcs that lie close the inner one has its contrast inside, not on the outer one", () => {
  const [outer, inner] = placeLabels([arc(20, 320, 26, "78"), arc(20, 290, 40, "65")], [], room);
  expect(outer?.x).toBeLessThan(66);
  // The inner arc's middle: 186 − 0.75 · 146 = 76.5.
  expect((inner?.x ?? 0) - 16).toBeGreaterThan(76.5 + 3);
});

test("texts keep off each other, off the chips and inside the room", () => {
  const ends = [20, 60, 120, 200, 290, 330];
  const chips = ends.map((y) => ({ x: 186, y }));
  const curves = ends.flatMap((from, index) =>
    ends.slice(index + 1).map((to) => arc(from, to, 186 - 40 - (to - from) * 0.35)),
  );
  const labels = placeLabels(curves, chips, room);
  for (const [index, { x, y }] of labels.entries()) {
    expect(x - 16).toBeGreaterThanOrEqual(room.leftmost);
    expect(x).toBeLessThanOrEqual(room.rightmost);
    for (const other of labels.slice(index + 1)) {
      expect(Math.abs(other.y - y) >= 15 || Math.abs(other.x - x) >= 16, `${x} ${y}`).toBe(true);
    }
  }
});

test("where everything is taken a text still has a place", () => {
  const crowd = Array.from({ length: 40 }, () => arc(100, 130, 120, "100"));
  expect(placeLabels(crowd, [], room).length).toBe(40);
});
