import { expect, test } from "vitest";
import { parse } from "yaml";
import { findMissingComma } from "../../../src/content/yaml/missingcomma.ts";

test.each<[string, string, string]>([
  [
    'change: { replace: "#3b3f46" with: "#a0a5ad" }',
    "A comma is missing before “with”.",
    'change: { replace: "#3b3f46", with: "#a0a5ad" }',
  ],
  [
    'change: { replace: "#3b3f46" with: "#a0a5ad" only: "#wheel" }',
    "A comma is missing before “with”.",
    'change: { replace: "#3b3f46", with: "#a0a5ad", only: "#wheel" }',
  ],
  [
    'change: { replace: "#3b3f46"; with: "#a0a5ad" }',
    "Before “with” comes a comma, and “;” stands there.",
    'change: { replace: "#3b3f46", with: "#a0a5ad" }',
  ],
  [
    "change: { replace: black with: white }",
    "A comma is missing before “with”.",
    "change: { replace: black, with: white }",
  ],
  [
    'palette: { white: "#ffffff" sea green: "#2e8b70" }',
    "A comma is missing before “sea green”.",
    'palette: { white: "#ffffff", sea green: "#2e8b70" }',
  ],
  ['authors: ["Ines" "Tobin"]', "A comma is missing before “Tobin”.", 'authors: ["Ines", "Tobin"]'],
  [
    'authors: ["Ines" and "Tobin"]',
    "Before “Tobin” comes a comma, and “and” stands there.",
    'authors: ["Ines", "Tobin"]',
  ],
  [
    "options: [{ replace: a, with: b } { replace: c, with: d }]",
    "A comma is missing before “{”.",
    "options: [{ replace: a, with: b }, { replace: c, with: d }]",
  ],
])("%j", (line, reason, typed) => {
  expect(findMissingComma([line], 1)).toMatchObject({ line: 1, reason, hint: `Type: ${typed}` });
  expect(() => parse(typed)).not.toThrow();
});

test("on several lines the comma is missing at the end of one of them", () => {
  const lines = ["change: {", '  replace: "#3b3f46"', '  with: "#a0a5ad"', "}"];
  expect(findMissingComma(lines, 3)).toEqual({
    line: 2,
    column: 20,
    length: 1,
    reason: "A comma is missing before “with”.",
    hint: 'Type: replace: "#3b3f46",',
  });
});

test.each([
  'change: { replace: "#3b3f46", with: "#a0a5ad" }',
  'palette: { white: "#ffffff", sea green: "#2e8b70" }',
  "authors: [Ines Valcourt, Tobin Arkwell]",
  "title: The heron's dusk",
  'title: "A "new" heron"',
  "options: [{ replace: a, with: b }, { replace: c, with: d, note: 'It said: no' }]",
  "- { note: He said it with: care }".replace("with:", "that:"),
  'authors: ["Ines "the pen" Valcourt"]',
])("%j lacks none", (line) => {
  expect(findMissingComma([line], 1)).toBeUndefined();
});
