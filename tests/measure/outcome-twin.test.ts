// Every judgement of a change against the naive twin, over constructed flags with all their single changes and random ones.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { compareLooks } from "../../src/measure/comparelooks.ts";
import type { Comparison } from "../../src/measure/comparison.ts";
import { edgeOf, focusOf, frame, looksOf } from "./build.ts";
import { constructed, isBorderline, randomFlag, randomHex } from "./flag.ts";
import { contrast, difference } from "./oracle.ts";
import { cloth, palette, tableOfFlag } from "./subject.ts";
import {
  type Flag,
  focusClarityOf,
  judge,
  lastsTo,
  marksOf,
  movementOf,
  priceOf,
  verdictOf,
} from "./twin.ts";

const looksFrom = (paints: readonly string[]) => looksOf(...paints.map((hex) => hex as Hex));

const compare = (flag: Flag, next: readonly string[], table = tableOfFlag(flag)): Comparison =>
  compareLooks(
    { replace: "#000000", with: "#ffffff" },
    frame,
    table,
    looksFrom(flag.paints),
    looksFrom(next),
    cloth,
  );

const change = (flag: Flag, at: number, next: string): readonly string[] =>
  flag.paints.map((hex, index) => (index === at ? next : hex));

/** Fails unless the comparison says what the twin says, figure by figure. */
function expectAlike(flag: Flag, next: readonly string[]): void {
  const judged = judge(flag, next);
  const compared = compare(flag, next);
  expect(compared.edges.map(({ a, b, outcome }) => `${a} ${b} ${outcome}`)).toEqual(
    judged.map(({ a, b, outcome }) => `p${a + 1} p${b + 1} ${outcome}`),
  );
  for (const [index, edge] of judged.entries()) {
    const [before, after] = compared.edges[index]?.contrast ?? [];
    if (edge.before === null) expect(before).toBeNull();
    else expect(before).toBeCloseTo(edge.before, 6);
    expect(after).toBeCloseTo(edge.after, 6);
  }
  const [was, is] = [marksOf(judged, "before"), marksOf(judged, "after")];
  for (const mark of ["clarity", "strength"] as const)
    for (const [index, value] of [was[mark], is[mark]].entries()) {
      if (value === null) expect(compared[mark][index]).toBeNull();
      else expect(compared[mark][index]).toBeCloseTo(value, 6);
    }
  const focus = focusClarityOf(judged.map(({ after, focusLength }) => [after, focusLength] as const));
  if (focus === null) expect(compared.after.focus.clarity).toBeNull();
  else expect(compared.after.focus.clarity).toBeCloseTo(focus, 6);
  expect(compared.verdict).toBe(verdictOf(judged));
  const price = priceOf(judged).map(({ a, b, length }) => ({ a: `p${a + 1}`, b: `p${b + 1}`, length }));
  expect(compared.price).toHaveLength(price.length);
  expect(compared.price).toEqual(expect.arrayContaining(price.map((edge) => expect.objectContaining(edge))));
  expect(compared.price.map(({ length }) => length)).toEqual(
    price.map(({ length }) => length).sort((x, y) => y - x),
  );
}

describe("against the twin", () => {
  test.each(constructed)("%s: every single change of it", (_, flag) => {
    for (const at of flag.paints.keys())
      for (const { hex } of palette) if (hex !== flag.paints[at]) expectAlike(flag, change(flag, at, hex));
  });

  test("any flag, any change", () => {
    const verdicts = new Map<string, number>();
    fc.assert(
      fc.property(randomFlag, fc.nat(), randomHex, (flag, paint, next) => {
        const after = change(flag, paint % flag.paints.length, next);
        fc.pre(!isBorderline(flag, after));
        expectAlike(flag, after);
        const { verdict } = compare(flag, after);
        verdicts.set(verdict, (verdicts.get(verdict) ?? 0) + 1);
      }),
      { numRuns: 800, seed: 11 },
    );
    // All five come about, or the check would say little.
    expect([...verdicts.keys()].sort()).toEqual(
      ["clearer", "clearer, at a price", "less clear", "mixed", "no gain"].sort(),
    );
  });

  test("a change of a part: parted edges among them", () => {
    fc.assert(
      fc.property(randomFlag, randomHex, (flag, next) => {
        // The last paint is a part of the first.
        const { paints } = flag;
        const own = paints[0] ?? "#000000";
        const parted: Flag = {
          ...flag,
          paints: paints.map((hex, index) => (index === paints.length - 1 ? own : hex)),
          groups: paints.map((_, index) => (index === paints.length - 1 ? 0 : index)),
        };
        const after = change(parted, paints.length - 1, next);
        fc.pre(!isBorderline(parted, after));
        expectAlike(parted, after);
      }),
      { numRuns: 200, seed: 12 },
    );
  });
});

