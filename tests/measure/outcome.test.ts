// Steps of 3 points, ΔE00 5 and the verdicts at their very limits; the words are the design's.
import { describe, expect, test } from "vitest";
import type { Outcome } from "../../src/measure/comparison.ts";
import { decideVerdict, isSameColour, judgeEdge, listPrice } from "../../src/measure/outcome.ts";

const apart = (contrast: number) => ({ contrast, deltaE00: 30 });

test("ΔE00 5 is two colours, less is one", () => {
  expect([4.999, 5].map(isSameColour)).toEqual([true, false]);
});

describe("judgeEdge", () => {
  test.each<[number, number, Outcome]>([
    [44, 47, "gained"],
    [44, 46.99, "same"],
    [44.8, 45.1, "same"],
    [47, 44, "lost"],
    [46.99, 44, "same"],
    [20, 23, "better"],
    [20, 22.99, "same"],
    [23, 20, "worse"],
    // Up to 44.99 it is not clear yet.
    [40, 44.99, "better"],
    [45, 48, "better"],
    // Beyond 60 counts as 60.
    [57, 90, "better"],
    [57.01, 90, "same"],
    [90, 57, "worse"],
    [90, 60, "same"],
    [45, 45, "same"],
  ])("%f to %f: %s", (before, after, outcome) => {
    expect(judgeEdge(apart(before), apart(after))).toBe(outcome);
  });

  test("merged where two become one, not where they were", () => {
    const one = { contrast: 2, deltaE00: 4.99 };
    expect(judgeEdge(apart(50), one)).toBe("merged");
    expect(judgeEdge({ contrast: 9, deltaE00: 4 }, one)).toBe("worse");
    expect(judgeEdge({ contrast: 4, deltaE00: 4 }, one)).toBe("same");
  });

  test("parted where one becomes two; no edge where it stays one", () => {
    expect(judgeEdge(null, { contrast: 2, deltaE00: 5 })).toBe("parted");
    expect(judgeEdge(null, { contrast: 2, deltaE00: 4.99 })).toBeUndefined();
  });
});

const edge = (outcome: Outcome, length = 1, contrast = 50) => ({ outcome, length, contrast });
const marks = (clarity: number | null, strength = clarity) => ({ clarity, strength });
const verdict = (
  outcomes: readonly Outcome[],
  before: number,
  after: number,
  strengths: readonly [number, number] = [0, 0],
) =>
  decideVerdict(
    outcomes.map((outcome) => edge(outcome)),
    marks(before, strengths[0]),
    marks(after, strengths[1]),
  );

describe("decideVerdict", () => {
  test.each([
    ["clearer", ["gained"], 50, 51],
    ["no gain", ["gained"], 50, 50],
    // Whole percent: 50.4 prints as 50, 50.5 as 51.
    ["no gain", ["gained"], 49.6, 50.4],
    ["clearer", ["gained"], 50.4, 50.5],
    ["clearer", ["better", "same"], 50, 90],
    ["clearer, at a price", ["gained", "lost"], 50, 55],
    ["mixed", ["gained", "lost"], 50, 54],
    ["mixed", ["gained", "worse"], 50, 46],
    ["mixed", ["better", "merged"], 50, 49],
    ["less clear", ["gained", "lost"], 50, 45],
    ["less clear", ["worse"], 50, 49],
    ["no gain", ["worse"], 50, 50],
    ["no gain", ["same", "same"], 50, 50],
    // What no edge says, no mark says.
    ["no gain", ["same"], 50, 60],
  ] as const)("%s: %j from %f to %f", (said, outcomes, before, after) => {
    expect(verdict(outcomes, before, after)).toBe(said);
  });

  test.each([
    ["clearer", ["better"], [80, 81]],
    ["clearer, at a price", ["better", "worse"], [80, 85]],
    ["mixed", ["better", "worse"], [80, 84]],
    ["less clear", ["better", "worse"], [85, 80]],
    ["less clear", ["worse"], [80, 79]],
    ["no gain", ["worse"], [80, 80]],
  ] as const)("where clarity is level strength decides: %s, %j %j", (said, outcomes, strengths) => {
    expect(verdict(outcomes, 99.6, 100, strengths)).toBe(said);
  });

  test("strength has no say where clarity moves", () => {
    expect(verdict(["better", "worse"], 50, 51, [90, 50])).toBe("mixed");
    expect(verdict(["better"], 50, 51, [90, 50])).toBe("clearer");
  });

  test("an edge of under 1 % has no say", () => {
    const edges = [edge("gained", 99.1), edge("lost", 0.9)];
    expect(decideVerdict(edges, marks(50), marks(54))).toBe("clearer");
    expect(decideVerdict([edge("same", 99.1), edge("gained", 0.9)], marks(50), marks(60))).toBe("no gain");
  });

  test("one colour: nothing", () => expect(decideVerdict([], marks(null), marks(null))).toBe("no gain"));
});

test("the price: what is lost, worse, merged or parted and not clear, and decides, longest first", () => {
  const edges = [
    edge("lost", 10),
    edge("worse", 20),
    edge("gained", 30),
    edge("merged", 15, 0),
    edge("parted", 5, 44.9),
    edge("parted", 5, 45),
    edge("better", 5),
    edge("same", 5),
    edge("lost", 0.5),
  ];
  expect(listPrice(edges).map(({ outcome, length }) => `${outcome} ${length}`)).toEqual([
    "worse 20",
    "merged 15",
    "lost 10",
    "parted 5",
  ]);
});
