import { describe, expect, test } from "vitest";
import type { Hex } from "../../../src/colour/colour.ts";
import { SwatchBook } from "../../../src/measure/colourcache.ts";
import { compareLooks } from "../../../src/measure/comparelooks.ts";
import { rankOptions } from "../../../src/measure/options/rank.ts";
import { listToday, measureOptions, measureToday } from "../../../src/measure/options/tryoptions.ts";
import { frame, looksOf, tableOf } from "../build.ts";
import { contrast, difference, difference76 } from "../oracle.ts";
import { cloth, optionsOf, shades, subjectsOf, tableOfFlag } from "../subject.ts";
import type { Flag } from "../twin.ts";

const { white, yellow, red, black, green } = shades;
const darkBlue = shades["dark blue"];
const lightBlue = shades["light blue"];

// Rules of the trade. Source: common practice, no source. Shades and measure of “clear”: tests/reference/trade-pairs.ts.
describe("what anyone who looks at flags would say", () => {
  /** The options that no other beats in clarity. */
  const best = (flag: Flag) => {
    const { options } = rankOptions(optionsOf(flag));
    return options.filter(({ clarity }) => Math.round(clarity) === Math.round(options[0]?.clarity ?? 0));
  };

  test("a red charge on black wants a light field, or a light charge", () => {
    const winners = best({ paints: [black, red], edges: [[0, 1, 2, 2]] });
    const said = winners.map(({ id, name }) => `${id} ${name}`);
    expect(said).toEqual(expect.arrayContaining(["p1 white", "p1 yellow", "p2 white", "p2 yellow"]));
    for (const word of ["red", "green", "dark green", "dark blue", "purple", "brown", "black"]) {
      expect(said).not.toContain(`p1 ${word}`);
      expect(said).not.toContain(`p2 ${word}`);
    }
  });

  test("a white charge on light blue wants a darker field", () => {
    const winners = best({ paints: [lightBlue, white], edges: [[0, 1, 1.5, 1.5]] });
    const fields = winners.filter(({ id }) => id === "p1").map(({ name }) => name);
    expect(fields).toEqual(
      expect.arrayContaining(["dark blue", "black", "red", "green", "dark green", "purple", "brown"]),
    );
    expect(fields).not.toContain("yellow");
  });

  test("a dark charge on red with yellow beside it wants a white or yellow ground", () => {
    const flag: Flag = {
      paints: [red, yellow, black],
      edges: [
        [0, 2, 2, 2],
        [0, 1, 0.2, 0],
      ],
    };
    const grounds = rankOptions(optionsOf(flag)).options.filter(({ id }) => id === "p1");
    expect(grounds.slice(0, 3).map(({ name }) => name)).toContain("white");
    // Yellow does as much for the charge, and runs into the yellow beside it: said, not hidden.
    const ground = grounds.find((each) => each.with === yellow);
    expect(ground?.gained.map(({ a, b }) => `${a} ${b}`)).toEqual(["p1 p3"]);
    expect(ground?.merged.map(({ a, b }) => `${a} ${b}`)).toEqual(["p1 p2"]);
    expect(ground?.clarity).toBeGreaterThan(90);
  });

  test("yellow on white wants a dark field or a dark charge", () => {
    const winners = best({ paints: [white, yellow], edges: [[0, 1, 1, 1]] }).map(
      ({ id, name }) => `${id} ${name}`,
    );
    expect(winners).toEqual(expect.arrayContaining(["p1 dark blue", "p1 black", "p2 red", "p2 dark green"]));
  });
});

