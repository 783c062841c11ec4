import { expect, test } from "vitest";
import { describeSurvey, formatCsv } from "../../src/cli/list.ts";
import type { Survey, SurveyedFlag } from "../../src/study/survey.ts";

const best = {
  place: 1,
  id: "p2",
  replace: "#701c2b",
  with: "#e6b436",
  name: "yellow",
  kind: "palette",
  clarity: 98.76543,
  clearEdgeShare: 1,
  deltaE00: 40,
  gained: [],
  lost: [],
  merged: [],
  vanishes: false,
  confusable: [],
  confusions: [],
} as const;

const flag: SurveyedFlag = {
  file: "a.svg",
  clarity: 12.345678,
  clearEdgeShare: 0.25,
  weakestEdge: { a: "p1", b: "p2", names: ["dark blue", "dark red"], contrast: 6.3 },
  changeFirst: [{ id: "p2", hex: "#701c2b", name: "dark red" }],
  bestOption: best,
  readsTo: 320,
};
const plain: SurveyedFlag = {
  file: "=b.svg",
  clarity: null,
  clearEdgeShare: null,
  weakestEdge: null,
  changeFirst: null,
  bestOption: null,
  readsTo: null,
};
const problem = {
  rule: "svg/empty",
  severity: "error",
  file: 'c "d", e.svg',
  reason: "It is empty, it is.",
} as const;
const survey: Survey = { flags: [flag, plain], failed: [{ file: problem.file, problem }] };

test("a table, everything in it where there is room", () => {
  expect(describeSurvey(survey, { hasColour: false })).toBe(`\
  flag    clarity  weakest  edge                  reads to  change first  best change                clarity
  a.svg    12.3 %    6.3 %  dark blue / dark red      320+  dark red      dark red → yellow #e6b436   98.8 %
  =b.svg     none           no edges`);
});

test("the most telling columns where there is little", () => {
  expect(describeSurvey(survey, { hasColour: false, columns: 80 })).toBe(`\
  flag    clarity  weakest  best change                clarity
  a.svg    12.3 %    6.3 %  dark red → yellow #e6b436   98.8 %
  =b.svg     none`);
});

test("blocks of colour where they show", () => {
  const [, first] = describeSurvey(survey, { hasColour: true }).split("\n");
  // #701c2b is 112, 28, 43; #e6b436 is 230, 180, 54.
  expect(first).toContain("\u001b[48;2;112;28;43m  \u001b[0m \u001b[48;2;230;180;54m  \u001b[0m a.svg");
});

// RFC 4180: CR LF between records; fields with quotes or commas in quotes, a quote doubled.
test("CSV: numbers to four decimals, nothing that a spreadsheet would compute", () => {
  expect(formatCsv(survey)).toBe(
    [
      "file,clarity,clearEdgeShare,weakestEdge,weakestContrast,readsTo,changeFirst,bestReplace,bestWith,bestName,bestClarity,problem",
      "a.svg,12.3457,0.25,dark blue / dark red,6.3,320,#701c2b,#701c2b,#e6b436,yellow,98.7654,",
      "./=b.svg,,,,,,,,,,,",
      '"c ""d"", e.svg",,,,,,,,,,,"It is empty, it is."',
    ].join("\r\n"),
  );
});
