// Flags to judge: constructed ones, random ones, and which of them lie so near a limit that rounding decides.
import fc from "fast-check";
import type { Hex } from "../../src/colour/colour.ts";
import { difference } from "./oracle.ts";
import { shades } from "./subject.ts";
import { type Flag, judge, marksOf } from "./twin.ts";

const { white, yellow, red, black, green, orange } = shades;
const darkBlue = shades["dark blue"];
const lightBlue = shades["light blue"];

/** A charge on a field, a bordered charge, stripes, a canton, slivers, near-equal shades. */
export const constructed: readonly (readonly [string, Flag])[] = [
  ["red charge on black", { paints: [black, red], edges: [[0, 1, 2, 2]], charges: [[[0, 1, 2]]] }],
  [
    "white charge on light blue",
    { paints: [lightBlue, white], edges: [[0, 1, 1.5, 1.5]], charges: [[[0, 1, 1.5]]] },
  ],
  ["two stripes", { paints: [green, red], edges: [[0, 1, 1.5, 0]] }],
  [
    "three stripes",
    {
      paints: [white, yellow, red],
      edges: [
        [0, 1, 1.5, 0],
        [1, 2, 1.5, 0],
      ],
    },
  ],
  [
    "dark charge on red, yellow beside it",
    {
      paints: [red, yellow, black],
      edges: [
        [0, 1, 1, 0],
        [0, 2, 1.2, 1.2],
      ],
      charges: [[[0, 2, 1.2]]],
    },
  ],
  [
    "three that all meet",
    {
      paints: [darkBlue, red, green],
      edges: [
        [0, 1, 1, 1],
        [0, 2, 0.7, 0],
        [1, 2, 0.4, 0.4],
      ],
      charges: [
        [
          [0, 1, 1],
          [1, 2, 0.4],
        ],
      ],
    },
  ],
  [
    "fimbriated charge",
    {
      paints: [green, white, red],
      edges: [
        [0, 1, 2, 0],
        [1, 2, 1.8, 1.8],
      ],
      charges: [[[1, 2, 1.8]]],
    },
  ],
  [
    "charge over two stripes: a third of its outline lies on one of them",
    {
      paints: [white, green, red],
      edges: [
        [0, 1, 1.5, 0],
        [0, 2, 1.3, 1.3],
        [1, 2, 0.7, 0.7],
      ],
      charges: [
        [
          [0, 2, 1.3],
          [1, 2, 0.7],
        ],
      ],
    },
  ],
  [
    "two charges, one of them with an inner line and a sliver",
    {
      paints: [darkBlue, white, orange, red],
      edges: [
        [0, 1, 1, 1],
        [0, 2, 0.8, 0.8],
        [1, 3, 0.3, 0.3],
        [0, 3, 0.02, 0.02],
      ],
      charges: [
        [
          [0, 1, 1],
          [0, 3, 0.02],
        ],
        [[0, 2, 0.8]],
      ],
    },
  ],
  [
    "three dark colours of which any may change",
    {
      paints: [shades["dark green"], shades.purple, shades.brown],
      edges: [
        [0, 1, 1, 0],
        [0, 2, 1, 0],
        [1, 2, 1, 0],
      ],
    },
  ],
  [
    "near-equal reds that meet",
    {
      paints: [red, "#c4222f", white],
      edges: [
        [0, 1, 1, 1],
        [1, 2, 1, 0],
        [0, 2, 0.5, 0.2],
      ],
      charges: [
        [
          [0, 1, 1],
          [0, 2, 0.2],
        ],
      ],
    },
  ],
];

export const randomHex = fc
  .integer({ min: 0, max: 0xffffff })
  .map((n): Hex => `#${n.toString(16).padStart(6, "0")}`);

/** Two to four paints that meet in pairs, some along slivers of under 1 %, with a charge or none. */
export const randomFlag: fc.Arbitrary<Flag> = fc
  .tuple(
    fc.array(fc.oneof(randomHex, fc.constantFrom(...Object.values(shades))), { minLength: 2, maxLength: 4 }),
    fc.array(
      fc.tuple(
        fc.oneof(
          fc.integer({ min: 1, max: 40 }).map((n) => n / 10),
          fc.constant(0.005),
        ),
        fc.constantFrom(0, 0.5, 1),
        fc.boolean(),
      ),
      { minLength: 6, maxLength: 6 },
    ),
  )
  .map(([paints, lines]) => {
    const edges: (readonly [number, number, number, number])[] = [];
    for (let b = 1, at = 0; b < paints.length; b += 1)
      for (let a = 0; a < b; a += 1, at += 1) {
        const [length = 1, focus = 0, isThere = true] = lines[at] ?? [];
        if (isThere || a === b - 1) edges.push([a, b, length, length * focus]);
      }
    // The charge is the last paint: what it meets with the focus is its outline.
    const last = paints.length - 1;
    const outline = edges.filter(([, b, , focus]) => b === last && focus > 0);
    return {
      paints,
      edges,
      charges: outline.length === 0 ? [] : [outline.map(([a, b, , focus]) => [a, b, focus] as const)],
    };
  });

/** Whether two correct implementations may round it to different sides of a limit. */
export function isBorderline(flag: Flag, next: readonly string[]): boolean {
  const judged = judge(flag, next);
  const isNear = (value: number, limit: number) => Math.abs(value - limit) < 1e-4;
  const marks = [marksOf(judged, "before"), marksOf(judged, "after")];
  // culori's own rounding of the matrices moves ΔE00 by some hundredths.
  const pairs = flag.edges.flatMap(([a, b]) => [
    difference(flag.paints[a] ?? "", flag.paints[b] ?? ""),
    difference(next[a] ?? "", next[b] ?? ""),
  ]);
  return (
    pairs.some((deltaE00) => Math.abs(deltaE00 - 5) < 0.05) ||
    judged.some(({ before, after }) => {
      const [was, is] = [before ?? 0, after];
      const moved = Math.abs(is - was);
      const capped = Math.abs(Math.min(is, 60) - Math.min(was, 60));
      return [was, is].some((percent) => isNear(percent, 45)) || isNear(moved, 3) || isNear(capped, 3);
    }) ||
    marks
      .flatMap(({ clarity, strength }) => [clarity ?? 0, strength ?? 0])
      .some((percent) => isNear(percent % 1, 0.5))
  );
}
