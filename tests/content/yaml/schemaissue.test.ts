import { expect, test } from "vitest";
import { printStudy } from "../../analysis/fixture.ts";

const keys =
  "title, flag, language, original, change, names, focus, status, decision, decided, authors, date, revised, follows, tags, options, credit, symbolism, show, downloads, answers, formerly";

// What an author reads, letter for letter. The lines replace or follow those of a study that is right.
test.each<[string, string[], string]>([
  [
    "a mistyped key",
    ["symbolsm: Gold is the harvest."],
    `\
ferry/study.md:5:1  error  A study has no key “symbolsm”.  study/unknown-key
    symbolsm: Gold is the harvest.
    ^^^^^^^^
    Type “symbolism”.`,
  ],
  [
    "a key of another tool",
    ["permalink: /index.html"],
    `\
ferry/study.md:5:1  error  A study has no key “permalink”.  study/unknown-key
    permalink: /index.html
    ^^^^^^^^^
    Delete it, or use one of the keys there are: ${keys}.`,
  ],
  [
    "a key of every object",
    ["__proto__: { polluted: 1 }"],
    `\
ferry/study.md:5:1  error  A study has no key “__proto__”.  study/unknown-key
    __proto__: { polluted: 1 }
    ^^^^^^^^^
    Delete it, or use one of the keys there are: ${keys}.`,
  ],
  [
    "a key at the wrong level, spelt the American way",
    ["license: CC0-1.0"],
    `\
ferry/study.md:5:1  error  “license” belongs under “credit”.  study/unknown-key
    license: CC0-1.0
    ^^^^^^^
    Type, with two spaces before what belongs to it:
    credit:
      licence: CC0-1.0`,
  ],
  [
    "a key with a capital",
    ["Title: Ferry"],
    `\
ferry/study.md:5:1  error  A study has no key “Title”.  study/unknown-key
    Title: Ferry
    ^^^^^
    “title” is there already; keep one of the two.`,
  ],
  [
    "a mistyped key inside a list; the key it stands for is not reported as missing too",
    ["options:", "  - { replace: red, width: blue }"],
    `\
ferry/study.md:6:21  error  Item 1 of “options” has no key “width”.  study/unknown-key
      - { replace: red, width: blue }
                        ^^^^^
    Type “with”.`,
  ],
  [
    "a key that is missing",
    ["credit: { author: Ines Valcourt }"],
    `\
ferry/study.md:5:1  error  “credit” needs “licence”, and it is not there.  study/missing-key
    credit: { author: Ines Valcourt }
    ^^^^^^
    Add to “credit”, for example: licence: CC0-1.0`,
  ],
  [
    "a key without a value",
    ["title:"],
    `\
ferry/study.md:2:1  error  “title” is empty.  study/no-value
    title:
    ^^^^^
    Fill it in, or delete the line. For example: title: A lighter ferry wheel`,
  ],
  [
    "a number for a title",
    ["title: 1984"],
    `\
ferry/study.md:2:8  error  “title” is “1984”, which YAML reads as a number; it must be text.  study/wrong-type
    title: 1984
           ^^^^
    Put it in quotes: title: "1984"`,
  ],
  [
    "a colour that YAML reads as a number, three times",
    ["change: { replace: 0x00ff00, with: 112233 }", "focus: { colour: 7e1020 }"],
    `\
ferry/study.md:4:20  error  “replace” is “0x00ff00”, which YAML reads as a number; a hex colour begins with # and stands in quotes.  study/wrong-type
    change: { replace: 0x00ff00, with: 112233 }
                       ^^^^^^^^
    Type: replace: "#00ff00"

ferry/study.md:4:36  error  “with” is “112233”, which YAML reads as a number; a hex colour begins with # and stands in quotes.  study/wrong-type
    change: { replace: 0x00ff00, with: 112233 }
                                       ^^^^^^
    Type: with: "#112233"

ferry/study.md:5:18  error  “colour” is “7e1020”, which YAML reads as a number; a hex colour begins with # and stands in quotes.  study/wrong-type
    focus: { colour: 7e1020 }
                     ^^^^^^
    Type: colour: "#7e1020"`,
  ],
  [
    "one author without brackets",
    ["authors: Ines Valcourt"],
    `\
ferry/study.md:5:10  error  “authors” is the text “Ines Valcourt”; it must be a list.  study/wrong-type
    authors: Ines Valcourt
             ^^^^^^^^^^^^^
    Put it in brackets: authors: [Ines Valcourt]`,
  ],
  [
    "text where keys belong",
    ["change: red to yellow"],
    `\
ferry/study.md:4:9  error  “change” is the text “red to yellow”; it must be a group of keys: replace, with, only, part.  study/wrong-type
    change: red to yellow
            ^^^^^^^^^^^^^
    Type, for example: change: { replace: "#7a1020", with: "#f4c430" }`,
  ],
  [
    "true in a list",
    ["tags: [charge, true]"],
    `\
ferry/study.md:5:16  error  Item 2 of “tags” is “true”, which YAML reads as true or false; it must be text.  study/wrong-type
    tags: [charge, true]
                   ^^^^
    Put it in quotes: "true"`,
  ],
  [
    "a date without hyphens",
    ["date: 20260402"],
    `\
ferry/study.md:5:7  error  “date” is “20260402”; a date is year, month and day with hyphens between.  study/wrong-date
    date: 20260402
          ^^^^^^^^
    Type, for example: date: 2026-04-02`,
  ],
  [
    "keys where a word belongs",
    ["status: { open: 1 }"],
    `\
ferry/study.md:5:9  error  “status” is a group of keys; it must be text.  study/wrong-type
    status: { open: 1 }
            ^^^^^^^^^^^
    Type, for example: status: open`,
  ],
  [
    "a word in brackets",
    ["status: [open]"],
    `\
ferry/study.md:5:9  error  “status” is a list; it must be text.  study/wrong-type
    status: [open]
            ^^^^^^
    Type: status: open`,
  ],
  [
    "a mistyped status",
    ["status: adoptd"],
    `\
ferry/study.md:5:9  error  “status” is “adoptd”; it must be one of: draft, open, adopted, declined, withdrawn.  study/unknown-word
    status: adoptd
            ^^^^^^
    Type: status: adopted`,
  ],
  [
    "a status of one's own",
    ["status: finished"],
    `\
ferry/study.md:5:9  error  “status” is “finished”; it must be one of: draft, open, adopted, declined, withdrawn.  study/unknown-word
    status: finished
            ^^^^^^^^
    Type one of them, for example: status: open`,
  ],
  [
    "a title of 201 characters",
    [`title: ${"x".repeat(201)}`],
    `\
ferry/study.md:2:8  error  “title” has 201 characters; it may have 200.  study/too-long
    title: ${"x".repeat(92)}…
           ${"^".repeat(93)}
    Shorten it; the prose has room for more.`,
  ],
])("%s", (_, lines, report) => {
  expect(printStudy(...lines)).toBe(report);
});

test("200 characters are not too many", () => {
  expect(printStudy(`title: ${"x".repeat(200)}`)).toBe("");
});
