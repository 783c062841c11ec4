import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../src/regions/labelmap.ts";
import { firstCharge, traceLines } from "../../src/regions/traceline.ts";
import { drawMap, readMap } from "./picture.ts";

/** Length of all lines by pair, in pixels: `1 2` → 600. */
function lengthsOf(map: LabelMap): Readonly<Record<string, number>> {
  const sums: Record<string, number> = {};
  for (const { a, b, length } of traceLines(map)) sums[`${a} ${b}`] = (sums[`${a} ${b}`] ?? 0) + length;
  return sums;
}

/** How far a length is from what geometry says, as a fraction. */
const errorOf = (length: number | undefined, closedForm: number): number =>
  Math.abs((length ?? Number.NaN) / closedForm - 1);

const width = 900;
const height = 600;

describe("straight lines", () => {
  test("along the pixels they are exact", () => {
    expect(lengthsOf(drawMap(width, height, (_, y) => (y < 200 ? 1 : y < 400 ? 2 : 3)))).toEqual({
      "1 2": 900,
      "2 3": 900,
    });
    expect(lengthsOf(drawMap(width, height, (x) => (x < 301 ? 1 : 2)))).toEqual({ "1 2": 600 });
  });

  test.each(Array.from({ length: 45 }, (_, index) => 4 * index + 1.3))(
    "at %f° across a square, within 1 %",
    (degrees) => {
      const angle = (degrees * Math.PI) / 180;
      const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
      const map = drawMap(600, 600, (x, y) => ((x - 300) * dy - (y - 300) * dx > 0 ? 2 : 1));
      // A chord through the middle of a square of side 600.
      expect(errorOf(lengthsOf(map)["1 2"], 600 / Math.max(Math.abs(dx), Math.abs(dy)))).toBeLessThan(0.01);
    },
  );

  test.each([20, 60, 150])("short diagonals, of %i pixels across a strip, within 1 % and a pixel", (side) => {
    const map = drawMap(width, side, (x, y) => (x - 400 - 0.7 * y > 0 ? 2 : 1));
    const length = Math.hypot(side, 0.7 * side);
    expect(Math.abs((lengthsOf(map)["1 2"] ?? Number.NaN) - length)).toBeLessThan(0.01 * length + 1);
  });
});

describe("discs", () => {
  test.each([30, 45, 60, 90, 120, 180, 240, 290])("of radius %i, within 1 % of 2 π r", (radius) => {
    const map = drawMap(width, height, (x, y) => (Math.hypot(x - 450.2, y - 300.4) < radius ? 2 : 1));
    expect(errorOf(lengthsOf(map)["1 2"], 2 * Math.PI * radius)).toBeLessThan(0.01);
  });

  // Measured in pixels this small, tolerance and radius are of one size; no law is checked down here.
  test.each([8, 12, 20])("of radius %i, within 5 %", (radius) => {
    const map = drawMap(80, 80, (x, y) => (Math.hypot(x - 40.3, y - 39.6) < radius ? 2 : 1));
    expect(errorOf(lengthsOf(map)["1 2"], 2 * Math.PI * radius)).toBeLessThan(0.05);
  });

  test("an ellipse of 240 by 120, within 1 %", () => {
    const map = drawMap(width, height, (x, y) => (Math.hypot((x - 450) / 240, (y - 300) / 120) < 1 ? 2 : 1));
    // Ramanujan's second approximation, good to 1e-5 at this shape: h = ((240 − 120) / (240 + 120))² = 1/9.
    const h = 1 / 9;
    const perimeter = Math.PI * 360 * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
    expect(errorOf(lengthsOf(map)["1 2"], perimeter)).toBeLessThan(0.01);
  });

  test("a ring has both of its circles", () => {
    const map = drawMap(width, height, (x, y) => {
      const away = Math.hypot(x - 450, y - 300);
      return away < 200 && away > 120 ? 2 : 1;
    });
    expect(traceLines(map)).toHaveLength(2);
    expect(errorOf(lengthsOf(map)["1 2"], 2 * Math.PI * 320)).toBeLessThan(0.01);
  });
});

