import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { compareLooks } from "../../src/measure/compare.ts";
import { listWeakest, measureOptions, measureToday } from "../../src/measure/options.ts";
import { rankOptions } from "../../src/measure/rank.ts";
import { SwatchBook } from "../../src/measure/swatch.ts";
import { frame, looksOf, tableOf } from "./build.ts";
import { clarityAfter, contrast, difference, type Flag, rankByHand } from "./oracle.ts";
import { cloth, optionsOf, palette, shades, subjectsOf } from "./subject.ts";

const { white, yellow, red, black, green } = shades;
const darkBlue = shades["dark blue"];
const lightBlue = shades["light blue"];

/** Flags of two and three paints: a charge on a field, a bordered charge, stripes, a canton. */
const constructed: readonly (readonly [string, Flag])[] = [
  ["red charge on black", { paints: [black, red], edges: [[0, 1, 2, 2]] }],
  ["white charge on light blue", { paints: [lightBlue, white], edges: [[0, 1, 1.5, 1.5]] }],
  ["two stripes", { paints: [green, red], edges: [[0, 1, 1.5, 0]] }],
  [
    "three stripes",
    {
      paints: [white, yellow, red],
      edges: [
        [0, 1, 1.5, 0],
        [1, 2, 1.5, 0],
      ],
    },
  ],
  [
    "dark charge on red, yellow beside it",
    {
      paints: [red, yellow, black],
      edges: [
        [0, 1, 1, 0],
        [0, 2, 1.2, 1.2],
      ],
    },
  ],
  [
    "three that all meet",
    {
      paints: [darkBlue, red, green],
      edges: [
        [0, 1, 1, 1],
        [0, 2, 0.7, 0],
        [1, 2, 0.4, 0.4],
      ],
    },
  ],
  [
    "fimbriated charge",
    {
      paints: [green, white, red],
      edges: [
        [0, 1, 2, 0],
        [1, 2, 1.8, 1.8],
      ],
    },
  ],
];

describe("against everything tried by hand", () => {
  test.each(constructed)("%s: the same options in the same order", (_, flag) => {
    const { options, vanishing } = rankOptions(optionsOf(flag));
    const byHand = rankByHand(
      flag,
      palette.map(({ hex }) => hex),
    );
    expect(options.map((option) => `${option.id} ${option.with}`)).toEqual(byHand.ranked);
    expect(vanishing.map((option) => `${option.id} ${option.with}`)).toEqual(byHand.vanishing);
  });

  test.each(constructed)("%s: the same figures", (_, flag) => {
    for (const option of optionsOf(flag)) {
      const at = Number(option.id.slice(1)) - 1;
      expect(option.clarity).toBeCloseTo(clarityAfter(flag, at, option.with), 6);
      expect(option.deltaE00).toBeCloseTo(difference(flag.paints[at] ?? "", option.with), 1);
    }
  });

  const hex = fc.integer({ min: 0, max: 0xffffff }).map((n): Hex => `#${n.toString(16).padStart(6, "0")}`);
  const length = fc.integer({ min: 1, max: 40 }).map((n) => n / 10);

  test("any flag of three paints", () => {
    fc.assert(
      fc.property(
        fc.tuple(hex, hex, hex),
        fc.tuple(length, length, length),
        fc.boolean(),
        (paints, [x, y, z], hasFocus) => {
          fc.pre(
            difference(paints[0], paints[1]) > 6 &&
              difference(paints[1], paints[2]) > 6 &&
              difference(paints[0], paints[2]) > 6,
          );
          const flag: Flag = {
            paints,
            edges: [
              [0, 1, x, hasFocus ? x : 0],
              [1, 2, y, 0],
              [0, 2, z, hasFocus ? z / 2 : 0],
            ],
          };
          for (const option of optionsOf(flag)) {
            // Near ΔE00 5 the two implementations may fall on different sides of it.
            const at = Number(option.id.slice(1)) - 1;
            if (
              paints.some(
                (other, index) => index !== at && Math.abs(difference(option.with, other) - 5) < 0.05,
              )
            )
              continue;
            expect(option.clarity).toBeCloseTo(clarityAfter(flag, at, option.with), 6);
          }
        },
      ),
      { numRuns: 60, seed: 7 },
    );
  });
});

