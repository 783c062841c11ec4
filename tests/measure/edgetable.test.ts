import { describe, expect, test } from "vitest";
import { tabulate } from "../../src/measure/edgetable.ts";
import { seenOf } from "./build.ts";

describe("paints", () => {
  test("are numbered by area, largest first, whatever order they come in", () => {
    const { paints, order } = tabulate(seenOf({ pixels: [100, 700, 200] }));
    expect(paints.map(({ id, share }) => [id, share])).toEqual([
      ["p1", 0.7],
      ["p2", 0.2],
      ["p3", 0.1],
    ]);
    expect(order).toEqual([1, 2, 0]);
  });

  test("of equal area keep the order of the drawing", () => {
    expect(tabulate(seenOf({ pixels: [50, 50, 50] })).order).toEqual([0, 1, 2]);
  });

  test("that show nowhere have no row and no number", () => {
    const { paints, order } = tabulate(seenOf({ pixels: [10, 0, 90] }));
    expect(paints.map(({ id }) => id)).toEqual(["p1", "p2"]);
    expect(order).toEqual([2, 0]);
  });

  test("a selected part has the id of its paint with an s, and the two are ranked together", () => {
    // Paint 1 has 60 with its part (25 + 35); alone it would come behind paint 0 with its 40.
    const { paints, order } = tabulate(seenOf({ pixels: [40, 25, 35], part: [undefined, undefined, 1] }));
    expect(paints.map(({ id, share }) => [id, share])).toEqual([
      ["p1", 0.25],
      ["p1s", 0.35],
      ["p2", 0.4],
    ]);
    expect(order).toEqual([1, 2, 0]);
  });

  test("a part that is the whole paint is the paint", () => {
    expect(
      tabulate(seenOf({ pixels: [40, 0, 60], part: [undefined, undefined, 1] })).paints.map(({ id }) => id),
    ).toEqual(["p1", "p2"]);
  });

  test("shares are of the flag, without its transparent parts", () => {
    expect(tabulate(seenOf({ pixels: [30, 10], flagPixels: 40 })).paints.map(({ share }) => share)).toEqual([
      0.75, 0.25,
    ]);
  });
});

describe("edges", () => {
  test("add up all lines of a pair, in flag heights, the larger paint first", () => {
    const { edges } = tabulate(
      seenOf({
        pixels: [100, 700],
        heightPixels: 200,
        lines: [
          { a: 0, b: 1, length: 50 },
          { a: 0, b: 1, length: 250 },
        ],
      }),
    );
    expect(edges).toEqual([{ a: 0, b: 1, length: 1.5, focusLength: 0 }]);
  });

  test("count the part of each line that is beside the focus", () => {
    const lines = [
      { a: 0, b: 1, length: 100, focusShare: 1 },
      { a: 0, b: 1, length: 100, focusShare: 0.25 },
    ];
    expect(tabulate(seenOf({ pixels: [2, 1], lines })).edges).toEqual([
      { a: 0, b: 1, length: 2, focusLength: 1.25 },
    ]);
  });

  test("come longest first", () => {
    const lines = [
      { a: 0, b: 1, length: 10 },
      { a: 1, b: 2, length: 30 },
      { a: 0, b: 2, length: 20 },
    ];
    expect(tabulate(seenOf({ pixels: [3, 2, 1], lines })).edges.map(({ a, b }) => [a, b])).toEqual([
      [1, 2],
      [0, 2],
      [0, 1],
    ]);
  });

  test("there are none on a flag of one colour", () => {
    expect(tabulate(seenOf({ pixels: [100] })).edges).toEqual([]);
  });
});
