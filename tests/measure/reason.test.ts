import { describe, expect, test } from "vitest";
import { listWeakest, measureToday } from "../../src/measure/options.ts";
import { findFirst, rankOptions } from "../../src/measure/rank.ts";
import { explainFirst, explainNone } from "../../src/measure/reason.ts";
import { SwatchBook } from "../../src/measure/swatch.ts";
import type { Flag } from "./oracle.ts";
import { cloth, optionsOf, palette, shades, subjectsOf } from "./subject.ts";

const { black, red, white, green } = shades;

function explain(flag: Flag, names: readonly string[], candidates = palette): string {
  const book = new SwatchBook(cloth);
  const subjects = subjectsOf(flag).map((subject) => ({
    ...subject,
    looks: subject.looks.map((look, index) => ({ ...look, name: names[index] ?? "" })),
  }));
  const [one] = subjects;
  const today = one === undefined ? null : measureToday(one.table, one.looks, book);
  const { options } = rankOptions(optionsOf(flag, candidates));
  const first = findFirst(options, today ?? 0);
  const tried = subjects.map((subject) => ({
    id: `p${subject.paint + 1}`,
    name: names[subject.paint] ?? "",
    edges: listWeakest(subject, book),
  }));
  return first === null || today === null
    ? explainNone(today, tried.length, options.length)
    : explainFirst(first, tried, options, today);
}

describe("the reason", () => {
  test("one colour helps more than any other", () => {
    const only = palette.filter(({ name }) => name === "white");
    const flag: Flag = {
      paints: [red, black, green],
      edges: [
        [0, 1, 1, 0],
        [0, 2, 1, 0],
      ],
    };
    expect(explain(flag, ["red", "black", "green"], only)).toMatch(
      /^Change red first: it meets green along 50 % of all edge length at a contrast of \d+ %, and with white in its place clarity rises from \d+ % to 100 %, more than changing any other colour brings\.$/,
    );
  });

  // Luminance of the red 0.2126 · 0.578 + 0.7152 · 0.0144 + 0.0722 · 0.0284 = 0.1353: reflectance 15.82 beside 5, so
  // contrast 125 · 10.82 / 45.82 = 29.5 and clarity 29.5 / 45 = 65.6 %.
  test("another colour can do the same, from further away", () => {
    const flag: Flag = { paints: [black, red], edges: [[0, 1, 2, 2]] };
    expect(explain(flag, ["black", "red"])).toBe(
      "Change red first: it meets black along 100 % of all edge length at a contrast of 29.5 %, and with orange in its place clarity rises from 66 % to 100 %; changing black can do the same, with a larger departure from today's colour.",
    );
  });

  test("two colours do equally well from equally near", () => {
    const { options } = rankOptions(
      optionsOf({ paints: [black, red], edges: [[0, 1, 1, 0]] }).map((option) => ({
        ...option,
        clarity: 98,
      })),
    );
    const first = options.slice(0, 2).map((best, index) => ({ id: `p${index + 1}`, hex: red, best }));
    const tried = ["black", "red"].map((name, index) => ({ id: `p${index + 1}`, name, edges: [] }));
    expect(explainFirst(first, tried, [], 60)).toBe(
      "Change black or red first: each of them can raise clarity from 60 % to 98 %, with the same departure from today's colour.",
    );
  });

  test.each([
    [5, "a, b, c, d or e"],
    [6, "a, b, c, d or one of 2 others"],
    [14, "a, b, c, d or one of 10 others"],
  ])("of %i colours that do equally well a sentence names no more than can be read", (count, named) => {
    const { options } = rankOptions(optionsOf({ paints: [black, red], edges: [[0, 1, 1, 0]] }));
    const [best] = options;
    if (best === undefined) throw new Error("there are options");
    const first = Array.from({ length: count }, (_, index) => ({ id: `p${index}`, hex: red, best }));
    const tried = first.map(({ id }, index) => ({ id, name: "abcdefghijklmn"[index] ?? "", edges: [] }));
    expect(explainFirst(first, tried, [], 60)).toContain(`Change ${named} first: `);
  });

  test("nothing gains", () => {
    expect(explain({ paints: [white, red], edges: [[0, 1, 1, 0]] }, ["white", "red"])).toBe(
      "No single change raises clarity by 1 point or more: it is 100 % as it is.",
    );
  });

  test("there is nothing to change", () => {
    expect(explainNone(null, 1, 0)).toBe("One colour: no edges to measure.");
    expect(explainNone(50, 0, 0)).toBe("None of the colours could be tried.");
    expect(explainNone(50, 2, 0)).toBe("Every change that was tried makes the charge vanish.");
  });

  test("no first colour, no reason", () => expect(() => explainFirst([], [], [], 50)).toThrow(RangeError));
});