// Rules of the trade. Source: common practice, no source. Shades and measure of “clear”: tests/reference/trade-pairs.ts.
describe("what anyone who looks at flags would say", () => {
  const best = (flag: Flag) => rankOptions(optionsOf(flag)).options.filter(({ place }) => place === 1);

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
    const ground = grounds.find(({ name }) => name === "yellow");
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
      merged: [],
      vanishes: false,
    });
  });

  test("a merged edge is neither lost nor gained, keeps its length and counts 0", () => {
    const merged = option(field, white);
    expect(merged?.merged).toEqual([{ a: "p1", b: "p3", names: [red, white] }]);
    expect(merged?.lost).toEqual([]);
    // Weights 4, 1, 1; black on white counts fully, the merged edge not at all.
    expect(merged?.clarity).toBeCloseTo((100 * 5) / 6, 9);
    expect(merged?.clearEdgeShare).toBeCloseTo(3 / 4, 9);
    expect(merged?.vanishes).toBe(false);
  });

  test("a change that merges an edge of the focus makes it vanish", () => {
    expect(option(field, black)).toMatchObject({ vanishes: true, merged: [{ a: "p1", b: "p2" }] });
    expect(option(charge, red)?.vanishes).toBe(true);
  });

  test("a sliver of the focus, 1 % of its edges at most, may merge", () => {
    const flag = (sliver: number): Flag => ({
      paints: [red, black, white],
      edges: [
        [0, 1, 2, 2],
        [0, 2, sliver, sliver],
      ],
    });
    const vanishes = (sliver: number) =>
      optionsOf(flag(sliver)).find(({ id, name }) => id === "p1" && name === "white")?.vanishes;
    expect(vanishes(0.019)).toBe(false);
    expect(vanishes(0.03)).toBe(true);
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
    const found = optionsOf(near, [{ hex: "#c6212f", name: "new", kind: "palette" }]).filter(
      ({ id }) => id === "p1",
    );
    expect(found).toMatchObject([{ merged: [], vanishes: false }]);
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
      for (const paint of [0, 1, 2]) {
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
        expect(option?.clearEdgeShare).toBeCloseTo(compared.clearEdgeShare[1] ?? Number.NaN, 9);
        for (const outcome of ["gained", "lost", "merged"] as const)
          expect(option?.[outcome].map(({ a, b }) => `${a} ${b}`)).toEqual(idsOf(outcome));
        expect(measureToday(table, looks, new SwatchBook(cloth))).toBeCloseTo(
          compared.clarity[0] ?? Number.NaN,
          9,
        );
      }
    },
  );
});

describe("today", () => {
  test("clarity as it is; null where there is no edge", () => {
    const [subject] = subjectsOf({ paints: [black, red], edges: [[0, 1, 2, 0]] });
    const book = new SwatchBook(cloth);
    expect(measureToday(subject?.table ?? tableOf([], []), subject?.looks ?? [], book)).toBeCloseTo(
      (100 * contrast(black, red)) / 45,
      6,
    );
    expect(measureToday(tableOf([["p1"]], []), looksOf(red), book)).toBeNull();
  });

  test("the edges of a paint, weakest first, without those under 1 %", () => {
    const [subject] = subjectsOf({
      paints: [red, white, black, green],
      edges: [
        [0, 1, 5, 0],
        [0, 2, 4, 0],
        [0, 3, 0.05, 0],
      ],
    });
    const weakest = subject === undefined ? [] : listWeakest(subject, new SwatchBook(cloth));
    expect(weakest.map(({ other }) => other)).toEqual([black, white]);
    expect(weakest[0]?.share).toBeCloseTo(4 / 9.05, 9);
    expect(weakest[0]?.contrast).toBeCloseTo(contrast(red, black), 6);
  });
});
