// What is left of the focus from each step. An arcminute from D flag heights away is D · tan(1′) = D · 0.000290888 flag
// heights, so five from 40 away are 0.0581776, from 80 0.1163553 and from 320 0.4654211.
import { describe, expect, test } from "vitest";
import { defaultCloth } from "../../src/colour/cloth.ts";
import type { Hex } from "../../src/colour/colour.ts";
import { compareLooks } from "../../src/measure/comparelooks.ts";
import type { EdgeTable, FocusStep } from "../../src/measure/edgetable.ts";
import { distanceSteps, findLastsTo, measureFocus } from "../../src/measure/focusclarity.ts";
import { measureLooks } from "../../src/measure/measurelooks.ts";
import { allSteps, edgeOf, focusOf, frame, looksOf, noFocus, tableOf } from "./build.ts";

/** Steps from 10 on with what is left, and how far the largest piece spans at each. */
const stepsOf = (left: readonly number[], spans: readonly number[] = left.map(() => 10)) =>
  left.map(
    (share, index): FocusStep => ({
      distance: distanceSteps[index] ?? 0,
      left: share,
      span: spans[index] ?? 0,
      edges: [],
    }),
  );

describe("findLastsTo", () => {
  test("steps double from 10 to 320", () => {
    expect(distanceSteps).toEqual([10, 20, 40, 80, 160, 320]);
  });

  test.each([
    ["all the way", [1, 1, 1, 1, 1, 1], 320],
    ["exactly half is left", [1, 1, 0.5, 0.49], 40],
    ["gone from 20 on", [1, 0.2], 10],
    ["gone at once", [0.49], null],
    // The first failure counts, whatever comes after.
    ["back again further away", [1, 0.4, 1, 1, 1, 1], 10],
  ])("half of its area: %s", (_, left, lastsTo) => {
    expect(findLastsTo(stepsOf(left))).toBe(lastsTo);
  });

  test.each([
    ["0.0581777 from 40", [1, 1, 0.0581777, 0.1163], 40],
    ["0.0581775 from 40, though 80 has enough", [1, 1, 0.0581775, 0.1164], 20],
    ["0.4654212 all the way", [1, 1, 1, 1, 1, 0.4654212], 320],
    ["0.465421 not from 320", [1, 1, 1, 1, 1, 0.465421], 160],
    // From 10 it takes 0.0145444.
    ["a dot of 0.0145", [0.0145], null],
  ])("five arcminutes: %s", (_, spans, lastsTo) => {
    expect(
      findLastsTo(
        stepsOf(
          spans.map(() => 1),
          spans,
        ),
      ),
    ).toBe(lastsTo);
  });

  test("both at one step", () => {
    expect(findLastsTo(stepsOf([1, 0.6, 0.4], [1, 0.01, 1]))).toBe(10);
    expect(findLastsTo(stepsOf([1, 0.4, 0.4], [1, 1, 1]))).toBe(10);
  });

  test("no steps, nothing lasts", () => expect(findLastsTo([])).toBeNull());
});

describe("measureFocus", () => {
  const edge = (b: number, focusLength: number, length = focusLength) => edgeOf(0, b, length, focusLength);

  test("says of each step what is left and how clear its own edges are there", () => {
    const steps: readonly FocusStep[] = [
      { distance: 10, left: 1, span: 1, edges: [edge(1, 3), edge(2, 1, 9)] },
      { distance: 20, left: 0.75, span: 1, edges: [edge(2, 2)] },
      { distance: 40, left: 0.5, span: 1, edges: [] },
    ];
    // Edge 1 is clear; edge 2 has 22.5, half of clear. (3 · 1 + 1 · 0.5) / 4; 0.5.
    expect(measureFocus(focusOf(steps), 80, ({ b }) => (b === 1 ? 60 : 22.5))).toEqual({
      source: "found",
      share: 0.1,
      clarity: 80,
      from: [
        { distance: 10, left: 1, clarity: 87.5, outlineClear: 0.75 },
        { distance: 20, left: 0.75, clarity: 50, outlineClear: 0 },
        { distance: 40, left: 0.5, clarity: null, outlineClear: null },
      ],
      lastsTo: 40,
    });
  });

  test("a merged edge counts as 0, two paints that are one have no edge", () => {
    const steps = allSteps([edge(1, 2), edge(2, 2)]);
    const clarityWith = (contrast: number | null) =>
      measureFocus(focusOf(steps), null, ({ b }) => (b === 1 ? 80 : contrast)).from.map(
        ({ clarity }) => clarity,
      );
    expect(new Set(clarityWith(0))).toEqual(new Set([50]));
    expect(new Set(clarityWith(null))).toEqual(new Set([100]));
  });

  test("outline clear begins at 45, and clarity moves by next to nothing there", () => {
    const at = (contrast: number) =>
      measureFocus(focusOf(allSteps([edge(1, 2)])), null, () => contrast).from[0];
    expect([at(44.9)?.outlineClear, at(45)?.outlineClear]).toEqual([0, 1]);
    expect((at(45)?.clarity ?? 0) - (at(44.9)?.clarity ?? 0)).toBeCloseTo(100 * (0.1 / 45), 9);
  });

  test("no focus is told from one that lasts to no step", () => {
    expect(measureFocus(noFocus, null, () => 80)).toEqual({
      source: "none",
      share: 0,
      clarity: null,
      from: [],
      lastsTo: null,
    });
    expect(measureFocus(focusOf(stepsOf([0.1])), 90, () => 80)).toMatchObject({
      source: "found",
      lastsTo: null,
    });
  });
});

