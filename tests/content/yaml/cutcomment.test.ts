import { expect, test } from "vitest";
import { findComment } from "../../../src/content/yaml/cutcomment.ts";
import { printStudy } from "../../analysis/fixture.ts";

test("a text that is cut off", () => {
  expect(printStudy("title: Heron # dusk")).toBe(`\
ferry/study.md:2:14  warning  Behind a space # begins a comment: “dusk” is not read.  study/comment
    title: Heron # dusk
                 ^^^^^^
    Type: title: "Heron # dusk"
    If it is a comment, put two spaces before the #.`);
});

test.each([
  "title: Heron  # dusk",
  'title: "Heron" # dusk',
  "title: 'Heron # dusk'",
  "title: Heron#dusk",
  "title: Heron #",
  "status: open # for now",
  "date: 2026-04-02 # the day",
  "tags: [charge] # for now",
])("%j is silent", (line) => {
  expect(printStudy(line)).toBe("");
});

test("in a group, and in a text of two lines", () => {
  expect(printStudy("credit:", "  author: Ines #2", "  licence: CC0-1.0")).toContain(
    'Type: author: "Ines #2"\n',
  );
  expect(printStudy("symbolism: Gold", "  is for the dues # 2")).toContain(
    "Put the whole text in double quotes.\n",
  );
});

test("quotes in the text", () => {
  const line = 'title: A "new" heron # 2';
  expect(findComment("title", line, line.indexOf(" #") + 1, 8)?.hint).toContain(
    `Type: title: 'A "new" heron # 2'`,
  );
});
