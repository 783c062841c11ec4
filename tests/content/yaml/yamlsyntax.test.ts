import { expect, test } from "vitest";
import { printStudy } from "../../analysis/fixture.ts";

// What an author reads, letter for letter. The lines replace or follow those of a study that is right.
test.each<[string, string[], string]>([
  [
    "two colons",
    ["title: Harbour: a study"],
    `\
ferry/study.md:2:8  error  A colon with a space behind it begins a new value, and this line has two of them.  study/yaml-syntax
    title: Harbour: a study
           ^
    If it is meant as text, put it in quotes: title: "Harbour: a study"`,
  ],
  [
    "no space after the colon",
    ["title:Harbour"],
    `\
ferry/study.md:2:1  error  After the colon of a key comes a space.  study/yaml-syntax
    title:Harbour
    ^
    Type: title: Harbour`,
  ],
  [
    "no colon",
    ["tags:", "- charge", "date 2026-04-02"],
    `\
ferry/study.md:7:1  error  The line has no colon, so it is no “key: value”.  study/yaml-syntax
    date 2026-04-02
    ^
    Type: date: 2026-04-02`,
  ],
  [
    "a reserved sign",
    ['title: @harbour "9"'],
    `\
ferry/study.md:2:8  error  A value that begins with “@” needs quotes.  study/yaml-syntax
    title: @harbour "9"
           ^
    Type: title: "@harbour \\"9\\""`,
  ],
  [
    "a double quote left open",
    ['title: "Harbour'],
    `\
ferry/study.md:2:8  error  The quote " is opened here and never closed.  study/yaml-syntax
    title: "Harbour
           ^
    Close it: title: "Harbour"`,
  ],
  [
    "a single quote left open",
    ["title: 'Harbour"],
    `\
ferry/study.md:2:8  error  The quote ' is opened here and never closed.  study/yaml-syntax
    title: 'Harbour
           ^
    Close it: title: 'Harbour'`,
  ],
  [
    "a bracket left open",
    ["authors: [Ines, Tom"],
    `\
ferry/study.md:5:10  error  The bracket [ is opened here and never closed.  study/yaml-syntax
    authors: [Ines, Tom
             ^
    Close it: authors: [Ines, Tom]`,
  ],
  [
    "a brace left open",
    ['change: { replace: "#7a1020", with: white'],
    `\
ferry/study.md:4:9  error  The bracket { is opened here and never closed.  study/yaml-syntax
    change: { replace: "#7a1020", with: white
            ^
    Close it: change: { replace: "#7a1020", with: white }`,
  ],
  [
    "an escape that YAML does not know",
    ['title: "Har\\qbour"'],
    `\
ferry/study.md:2:12  error  In double quotes a backslash begins an escape, and YAML does not know this one.  study/yaml-syntax
    title: "Har\\qbour"
               ^
    Write the backslash twice, or leave it out.`,
  ],
  [
    "text after a list",
    ["title: [Harbour] study"],
    `\
ferry/study.md:2:18  error  YAML cannot read the line from here on.  study/yaml-syntax
    title: [Harbour] study
                     ^
    If it is meant as text, put it in quotes: title: "[Harbour] study"`,
  ],
  [
    "items that do not stand under one another",
    ["tags:", "  - charge", " - dark"],
    `\
ferry/study.md:7:1  error  The spaces before this line do not fit the lines around it.  study/yaml-syntax
     - dark
    ^
    If it belongs to the line before it, type:
      - charge
      - dark`,
  ],
  [
    "an item without a key",
    ["- charge"],
    `\
ferry/study.md:5:1  error  A list item stands here without the key it belongs to.  study/yaml-syntax
    - charge
    ^
    Indent it under its key, or delete it.`,
  ],
  [
    "a colour without quotes, in braces",
    ["change: { replace: #7a1020, with: #f4c430 }"],
    `\
ferry/study.md:4:20  error  Without quotes, # begins a comment, and “#7a1020” is lost.  study/quote-hash
    change: { replace: #7a1020, with: #f4c430 }
                       ^^^^^^^
    Put it in quotes: change: { replace: "#7a1020", with: "#f4c430" }`,
  ],
  [
    "a colour without quotes, on a line of its own",
    ["change:", "  replace: #c00 # the wheel", "  with: white"],
    `\
ferry/study.md:5:12  error  Without quotes, # begins a comment, and “#c00” is lost.  study/quote-hash
      replace: #c00 # the wheel
               ^^^^
    Put it in quotes: replace: "#c00" # the wheel`,
  ],
  [
    "a selector without quotes",
    ["focus:", "  select: #wheel"],
    `\
ferry/study.md:6:11  error  Without quotes, # begins a comment, and “#wheel” is lost.  study/quote-hash
      select: #wheel
              ^^^^^^
    Put it in quotes: select: "#wheel"`,
  ],
  [
    "a tab",
    ["tags:", "\t- charge"],
    `\
ferry/study.md:6:1  error  The line is indented with a tab; YAML allows only spaces there.  study/yaml-tab
     - charge
    ^
    Put two spaces in place of each tab.`,
  ],
  [
    "a control character",
    ["title: Har\u0007bour"],
    `\
ferry/study.md:2:11  error  An invisible control character (U+0007) stands in the line.  study/yaml-control
    title: Har\\u0007bour
              ^^^^^^
    Type the line again by hand; copying brought the character along.`,
  ],
  [
    "an alias that was meant as a star",
    ["title: *Star* of the sea"],
    `\
ferry/study.md:2:8  error  “*Star*” is a YAML alias, which is not used here.  study/yaml-feature
    title: *Star* of the sea
           ^^^^^^
    If it is meant as text, put it in quotes: title: "*Star* of the sea"`,
  ],
  [
    "an anchor",
    ["title: &star Star"],
    `\
ferry/study.md:2:8  error  “&star” is a YAML anchor, which is not used here.  study/yaml-feature
    title: &star Star
           ^^^^^
    If it is meant as text, put it in quotes: title: "&star Star"`,
  ],
  [
    "a tag",
    ["title: !!str Star"],
    `\
ferry/study.md:2:8  error  “!!str” is a YAML tag, which is not used here.  study/yaml-feature
    title: !!str Star
           ^^^^^
    If it is meant as text, put it in quotes: title: "!!str Star"`,
  ],
  [
    "a merge key",
    ["<<: { title: Star }"],
    `\
ferry/study.md:5:1  error  “<<” is a YAML merge key, which is not used here.  study/yaml-feature
    <<: { title: Star }
    ^^
    Write every key out.`,
  ],
  [
    "a key twice",
    ["title: Harbour", "title: Ferry"],
    `\
ferry/study.md:5:1  error  “title” stands here a second time; the first is on line 2.  study/duplicate-key
    title: Ferry
    ^^^^^
    Keep one of the two and delete the other.`,
  ],
  [
    "a key that is no word",
    ["? [a]", ": b"],
    `\
ferry/study.md:5:3  error  A key must be one plain word.  study/yaml-feature
    ? [a]
      ^^^
    Write it on one line: key: value`,
  ],
])("%s", (_, lines, report) => {
  expect(printStudy(...lines)).toBe(report);
});

test("nesting without end is refused in one sentence", () => {
  const report = printStudy(`tags: ${"[".repeat(3000)}`);
  expect(report.match(/ {2}error {2}/g)).toHaveLength(1);
});
