import { describe, expect, test } from "vitest";
import type { OptionsReport } from "../../src/analysis/options/rankoptions.ts";
import { SwatchBook } from "../../src/measure/colourcache.ts";
import { findFirst, findMostGained, groupByColour, rankOptions } from "../../src/measure/options/rank.ts";
import { listToday, measureToday } from "../../src/measure/options/tryoptions.ts";
import { createFormat, plainFormat } from "../../src/words/format.ts";
import { describeFirst, listNotes, tellReport } from "../../src/words/optionsreport.ts";
import { makeOption } from "../measure/ranked.ts";
import { cloth, optionsOf, palette, shades, subjectsOf } from "../measure/subject.ts";
import type { Flag } from "../measure/twin.ts";

const { black, red, white, green } = shades;
const shade = { isClear: false, least: null, lighter: null, darker: null, demands: [] };
const report: OptionsReport = {
  file: "a.svg",
  distance: 160,
  clarity: 50,
  strength: 50,
  focusClarity: null,
  changeFirst: null,
  mostGained: null,
  options: [],
  vanishing: [],
  shades: [{ ...shade, id: "p2", hex: "#c8202f", name: "red" }],
  leftOut: { uneven: [], unseen: [], shared: [] },
};

/** The reason, of names and numbers that the measuring code found. */
function explain(flag: Flag, names: readonly string[], candidates = palette): string {
  const book = new SwatchBook(cloth);
  const subjects = subjectsOf(flag);
  const [one] = subjects;
  const today = one === undefined ? null : measureToday(one.table, one.looks, book);
  const { options } = rankOptions(optionsOf(flag, candidates));
  const [first] = (today && findFirst(groupByColour(options), today)) ?? [];
  const found = subjects.find(({ paint }) => `p${paint + 1}` === first?.id);
  const called = found && {
    ...found,
    looks: found.looks.map((look, index) => ({ ...look, name: names[index] ?? "" })),
  };
  return describeFirst(
    {
      ...report,
      clarity: today?.clarity ?? null,
      options,
      mostGained: first && called ? findMostGained(first, listToday(called, book)) : null,
      shades: subjects.map(({ paint }) => ({
        ...shade,
        id: `p${paint + 1}`,
        hex: "#000000",
        name: names[paint] ?? "",
      })),
    },
    plainFormat,
  );
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
    const options = [makeOption({ clarity: 91 })];
    expect(describeFirst({ ...report, clarity: 89.4, options }, plainFormat)).toBe(
      "The flag has a clarity of 89 %, and no change of one colour brings five points more.",
    );
    expect(describeFirst({ ...report, clarity: 89.5, options }, plainFormat)).toMatch(
      /^The flag is clear as it is, at a clarity of 90 %: /,
    );
  });

  test("where only a detail gains, the flag as a whole is clear", () => {
    const said = (share: number, clarity: number) =>
      describeFirst({ ...report, clarity, options: [makeOption({ clarity: 100, share })] }, plainFormat);
    expect(said(0.029, 90)).toBe(
      "The flag as a whole is clear, at 90 %; only a detail gains. Change red first (3 % of the flag): with white in its place clarity rises from 90 % to 100 %.",
    );
    expect(said(0.03, 90)).toMatch(/^Change red first/);
    expect(said(0.029, 89)).toMatch(/^Change red first/);
  });

  test("there is nothing to change", () => {
    const say = (more: Partial<OptionsReport>) => describeFirst({ ...report, ...more }, plainFormat);
    expect(say({ clarity: null })).toBe("One colour: no edges to measure.");
    expect(say({ shades: [] })).toBe("None of the colours could be tried.");
    expect(say({})).toBe("Every change that was tried merges a third of a charge's outline or more.");
  });

  test("a page sets its numbers and apostrophes as its language does", () => {
    expect(describeFirst(report, createFormat("en"))).toMatch(/ a charge’s outline /);
    expect(describeFirst({ ...report, clarity: 99 }, createFormat("de"))).toMatch(/^Durch jede /);
    const options = [makeOption({ clarity: 91 })];
    expect(describeFirst({ ...report, clarity: 89.4, options }, createFormat("de"))).toMatch(/ 89\u00a0%/);
  });
});

describe("what was left out", () => {
  const leftOut = {
    uneven: ["grey", "sand"],
    unseen: ["dark blue"],
    shared: ["red"],
    palette: { paints: 64, of: 100 },
  };
  const told = [
    "No flat colour, so not tried: grey, sand.",
    "Not seen from 160 flag heights away, so not tried: dark blue.",
    "Also shown translucent or in a gradient or pattern, which the figures leave as it is: red.",
    "48 colours: only the 24 largest were tried, with each other's colours.",
    "The palette has 100 colours: the first 64 were tried.",
  ];

  test("is told, a sentence each", () => {
    expect(listNotes(report, plainFormat)).toEqual([]);
    expect(listNotes({ ...report, leftOut, tried: { paints: 24, of: 48 } }, plainFormat)).toEqual(told);
  });

  test("a report for machines has the sentences in place of what they are made of", () => {
    const demands = [{ name: "black", atMost: null, atLeast: null }];
    const plain = tellReport({
      ...report,
      shades: report.shades.map((one) => ({ ...one, demands })),
      leftOut,
      tried: { paints: 24, of: 48 },
    });
    expect(plain.notes).toEqual(told);
    expect(plain.reason).toMatch(/^Every change /);
    expect(plain.shades).toEqual([
      {
        id: "p2",
        hex: "#c8202f",
        name: "red",
        isClear: false,
        lighter: null,
        darker: null,
        reason: "No shade of this red is well clear of black.",
      },
    ]);
    for (const key of ["distance", "mostGained", "leftOut"]) expect(plain).not.toHaveProperty(key);
  });
});
