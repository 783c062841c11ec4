import { expect, test } from "vitest";
import { parse } from "yaml";
import { findInnerQuote, findOddQuote, quoteAnew, quoteValue } from "../../../src/content/yaml/innerquote.ts";
import { startClock } from "../../clock.ts";

/** Where YAML stumbles: at the first sign behind the text that is closed too early. */
const at = (line: string, behind: string): number => line.indexOf(behind) + behind.length + 1;

test.each<[string, string, string, string]>([
  [`title: "A "new" heron"`, `"A "`, `The " before new ends the text.`, `title: 'A "new" heron'`],
  [
    "title: 'The heron's dusk'",
    "'The heron'",
    "The ' in heron's ends the text.",
    `title: "The heron's dusk"`,
  ],
  [`title: "A" heron`, `"A" `, `The " behind A ends the text.`, `title: '"A" heron'`],
  [
    `title: "A "new" heron's dusk"`,
    `"A "`,
    `The " before new ends the text.`,
    `title: "A \\"new\\" heron's dusk"`,
  ],
  [`title: ""A heron"`, `""`, `The " before A ends the text.`, `title: "A heron"`],
  ["title: ''A heron''", "''", "The ' before A ends the text.", `title: "A heron"`],
  [
    `- { note: "My "best" one", with: red }`,
    `"My "`,
    `The " before best ends the text.`,
    `- { note: 'My "best" one', with: red }`,
  ],
  [`title: "A heron";`, `"A heron"`, `Behind the closing " stands “;”, and nothing may.`, `title: "A heron"`],
])("%j", (line, behind, reason, typed) => {
  expect(findInnerQuote(line, at(line, behind))).toMatchObject({ reason, hint: `Type: ${typed}` });
  // What is to be typed is YAML.
  expect(() => parse(typed)).not.toThrow();
});

test("no quoted text ends there", () => {
  expect(findInnerQuote("title: A heron", 10)).toBeUndefined();
  expect(findInnerQuote(`title: "A heron"`, 10)).toBeUndefined();
  expect(findInnerQuote(`title: "A" b c`, 14)).toBeUndefined();
});

test("a quote opened behind the text", () => {
  const line = `title: "A heron""`;
  expect(findOddQuote(line, line.length)).toMatchObject({ hint: `Type: title: "A heron"` });
  expect(findOddQuote(`title: "A heron`, 8)).toBeUndefined();
});

test.each(["A heron", `A "new" heron`, "The heron's", `The "heron's"`, "a\\b"])("%j in quotes", (text) => {
  expect(parse(quoteAnew(text))).toBe(text);
});

test("a value that is in quotes already is not put in quotes", () => {
  expect(quoteValue(`title: "A heron"`)).toBeUndefined();
  expect(quoteValue("change: { replace: red }")).toBeUndefined();
  expect(quoteValue("title: A: heron")).toBe('If it is meant as text, put it in quotes: title: "A: heron"');
});

test("a line of nothing but brackets is read in no time", () => {
  const line = `a: ${"[".repeat(60_000)}"x" y`;
  const spent = startClock();
  findInnerQuote(line, line.length);
  expect(spent()).toBeLessThan(1000);
});
