import { describe, expect, test } from "vitest";
import type { Option } from "../../src/measure/options.ts";
import { findFirst, rankOptions, roundClarity } from "../../src/measure/rank.ts";

const optionOf = (id: string, name: string, clarity: number, deltaE00: number, vanishes = false): Option => ({
  id,
  replace: id === "p1" ? "#111111" : id === "p2" ? "#222222" : "#333333",
  with: "#ffffff",
  name,
  kind: "palette",
  clarity,
  clearEdgeShare: 0.5,
  deltaE00,
  gained: [],
  lost: [],
  merged: [],
  vanishes,
  confusable: [],
  confusions: [],
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

  test("what makes the charge vanish stands apart, in the order given and without a place", () => {
    const { options, vanishing } = rankOptions([
      optionOf("p2", "a", 100, 1, true),
      optionOf("p1", "b", 10, 1),
      optionOf("p1", "c", 100, 1, true),
    ]);
    expect(options.map(({ name }) => name)).toEqual(["b"]);
    expect(vanishing.map(({ name }) => name)).toEqual(["a", "c"]);
    expect(vanishing[0]).not.toHaveProperty("place");
  });

  test("no options, no order", () => expect(rankOptions([])).toEqual({ options: [], vanishing: [] }));

  test("halves round up, with what arithmetic leaves of them", () => {
    expect([49.5, 49.5 - 1e-12, 49.49, 100, 0].map(roundClarity)).toEqual([50, 50, 49, 100, 0]);
  });

  test("the last digits of a departure make no order", () => {
    expect(order(optionOf("p1", "a", 90, 30 + 1e-12), optionOf("p2", "b", 90, 30))).toEqual(["1 a", "1 b"]);
  });
});

describe("findFirst", () => {
  const first = (today: number, ...options: readonly Option[]) =>
    findFirst(rankOptions(options).options, today)?.map(({ id, best }) => `${id} ${best.name}`) ?? null;

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

  test("with a tie, the smaller departure of the best option", () => {
    expect(
      first(50, optionOf("p1", "a", 90.2, 30), optionOf("p2", "b", 89.7, 20), optionOf("p3", "c", 90, 40)),
    ).toEqual(["p2 b"]);
  });

  test("still tied: both", () => {
    expect(
      first(50, optionOf("p1", "a", 90, 20), optionOf("p2", "b", 90, 20), optionOf("p3", "c", 90, 21)),
    ).toEqual(["p1 a", "p2 b"]);
  });

  test("none where nothing gains 1 or more", () => {
    expect(first(50, optionOf("p1", "a", 50.99, 5))).toBeNull();
    expect(first(50, optionOf("p1", "a", 51, 5))).toEqual(["p1 a"]);
    expect(first(50)).toBeNull();
  });

  test("an option that vanishes helps no paint", () => {
    expect(first(50, optionOf("p1", "a", 100, 5, true), optionOf("p2", "b", 60, 5))).toEqual(["p2 b"]);
  });

  test("the best option is one that gains 1, though a nearer one stands in its group", () => {
    expect(first(89, optionOf("p1", "near", 89.6, 1), optionOf("p1", "far", 90.1, 9))).toEqual(["p1 far"]);
  });
});
