// Outcomes and verdicts. Contrasts by hand, as in figures.test.ts: white–red 59.6, red–black 40.9, red–blue 24.3,
// white–blue 76.8, white–yellow 3.8, black–blue 17.7, yellow–black 84.9, yellow–blue 74.4.
import { describe, expect, test } from "vitest";
import { defaultCloth } from "../../src/colour/cloth.ts";
import type { Hex } from "../../src/colour/colour.ts";
import { compareLooks } from "../../src/measure/comparelooks.ts";
import type { EdgeTable } from "../../src/measure/edgetable.ts";
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
    // 59.6 to 76.8, which counts as 60: less than 3 points.
    ["same", ["#ffffff", "#ff0000"], ["#ffffff", "#0000ff"]],
    ["same", ["#ffffff", "#0000ff"], ["#ffffff", "#ff0000"]],
    // Yellow on red 56.7, on blue 74.4, which counts as 60: 3.3 points.
    ["better", ["#ffff00", "#ff0000"], ["#ffff00", "#0000ff"]],
    ["worse", ["#ffff00", "#0000ff"], ["#ffff00", "#ff0000"]],
    ["same", ["#ffffff", "#ff0000"], ["#ffffff", "#ff0000"]],
    // One step of 8 bits: under 3 points.
    ["same", ["#ffffff", "#ff0000"], ["#ffffff", "#fe0000"]],
    ["merged", ["#ffffff", "#ff0000"], ["#ffffff", "#ffffff"]],
    // ΔE00 of black and nearly black is under 5.
    ["merged", ["#000000", "#ff0000"], ["#000000", "#050505"]],
  ] as const)("%s: %j to %j", (outcome, before, after) => {
    expect(outcomesOf(two, before, after)).toEqual([outcome]);
  });

  test("crossing into clear counts from 3 points on, and not at all under them", () => {
    // On black cloth (5) contrast is 45 at reflectance R with 125 (R − 5) / (R + 30) = 45, R = 24.6875, Y = 0.24609.
    // Greys: #87 has Y 0.24228 (44.55 %), #88 0.24620 (45.01 %), #8d 0.26636 (47.30 %), #8e 0.27050 (47.76 %), from
    // ((c / 255 + 0.055) / 1.055) ^ 2.4. From 44.55 the step to 47.30 is 2.75 points, that to 47.76 is 3.21.
    const gained = (after: Hex) => compare(two, ["#000000", "#878787"], ["#000000", after]).edges[0];
    expect(gained("#888888")?.contrast[0]).toBeLessThan(45);
    expect(gained("#888888")?.contrast[1]).toBeGreaterThanOrEqual(45);
    expect(gained("#888888")?.outcome).toBe("same");
    expect(gained("#8d8d8d")?.outcome).toBe("same");
    expect(gained("#8e8e8e")?.outcome).toBe("gained");
    expect(outcomesOf(two, ["#000000", "#8e8e8e"], ["#000000", "#878787"])).toEqual(["lost"]);
    expect(outcomesOf(two, ["#000000", "#8d8d8d"], ["#000000", "#878787"])).toEqual(["same"]);
  });

  test("beyond 60 nothing gets better or worse", () => {
    // White on blue 76.8, on black 87.0; #c00000 has Y 0.2126 · 0.5271 = 0.1121, 13.96, 125 · 71.04 / 123.96 = 71.6.
    expect(outcomesOf(two, ["#ffffff", "#0000ff"], ["#ffffff", "#000000"])).toEqual(["same"]);
    expect(outcomesOf(two, ["#ffffff", "#000000"], ["#ffffff", "#c00000"])).toEqual(["same"]);
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
      nearLine: false,
      hueOnly: false,
    });
    expect(after.weakestEdge).toEqual({ a: "p1", b: "p2", contrast: 0 });
  });

  test("counts 0 whoever looks, though the two colours are not quite one", () => {
    // Near-equal yellows, ΔE00 under 5, with some contrast left for every eye.
    const { after, edges } = compare(two, ["#ffd700", "#ff0000"], ["#ffd700", "#ffcd00"]);
    expect(edges[0]?.outcome).toBe("merged");
    for (const sight of ["protan", "deutan", "tritan"] as const)
      expect(after.edges[0]?.vision[sight]).toMatchObject({ contrast: 0, grade: "weak" });
    expect(
      compare(two, ["#ffd700", "#ffcd00"], ["#ffd700", "#ffcd00"]).after.edges[0]?.contrast,
    ).toBeGreaterThan(1);
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
    // 59.6 to 76.8: clear before, and strong but for 0.4 points.
    ["no gain", two, ["#ffffff", "#ff0000"], ["#ffffff", "#0000ff"]],
    // 56.7 to 74.4: clarity is 100 both times, strength goes from 94.4 to 100.
    ["clearer", two, ["#ffff00", "#ff0000"], ["#ffff00", "#0000ff"]],
    ["less clear", two, ["#ffff00", "#0000ff"], ["#ffff00", "#ff0000"]],
    // Black to white: with red 40.9 to 59.6 gained, with yellow 84.9 to 3.8 lost: 95.4 to 54.2, far down.
    ["less clear", three(1, 1), ["#000000", "#ff0000", "#ffff00"], ["#ffffff", "#ff0000", "#ffff00"]],
    // 98 of 100 with red: 91.0 to 98.2, up by 7, and the yellow edge is its price.
    [
      "clearer, at a price",
      three(98, 2),
      ["#000000", "#ff0000", "#ffff00"],
      ["#ffffff", "#ff0000", "#ffff00"],
    ],
    // 95 of 100: 91.3 to 95.4, up by 4 with a loss.
    ["mixed", three(95, 5), ["#000000", "#ff0000", "#ffff00"], ["#ffffff", "#ff0000", "#ffff00"]],
    // 91 of 100: 91.7 to 91.8, both 92 in whole percent; strength 71.0 to 91.0.
    [
      "clearer, at a price",
      three(91, 9),
      ["#000000", "#ff0000", "#ffff00"],
      ["#ffffff", "#ff0000", "#ffff00"],
    ],
    // Merged beside gained: red 40.9 to 56.7, with yellow 84.9 to 0. 97 of 100: 91.1 to 97; 90 of 100: 91.8 to 90.
    [
      "clearer, at a price",
      three(97, 3),
      ["#000000", "#ff0000", "#ffff00"],
      ["#ffff00", "#ff0000", "#ffff00"],
    ],
    ["mixed", three(90, 10), ["#000000", "#ff0000", "#ffff00"], ["#ffff00", "#ff0000", "#ffff00"]],
  ] as const)("%s", (verdict, table, before, after) => {
    expect(compare(table, before, after).verdict).toBe(verdict);
  });

  test("an edge under 1 % of all length is no price", () => {
    const { verdict, edges, price } = compare(
      three(99.5, 0.5),
      ["#000000", "#ff0000", "#ffff00"],
      ["#ffffff", "#ff0000", "#ffff00"],
    );
    expect(edges.map(({ outcome }) => outcome)).toEqual(["gained", "lost"]);
    expect(verdict).toBe("clearer");
    expect(price).toEqual([]);
  });

  test("the price is the edges that got worse, longest first, from and to", () => {
    const table = tableOf(
      [["p1"], ["p2"], ["p3"], ["p4"]],
      [
        [0, 3, 2],
        [0, 1, 95],
        [0, 2, 3],
      ],
    );
    // Black to white: red gained; yellow lost (84.9 to 3.8); nearly white merged.
    const { verdict, price } = compare(
      table,
      ["#000000", "#ff0000", "#ffff00", "#fdfdfd"],
      ["#ffffff", "#ff0000", "#ffff00", "#fdfdfd"],
    );
    // 91.3 to (95 + 3 · 0.0848) / 100 = 95.3.
    expect(verdict).toBe("mixed");
    expect(
      price.map(({ b, outcome, contrast }) => [b, outcome, contrast.map((c) => Math.round(c ?? 0))]),
    ).toEqual([
      ["p3", "lost", [85, 4]],
      ["p4", "merged", [86, 0]],
    ]);
  });

  test("a parted edge that is clear is a gain, one that is not is a loss", () => {
    const table = tableOf(
      [["p1", 0], ["p1s", 0], ["p2"]],
      [
        [0, 1, 1],
        [0, 2, 1],
      ],
    );
    // Before: white on red, clear, 100 %, strength 99.4. After also yellow on red, 56.7: strength 96.9.
    expect(
      compare(table, ["#ff0000", "#ff0000", "#ffffff"], ["#ff0000", "#ffff00", "#ffffff"]),
    ).toMatchObject({
      verdict: "no gain",
      price: [],
    });
    // Or blue on red, 24.3 of 45: (1 + 0.54) / 2, so less clear.
    expect(
      compare(table, ["#ff0000", "#ff0000", "#ffffff"], ["#ff0000", "#0000ff", "#ffffff"]),
    ).toMatchObject({
      verdict: "less clear",
      price: [{ a: "p1", b: "p1s", outcome: "parted", contrast: [null, expect.closeTo(24.2974, 3)] }],
    });
  });

  test("a flag of one colour has nothing to gain", () => {
    expect(compare(tableOf([["p1"]], []), ["#ff0000"], ["#0000ff"])).toMatchObject({
      verdict: "no gain",
      clarity: [null, null],
      strength: [null, null],
      price: [],
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
