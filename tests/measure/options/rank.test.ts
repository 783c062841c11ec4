import { describe, expect, test } from "vitest";
import { areEqual, findFirst, groupByColour, rankOptions } from "../../../src/measure/options/rank.ts";
import type { Option } from "../../../src/measure/options/tryoptions.ts";

/** A red, blue or green paint that becomes white, save where told. */
const optionOf = (
  id: "p1" | "p2" | "p3",
  name: string,
  clarity: number,
  deltaE00: number,
  more: Partial<Option> = {},
): Option => ({
  id,
  replace: { p1: "#c8202f", p2: "#1f56a8", p3: "#0b7a3b" }[id] as Option["replace"],
  with: "#ffffff",
  name,
  kind: "palette",
  clarity,
  strength: 50,
  focusClarity: null,
  clearEdgeShare: 0.5,
  share: 0.2,
  deltaE00,
  deltaEab: deltaE00,
  gained: [],
  better: [],
  worse: [],
  lost: [],
  merged: [],
  mergedOutline: 0,
  confusable: [],
  confusions: [],
  ...more,
});
const order = (...options: readonly Option[]) =>
  rankOptions(options).options.map(({ name, place }) => `${place} ${name}`);

describe("rankOptions", () => {
  test("clarity in whole percent, then departure, then the order given", () => {
    expect(
      order(
        optionOf("p1", "a", 90.4, 30),
        optionOf("p1", "b", 89.6, 20),
        optionOf("p2", "c", 95, 90),
        optionOf("p2", "d", 90, 30),
        optionOf("p3", "e", 12, 1),
      ),
    ).toEqual(["1 c", "2 b", "2 a", "2 d", "5 e"]);
  });

  test("level in clarity: strength in whole percent, whatever the departure", () => {
    expect(
      order(
        optionOf("p1", "a", 90, 1, { strength: 70.4 }),
        optionOf("p1", "b", 90.4, 50, { strength: 80 }),
        optionOf("p1", "c", 89.5, 40, { strength: 79.6 }),
        optionOf("p1", "d", 91, 60, { strength: 10 }),
      ),
    ).toEqual(["1 d", "2 c", "2 b", "4 a"]);
  });

  test("level in both: the same family of colour first, then the smaller departure", () => {
    expect(
      order(
        optionOf("p1", "near", 90, 10),
        optionOf("p1", "red", 90, 30, { with: "#e03040" }),
        optionOf("p2", "blue", 90, 20, { with: "#6cb4e4" }),
      ),
    ).toEqual(["1 blue", "1 red", "1 near"]);
  });

  test("equals share a place, and the next goes on after all of them", () => {
    expect(
      order(
        optionOf("p1", "a", 100, 3),
        optionOf("p1", "b", 99.6, 2),
        optionOf("p1", "c", 100, 1),
        optionOf("p1", "d", 50, 1),
        optionOf("p1", "e", 49.9, 1),
      ),
    ).toEqual(["1 c", "1 b", "1 a", "4 d", "4 e"]);
  });

  test("the place among the options of one colour", () => {
    const { options } = rankOptions([
      optionOf("p1", "a", 100, 3),
      optionOf("p2", "b", 90, 2),
      optionOf("p1", "c", 80, 1),
      optionOf("p2", "d", 90, 3),
      optionOf("p2", "e", 70, 3),
    ]);
    expect(options.map(({ name, place, placeInColour }) => `${name} ${place} ${placeInColour}`)).toEqual([
      "a 1 1",
      "b 2 1",
      "d 2 1",
      "c 4 2",
      "e 5 3",
    ]);
  });

  test("what takes a third of a charge's outline stands apart, in the order given and without a place", () => {
    const merging = (mergedOutline: number) => ({ mergedOutline });
    const { options, vanishing } = rankOptions([
      optionOf("p2", "a", 100, 1, merging(1 / 3)),
      optionOf("p1", "b", 10, 1, merging(0.333)),
      optionOf("p1", "c", 100, 1, merging(1)),
    ]);
    expect(options.map(({ name }) => name)).toEqual(["b"]);
    expect(vanishing.map(({ name }) => name)).toEqual(["a", "c"]);
    expect(vanishing[0]).not.toHaveProperty("place");
  });

  test("no options, no order", () => expect(rankOptions([])).toEqual({ options: [], vanishing: [] }));

  test("the last digits of a departure make no order", () => {
    expect(order(optionOf("p1", "a", 90, 30 + 1e-12), optionOf("p2", "b", 90, 30))).toEqual(["1 a", "1 b"]);
  });
});