// White on red 59.6 (clear), white on blue 76.8 (strong), red on blue 24.3 (weak), yellow on white 3.8, yellow on red 56.7.
describe("in a measure and in a comparison", () => {
  /** A charge of the paints from 1 on, on a field of paint 0, at every step. */
  const tableWith = (lengths: readonly number[]): EdgeTable => {
    const edges = lengths.map((length, at) => [0, at + 1, length, length] as const);
    const table = tableOf([["p1"], ...lengths.map((_, at) => [`p${at + 2}`] as const)], edges);
    return { ...table, focus: focusOf(allSteps(table.edges)) };
  };
  const compared = (table: EdgeTable, before: readonly Hex[], after: readonly Hex[]) => {
    const change = { replace: "#ff0000", with: "#0000ff" };
    const { before: was, after: is } = compareLooks(
      change,
      frame,
      table,
      looksOf(...before),
      looksOf(...after),
      defaultCloth,
    );
    return [was.focus, is.focus] as const;
  };

  test("no colour changes how far it lasts", () => {
    const table = tableWith([2]);
    for (const charge of ["#ff0000", "#ffff00", "#ffffff"] as const) {
      expect(measureLooks(frame, table, looksOf("#ffffff", charge), defaultCloth).focus.lastsTo).toBe(320);
      const [was, is] = compared(table, ["#ffffff", "#ff0000"], ["#ffffff", charge]);
      expect([was.lastsTo, is.lastsTo]).toEqual([320, 320]);
    }
  });

  test("gained, lost, merged show in the focus clarity of every step", () => {
    const table = tableWith([2]);
    const clarities = (before: readonly Hex[], after: readonly Hex[]) =>
      compared(table, before, after).map(({ from }) =>
        from.map(({ clarity }) => Math.round((clarity ?? -1) * 10) / 10),
      );
    // 100 · 3.8156 / 45 = 8.479; merged 0.
    expect(clarities(["#ffffff", "#ffff00"], ["#ffffff", "#ff0000"])).toEqual([
      Array(6).fill(8.5),
      Array(6).fill(100),
    ]);
    expect(clarities(["#ffffff", "#ff0000"], ["#ffffff", "#ffffff"])).toEqual([
      Array(6).fill(100),
      Array(6).fill(0),
    ]);
  });

  test("a pair that meets at a far step alone merges there too", () => {
    const table = tableWith([2]);
    const far: EdgeTable = {
      ...tableOf([["p1"], ["p2"], ["p3"]], [[0, 1, 2, 2]]),
      focus: focusOf([
        ...table.focus.steps.slice(0, 5),
        { distance: 320, left: 1, span: 1, edges: [edgeOf(1, 2, 1, 1)] },
      ]),
    };
    const [was, is] = compared(far, ["#ffffff", "#ff0000", "#ffff00"], ["#ffffff", "#ff0000", "#ff0000"]);
    expect([was.from[5]?.clarity, is.from[5]?.clarity]).toEqual([100, 0]);
  });

  test("the line within one paint is no edge before, and one after where its parts differ", () => {
    // Paints 1 and 2 are one paint of the original; the focus lies along white / red (2) and along red / its part (2).
    const table = tableOf(
      [["p1"], ["p2"], ["p2s", 1]],
      [
        [0, 1, 2, 2],
        [1, 2, 2, 2],
      ],
    );
    const focused: EdgeTable = { ...table, focus: focusOf(allSteps(table.edges)) };
    const at = (part: Hex) =>
      compared(focused, ["#ffffff", "#ff0000", "#ff0000"], ["#ffffff", "#ff0000", part]).map(
        ({ from }) => from[0],
      );
    expect(at("#ffff00")).toMatchObject([
      { clarity: 100, outlineClear: 1 },
      { clarity: 100, outlineClear: 1 },
    ]);
    // Red / blue: (1 + 24.2974 / 45) / 2.
    expect(at("#0000ff")).toMatchObject([
      { clarity: 100, outlineClear: 1 },
      { clarity: expect.closeTo(76.997, 3), outlineClear: 0.5 },
    ]);
    expect(at("#ff0000")[1]).toMatchObject({ clarity: 100, outlineClear: 1 });
  });
});
