import { expect, test } from "vitest";
import { addStudy, writeSeries } from "../../../src/cli/begin/seriesentry.ts";

const add = (text: string) => addStudy(new TextEncoder().encode(text), "pine");
const series = (studies: string, rest = "closing: Which?\n---\nWords.\n") =>
  `---\ntitle: Six   # in all\n${studies}${rest}`;

test.each([
  [
    "a list in lines",
    "studies:\n  - a\n  - b   # the best\n",
    "studies:\n  - a\n  - b   # the best\n  - pine\n",
  ],
  ["a list that is not indented", "studies:\n- a\n", "studies:\n- a\n- pine\n"],
  ["a list in brackets", "studies: [a, b] # all\n", "studies: [a, b, pine] # all\n"],
  ["a list in brackets over lines", "studies: [\n  a,\n  b,\n]\n", "studies: [\n  a,\n  b, pine,\n]\n"],
  [
    "a flag at the end",
    "studies:\n  - a\n  - flag: /flags/x.svg\n    ask: >\n      What\n      would you?\n",
    "studies:\n  - a\n  - flag: /flags/x.svg\n    ask: >\n      What\n      would you?\n  - pine\n",
  ],
  ["lines of Windows", "studies:\r\n  - a\r\n", "studies:\r\n  - a\r\n  - pine\r\n"],
])("%s gets one more, and nothing else changes", (_, before, after) => {
  expect(add(series(before))).toBe(series(after));
});

test("a new series takes a second study, and keeps its comments", () => {
  expect(add(writeSeries("Six flags", "a"))).toBe(
    "---\ntitle: Six flags\nstudies:\n  - a\n  - pine\n# closing: Which of these changes would you make?\n---\n",
  );
});

test("a study that stands in it is not added again", () => {
  expect(add(series("studies: [pine, a]\n"))).toBe(series("studies: [pine, a]\n"));
});

test.each([
  ["has a problem", series("studies: [a, a]\n")],
  ["has no list", series("studies: a\n")],
  ["is no series", "Words.\n"],
])("what %s is left to its author", (_, text) => {
  expect(add(text)).toBeUndefined();
});