describe("what an option says", () => {
  const [field, charge] = subjectsOf({
    paints: [red, black, white],
    edges: [
      [0, 1, 2, 2],
      [0, 2, 1, 0],
      [1, 2, 1, 0],
    ],
    charges: [[[0, 1, 2]]],
  });
  const book = new SwatchBook(cloth);
  const option = (subject: typeof field, with_: Hex) =>
    subject === undefined
      ? undefined
      : measureOptions(subject, [{ hex: with_, name: "new", kind: "palette" }], book)[0];

  test("gained and lost, with the names of the original", () => {
    // Trade pairs: black on red is not clear, yellow on black is; red on white is clear, yellow on white is not.
    expect(contrast(red, black)).toBeLessThan(45);
    expect(option(field, yellow)).toMatchObject({
      gained: [{ a: "p1", b: "p2", names: [red, black] }],
      lost: [{ a: "p1", b: "p3", names: [red, white] }],
      better: [],
      worse: [],
      merged: [],
      mergedOutline: 0,
    });
  });

  test("better and worse, which stay on their side of clear", () => {
    // Contrast by the oracle: red on black 29.5, dark blue on black 5.7, red on light blue 35.4.
    expect(option(field, darkBlue)).toMatchObject({ worse: [{ a: "p1", b: "p2" }], better: [], lost: [] });
    expect(option(charge, lightBlue)).toMatchObject({ better: [{ a: "p1", b: "p2" }], worse: [] });
  });

  test("share, and departure both ways", () => {
    // Three paints of equal area. ΔE*ab of #c8202f and white by CIE 76 from Lab 43.0 64.7 38.5 and 100 0 0.
    const tried = option(field, white);
    expect(tried?.share).toBeCloseTo(1 / 3, 9);
    expect(tried?.deltaE00).toBeCloseTo(difference(red, white), 1);
    expect(tried?.deltaEab).toBeCloseTo(difference76(red, white), 1);
  });

  test("a merged edge is neither lost nor gained, keeps its length and counts 0", () => {
    const merged = option(field, white);
    expect(merged?.merged).toEqual([{ a: "p1", b: "p3", names: [red, white] }]);
    expect(merged?.lost).toEqual([]);
    // Weights 4, 1, 1; black on white counts fully, the merged edge not at all.
    expect(merged?.clarity).toBeCloseTo((100 * 5) / 6, 9);
    expect(merged?.clearEdgeShare).toBeCloseTo(3 / 4, 9);
    expect(merged?.mergedOutline).toBe(0);
  });

  test("the part of a charge's outline that merges", () => {
    expect(option(field, black)).toMatchObject({ mergedOutline: 1, merged: [{ a: "p1", b: "p2" }] });
    expect(option(charge, red)?.mergedOutline).toBe(1);
    // Outline of 2 on the field and 1 on white; an inner line of the charge is no outline.
    const flag: Flag = {
      paints: [red, black, white, green],
      edges: [
        [0, 1, 2, 2],
        [1, 2, 1, 1],
        [1, 3, 5, 5],
      ],
      charges: [
        [
          [0, 1, 2],
          [1, 2, 1],
        ],
        [],
      ],
    };
    const mergedBy = (id: string, next: string) =>
      optionsOf(flag).find((each) => each.id === id && each.with === next)?.mergedOutline;
    expect(mergedBy("p2", red)).toBeCloseTo(2 / 3, 9);
    expect(mergedBy("p2", white)).toBeCloseTo(1 / 3, 9);
    expect(mergedBy("p4", black)).toBe(0);
    expect(mergedBy("p2", yellow)).toBe(0);
  });

  test("the charge that loses most counts", () => {
    const flag: Flag = {
      paints: [red, black, white],
      edges: [
        [0, 1, 2, 2],
        [0, 2, 3, 3],
      ],
      charges: [[[0, 2, 3]], [[0, 1, 2]]],
    };
    const merged = optionsOf(flag).find((each) => each.id === "p1" && each.with === black);
    expect(merged?.mergedOutline).toBe(1);
  });

  test("two near-equal paints that stay so merge nothing: nothing was there to lose", () => {
    // As in the full drawing, where near-equal paints are not joined.
    const near = {
      paints: ["#c8202f", "#c4222f", white],
      edges: [
        [0, 1, 1, 1],
        [1, 2, 1, 0],
      ],
    } as const;
    expect(difference("#c8202f", "#c4222f")).toBeLessThan(5);
    const [subject] = subjectsOf(near);
    const found = option(subject, "#c6212f");
    expect(found).toMatchObject({ merged: [], mergedOutline: 0 });
  });

  test("a colour that is no colour is refused", () => {
    expect(() => option(field, "#12" as Hex)).toThrow(RangeError);
  });

  test("a paint that meets nothing has no options", () => {
    expect(optionsOf({ paints: [red], edges: [] })).toEqual([]);
    expect(optionsOf({ paints: [red, white], edges: [[0, 1, 1, 0]] }, [])).toEqual([]);
  });
});

