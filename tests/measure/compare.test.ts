// Outcomes and verdicts. Contrasts by hand, as in figures.test.ts: white–red 59.6, red–black 40.9, red–blue 24.3,
// white–blue 76.8, white–yellow 3.8, black–blue 17.7, yellow–black 84.9, yellow–blue 74.4.
import { describe, expect, test } from "vitest";
import { defaultCloth } from "../../src/colour/cloth.ts";
import type { Hex } from "../../src/colour/colour.ts";
import { compareLooks } from "../../src/measure/compare.ts";
import type { EdgeTable } from "../../src/measure/table.ts";
import { frame, looksOf, tableOf } from "./build.ts";

const two = tableOf([["p1"], ["p2"]], [[0, 1, 1]]);

function compare(table: EdgeTable, before: readonly Hex[], after: readonly Hex[]) {
  const change = { replace: "#000000", with: "#ffffff" };
  return compareLooks(change, frame, table, looksOf(...before), looksOf(...after), defaultCloth);
}

const outcomesOf = (table: EdgeTable, before: readonly Hex[], after: readonly Hex[]): readonly string[] =>
  compare(table, before, after).edges.map(({ outcome }) => outcome);

describe("outcome of an edge", () => {
  test.each([
    // 40.9 to 84.9
    ["gained", ["#000000", "#ff0000"], ["#000000", "#ffff00"]],
    // 59.6 to 3.8
    ["lost", ["#ffffff", "#ff0000"], ["#ffffff", "#ffff00"]],
    // 17.7 to 40.9, neither clear
    ["better", ["#000000", "#0000ff"], ["#000000", "#ff0000"]],
    ["worse", ["#000000", "#ff0000"], ["#000000", "#0000ff"]],
    // 59.6 to 76.8, both clear
    ["better", ["#ffffff", "#ff0000"], ["#ffffff", "#0000ff"]],
    ["worse", ["#ffffff", "#0000ff"], ["#ffffff", "#ff0000"]],
    ["same", ["#ffffff", "#ff0000"], ["#ffffff", "#ff0000"]],
    // One step of 8 bits: under 3 points.
    ["same", ["#ffffff", "#ff0000"], ["#ffffff", "#fe0000"]],
    ["merged", ["#ffffff", "#ff0000"], ["#ffffff", "#ffffff"]],
    // ΔE00 of black and nearly black is under 5.
    ["merged", ["#000000", "#ff0000"], ["#000000", "#050505"]],
  ] as const)("%s: %j to %j", (outcome, before, after) => {
    expect(outcomesOf(two, before, after)).toEqual([outcome]);
  });

  test("crossing into clear is gained, however small the step", () => {
    // On black cloth (5) contrast is 45 at reflectance R with 125 (R − 5) / (R + 30) = 45, R = 24.6875, Y = 0.24609.
    // Greys: #87 has Y 0.24228 (44.65 %), #88 0.24620 (45.01 %), from ((c / 255 + 0.055) / 1.055) ^ 2.4.
    const { edges } = compare(two, ["#000000", "#878787"], ["#000000", "#888888"]);
    expect(edges[0]?.contrast[0]).toBeLessThan(45);
    expect(edges[0]?.contrast[1]).toBeGreaterThanOrEqual(45);
    expect(edges[0]?.outcome).toBe("gained");
  });

  test("two colours that were one to the eye before, and still are, do not merge", () => {
    expect(outcomesOf(two, ["#000000", "#030303"], ["#000000", "#050505"])).toEqual(["same"]);
  });

  test("parted: a paint and its selected part had no edge before and have one after, with its length", () => {
    const table = tableOf(
      [["p1", 0], ["p1s", 0], ["p2"]],
      [
        [0, 1, 2],
        [0, 2, 1],
      ],
    );
    const { edges, before, after } = compare(
      table,
      ["#ff0000", "#ff0000", "#ffffff"],
      ["#ff0000", "#ffff00", "#ffffff"],
    );
    expect(edges[0]).toMatchObject({
      a: "p1",
      b: "p1s",
      length: 2,
      outcome: "parted",
    });
    // Yellow on red: 79.224 and 22.008, 125 · 57.216 / 126.232
    expect(edges[0]?.contrast[0]).toBeNull();
    expect(edges[0]?.contrast[1]).toBeCloseTo(56.6576, 4);
    expect(before.edges.map(({ a, b }) => [a, b])).toEqual([["p1", "p2"]]);
    expect(after.edges).toHaveLength(2);
  });

  test("a selected part that still looks like its paint has no edge", () => {
    const table = tableOf(
      [["p1", 0], ["p1s", 0], ["p2"]],
      [
        [0, 1, 2],
        [0, 2, 1],
      ],
    );
    expect(outcomesOf(table, ["#ff0000", "#ff0000", "#ffffff"], ["#ff0000", "#fe0000", "#ffffff"])).toEqual([
      "same",
    ]);
  });
});

