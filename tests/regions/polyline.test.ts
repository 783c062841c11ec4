import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measurePath, simplify } from "../../src/regions/polyline.ts";

describe("measurePath", () => {
  test("adds up the pieces", () => {
    // 3–4–5 and 5–12–13.
    expect(measurePath([0, 0, 3, 4, 8, 16])).toBe(5 + 13);
  });

  test("one point, and none, have no length", () => {
    expect(measurePath([4, 4])).toBe(0);
    expect(measurePath([])).toBe(0);
  });
});

describe("simplify", () => {
  test("leaves out what lies on the straight piece", () => {
    expect(simplify([0, 0, 1, 1, 2, 2, 5, 5], 0)).toEqual([0, 0, 5, 5]);
  });

  test("keeps a point further away than the tolerance, and not one at it", () => {
    expect(simplify([0, 0, 5, 2, 10, 0], 1.9)).toEqual([0, 0, 5, 2, 10, 0]);
    expect(simplify([0, 0, 5, 2, 10, 0], 2)).toEqual([0, 0, 10, 0]);
  });

  test("splits a closed path at the point furthest from its start", () => {
    expect(simplify([0, 0, 10, 0, 10, 10, 0, 10, 0, 0], 1)).toEqual([0, 0, 10, 0, 10, 10, 0, 10, 0, 0]);
  });

  test("two points stay as they are, in a list of their own", () => {
    const points = [1, 2, 3, 4];
    expect(simplify(points, 100)).toEqual(points);
    expect(simplify(points, 100)).not.toBe(points);
  });

  const path = fc
    .array(fc.integer({ min: -50, max: 50 }), { minLength: 4, maxLength: 60 })
    .map((list) => list.slice(0, 2 * (list.length >> 1)));

  test("no point left out lies further than the tolerance from what is left", () => {
    fc.assert(
      fc.property(path, fc.double({ min: 0.1, max: 20, noNaN: true }), (points, tolerance) => {
        const kept = simplify(points, tolerance);
        expect(kept.slice(0, 2)).toEqual(points.slice(0, 2));
        expect(kept.slice(-2)).toEqual(points.slice(-2));
        for (let at = 0; at < points.length; at += 2) {
          expect(distanceToPath(kept, points[at] ?? 0, points[at + 1] ?? 0)).toBeLessThanOrEqual(
            tolerance + 1e-9,
          );
        }
        expect(measurePath(kept)).toBeLessThanOrEqual(measurePath(points) + 1e-9);
      }),
    );
  });
});

/** Distance of a point to the nearest infinite line through a piece of the path (its points where a piece has no length). */
function distanceToPath(path: readonly number[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let at = 2; at < path.length; at += 2) {
    const [ax = 0, ay = 0, bx = 0, by = 0] = path.slice(at - 2, at + 2);
    const chord = Math.hypot(bx - ax, by - ay);
    const away =
      chord === 0
        ? Math.hypot(x - ax, y - ay)
        : Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / chord;
    least = Math.min(least, away);
  }
  return least;
}
