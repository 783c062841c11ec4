import { describe, expect, test } from "vitest";
import { defaultCloth } from "../../src/colour/cloth.ts";
import type { Hex } from "../../src/colour/colour.ts";
import { compareLooks } from "../../src/measure/compare.ts";
import { measureLooks } from "../../src/measure/figures.ts";
import { distanceSteps, isSurelyLost, leastRemaining, measureReadsTo } from "../../src/measure/reads.ts";
import type { EdgeTable, FocusStep, TableFocus } from "../../src/measure/table.ts";
import { frame, looksOf, tableOf } from "./build.ts";

/** A focus with what is left of it at 10, 20, 40 …, and at each step edges of these lengths beside it. */
const focusOf = (remaining: readonly number[], lengths: readonly number[] = [1]): TableFocus => ({
  source: "found",
  share: 0.1,
  steps: remaining.map(
    (left, index): FocusStep => ({
      distance: distanceSteps[index] ?? 0,
      remaining: left,
      edges: lengths.map((length, at) => ({
        a: 0,
        b: at + 1,
        length,
        focusLength: length,
      })),
    }),
  ),
});

const strong = (): number => 80;

describe("measureReadsTo", () => {
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
  ])("%s", (_, remaining, readsTo) => {
    expect(measureReadsTo(focusOf(remaining), strong)).toBe(readsTo);
  });

  test("two thirds of the length must be clear", () => {
    const all = [1, 1, 1, 1, 1, 1];
    // 2 of 3 is two thirds; 1.9 of 3 is less.
    expect(measureReadsTo(focusOf(all, [2, 1]), ({ b }) => (b === 1 ? 45 : 44))).toBe(320);
    expect(measureReadsTo(focusOf(all, [1.9, 1.1]), ({ b }) => (b === 1 ? 45 : 44))).toBeNull();
  });

  test("a merged edge counts as 0, two paints that are one have no edge", () => {
    const all = [1, 1, 1, 1, 1, 1];
    expect(measureReadsTo(focusOf(all, [2, 2]), ({ b }) => (b === 1 ? 80 : 0))).toBeNull();
    expect(measureReadsTo(focusOf(all, [2, 2]), ({ b }) => (b === 1 ? 80 : null))).toBe(320);
  });

  test("no focus, nothing to read", () => {
    expect(measureReadsTo({ source: "none", share: 0, steps: [] }, strong)).toBeNull();
  });
});

test("half of its area is the least that has to be left", () => {
  expect(leastRemaining).toBe(0.5);
});

describe("steps of their own", () => {
  const step = (distance: number, lengths: readonly number[]): FocusStep => ({
    distance,
    remaining: 1,
    edges: lengths.map((focusLength, at) => ({ a: 0, b: at + 1, length: 9, focusLength })),
  });
  const focus = (...steps: readonly FocusStep[]): TableFocus => ({ source: "found", share: 0.1, steps });
  const firstIsClear = ({ b }: { readonly b: number }): number => (b === 1 ? 60 : 20);

  test("each step looks at the edges that are left there", () => {
    expect(measureReadsTo(focus(step(10, [3, 1]), step(20, [2, 1]), step(40, [1, 1])), firstIsClear)).toBe(
      20,
    );
  });

  test("only the length beside the focus counts, not the whole edge", () => {
    expect(measureReadsTo(focus(step(10, [1, 0])), firstIsClear)).toBe(10);
  });

  test("where it has no edge at all it cannot be seen", () => {
    expect(measureReadsTo(focus(step(10, [1]), step(20, [])), () => 60)).toBe(10);
    expect(measureReadsTo(focus(step(10, [])), () => 60)).toBeNull();
    expect(measureReadsTo(focus(step(10, [1])), () => null)).toBeNull();
  });

  test("clear begins at 45", () => {
    expect(measureReadsTo(focus(step(10, [1])), () => 45)).toBe(10);
    expect(measureReadsTo(focus(step(10, [1])), () => 44.999)).toBeNull();
  });
});

