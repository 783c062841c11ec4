import { expect, test } from "vitest";
import { describeComparison, describeMeasure, nameWeakest } from "../../src/cli/describe.ts";
import type { Comparison } from "../../src/measure/comparison.ts";
import type { Measure } from "../../src/measure/measure.ts";

const vision = { contrast: 10, grade: "weak", deltaE00: 30 } as const;
const colour = {
  tincture: "colour",
  share: 0.5,
  touchesBorder: true,
  reflectance: 10,
  vanishes: false,
  uneven: null,
} as const;

const measure: Measure = {
  file: "a.svg",
  proportions: [1, 1.618],
  distance: 320,
  colours: [
    { ...colour, id: "p1", hex: "#800000", name: "dark red" },
    {
      ...colour,
      id: "p2",
      hex: "#008000",
      name: "green",
      vanishes: true,
      uneven: { lightest: "#009000", darkest: "#007000" },
    },
    { ...colour, id: "p3", hex: "#777777", name: "grey", tincture: "unclassed", share: 0 },
  ],
  edges: [
    {
      a: "p1",
      b: "p2",
      names: ["dark red", "green"],
      length: 1.234,
      focusLength: 0.5,
      contrast: 12.34,
      grade: "weak",
      contrastRatio: 1.2,
      deltaE00: 60,
      hueOnly: true,
      tincture: "both colours",
      vision: { protan: vision, deutan: vision, tritan: vision, grey: { deltaE00: 5 } },
    },
  ],
  clearEdgeShare: 0,
  clarity: 27.4,
  weakestEdge: { a: "p1", b: "p2", contrast: 12.34 },
  focus: { source: "named", share: 0.1, clarity: 27.4, readsTo: 320 },
  warnings: ["one part is near the limit of sight"],
};

test("everything that there is to say about a drawing", () => {
  expect(describeMeasure(measure)).toBe(`\
a.svg: 1:1.618, seen from 320 flag heights away (a model of sight)

  id  colour                                        hex       share  reflectance  tincture
  p1  dark red                                      #800000  50.0 %       10.0 %  colour
  p2  green (vanishes, uneven, #009000 to #007000)  #008000  50.0 %       10.0 %  colour
  p3  grey                                          #777777   0.0 %       10.0 %

  edge              length  contrast  grade  contrast ratio  ΔE00
  dark red / green    1.23    12.3 %  weak             1.20  60.0  hue only, both colours

  Clear-edge share 0.0 %, clarity 27.4 %, weakest edge 12.3 % (dark red / green)
  Focus (named): 10.0 % of the flag, clarity 27.4 %, reads to 320 or more flag heights

  Note: one part is near the limit of sight`);
});

test("a focus that is told apart nowhere", () => {
  const focus = { source: "found", share: 0.1, clarity: null, readsTo: null } as const;
  expect(describeMeasure({ ...measure, focus })).toContain(
    "Focus (found): 10.0 % of the flag, clarity none, not told apart even from 10 flag heights\n",
  );
});

test("no edge has no weakest", () => {
  expect(nameWeakest({ ...measure, edges: [], weakestEdge: null })).toBe("none");
});

test("merged and parted edges have no figure where there is none", () => {
  const names = [
    ["dark red", "green"],
    ["dark red", "red"],
  ] as const;
  const comparison: Comparison = {
    change: { replace: "#008000", with: "#810000", only: "#a" },
    before: measure,
    after: { ...measure, warnings: [], focus: { source: "named", share: 0.1, clarity: 80, readsTo: null } },
    edges: [
      { a: "p1", b: "p2", names, length: 1, contrast: [12.34, 0], outcome: "merged" },
      {
        a: "p2",
        b: "p2s",
        names: [
          ["", ""],
          ["green", "red"],
        ],
        length: 2,
        contrast: [null, 46],
        outcome: "parted",
      },
    ],
    clearEdgeShare: [0, 0.667],
    clarity: [27.4, 60],
    verdict: "mixed",
  };
  expect(describeComparison(comparison)).toBe(`\
a.svg: #008000 → #810000, only #a, seen from 320 flag heights away (a model of sight)

  edge                               length  focus  before  grade       after  grade  outcome
  dark red / green → dark red / red    1.00   0.50  12.3 %  weak   one colour         merged
  green / red                          2.00                            46.0 %  clear  parted

  Clear-edge share 0.0 % → 66.7 %, clarity 27.4 % → 60.0 %
  Focus (named): clarity 27.4 % → 80.0 %, reads to 320 or more → under 10 flag heights
  Verdict: mixed`);
});

test("edges of the focus stand first, then the longest", () => {
  const [edge] = measure.edges;
  if (edge === undefined) throw new Error("the measure has an edge");
  const compared = (a: string, length: number) => ({
    a,
    b: "p9",
    names: [
      [a, "grey"],
      [a, "grey"],
    ] as const,
    length,
    contrast: [50, 50] as const,
    outcome: "same" as const,
  });
  const edges = [compared("p1", 1), compared("p2", 3), compared("p3", 2)];
  const after = { ...measure, edges: [{ ...edge, a: "p3", b: "p9", focusLength: 0.25 }] };
  const comparison: Comparison = {
    change: { replace: "#008000", with: "#810000" },
    before: measure,
    after,
    edges,
    clearEdgeShare: [1, 1],
    clarity: [100, 100],
    verdict: "no gain",
  };
  expect(describeComparison(comparison).match(/p\d \/ grey .*% {2}clear {2}same/g)).toEqual([
    "p3 / grey    2.00   0.25  50.0 %  clear  50.0 %  clear  same",
    "p2 / grey    3.00         50.0 %  clear  50.0 %  clear  same",
    "p1 / grey    1.00         50.0 %  clear  50.0 %  clear  same",
  ]);
});

test("a contrast is printed with the grade that stands beside it", () => {
  const [edge] = measure.edges;
  if (edge === undefined) throw new Error("the sample has an edge");
  const soft = { ...measure, edges: [{ ...edge, contrast: 44.96, grade: "soft" as const }] };
  expect(describeMeasure(soft)).toMatch(/dark red \/ green +1\.23 +44\.96 % +soft/);
  expect(describeMeasure({ ...measure, clearEdgeShare: 0.9996 })).toContain("Clear-edge share 99.96 %,");
});