describe("as a comparison would", () => {
  // p1 and p2 are near-equal and one in the original; p4 is uneven.
  const table = tableOf(
    [["p1", 0], ["p2", 0], ["p3"], ["p4"]],
    [
      [0, 1, 1, 0.5],
      [0, 2, 2, 1],
      [1, 2, 0.5, 0],
      [2, 3, 1, 1],
      [0, 3, 0.3, 0],
    ],
  );
  const looks = looksOf("#c8202f", "#c4222f", white, "#445566").map((look, index) =>
    index === 3 ? { ...look, uneven: { lightest: "#8899aa" as Hex, darkest: "#112233" as Hex } } : look,
  );

  test.each<Hex>([white, "#c8202f", "#c3212e", yellow, black, darkBlue, "#8899aa", green])(
    "the paint of a pair becomes %s",
    (next) => {
      for (const paint of looks.keys()) {
        const [option] = measureOptions(
          { table, looks, paint },
          [{ hex: next, name: "new", kind: "palette" }],
          new SwatchBook(cloth),
        );
        const after = looks.map((look, index) =>
          index === paint ? { hex: next, name: "new", uneven: null } : look,
        );
        const compared = compareLooks({ replace: "#000000", with: next }, frame, table, looks, after, cloth);
        const idsOf = (outcome: string) =>
          compared.edges.filter((edge) => edge.outcome === outcome).map(({ a, b }) => `${a} ${b}`);
        expect(option?.clarity).toBeCloseTo(compared.clarity[1] ?? Number.NaN, 9);
        expect(option?.strength).toBeCloseTo(compared.strength[1] ?? Number.NaN, 9);
        expect(option?.focusClarity).toBeCloseTo(compared.after.focus.clarity ?? Number.NaN, 9);
        expect(option?.clearEdgeShare).toBeCloseTo(compared.clearEdgeShare[1] ?? Number.NaN, 9);
        for (const outcome of ["gained", "better", "worse", "lost", "merged"] as const)
          expect(option?.[outcome].map(({ a, b }) => `${a} ${b}`)).toEqual(idsOf(outcome));
        expect(measureToday(table, looks, new SwatchBook(cloth))).toEqual({
          clarity: expect.closeTo(compared.clarity[0] ?? Number.NaN, 9),
          strength: expect.closeTo(compared.strength[0] ?? Number.NaN, 9),
          focusClarity: expect.closeTo(compared.before.focus.clarity ?? Number.NaN, 9),
          clearEdgeShare: expect.closeTo(compared.clearEdgeShare[0] ?? Number.NaN, 9),
        });
      }
    },
  );
});

describe("today", () => {
  test("marks as the flag is; null where there is no edge", () => {
    const flag: Flag = { paints: [black, red], edges: [[0, 1, 2, 0]] };
    const book = new SwatchBook(cloth);
    const looks = looksOf(black, red);
    expect(measureToday(tableOfFlag(flag), looks, book)).toEqual({
      clarity: expect.closeTo((100 * contrast(black, red)) / 45, 6),
      strength: expect.closeTo((100 * contrast(black, red)) / 60, 6),
      focusClarity: null,
      clearEdgeShare: 0,
    });
    expect(measureToday(tableOf([["p1"]], []), looksOf(red), book)).toBeNull();
  });

  test("the edges of a paint, longest first, without those under 1 %", () => {
    const [subject] = subjectsOf({
      paints: [red, white, black, green],
      edges: [
        [0, 1, 5, 0],
        [0, 2, 4, 3],
        [1, 2, 3, 3],
        [0, 3, 0.05, 0],
      ],
    });
    const today = subject === undefined ? [] : listToday(subject, new SwatchBook(cloth));
    expect(today.map(({ other, pair, weight }) => [other, pair.b, weight])).toEqual([
      [white, "p2", 5],
      [black, "p3", 7],
    ]);
    expect(today[1]?.contrast).toBeCloseTo(contrast(red, black), 6);
  });
});