describe("a merged edge", () => {
  test("keeps its length and counts as contrast 0 in the after figures", () => {
    const table = tableOf(
      [["p1"], ["p2"], ["p3"]],
      [
        [0, 1, 3],
        [0, 2, 1],
      ],
    );
    const { edges, after, clarity, clearEdgeShare } = compare(
      table,
      ["#ffffff", "#ff0000", "#0000ff"],
      ["#ffffff", "#ffffff", "#0000ff"],
    );
    expect(edges[0]).toMatchObject({
      length: 3,
      outcome: "merged",
      contrast: [expect.closeTo(59.6479, 4), 0],
    });
    // Before everything was clear; after, 1 of 4.
    expect(clarity).toEqual([100, 25]);
    expect(clearEdgeShare).toEqual([1, 0.25]);
    expect(after.edges[0]).toMatchObject({
      contrast: 0,
      grade: "weak",
      hueOnly: false,
    });
    expect(after.weakestEdge).toEqual({ a: "p1", b: "p2", contrast: 0 });
  });
});

describe("verdict", () => {
  const three = (one: number, other: number): EdgeTable =>
    tableOf(
      [["p1"], ["p2"], ["p3"]],
      [
        [0, 1, one],
        [0, 2, other],
      ],
    );

  test.each([
    // Gained 40.9 to 84.9, nothing else.
    ["clearer", two, ["#000000", "#ff0000"], ["#000000", "#ffff00"]],
    ["less clear", two, ["#000000", "#ffff00"], ["#000000", "#ff0000"]],
    ["less clear", two, ["#000000", "#ff0000"], ["#000000", "#000000"]],
    ["no gain", two, ["#ffffff", "#ff0000"], ["#ffffff", "#ff0000"]],
    // Better, but both were clear before: clarity stays 100.
    ["no gain", two, ["#ffffff", "#ff0000"], ["#ffffff", "#0000ff"]],
    // Black to white: with red 40.9 to 59.6 gained, with yellow 84.9 to 3.8 lost.
    ["mixed", three(1, 1), ["#000000", "#ff0000", "#ffff00"], ["#ffffff", "#ff0000", "#ffff00"]],
    // Worse, 76.8 to 59.6, beside gained, 17.7 to 40.9 would be better: both clear after all.
    [
      "mixed",
      tableOf(
        [["p1"], ["p2"], ["p3"]],
        [
          [0, 2, 1],
          [1, 2, 1],
        ],
      ),
      ["#ffffff", "#000000", "#0000ff"],
      ["#ffffff", "#000000", "#ff0000"],
    ],
    // Merged beside gained.
    ["mixed", three(1, 1), ["#000000", "#ff0000", "#ffff00"], ["#ffff00", "#ff0000", "#ffff00"]],
  ] as const)("%s", (verdict, table, before, after) => {
    expect(compare(table, before, after).verdict).toBe(verdict);
  });

  test("mixed comes first, however much clarity moved", () => {
    // 95 parts gained against 5 lost.
    expect(
      compare(three(95, 5), ["#000000", "#ff0000", "#ffff00"], ["#ffffff", "#ff0000", "#ffff00"]).verdict,
    ).toBe("mixed");
  });

  test("an edge under 1 % of all length moves no verdict to mixed", () => {
    const { verdict, edges } = compare(
      three(99.5, 0.5),
      ["#000000", "#ff0000", "#ffff00"],
      ["#ffffff", "#ff0000", "#ffff00"],
    );
    expect(edges.map(({ outcome }) => outcome)).toEqual(["gained", "lost"]);
    expect(verdict).toBe("clearer");
  });

  test("a parted edge is neither gained nor lost: it moves clarity alone", () => {
    const table = tableOf(
      [["p1", 0], ["p1s", 0], ["p2"]],
      [
        [0, 1, 1],
        [0, 2, 1],
      ],
    );
    // Before: white–red, clear, 100 %. After also yellow on red, clear: no change.
    expect(compare(table, ["#ff0000", "#ff0000", "#ffffff"], ["#ff0000", "#ffff00", "#ffffff"]).verdict).toBe(
      "no gain",
    );
    // Or blue on red, 24.3 of 45: (1 + 0.54) / 2, so less clear.
    expect(compare(table, ["#ff0000", "#ff0000", "#ffffff"], ["#ff0000", "#0000ff", "#ffffff"]).verdict).toBe(
      "less clear",
    );
  });

  test("a flag of one colour has nothing to gain", () => {
    expect(compare(tableOf([["p1"]], []), ["#ff0000"], ["#0000ff"])).toMatchObject({
      verdict: "no gain",
      clarity: [null, null],
      clearEdgeShare: [null, null],
      edges: [],
    });
  });
});

test("names are those before and after", () => {
  expect(compare(two, ["#ffffff", "#ff0000"], ["#ffffff", "#0000ff"]).edges[0]?.names).toEqual([
    ["#ffffff", "#ff0000"],
    ["#ffffff", "#0000ff"],
  ]);
});