describe("groupByColour", () => {
  test("the paint with the best option first, its equals beside it", () => {
    const { options } = rankOptions([
      optionOf("p1", "a", 80, 3),
      optionOf("p2", "b", 90, 2, { share: 0.4 }),
      optionOf("p2", "c", 90.2, 5, { share: 0.4 }),
      optionOf("p2", "d", 89, 1, { share: 0.4 }),
    ]);
    expect(
      groupByColour(options).map(({ id, hex, share, best, equals, count }) => [
        id,
        hex,
        share,
        best.name,
        equals.map(({ name }) => name),
        count,
      ]),
    ).toEqual([
      ["p2", "#1f56a8", 0.4, "b", ["c"], 3],
      ["p1", "#c8202f", 0.2, "a", [], 1],
    ]);
  });

  test("none of none", () => expect(groupByColour([])).toEqual([]));
});

describe("findFirst", () => {
  const first = (today: number, ...options: readonly Option[]) =>
    findFirst(groupByColour(rankOptions(options).options), { clarity: today })?.map(
      ({ id, best }) => `${id} ${best.name}`,
    ) ?? null;

  test("the paint whose best option gains most", () => {
    expect(
      first(
        50,
        optionOf("p1", "a", 70, 5),
        optionOf("p2", "b", 60, 1),
        optionOf("p2", "c", 90, 50),
        optionOf("p1", "d", 20, 1),
      ),
    ).toEqual(["p2 c"]);
  });

  test("all within 3 points of the best, in the order of their options", () => {
    expect(
      first(50, optionOf("p1", "a", 87.4, 30), optionOf("p2", "b", 90.4, 20), optionOf("p3", "c", 88, 40)),
    ).toEqual(["p2 b", "p3 c", "p1 a"]);
    expect(first(50, optionOf("p1", "a", 86.4, 30), optionOf("p2", "b", 90.4, 20))).toEqual(["p2 b"]);
  });

  test("three at most", () => {
    const four = ["p1", "p2", "p3", "p4"].map((id) => ({ ...optionOf("p1", id, 90, 20), id }));
    expect(first(50, ...four)).toEqual(["p1 p1", "p2 p2", "p3 p3"]);
  });

  test("none where nothing gains 5 points in whole percent", () => {
    expect(first(50, optionOf("p1", "a", 54.4, 5))).toBeNull();
    expect(first(50, optionOf("p1", "a", 54.5, 5))).toEqual(["p1 a"]);
    expect(first(50.5, optionOf("p1", "a", 55, 5))).toBeNull();
    expect(first(50)).toBeNull();
  });

  test("an option that merges a charge helps no paint", () => {
    expect(first(50, optionOf("p1", "a", 100, 5, { mergedOutline: 1 }), optionOf("p2", "b", 60, 5))).toEqual([
      "p2 b",
    ]);
  });
});

test("equals are level in clarity and strength, in whole percent", () => {
  const at = (clarity: number, strength: number) => optionOf("p1", "a", clarity, 1, { strength });
  expect(areEqual(at(90.4, 70), at(89.6, 70.2))).toBe(true);
  expect(areEqual(at(90.4, 70), at(90.6, 70))).toBe(false);
  expect(areEqual(at(90, 70), at(90, 71))).toBe(false);
});
