import { stripVTControlCharacters } from "node:util";
import { expect, test } from "vitest";
import { describeRanking } from "../../../src/cli/text/optionstext.ts";
import type { RankedOption } from "../../../src/measure/options/rank.ts";
import type { ToldReport } from "../../../src/words/optionsreport.ts";

const pair = (a: string, b: string, names: readonly [string, string]) => ({ a, b, names });
const yellow: RankedOption = {
  id: "p2",
  replace: "#701c2b",
  with: "#e6b436",
  name: "yellow",
  kind: "palette",
  clarity: 97.6,
  strength: 90,
  focusClarity: 96.2,
  clearEdgeShare: 1,
  share: 0.112,
  deltaE00: 40.04,
  deltaEab: 70,
  gained: [pair("p1", "p2", ["dark blue", "dark red"])],
  better: [],
  worse: [pair("p2", "p3", ["dark red", "green"])],
  lost: [pair("p2", "p4", ["dark red", "white"])],
  merged: [pair("p1", "p2", ["dark blue", "dark red"])],
  mergedOutline: 0.081,
  confusable: [],
  confusions: [],
  place: 1,
  placeInColour: 1,
};
const plain = { lost: [], worse: [], merged: [], mergedOutline: 0 } as const;
const field = {
  ...yellow,
  ...plain,
  id: "p1",
  replace: "#15244a",
  share: 0.888,
  clarity: 50,
  focusClarity: null,
} as const;

const report: ToldReport = {
  file: "a.svg",
  clarity: 14,
  strength: 12,
  focusClarity: 13.6,
  changeFirst: [{ id: "p2", hex: "#701c2b", name: "dark red" }],
  reason: "Change dark red first: it says why.",
  options: [
    yellow,
    { ...yellow, ...plain, with: "#ffffff", name: "white", kind: "own" },
    { ...yellow, ...plain, with: "#fefefe", name: "white" },
    { ...yellow, ...plain, with: "#903040", name: "red", clarity: 50, place: 4, placeInColour: 4 },
    { ...field, with: "#f7c81e", name: "yellow", place: 5 },
  ],
  vanishing: [
    { ...yellow, with: "#15244a", name: "dark blue" },
    { ...yellow, with: "#000000", name: "black" },
    { ...field, with: "#701c2b", name: "dark red" },
  ],
  shades: [
    {
      id: "p2",
      hex: "#701c2b",
      name: "dark red",
      isClear: false,
      lighter: null,
      darker: null,
      reason: "No shade of red does.",
    },
    { id: "p1", hex: "#15244a", name: "dark blue", isClear: true, lighter: null, darker: null },
  ],
  notes: ["Green is not flat."],
};
const style = { distance: 40, hasColour: false };

test("what to change and why; then the best of each colour, its equals by name, what gets worse", () => {
  expect(describeRanking(report, style)).toBe(`\
Change dark red first: it says why.

a.svg: clarity 14 %, focus clarity 14 %
  seen from 40 flag heights away (a model of sight)

  change             share  best in its place    clarity  focus clarity
  dark red #701c2b    11 %  yellow #e6b436     14 → 98 %      14 → 96 %
      as good: white
      but: lost beside white; worse beside green; merges with dark blue (8 % of the outline merges)
  dark blue #15244a   89 %  yellow #f7c81e     14 → 50 %      14 → none

Not ranked, since a charge would merge: dark red → dark blue, black; dark blue → dark red

Note: Green is not flat.
Note: No shade of red does.`);
});

test("no focus has no column", () => {
  const text = describeRanking(
    { ...report, focusClarity: null, vanishing: [], shades: [], notes: [] },
    style,
  );
  expect(text).toContain("\na.svg: clarity 14 %\n");
  expect(text).toContain("best in its place    clarity\n");
  expect(text).not.toContain("focus");
});

test("nothing to rank is no table", () => {
  const none = {
    ...report,
    clarity: null,
    focusClarity: null,
    changeFirst: null,
    options: [],
    vanishing: [],
  };
  expect(
    describeRanking({ ...none, shades: [], notes: [], reason: "One colour." }, { ...style, distance: 0 }),
  ).toBe(`\
One colour.

a.svg: clarity none
  the full drawing`);
});

// The longest that there can be: two dozen colours with long names, all with equals and losses, three to change first.
const long = "very light bluish green of the harbour 2";
const crowd = Array.from({ length: 24 }, (_, index) => `p${index + 1}`);
const crowded: ToldReport = {
  ...report,
  file: `${"folder/".repeat(30)}a.svg`,
  clarity: 0.014,
  focusClarity: 99.987,
  reason: `${`Change ${long} or ${long} first, with ${long} in place of either. `.repeat(5)}`,
  options: crowd.flatMap((id) => {
    const option = { ...yellow, id, name: long, clarity: 99.987, focusClarity: 0.014, share: 0.0004 };
    const many = Array.from({ length: 20 }, () => pair("p99", id, [long, long]));
    return [
      { ...option, lost: many, worse: many, merged: many },
      ...crowd.map((_, index) => ({ ...option, name: `${long} ${index}` })),
    ];
  }),
  vanishing: crowd.map((id) => ({ ...yellow, id, name: long })),
  shades: crowd.map((id) => ({
    id,
    hex: "#701c2b",
    name: long,
    isClear: false,
    lighter: null,
    darker: null,
    reason: `No shade of this ${long} clears ${`${long}, `.repeat(8)}at once.`,
  })),
  notes: [`No flat colour, so not tried: ${`${long}, `.repeat(20)}.`],
};

test.each([false, true])("whatever the flag, under 30 lines and 100 columns (colour: %s)", (hasColour) => {
  const lines = describeRanking(crowded, { distance: 1000, hasColour }).split("\n");
  expect(lines.length).toBeLessThan(30);
  expect(lines.length).toBeGreaterThan(20);
  for (const line of lines) expect(stripVTControlCharacters(line).length, line).toBeLessThanOrEqual(100);
  expect(lines.some((line) => /^ {2}and \d+ more colours: --json has all$/.test(line))).toBe(true);
  expect(lines.at(-1)).toMatch(/^and \d+ more: --json has all$/);
});

test("a block of both colours before each row, where they show", () => {
  const text = describeRanking(report, { ...style, hasColour: true });
  expect(text.split("\u001b[48;2;")).toHaveLength(5);
});