describe("crosses and wedges", () => {
  test.each([40, 100, 180])("a cross with arms %i wide, within 1 %", (arm) => {
    const map = drawMap(width, height, (x, y) =>
      Math.abs(y - 300) < arm / 2 || Math.abs(x - 300) < arm / 2 ? 2 : 1,
    );
    // Both flanks of each arm, less where they cross.
    expect(errorOf(lengthsOf(map)["1 2"], 2 * (900 - arm) + 2 * (600 - arm))).toBeLessThan(0.01);
  });

  test.each([40, 100])("a saltire with arms %i wide, within 1 %", (arm) => {
    const map = drawMap(600, 600, (x, y) =>
      Math.min(Math.abs(x - y), Math.abs(x + y - 600)) < (arm / 2) * Math.SQRT2 ? 2 : 1,
    );
    // Four triangles: the arm cuts √2 · arm / 2 off either end of a side, and two legs of side/√2 are left of each.
    const side = 600 - arm * Math.SQRT2;
    expect(errorOf(lengthsOf(map)["1 2"], 4 * 2 * (side / Math.SQRT2))).toBeLessThan(0.01);
  });

  test.each([150, 300, 450, 700])(
    "a wedge from the hoist, %i deep, between two stripes, within 1 %",
    (depth) => {
      const map = drawMap(width, height, (x, y) =>
        x / depth + Math.abs(y - 300) / 300 < 1 ? 3 : y < 300 ? 1 : 2,
      );
      const lengths = lengthsOf(map);
      expect(errorOf(lengths["1 3"], Math.hypot(depth, 300))).toBeLessThan(0.01);
      expect(errorOf(lengths["2 3"], Math.hypot(depth, 300))).toBeLessThan(0.01);
      expect(errorOf(lengths["1 2"], 900 - depth)).toBeLessThan(0.01);
    },
  );

  test.each([0, 10, 17, 30, 45])("a square of 300 turned by %i°, within 1 %", (degrees) => {
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const map = drawMap(width, height, (x, y) => {
      const [dx, dy] = [x - 450, y - 300];
      return Math.max(Math.abs(dx * cos + dy * sin), Math.abs(dy * cos - dx * sin)) < 150 ? 2 : 1;
    });
    expect(errorOf(lengthsOf(map)["1 2"], 1200)).toBeLessThan(0.01);
  });
});

describe("junctions and loops", () => {
  test("where three labels meet, three lines end", () => {
    // A pall: the angle of each field is a third of a turn.
    const map = drawMap(
      600,
      600,
      (x, y) =>
        1 + Math.floor((((Math.atan2(y - 300, x - 300) + 2 * Math.PI) % (2 * Math.PI)) * 3) / (2 * Math.PI)),
    );
    const lines = traceLines(map);
    expect(lines.map(({ a, b }) => `${a} ${b}`).sort()).toEqual(["1 2", "1 3", "2 3"]);
    for (const { points } of lines) {
      const ends = [points.slice(0, 2), points.slice(-2)];
      expect(ends.some(([x = 0, y = 0]) => Math.hypot(x - 300, y - 300) < 1.5)).toBe(true);
    }
    const lengths = lengthsOf(map);
    // Directions 0°, 120° and 240° to the border of the square.
    expect(errorOf(lengths["1 3"], 300)).toBeLessThan(0.01);
    expect(errorOf(lengths["1 2"], 300 / Math.sin((2 * Math.PI) / 3))).toBeLessThan(0.01);
    expect(errorOf(lengths["2 3"], 300 / Math.sin((2 * Math.PI) / 3))).toBeLessThan(0.01);
  });

  test("a loop comes back to where it began", () => {
    const [line] = traceLines(drawMap(100, 100, (x, y) => (Math.hypot(x - 50, y - 50) < 30 ? 2 : 1)));
    expect(line?.points.slice(0, 2)).toEqual(line?.points.slice(-2));
  });

  test("a rectangle of whole pixels loses little at its corners", () => {
    const map = drawMap(200, 200, (x, y) => (x > 40 && x < 160 && y > 60 && y < 140 ? 2 : 1));
    // 2 · (120 + 80); each corner may be cut from one middle of a pixel's side to the next, 1 − √½ of a pixel.
    expect(lengthsOf(map)["1 2"]).toBeLessThanOrEqual(400);
    expect(lengthsOf(map)["1 2"]).toBeGreaterThanOrEqual(400 - 4 * 1.25);
  });

  test("one odd pixel still has an outline", () => {
    // Between π, the circle inside it, and 4, its sides.
    const length = lengthsOf(readMap("11111", "11111", "11211", "11111", "11111"))["1 2"];
    expect(length).toBeGreaterThan(2);
    expect(length).toBeLessThanOrEqual(4);
  });

  test("a checkerboard: four lines meet at the corner and every side is counted once", () => {
    expect(traceLines(readMap("12", "21"))).toHaveLength(4);
    expect(lengthsOf(readMap("12", "21"))).toEqual({ "1 2": 4 });
    // Eight by eight fields of 20 pixels: seven inner lines each way, 160 long.
    const board = drawMap(160, 160, (x, y) => 1 + ((Math.floor(x / 20) + Math.floor(y / 20)) % 2));
    expect(lengthsOf(board)).toEqual({ "1 2": 2 * 7 * 160 });
  });

  test("a corner where four labels meet", () => {
    expect(lengthsOf(readMap("12", "34"))).toEqual({
      "1 2": 1,
      "1 3": 1,
      "2 4": 1,
      "3 4": 1,
    });
  });

  test("two fields that touch at a corner do not meet", () => {
    expect(Object.keys(lengthsOf(readMap("12", "31"))).sort()).toEqual(["1 2", "1 3"]);
  });
});