describe("no verdict says what no mark does", () => {
  /** Clarity as it moves in whole percent, or strength where that is level: worked out by the twin. */
  const check = (flag: Flag, next: readonly string[]) => {
    const { verdict } = compare(flag, next);
    const moved = movementOf(judge(flag, next));
    if (verdict === "clearer" || verdict === "clearer, at a price") expect(moved).toBeGreaterThan(0);
    if (verdict === "less clear") expect(moved).toBeLessThan(0);
    if (verdict === "clearer, at a price") expect(moved).toBeGreaterThanOrEqual(5);
    if (moved <= -5) expect(["less clear", "no gain"]).toContain(verdict);
    if (moved >= 5) expect(["clearer", "clearer, at a price", "no gain"]).toContain(verdict);
  };

  test("over random flags and all single changes", () => {
    fc.assert(
      fc.property(randomFlag, (flag) => {
        for (const at of flag.paints.keys())
          for (const { hex } of palette) {
            const next = change(flag, at, hex);
            if (!isBorderline(flag, next)) check(flag, next);
          }
      }),
      { numRuns: 25, seed: 13 },
    );
  });

  test("what clearly falls is never called clearer, what clearly rises never less clear", () => {
    fc.assert(
      fc.property(randomFlag, fc.nat(), randomHex, (flag, paint, next) => {
        const { verdict, clarity, strength } = compare(flag, change(flag, paint % flag.paints.length, next));
        const [moved, stronger] = [clarity, strength].map(([was, is]) => (is ?? 0) - (was ?? 0));
        if ((moved ?? 0) <= 0 && (stronger ?? 0) <= 0) expect(verdict).not.toMatch(/^clearer/);
        if ((moved ?? 0) >= 0 && (stronger ?? 0) >= 0) expect(verdict).not.toBe("less clear");
      }),
      { numRuns: 600, seed: 14 },
    );
  });
});

describe("what nobody can see", () => {
  test("a change of less than ΔE00 1 is no gain, save where it makes two colours one", () => {
    let tried = 0;
    fc.assert(
      fc.property(randomFlag, fc.nat(), fc.nat(2), fc.constantFrom(-1, 1), (flag, paint, channel, step) => {
        const at = paint % flag.paints.length;
        const today = flag.paints[at] ?? "#000000";
        const bytes = [1, 3, 5].map((from) => Number.parseInt(today.slice(from, from + 2), 16));
        bytes[channel] = Math.min(255, Math.max(0, (bytes[channel] ?? 0) + step));
        const next = `#${bytes.map((byte) => byte.toString(16).padStart(2, "0")).join("")}`;
        fc.pre(difference(today, next) < 1);
        const { verdict, edges } = compare(flag, change(flag, at, next));
        if (edges.some(({ outcome }) => outcome === "merged")) return;
        tried += 1;
        expect(verdict).toBe("no gain");
      }),
      { numRuns: 400, seed: 15 },
    );
    expect(tried).toBeGreaterThan(300);
  });

  test("contrast from 44.8 to 45.1 moves lastsTo nowhere and focus clarity by less than 1", () => {
    // On black: #878787 44.55, #888888 45.01; greys with a little blue lie between. 125 (R − 5) / (R + 30).
    const [under, over] = ["#88878c", "#888888"] as const;
    expect(contrast("#000000", under)).toBeGreaterThan(44.5);
    expect(contrast("#000000", under)).toBeLessThan(45);
    expect(contrast("#000000", over)).toBeGreaterThanOrEqual(45);
    const flag: Flag = { paints: ["#000000", under], edges: [[0, 1, 2, 2]] };
    const edges = [edgeOf(0, 1, 2, 2)];
    const steps = [10, 20, 40, 80, 160, 320].map((distance, index) => ({
      distance,
      left: 1 - index * 0.11,
      span: 0.3,
      edges,
    }));
    const { before, after, verdict } = compare(flag, ["#000000", over], {
      ...tableOfFlag(flag),
      focus: focusOf(steps),
    });
    expect(before.focus.lastsTo).toBe(lastsTo(steps));
    expect(after.focus.lastsTo).toBe(lastsTo(steps));
    for (const [index, { clarity }] of after.focus.from.entries())
      expect(Math.abs((clarity ?? 0) - (before.focus.from[index]?.clarity ?? 0))).toBeLessThan(1);
    expect(verdict).toBe("no gain");
  });
});

test("lastsTo of any steps", () => {
  const step = fc.record({
    left: fc.double({ min: 0, max: 1, noNaN: true }),
    span: fc.double({ min: 0, max: 0.6, noNaN: true }),
  });
  const flag: Flag = { paints: ["#000000", "#ffffff"], edges: [[0, 1, 2, 2]] };
  fc.assert(
    fc.property(fc.array(step, { minLength: 6, maxLength: 6 }), (given) => {
      const steps = given.map((one, index) => ({ ...one, distance: 10 * 2 ** index, edges: [] }));
      const { before, after } = compare(flag, flag.paints, { ...tableOfFlag(flag), focus: focusOf(steps) });
      expect([before.focus.lastsTo, after.focus.lastsTo]).toEqual([lastsTo(steps), lastsTo(steps)]);
    }),
    { numRuns: 500, seed: 16 },
  );
});
