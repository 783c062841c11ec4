import { describe, expect, test } from "vitest";
import { explainFirst, explainNone } from "../../../src/measure/options/firstreason.ts";
import { findFirst, groupByColour, rankOptions } from "../../../src/measure/options/rank.ts";
import { SwatchBook } from "../../../src/measure/options/swatchbook.ts";
import { listToday, measureToday, type OptionMarks } from "../../../src/measure/options/tryoptions.ts";
import { cloth, optionsOf, palette, shades, subjectsOf } from "../subject.ts";
import type { Flag } from "../twin.ts";

const { black, red, white, green } = shades;
const marks = (clarity: number): OptionMarks => ({
  clarity,
  strength: 0,
  focusClarity: null,
  clearEdgeShare: 0,
});

function explain(flag: Flag, names: readonly string[], candidates = palette): string {
  const book = new SwatchBook(cloth);
  const subjects = subjectsOf(flag).map((subject) => ({
    ...subject,
    looks: subject.looks.map((look, index) => ({ ...look, name: names[index] ?? "" })),
  }));
  const [one] = subjects;
  const today = one === undefined ? null : measureToday(one.table, one.looks, book);
  const { options } = rankOptions(optionsOf(flag, candidates));
  const first = today === null ? null : findFirst(groupByColour(options), today);
  const tried = subjects.map((subject) => ({
    id: `p${subject.paint + 1}`,
    name: names[subject.paint] ?? "",
    edges: listToday(subject, book),
  }));
  return first === null || today === null
    ? explainNone(today, tried.length, options.length)
    : explainFirst(first, tried, today);
}

// Contrast by the oracle: red on black 29.5, green on red 1.4, green on black 30.8, white on each of them 60 or more.
describe("the reason", () => {
  test("one colour helps more than any other; what gains most is the edge that lacks most by its length", () => {
    const only = palette.filter(({ name }) => name === "white");
    const flag: Flag = {
      paints: [red, black, green],
      edges: [
        [0, 1, 3, 0],
        [0, 2, 1, 0],
      ],
    };
    // (3 · 29.5 + 1.4) / 45 / 4 = 49.9 %. With black 3 · (45 − 29.5) = 46.5, with green 1 · (45 − 1.4) = 43.6.
    expect(explain(flag, ["red", "black", "green"], only)).toBe(
      "Change red first (33 % of the flag): with white in its place clarity rises from 50 % to 100 %. Most is gained where red meets black (contrast 29.5 % today).",
    );
  });

  test("the focus counts twice", () => {
    const only = palette.filter(({ name }) => name === "white");
    const flag: Flag = {
      paints: [red, black, green],
      edges: [
        [0, 1, 3, 0],
        [0, 2, 1, 1],
      ],
    };
    expect(explain(flag, ["red", "black", "green"], only)).toMatch(
      /where red meets green \(contrast 1 % today\)/,
    );
  });

  test("two colours can do the same", () => {
    const flag: Flag = { paints: [black, red], edges: [[0, 1, 2, 2]] };
    // 29.5 / 45 = 65.6 %.
    expect(explain(flag, ["black", "red"])).toMatch(
      /^Change red \(50 % of the flag\) or black \(50 %\) first: with \S+ for red clarity rises from 66 % to 100 %, with \S+ for black to 100 %\. Most is gained where red meets black \(contrast 29\.5 % today\)\.$/,
    );
  });

  test("nothing gains five points", () => {
    expect(explain({ paints: [white, red], edges: [[0, 1, 1, 0]] }, ["white", "red"])).toBe(
      "The flag is clear as it is, at a clarity of 100 %.",
    );
    expect(explainNone(marks(89.4), 2, 5)).toBe(
      "The flag has a clarity of 89 %, and no single change brings five points more.",
    );
    expect(explainNone(marks(89.5), 2, 5)).toMatch(/^The flag is clear as it is, at a clarity of 90 %: /);
  });

  test("where only a detail gains, the flag as a whole is clear", () => {
    const { options } = rankOptions(optionsOf({ paints: [black, red], edges: [[0, 1, 1, 0]] }));
    const [group] = groupByColour(options);
    if (group === undefined) throw new Error("there are options");
    const said = (share: number, today: number) =>
      explainFirst([{ ...group, share }], [{ id: group.id, name: "red", edges: [] }], marks(today));
    expect(said(0.029, 90)).toMatch(
      /^The flag as a whole is clear, at 90 %; only a detail gains\. Change red first \(3 % of the flag\)/,
    );
    expect(said(0.03, 90)).toMatch(/^Change red first/);
    expect(said(0.029, 89)).toMatch(/^Change red first/);
  });

  test("there is nothing to change", () => {
    expect(explainNone(null, 1, 0)).toBe("One colour: no edges to measure.");
    expect(explainNone(marks(50), 0, 0)).toBe("None of the colours could be tried.");
    expect(explainNone(marks(50), 2, 0)).toBe(
      "Every change that was tried merges a third of a charge's outline or more.",
    );
  });

  test("no first colour, no reason", () => expect(() => explainFirst([], [], marks(50))).toThrow(RangeError));
});
