import { expect, test } from "vitest";
import { findTokens } from "../../../src/content/yaml/yamltoken.ts";

test.each<[string, [string, string][]]>([
  ["a: !!js/function x", [["tag", "!!js/function"]]],
  ["%TAG ! x:\n---\na: b", [["tag", "%TAG ! x:"]]],
  ["a: &b c", [["anchor", "&b"]]],
  ["a: [*b]", [["alias", "*b"]]],
  ["<<: x", [["merge key", "<<"]]],
  ["a: <<", [["merge key", "<<"]]],
  ["---\na: b", []],
  ["a: b\n---\nc: d", [["second document", "---"]]],
  ["a: b\n...\n", [["second document", "..."]]],
  ["a: #c00 # why", [["bare hash", "#c00"]]],
  ["- #wheel", [["bare hash", "#wheel"]]],
  ["a: # a remark", []],
  ["a: b #c00", []],
  ['a: "#c00" #c00', []],
  [
    "a: [#c00]",
    [
      ["bare hash", "#c00"],
      ["open bracket", "["],
    ],
  ],
  [
    "a: { #c00: b }",
    [
      ["bare hash", "#c00"],
      ["open bracket", "{"],
    ],
  ],
  ["a: [b", [["open bracket", "["]]],
  ["a: [{b: c}, [d]", [["open bracket", "["]]],
  ['a: "b', [["open quote", '"b']]],
  ["a: 'b\n  c'", [["open quote", "'b\n  c'"]]],
  ["a: 'it''s'", []],
  ["a: |\n  *b &c !d #e '", []],
  ["a: b*c & d ! e", []],
])("%j", (yaml, found) => {
  expect(findTokens(yaml).map(({ kind, text }) => [kind, text])).toEqual(found);
});

test("an offset leads to the word", () => {
  const yaml = "title: x\nflow: [a, 'b', &c d]\nlast: *e";
  const tokens = findTokens(yaml);
  expect(tokens).toHaveLength(2);
  for (const { offset, text } of tokens) expect(yaml.slice(offset, offset + text.length)).toBe(text);
});