// White on red 59.6 (clear), white on blue 76.8 (strong), red on blue 24.3 (weak), yellow on white 3.8 (weak).
describe("in a measure and in a comparison", () => {
  /** A charge of paint 1 on a field of paint 0 that is seen at every step; paint 2 is a part of paint 1 where it is given. */
  const tableWith = (lengths: readonly number[], groups: readonly number[] = [0, 1, 2]): EdgeTable => {
    const edges = lengths.map((length, at) => [0, at + 1, length, length] as const);
    const table = tableOf(
      groups.slice(0, lengths.length + 1).map((group, index) => [`p${index + 1}`, group] as const),
      edges,
    );
    const steps = distanceSteps.map((distance) => ({ distance, remaining: 1, edges: table.edges }));
    return { ...table, focus: { source: "found", share: 0.2, steps } };
  };
  const readsOf = (table: EdgeTable, before: readonly Hex[], after: readonly Hex[]) => {
    const compared = compareLooks(
      { replace: "#ff0000", with: "#0000ff" },
      frame,
      table,
      looksOf(...before),
      looksOf(...after),
      defaultCloth,
    );
    return [compared.before.focus.readsTo, compared.after.focus.readsTo];
  };

  test("a measure says how far its focus reads", () => {
    const table = tableWith([2]);
    expect(measureLooks(frame, table, looksOf("#ffffff", "#ff0000"), defaultCloth).focus.readsTo).toBe(320);
    expect(measureLooks(frame, table, looksOf("#0000ff", "#ff0000"), defaultCloth).focus.readsTo).toBeNull();
  });

  test("gained, lost, merged", () => {
    const table = tableWith([2]);
    expect(readsOf(table, ["#ffffff", "#ffff00"], ["#ffffff", "#ff0000"])).toEqual([null, 320]);
    expect(readsOf(table, ["#ffffff", "#ff0000"], ["#ffffff", "#ffff00"])).toEqual([320, null]);
    expect(readsOf(table, ["#ffffff", "#ff0000"], ["#ffffff", "#ffffff"])).toEqual([320, null]);
  });

  test("a merged edge is length that is not clear: 2 of 3 still reads, less does not", () => {
    const merge = ["#ffffff", "#ff0000", "#ffffff"] as const;
    const before = ["#ffffff", "#ff0000", "#0000ff"] as const;
    expect(readsOf(tableWith([2, 1]), before, merge)).toEqual([320, 320]);
    expect(readsOf(tableWith([1.9, 1]), before, merge)).toEqual([320, null]);
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
    const steps = distanceSteps.map((distance) => ({ distance, remaining: 1, edges: table.edges }));
    const focused: EdgeTable = { ...table, focus: { source: "named", share: 0.2, steps } };
    // Red / blue is weak: half of the length is clear.
    expect(readsOf(focused, ["#ffffff", "#ff0000", "#ff0000"], ["#ffffff", "#ff0000", "#0000ff"])).toEqual([
      320,
      null,
    ]);
    // Red / yellow is clear (56.7).
    expect(readsOf(focused, ["#ffffff", "#ff0000", "#ff0000"], ["#ffffff", "#ff0000", "#ffff00"])).toEqual([
      320, 320,
    ]);
  });
});

describe("isSurelyLost", () => {
  const lines = (...pairs: readonly (readonly [number, number])[]) =>
    pairs.map(([focusLength, contrast]) => ({ focusLength, contrast }));

  // Clear begins at 45; two thirds of the length have to be clear.
  test.each([
    ["all clear", lines([1, 80]), false],
    ["two thirds clear, just enough", lines([2, 45], [1, 44]), false],
    ["a little less", lines([1.99, 45], [1.01, 44]), true],
    ["too near to tell before it is added up", lines([2 - 1e-9, 45], [1 + 1e-9, 44]), false],
    ["nothing clear", lines([1, 44.9]), true],
    // It fails, but not by its colours.
    ["no line", [], false],
  ])("%s", (_, given, expected) => {
    expect(isSurelyLost(given)).toBe(expected);
  });
});
