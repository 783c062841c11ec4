import { describe, expect, test } from "vitest";
import {
  isCssProperty,
  parseDeclarations,
  parseSheet,
  readSelectors,
} from "../../../src/svg/style/csstext.ts";

describe("parseDeclarations", () => {
  test("gives each value with its place in the text", () => {
    const text = " fill : red ;STROKE:#0f0!important; --Own: 1";
    const { declarations, oddities } = parseDeclarations(text);
    expect(oddities).toEqual([]);
    expect(declarations.map(({ property, value, important }) => [property, value, important])).toEqual([
      ["fill", "red", false],
      ["stroke", "#0f0", true],
      ["--Own", "1", false],
    ]);
    expect(declarations.map(({ start }) => text.slice(start, start + 4))).toEqual(["fill", "STRO", "--Ow"]);
  });

  test.each(["fill", "fill red", "{fill:red}", "1:2", "fill:red!ie"])(
    "what is no declaration is told: %j",
    (text) => {
      const { declarations, oddities } = parseDeclarations(`${text};stroke:blue`);
      expect(oddities).not.toEqual([]);
      expect(declarations.some(({ property }) => property === "fill")).toBe(false);
    },
  );

  test("a semicolon inside a string or brackets ends nothing", () => {
    expect(
      parseDeclarations('font-family:"a;b";fill:url(#a;b)').declarations.map(({ value }) => value),
    ).toEqual(['"a;b"', "url(#a;b)"]);
  });

  test("a comment is a blank, and moves nothing", () => {
    const text = "/* fill:red; */fill:/* a */blue";
    expect(parseDeclarations(text).declarations).toEqual([
      { property: "fill", value: "blue", important: false, start: text.indexOf("fill:/*") },
    ]);
  });
});

describe("parseSheet", () => {
  test("one rule with all selectors of its list", () => {
    const { rules } = parseSheet("\n.a, g > rect { fill: red }");
    expect(rules).toHaveLength(1);
    expect(rules[0]?.start).toBe(1);
    expect(rules[0]?.selectors.map(({ compounds }) => compounds.length)).toEqual([1, 2]);
  });

  test("at-rules, selectors outside the set and what cannot be read are told with their places", () => {
    const text =
      "@import url(x.css);\n@media print{rect{fill:red}}\nrect:hover{fill:blue}\ng/**/rect{}rect{fill}";
    const { rules, oddities } = parseSheet(text);
    expect(rules).toHaveLength(1);
    expect(oddities.map(({ kind, what, start }) => [kind, what, text.slice(start, start + 5)])).toEqual([
      ["at-rule", "@import", "@impo"],
      ["at-rule", "@media", "@medi"],
      ["selector", ":hover", "rect:"],
      ["selector", "a comment in a selector", "g/**/"],
      ["text", "fill", "fill}"],
    ]);
  });

  // Selectors 4, section 17, its own examples among them as far as they are of the set.
  test.each([
    ["*", [0, 0, 0]],
    ["li", [0, 0, 1]],
    ["ul li", [0, 0, 2]],
    ["ul ol li", [0, 0, 3]],
    ["h1 > *[rel=up]", [0, 1, 1]],
    ["ul ol li.red", [0, 1, 3]],
    ["li.red.level", [0, 2, 1]],
    ["#x34y", [1, 0, 0]],
    ["#s12:not(foo)", [1, 0, 1]],
    ["#s12:not(foo, .a .b)", [1, 2, 0]],
    ["rect:first-child", [0, 1, 1]],
    ["rect:nth-child(2n+1)", [0, 1, 1]],
  ] as const)("%s has the specificity %j", (selector, specificity) => {
    expect(parseSheet(`${selector}{fill:red}`).rules[0]?.selectors[0]?.specificity).toEqual(specificity);
  });
});

test.each([
  "",
  ",",
  "rect,",
  "rect,,g",
  "rect[",
  "rect[width]",
  "rect[width^='3']",
  "rect[width='3' i]",
  "svg|rect",
  "*|*",
  "a + b",
  "a ~ b",
  "> a",
  "a >",
  "a::before",
  ":is(a)",
  ":where(a)",
  ":has(a)",
  ":root",
  ":hover",
  ":not()",
  ":not(:hover)",
  ":nth-child(1 of a)",
  ":nth-child(a)",
  ":nth-last-child(1)",
  "&",
])("%j is outside the set, and is named", (selector) => {
  expect(readSelectors(selector)).toMatch(/\S/);
  expect(typeof readSelectors(selector)).toBe("string");
});

test("isCssProperty knows what browsers know", () => {
  expect(["transform", "zoom", "colour"].map(isCssProperty)).toEqual([true, true, false]);
});
