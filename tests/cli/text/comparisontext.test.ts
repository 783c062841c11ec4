import { expect, test } from "vitest";
import { describeComparison, describeVerdict } from "../../../src/cli/text/comparisontext.ts";
import type { Comparison } from "../../../src/measure/comparison.ts";
import { measure } from "../measured.ts";

test("merged and parted edges have no figure where there is none", () => {
  const names = [
    ["dark red", "green"],
    ["dark red", "red"],
  ] as const;
  const merged = {
    a: "p1",
    b: "p2",
    names,
    length: 1,
    contrast: [12.34, 0],
    outcome: "merged",
  } as const;
  const parted = {
    a: "p2",
    b: "p2s",
    names: [
      ["", ""],
      ["green", "red"],
    ],
    length: 2,
    contrast: [null, 40],
    outcome: "parted",
  } as const;
  const comparison: Comparison = {
    change: { replace: "#008000", with: "#810000", only: "#a" },
    before: measure,
    after: {
      ...measure,
      warnings: [],
      edges: measure.edges.flatMap((edge) => [
        edge,
        { ...edge, a: "p2", b: "p2s", focusLength: 0, contrast: 40, grade: "soft", nearLine: false },
      ]),
      focus: { source: "named", share: 0.1, clarity: 80, from: [], lastsTo: null },
    },
    edges: [merged, parted],
    clearEdgeShare: [0, 0.667],
    clarity: [27.4, 60],
    strength: [20.6, 51],
    verdict: "clearer, at a price",
    price: [parted, merged],
  };
  expect(describeComparison(comparison)).toBe(`\
a.svg: #008000 → #810000, only #a, seen from 320 flag heights away (a model of sight)

  Clarity 27.4 % → 60.0 %, strength 20.6 % → 51.0 %
  Clearer, at a price: green / red is parted at 40.0 %, soft; dark red / green merges, from 12.3 %
  to one colour.
  Focus (named): clarity 27.4 % → 80.0 %, lasts to under 10 flag heights

  edge                               length  focus  before  grade                     after  grade  outcome
  dark red / green → dark red / red    1.00   0.50  12.3 %  weak, near the line  one colour         merged
  green / red                          2.00                                          40.0 %  soft   parted`);
});

test("a verdict with its price in one sentence; of many edges four are named", () => {
  const loss = (name: string, contrast: readonly [number, number], outcome: "lost" | "worse") => ({
    a: "p1",
    b: "p2",
    names: [
      [name, "white"],
      [name, "yellow"],
    ] as const,
    length: 1,
    contrast,
    outcome,
  });
  const lost = loss("black", [84, 27.3], "lost");
  const worse = loss("red", [72.4, 51], "worse");
  expect(describeVerdict({ verdict: "clearer", price: [] })).toBe("Clearer.");
  expect(describeVerdict({ verdict: "no gain", price: [] })).toBe("No gain.");
  expect(describeVerdict({ verdict: "clearer, at a price", price: [lost] })).toBe(
    "Clearer, at a price: black / white is lost, from 84.0 % to 27.3 %.",
  );
  expect(describeVerdict({ verdict: "mixed", price: [worse, lost, worse, worse, worse, lost] })).toBe(
    "Mixed: red / white gets worse, from 72.4 % to 51.0 %; black / white is lost, from 84.0 % to 27.3 %; red / white gets worse, from 72.4 % to 51.0 %; red / white gets worse, from 72.4 % to 51.0 %; 2 more.",
  );
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
  const sideOf = (focusLength: number) =>
    ["p1", "p2", "p3"].map((a) => ({
      ...edge,
      a,
      b: "p9",
      focusLength: a === "p3" ? focusLength : 0,
      contrast: 50,
      grade: "clear" as const,
      nearLine: false,
    }));
  const comparison: Comparison = {
    change: { replace: "#008000", with: "#810000" },
    before: { ...measure, edges: sideOf(0.25) },
    after: { ...measure, edges: sideOf(0.25) },
    edges,
    clearEdgeShare: [1, 1],
    clarity: [100, 100],
    strength: [83, 83],
    verdict: "no gain",
    price: [],
  };
  expect(describeComparison(comparison).match(/p\d \/ grey .*% {2}clear {2}same/g)).toEqual([
    "p3 / grey    2.00   0.25  50.0 %  clear  50.0 %  clear  same",
    "p2 / grey    3.00         50.0 %  clear  50.0 %  clear  same",
    "p1 / grey    1.00         50.0 %  clear  50.0 %  clear  same",
  ]);
});