describe("what is no line", () => {
  test("the border of the picture", () => {
    expect(traceLines(drawMap(50, 40, () => 1))).toEqual([]);
  });

  test("the border of transparent parts", () => {
    expect(traceLines(readMap("111", "101", "111"))).toEqual([]);
    expect(traceLines(readMap("102"))).toEqual([]);
    expect(lengthsOf(readMap("10", "12"))).toEqual({ "1 2": 1 });
  });

  test("a pennon has the lines inside it and no outline", () => {
    // A swallowtail: transparent outside, two stripes inside that meet from hoist to the cut, 600 of 900 pixels.
    const map = drawMap(width, height, (x, y) => (x - 600 >= Math.abs(y - 300) ? 0 : y < 300 ? 1 : 2));
    expect(lengthsOf(map)).toEqual({ "1 2": 600 });
  });

  test("a map of one pixel", () => {
    expect(traceLines(readMap("1"))).toEqual([]);
  });
});

describe("any map", () => {
  const maps = fc
    .record({
      width: fc.integer({ min: 1, max: 12 }),
      height: fc.integer({ min: 1, max: 12 }),
    })
    .chain(({ width: w, height: h }) =>
      fc
        .array(fc.integer({ min: 0, max: 3 }), {
          minLength: w * h,
          maxLength: w * h,
        })
        .map((labels) => ({
          width: w,
          height: h,
          labels: Uint16Array.from(labels),
          exactShare: 1,
        })),
    );

  /** Sides of pixels between two labels, by pair. */
  function countSides(map: LabelMap): Readonly<Record<string, number>> {
    const sides: Record<string, number> = {};
    const count = (one = 0, other = 0): void => {
      if (one === 0 || other === 0 || one === other) return;
      const pair = `${Math.min(one, other)} ${Math.max(one, other)}`;
      sides[pair] = (sides[pair] ?? 0) + 1;
    };
    for (let y = 0; y < map.height; y += 1) {
      for (let x = 0; x < map.width; x += 1) {
        const at = y * map.width + x;
        if (x > 0) count(map.labels[at], map.labels[at - 1]);
        if (y > 0) count(map.labels[at], map.labels[at - map.width]);
      }
    }
    return sides;
  }

  test("has lines for exactly the pairs that share the side of a pixel, none longer than these sides", () => {
    fc.assert(
      fc.property(maps, (map) => {
        const sides = countSides(map);
        const lengths = lengthsOf(map);
        expect(Object.keys(lengths).sort()).toEqual(Object.keys(sides).sort());
        for (const [pair, count] of Object.entries(sides))
          expect(lengths[pair]).toBeLessThanOrEqual(count + 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  test("has lines that join points inside the picture, and a length that is theirs", () => {
    fc.assert(
      fc.property(maps, (map) => {
        for (const { a, b, points, length } of traceLines(map)) {
          expect(a).toBeLessThan(b);
          let sum = 0;
          for (let at = 0; at < points.length; at += 2) {
            const [x = -1, y = -1] = points.slice(at, at + 2);
            expect(x >= 0 && x <= map.width && y >= 0 && y <= map.height).toBe(true);
            if (at > 0) sum += Math.hypot(x - (points[at - 2] ?? 0), y - (points[at - 1] ?? 0));
          }
          expect(length).toBeCloseTo(sum, 9);
        }
      }),
    );
  });
});

describe("focus and outlines along a line", () => {
  /** Each pair with the length, focus length and outline length of each charge, rounded to pixels. */
  const tracedOf = (map: LabelMap, focus: Uint8Array) => {
    const sums: Record<string, number[]> = {};
    for (const { a, b, length, focusShare, outlineShares } of traceLines(map, focus)) {
      const row = sums[`${a} ${b}`] ?? [];
      sums[`${a} ${b}`] = row;
      for (const [index, share] of [1, focusShare, ...outlineShares].entries())
        row[index] = (row[index] ?? 0) + length * (share ?? 0);
    }
    return Object.fromEntries(Object.entries(sums).map(([pair, row]) => [pair, row.map(Math.round)]));
  };
  const within = (left: number, top: number, right: number, bottom: number) => (x: number, y: number) =>
    x > left && x < right && y > top && y < bottom;

  test("a charge's outline is where it ends, its inner lines are none of it", () => {
    // A square of 100, its left 40 of paint 2 and the rest of paint 3, on paint 1.
    const square = within(100, 100, 200, 200);
    const map = drawMap(300, 300, (x, y) => (square(x, y) ? (x < 140 ? 2 : 3) : 1));
    const focus = Uint8Array.from(map.labels, (label) => (label === 1 ? 0 : firstCharge));
    // Outline with the field 40 + 100 + 40 and 60 + 100 + 60; the inner line of 100 is focus and no outline.
    const traced = tracedOf(map, focus);
    expect(traced["1 2"]?.slice(1)).toEqual([traced["1 2"]?.[0], traced["1 2"]?.[0]]);
    expect(traced["1 3"]?.slice(1)).toEqual([traced["1 3"]?.[0], traced["1 3"]?.[0]]);
    expect(Math.abs((traced["1 2"]?.[0] ?? 0) - 180)).toBeLessThan(2);
    expect(Math.abs((traced["1 3"]?.[0] ?? 0) - 220)).toBeLessThan(2);
    expect(traced["2 3"]).toEqual([100, 100]);
  });

  test("each of two charges has its own outline, what is only focus has none", () => {
    const [one, two, small] = [within(20, 20, 60, 60), within(100, 20, 180, 60), within(220, 20, 230, 30)];
    const map = drawMap(300, 100, (x, y) => (one(x, y) || two(x, y) || small(x, y) ? 2 : 1));
    const focus = Uint8Array.from(map.labels, (_, at) => {
      const [x, y] = [(at % 300) + 0.5, Math.floor(at / 300) + 0.5];
      return one(x, y) ? firstCharge : two(x, y) ? firstCharge + 1 : small(x, y) ? 1 : 0;
    });
    const lines = traceLines(map, focus).map(({ length, focusShare, outlineShares }) => ({
      length: Math.round(length / 10) * 10,
      focusShare,
      outlines: [outlineShares[0] ?? 0, outlineShares[1] ?? 0],
    }));
    expect(lines.sort((x, y) => y.length - x.length)).toEqual([
      { length: 240, focusShare: 1, outlines: [0, 1] },
      { length: 160, focusShare: 1, outlines: [1, 0] },
      { length: 40, focusShare: 1, outlines: [0, 0] },
    ]);
  });

  test("a charge that ends within its own paint has no line there", () => {
    // Focus is the left half of a square of paint 2: its outline runs along three of its sides alone.
    const square = within(100, 100, 200, 200);
    const map = drawMap(300, 300, (x, y) => (square(x, y) ? 2 : 1));
    const focus = Uint8Array.from(map.labels, (label, at) =>
      label === 2 && at % 300 < 150 ? firstCharge : 0,
    );
    const [length = 0, focused, outline] = tracedOf(map, focus)["1 2"] ?? [];
    expect(Math.abs(length - 400)).toBeLessThan(3);
    expect(focused).toBeCloseTo(length / 2, -1);
    expect(outline).toBe(focused);
  });

  test("two charges side by side: the line between them bounds both", () => {
    const map = drawMap(200, 100, (x, y) =>
      within(40, 20, 100, 80)(x, y) ? 2 : within(100, 20, 160, 80)(x, y) ? 3 : 1,
    );
    const focus = Uint8Array.from(map.labels, (label) => (label === 1 ? 0 : firstCharge + label - 2));
    expect(tracedOf(map, focus)["2 3"]).toEqual([60, 60, 60, 60]);
  });

  test("without marks there is no focus", () => {
    for (const { focusShare, outlineShares } of traceLines(drawMap(50, 50, (x) => (x < 20 ? 1 : 2))))
      expect([focusShare, outlineShares]).toEqual([0, []]);
  });
});
