import { expect, test } from "vitest";
import { checkCurly } from "../../../src/content/yaml/curlyquote.ts";

test.each([
  ["“#7a1020”", "#7a1020"],
  ["‘#7a1020’", "#7a1020"],
  ["„#7a1020“", "#7a1020"],
  ["«#7a1020»", "#7a1020"],
  ["”dark red”", "dark red"],
  ["#7a1020”", "#7a1020"],
])("%s", (typed, meant) => {
  expect(checkCurly({ change: { replace: typed } })).toEqual([
    {
      rule: "study/curly-quotes",
      path: "change.replace",
      on: "value",
      isWhole: true,
      reason: "“replace” stands in curly quotes, which count as letters of the value.",
      hint: `Type straight quotes: replace: "${meant}"`,
    },
  ]);
});

test("everywhere a code or a word of ours stands, and nowhere in prose", () => {
  const raw = {
    title: "“The Wheel”",
    decision: "“Yes.”",
    authors: ["“Ines”"],
    original: "“original.svg”",
    focus: { select: "“#wheel”" },
    options: [{ with: "“white”", note: "“No.”" }],
    credit: { title: "“Flag”", licence: "“CC0-1.0”" },
    palette: { sea: "“#2e8b70”" },
  };
  expect(checkCurly(raw).map(({ path }) => path)).toEqual([
    "original",
    "focus.select",
    "options.0.with",
    "credit.licence",
    "palette.sea",
  ]);
});

test("an apostrophe inside is none", () => {
  expect(checkCurly({ status: "it’s open", change: { only: "#o’hara" } })).toEqual([]);
});
