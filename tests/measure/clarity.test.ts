// Marks of a flag from edges with contrast; every expected value is worked out in the comment beside it.
import { describe, expect, test } from "vitest";
import {
  findWeakest,
  listDeciding,
  measureClarity,
  measureClearShare,
  measureFocusClarity,
  measureStrength,
  roundMark,
} from "../../src/measure/clarity.ts";

const edge = (contrast: number, length: number, focusLength = 0) => ({ contrast, length, focusLength });

describe("clarity", () => {
  test.each([
    ["full at 45 and over", [edge(45, 1), edge(87, 3)], 100],
    // (0.5 + 1) / 2
    ["half at 22.5", [edge(22.5, 1), edge(90, 1)], 75],
    // 3 · 0.5 + 1 of 4
    ["weighed by length", [edge(22.5, 3), edge(90, 1)], 62.5],
    // (1 + 1) · 0.5 + 1 of 3
    ["focus edges twice", [edge(22.5, 1, 1), edge(90, 1)], 200 / 3],
    ["nothing at 0", [edge(0, 5)], 0],
  ])("is %s", (_, edges, clarity) => {
    expect(measureClarity(edges)).toBeCloseTo(clarity, 12);
  });
});

describe("strength", () => {
  test.each([
    ["full at 60 and over", [edge(60, 1), edge(87, 3)], 100],
    // 45 / 60 and 30 / 60
    ["three quarters at 45", [edge(45, 1)], 75],
    ["weighed as clarity", [edge(30, 1, 1), edge(90, 1)], 200 / 3],
  ])("is %s", (_, edges, strength) => {
    expect(measureStrength(edges)).toBeCloseTo(strength, 12);
  });
});

describe("focus clarity", () => {
  test("is that of the focus edges alone, once", () => {
    // (1 · 0.5 + 3 · 1) / 4; the edge without focus, weak, has no say, nor has the length beyond the focus.
    expect(measureFocusClarity([edge(22.5, 7, 1), edge(45, 3, 3), edge(0, 9)])).toBeCloseTo(87.5, 12);
  });

  test("is null where the focus has no edge", () => {
    expect(measureFocusClarity([edge(80, 1)])).toBeNull();
  });
});

describe("clear-edge share", () => {
  test("counts clear and strong, from exactly 45", () => {
    // 1 + 4 of 10.
    expect(measureClearShare([edge(45, 1), edge(44.9999, 2), edge(10, 3), edge(60, 4)])).toBeCloseTo(0.5, 12);
  });

  test("does not count focus edges twice", () => {
    expect(measureClearShare([edge(60, 1, 1), edge(10, 1)])).toBeCloseTo(0.5, 12);
  });
});

test("no mark without an edge", () => {
  for (const measure of [measureClarity, measureStrength, measureFocusClarity, measureClearShare])
    expect(measure([])).toBeNull();
});

describe("edges that decide", () => {
  test("are those of 1 % of all edge length or more", () => {
    expect(listDeciding([edge(50, 99.01), edge(2, 0.99)])).toEqual([edge(50, 99.01)]);
    expect(listDeciding([edge(50, 99), edge(2, 1)])).toHaveLength(2);
    expect(listDeciding([])).toEqual([]);
    expect(listDeciding([edge(50, 0)])).toEqual([]);
  });
});

describe("weakest edge", () => {
  test("is the one of least contrast, not the shortest", () => {
    expect(findWeakest([edge(50, 1), edge(20, 30), edge(30, 0.5)])).toEqual(edge(20, 30));
  });

  test("is never one under 1 % of all edge length, and may be one of exactly 1 %", () => {
    expect(findWeakest([edge(50, 99.01), edge(2, 0.99)])).toEqual(edge(50, 99.01));
    expect(findWeakest([edge(50, 99), edge(2, 1)])).toEqual(edge(2, 1));
  });

  test("there is none without edges", () => {
    expect(findWeakest([])).toBeUndefined();
  });
});

test("halves round up, with what arithmetic leaves of them", () => {
  expect([49.5, 49.5 - 1e-12, 49.49, 100, 0].map(roundMark)).toEqual([50, 50, 49, 100, 0]);
});
