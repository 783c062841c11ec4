import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  down,
  left,
  right,
  ringFromCorner,
  type Stamp,
  stampsFor,
  stampsFromCorner,
  up,
} from "../../../src/regions/view/disc.ts";

const offsetsOf = ({ dx, dy }: Stamp): readonly (readonly [number, number])[] =>
  [...dx].map((x, index) => [x, dy[index] ?? Number.NaN] as const);
const textOf = (stamp: Stamp): readonly string[] =>
  offsetsOf(stamp)
    .map(([x, y]) => `${x} ${y}`)
    .sort();
const radii = fc.integer({ min: 0, max: 90 }).map((tenths) => tenths / 10 + 0.05);

/** The stamp of a disc that is open on these sides. */
function stampOf(radius: number, sides: number): Stamp {
  const stamp = stampsFor(radius)[sides];
  if (stamp === undefined) throw new Error(`no stamp ${sides}`);
  return stamp;
}

const all = left | right | up | down;

describe("stampsFor", () => {
  test("there is one for every choice of open sides", () => {
    expect(stampsFor(3)).toHaveLength(16);
    expect([left, right, up, down].sort()).toEqual([1, 2, 4, 8]);
  });

  test("open on all sides it is the whole disc", () => {
    fc.assert(
      fc.property(radii, (radius) => {
        const disc: string[] = [];
        for (let y = -12; y <= 12; y += 1)
          for (let x = -12; x <= 12; x += 1) if (Math.hypot(x, y) <= radius) disc.push(`${x} ${y}`);
        expect(textOf(stampOf(radius, all))).toEqual(disc.sort());
      }),
    );
  });

  test("each offset carries four times its squared length", () => {
    fc.assert(
      fc.property(radii, fc.integer({ min: 0, max: 15 }), (radius, sides) => {
        const stamp = stampOf(radius, sides);
        for (const [index, [x, y]] of offsetsOf(stamp).entries())
          expect(stamp.fourSquares[index]).toBeCloseTo(4 * (x ** 2 + y ** 2), 9);
      }),
    );
  });

  test("what is left out is nearer to a neighbour on a closed side; what is kept is of the disc", () => {
    const steps: readonly (readonly [number, number, number])[] = [
      [left, -1, 0],
      [right, 1, 0],
      [up, 0, -1],
      [down, 0, 1],
    ];
    fc.assert(
      fc.property(radii, fc.integer({ min: 0, max: 15 }), (radius, sides) => {
        const kept = new Set(textOf(stampOf(radius, sides)));
        const disc = offsetsOf(stampOf(radius, all));
        expect([...kept].every((offset) => disc.some(([x, y]) => `${x} ${y}` === offset))).toBe(true);
        for (const [x, y] of disc) {
          if (kept.has(`${x} ${y}`)) continue;
          const away = Math.hypot(x, y);
          const nearer = steps.some(
            ([side, dx, dy]) => (sides & side) === 0 && Math.hypot(x - dx, y - dy) < away,
          );
          expect(nearer).toBe(true);
        }
      }),
    );
  });

  test("open to the left only, a disc between centres has no offset to the right, above or below", () => {
    expect(textOf(stampOf(2, left))).toEqual(["-1 0", "-2 0", "0 0"]);
  });
});

/** The offsets to pixels `least` to `radius` from a corner, the pixel right below it being 0 0. */
function aroundCorner(radius: number, least = 0): readonly string[] {
  const disc: string[] = [];
  for (let y = -12; y <= 12; y += 1)
    for (let x = -12; x <= 12; x += 1) {
      const away = Math.hypot(x + 0.5, y + 0.5);
      if (away <= radius && away > least) disc.push(`${x} ${y}`);
    }
  return disc.sort();
}

describe("from a corner", () => {
  test("pixels whose centre is no further, and of a ring none that is nearer", () => {
    fc.assert(
      fc.property(radii, (radius) => {
        expect(textOf(stampsFromCorner(radius)[all] as Stamp)).toEqual(aroundCorner(radius));
        expect(textOf(ringFromCorner(radius, radius / 2))).toEqual(aroundCorner(radius, radius / 2));
      }),
    );
  });

  test("what is left out is nearer to the corner on a closed side; the four pixels around never are", () => {
    const steps: readonly (readonly [number, number, number])[] = [
      [left, -1, 0],
      [right, 1, 0],
      [up, 0, -1],
      [down, 0, 1],
    ];
    fc.assert(
      fc.property(radii, fc.integer({ min: 0, max: 15 }), (radius, sides) => {
        const kept = new Set(textOf(stampsFromCorner(radius)[sides] as Stamp));
        for (const [x, y] of offsetsOf(stampsFromCorner(radius)[all] as Stamp)) {
          if (kept.has(`${x} ${y}`)) continue;
          const away = Math.hypot(x + 0.5, y + 0.5);
          const isNearer = ([side, dx, dy]: (typeof steps)[number]): boolean =>
            (sides & side) === 0 && Math.hypot(x + 0.5 - dx, y + 0.5 - dy) < away - 1e-9;
          expect(steps.some(isNearer)).toBe(true);
        }
      }),
    );
    expect(textOf(stampsFromCorner(0.8)[0] as Stamp)).toEqual(["-1 -1", "-1 0", "0 -1", "0 0"]);
  });
});
