import { expect, test } from "vitest";
import { printStudy } from "../../analysis/fixture.ts";

// What an author reads below the line: the rest is told in issue.test.ts.
test.each([
  ["authors: Ines Valcourt and Tobin Arkwell", "Put it in brackets: authors: [Ines Valcourt, Tobin Arkwell]"],
  ["authors: Ines; Tobin", "Put it in brackets: authors: [Ines, Tobin]"],
  ["tags: charge, dark on dark", "Put it in brackets: tags: [charge, dark on dark]"],
  ["title: [A wheel]", "Type: title: A wheel"],
  ["title: 12", 'Put it in quotes: title: "12"'],
  ["change: { replace: 701020, with: white }", 'Type: replace: "#701020"'],
  ['focus: "#wheel"', 'Type: focus: { select: "#wheel" }'],
  ['focus: "#7a1020"', 'Type: focus: { colour: "#7a1020" }'],
  ["focus: dark red", 'Type: focus: { select: "dark red" }'],
  ["date: 20260402", "Type, for example: date: 2026-04-02"],
  ["credit: Ines Valcourt", "Type, for example: credit: { author: Ines Valcourt, licence: CC0-1.0 }"],
])("%s", (typed, hint) => {
  const printed = printStudy(typed);
  expect(printed.split("\n\n")).toHaveLength(1);
  expect(printed.split("\n").slice(3).join("\n").trim()).toBe(hint);
});

test("a group of keys is named with them", () => {
  expect(printStudy("change: red to yellow")).toContain(
    "“change” is the text “red to yellow”; it must be a group of keys: replace, with, only, part.",
  );
});
