import { expect, test } from "vitest";
import { parseText, printStudy, writeStudy } from "../../analysis/fixture.ts";

const palette =
  "white, black, red, yellow, green, dark green, blue, dark blue, light blue, orange, purple, brown";

// What an author reads, letter for letter. The lines replace or follow those of a study that is right.
test.each<[string, string[], string]>([
  [
    "a mistyped name of the palette",
    ['change: { replace: "#7a1020", with: lihgt blue }'],
    `\
ferry/study.md:4:37  error  “lihgt blue” is neither a name of the palette nor a CSS colour.  study/wrong-colour
    change: { replace: "#7a1020", with: lihgt blue }
                                        ^^^^^^^^^^
    Type “light blue”, if that is meant.`,
  ],
  [
    "a name nobody knows",
    ['change: { replace: "#7a1020", with: harvest }'],
    `\
ferry/study.md:4:37  error  “harvest” is neither a name of the palette nor a CSS colour.  study/wrong-colour
    change: { replace: "#7a1020", with: harvest }
                                        ^^^^^^^
    Type a hex colour in quotes, such as "#f4c430", or a name: ${palette}.`,
  ],
  [
    "hex digits without #, and a hex colour of five digits",
    ['change: { replace: 7a1020, with: "#f4c43" }'],
    `\
ferry/study.md:4:20  error  “7a1020” is not a CSS colour.  study/wrong-colour
    change: { replace: 7a1020, with: "#f4c43" }
                       ^^^^^^
    Put # before it: "#7a1020"

ferry/study.md:4:34  error  “#f4c43” has 5 digits behind the #; a hex colour has six, or three.  study/wrong-colour
    change: { replace: 7a1020, with: "#f4c43" }
                                     ^^^^^^^^
    Type all six, such as "#f4c430".`,
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
ferry/study.md:5:1  error  “focus” has both “colour” and “select”, and only one of them can be followed.  study/focus
    focus: { colour: red, select: "#wheel" }
    ^^^^^
    Type one of them: focus: { select: "#wheel" } or focus: { colour: "red" }`,
  ],
  [
    "no kind of focus",
    ["focus: {}"],
    `\
ferry/study.md:5:1  error  “focus” names neither a colour nor a selector.  study/focus
    focus: {}
    ^^^^^
    Type one of them: focus: { select: "#wheel" } or focus: { colour: "#7a1020" }`,
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
    "adopted with a decision that is mistyped",
    ["status: adopted", "descision: It reads."],
    `\
ferry/study.md:6:1  error  A study has no key “descision”.  study/unknown-key
    descision: It reads.
    ^^^^^^^^^
    Type “decision”.`,
  ],
  [
    "a decision in two places",
    ["status: adopted", "decision: It reads.", "decided: { date: 2026-05-02, why: It reads. }"],
    `\
ferry/study.md:6:1  error  The decision stands twice: as “decision” and as “decided”.  study/decision-twice
    decision: It reads.
    ^^^^^^^^
    Keep “decided”, and type the sentence behind its “why”.`,
  ],
  [
    "decided on a day that is none, and still open",
    ["decided: { date: 2026-02-30, for: 3, why: It reads. }"],
    `\
ferry/study.md:5:1  error  The study is decided, and its status is open.  study/decision-open
    decided: { date: 2026-02-30, for: 3, why: It reads. }
    ^^^^^^^
    Type: status: adopted, or: status: declined

ferry/study.md:5:18  error  “date” is “2026-02-30”, and the calendar has no such day.  study/wrong-date
    decided: { date: 2026-02-30, for: 3, why: It reads. }
                     ^^^^^^^^^^
    February 2026 has 28 days: the month is the number in the middle.`,
  ],
  [
    "a day the calendar does not have",
    ["date: 2026-02-29"],
    `\
ferry/study.md:5:7  error  “date” is “2026-02-29”, and the calendar has no such day.  study/wrong-date
    date: 2026-02-29
          ^^^^^^^^^^
    February 2026 has 28 days: the month is the number in the middle.`,
  ],
  [
    "a date in words",
    ["date: 2 April 2026"],
    `\
ferry/study.md:5:7  error  “date” is “2 April 2026”; a date is year, month and day with hyphens between.  study/wrong-date
    date: 2 April 2026
          ^^^^^^^^^^^^
    Type: date: 2026-04-02`,
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
