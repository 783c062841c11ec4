import { expect, test } from "vitest";
import { parseText, printStudy, writeStudy } from "./fixture.ts";

const palette =
  "white, yellow, orange, red, green, dark green, light blue, blue, dark blue, purple, black, brown, grey";

// What an author reads, letter for letter. The lines replace or follow those of a study that is right.
test.each<[string, string[], string]>([
  [
    "a mistyped name of the palette",
    ['change: { replace: "#7a1020", with: lihgt blue }'],
    `\
ferry/study.md:4:37  error  “lihgt blue” is neither a name of the palette nor a CSS colour.  study/wrong-colour
    change: { replace: "#7a1020", with: lihgt blue }
                                        ^^^^^^^^^^
    Did you mean “light blue”?`,
  ],
  [
    "a name nobody knows",
    ['change: { replace: "#7a1020", with: harvest }'],
    `\
ferry/study.md:4:37  error  “harvest” is neither a name of the palette nor a CSS colour.  study/wrong-colour
    change: { replace: "#7a1020", with: harvest }
                                        ^^^^^^^
    Type a CSS colour in quotes, such as "#f4c430", or one of the palette: ${palette}.`,
  ],
  [
    "hex digits without #, and a hex colour of five digits",
    ['change: { replace: 7a1020, with: "#f4c43" }'],
    `\
ferry/study.md:4:20  error  “7a1020” is not a CSS colour.  study/wrong-colour
    change: { replace: 7a1020, with: "#f4c43" }
                       ^^^^^^
    Put # before it: "#7a1020"

ferry/study.md:4:34  error  “#f4c43” is neither a name of the palette nor a CSS colour.  study/wrong-colour
    change: { replace: 7a1020, with: "#f4c43" }
                                     ^^^^^^^^
    A hex colour is # and 3 or 6 digits, 0 to 9 and a to f, such as "#f4c430".`,
  ],
  [
    "a translucent colour, in an option",
    ["options:", '  - { replace: red, with: "#ff000080" }'],
    `\
ferry/study.md:6:27  error  “with” is “#ff000080”, which is translucent; a flag's colour is opaque.  study/wrong-colour
      - { replace: red, with: "#ff000080" }
                              ^^^^^^^^^^^
    Type the opaque colour: with: "#ff0000"`,
  ],
  [
    "both kinds of focus",
    ['focus: { colour: red, select: "#wheel" }'],
    `\
ferry/study.md:5:1  error  “focus” has both “colour” and “select”; one of them says it all.  study/focus
    focus: { colour: red, select: "#wheel" }
    ^^^^^
    Type focus: { select: "#wheel" } or focus: { colour: "#7a1020" }`,
  ],
  [
    "no kind of focus",
    ["focus: {}"],
    `\
ferry/study.md:5:1  error  “focus” names neither a colour nor a selector.  study/focus
    focus: {}
    ^^^^^
    Type focus: { select: "#wheel" } or focus: { colour: "#7a1020" }`,
  ],
  [
    "adopted without a decision",
    ["status: adopted"],
    `\
ferry/study.md:5:9  error  A study that is adopted says why, and “decision” is not there.  study/decision-missing
    status: adopted
            ^^^^^^^
    Add a sentence: decision: The lighter wheel reads from the quay.`,
  ],
  [
    "a day the calendar does not have",
    ["date: 2026-02-29"],
    `\
ferry/study.md:5:7  error  “date” is “2026-02-29”, and the calendar has no such day.  study/wrong-date
    date: 2026-02-29
          ^^^^^^^^^^
    Type year, month and day with hyphens: date: 2026-04-02`,
  ],
  [
    "a date in words",
    ["date: 2 April 2026"],
    `\
ferry/study.md:5:7  error  “date” is “2 April 2026”, which is not a date as it is written here.  study/wrong-date
    date: 2 April 2026
          ^^^^^^^^^^^^
    Type year, month and day with hyphens: date: 2026-04-02`,
  ],
  [
    "a tag with a slash",
    ["tags: [charge, dark/dark]"],
    `\
ferry/study.md:5:16  error  The tag “dark/dark” has characters that a tag cannot have.  study/wrong-tag
    tags: [charge, dark/dark]
                   ^^^^^^^^^
    Use letters, digits, spaces and hyphens: dark dark`,
  ],
  [
    "an author without a letter",
    ['authors: ["?"]'],
    `\
ferry/study.md:5:11  error  The author “?” has no letter in the name.  study/wrong-author
    authors: ["?"]
              ^^^
    Type the name: authors: [Ines Valcourt]`,
  ],
])("%s", (_, lines, report) => {
  expect(printStudy(...lines)).toBe(report);
});

test.each([["2024-02-29"], ["2000-02-29"], ["2026-12-31"]])("%s is a day", (date) => {
  expect(printStudy(`date: ${date}`)).toBe("");
});

test.each([["2100-02-29"], ["2026-13-01"], ["2026-00-10"], ["2026-04-31"], ["0000-01-01"]])(
  "%s is no day",
  (date) => {
    expect(printStudy(`date: ${date}`)).toContain("the calendar has no such day");
  },
);

test("a name of the drawing is left to the drawing", () => {
  expect(
    printStudy("change: { replace: harbour red, with: REBECCAPURPLE }", "focus: { colour: lighter red }"),
  ).toBe("");
});

test("every problem of a file is reported, not only the first", () => {
  const problems = parseText(
    writeStudy("titel: x", "status: x", "date: x", "tags: [a/b]", "permalink: x", "focus: {}"),
  ).problems;
  expect(problems.map(({ rule }) => rule).sort()).toEqual([
    "study/focus",
    "study/unknown-key",
    "study/unknown-key",
    "study/unknown-word",
    "study/wrong-date",
    "study/wrong-tag",
  ]);
});
