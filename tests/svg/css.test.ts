import { describe, expect, test } from "vitest";
import { compareSpecificity, parseDeclarations, parseSheet } from "../../src/svg/css.ts";

describe("parseDeclarations", () => {
  test("gives each value with its place in the text", () => {
    const text = " fill : red ;stroke:#0f0!important; ";
    const { declarations, oddities } = parseDeclarations(text);
    expect(oddities).toEqual([]);
    expect(declarations.map(({ property, value, important }) => [property, value, important])).toEqual([
      ["fill", "red", false],
      ["stroke", "#0f0", true],
    ]);
    for (const { value, valueStart, valueEnd } of declarations)
      expect(text.slice(valueStart, valueEnd)).toBe(value);
    const [first] = declarations;
    expect(text.slice(first?.start, first?.end)).toBe("fill : red ;");
  });

  test.each(["fill", "fill red", "{fill:red}", "1:2"])("what is no declaration is told: %j", (text) => {
    const { declarations, oddities } = parseDeclarations(`${text};stroke:blue`);
    expect(oddities).not.toEqual([]);
    expect(declarations.some(({ property }) => property === "fill")).toBe(false);
  });

  test("a semicolon inside a string or brackets ends nothing", () => {
    expect(
      parseDeclarations('font-family:"a;b";fill:url(#a;b)').declarations.map(({ value }) => value),
    ).toEqual(['"a;b"', "url(#a;b)"]);
  });
});

describe("parseSheet", () => {
  test("one rule for each selector of a list, with the same declarations", () => {
    const { rules } = parseSheet(".a, g > rect { fill: red }");
    expect(rules.map(({ selector }) => selector)).toEqual([".a", "g>rect"]);
    expect(rules[0]?.declarations).toBe(rules[1]?.declarations);
  });

  test("at-rules and what cannot be read are told with their extent", () => {
    const text = "@import url(x.css);\n@media print{rect{fill:red}}\nrect{fill:blue}";
    const { rules, oddities } = parseSheet(text);
    expect(rules.map(({ selector }) => selector)).toEqual(["rect"]);
    expect(oddities.map(({ start, end }) => text.slice(start, end))).toEqual([
      "@import url(x.css);",
      "@media print{rect{fill:red}}",
    ]);
  });

  // Selectors 4, section 15, its own examples among them.
  test.each([
    ["*", [0, 0, 0]],
    ["li", [0, 0, 1]],
    ["ul li", [0, 0, 2]],
    ["ul ol+li", [0, 0, 3]],
    ["h1 + *[rel=up]", [0, 1, 1]],
    ["ul ol li.red", [0, 1, 3]],
    ["li.red.level", [0, 2, 1]],
    ["#x34y", [1, 0, 0]],
    ["#s12:not(foo)", [1, 0, 1]],
    [":is(em, #foo)", [1, 0, 0]],
    [".qux:where(em, #foo#bar#baz)", [0, 1, 0]],
    ["rect:first-child", [0, 1, 1]],
  ] as const)("%s has the specificity %j", (selector, specificity) => {
    expect(parseSheet(`${selector}{fill:red}`).rules[0]?.specificity).toEqual(specificity);
  });
});

test("compareSpecificity: ids before classes before types", () => {
  expect(compareSpecificity([1, 0, 0], [0, 9, 9])).toBeGreaterThan(0);
  expect(compareSpecificity([0, 1, 0], [0, 0, 9])).toBeGreaterThan(0);
  expect(compareSpecificity([0, 1, 1], [0, 1, 2])).toBeLessThan(0);
  expect(compareSpecificity([1, 2, 3], [1, 2, 3])).toBe(0);
});
