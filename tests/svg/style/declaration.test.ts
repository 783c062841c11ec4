import { describe, expect, test } from "vitest";
import { createReporter } from "../../../src/svg/gate/drawingreport.ts";
import { describeUnit, handedOn, readDeclaration } from "../../../src/svg/style/declaration.ts";

const place = { line: 3, column: 7 };

function read(name: string, value: string) {
  const reporter = createReporter("a.svg", []);
  const declared = readDeclaration(name, value, place, reporter);
  return {
    written: declared.map((each) => `${each.property}: ${each.value}`),
    problems: reporter.problems,
  };
}

describe("readDeclaration", () => {
  test.each([
    ["fill", "red", ["fill: #ff0000"]],
    ["fill", "inherit", ["fill: inherit"]],
    ["fill", "unset", ["fill: inherit"]],
    ["fill", "initial", ["fill: #000000"]],
    ["opacity", "unset", ["opacity: 1"]],
    ["marker", "url(#a)", ["marker-start: url(#a)", "marker-mid: url(#a)", "marker-end: url(#a)"]],
    ["fill", "", []],
    ["font-family", "a", []],
    ["--own", "red", []],
    ["filter", "none", ["filter: none"]],
    ["filter", "url('#a')", ["filter: url(#a)"]],
    ["mix-blend-mode", "Multiply", ["mix-blend-mode: multiply"]],
    ["width", "9px", [`${handedOn.geometry}: width`]],
  ])("%s: %s in silence", (name, value, written) => {
    expect(read(name, value)).toEqual({ written, problems: [] });
  });

  test.each([
    ["fill", "#12345", "svg/colour", []],
    ["background", "red", "svg/removed", [`${handedOn.box}: background`]],
    ["colour", "red", "svg/removed", []],
  ])("%s: %s with the warning %s", (name, value, rule, written) => {
    const found = read(name, value);
    expect(found.written).toEqual(written);
    expect(found.problems).toMatchObject([{ rule, severity: "warning", place }]);
  });

  test.each([
    ["fill", "oklch(60% .2 30)", "svg/value", /hex colour/],
    ["fill", "var(--a)", "svg/value", /hex colour/],
    ["opacity", "inherit", "svg/value", /0 to 1/],
    ["fill", "revert", "svg/value", /hex colour/],
    ["fill", "url(http://example.org/#a)", "svg/reference", /url\(#id\)/],
    ["fill", "a\\b", "svg/css", /without escapes/],
    ["fill", "r".repeat(5000), "svg/css", /mend/],
    ["stroke-width", "4,5", "svg/number", /4\.5/],
    ["stroke-width", "thick", "svg/number", /a number/],
    ["stroke-width", "2em", "svg/unit", /plain number/],
    ["stroke-dasharray", "1 2ch", "svg/unit", /plain number/],
    ["transform", "rotate(3deg)", "svg/unsupported", /as an attribute/],
    ["all", "unset", "svg/unsupported", /Remove it/],
    ["mix-blend-mode", "darkest", "svg/unsupported", /mixed colour/],
    ["backdrop-filter", "blur(3px)", "svg/unsupported", /glow/],
  ])("%s: %s is refused by %s", (name, value, rule, hint) => {
    const found = read(name, value);
    expect(found.written).toEqual([]);
    expect(found.problems).toMatchObject([
      { rule, severity: "error", place, hint: expect.stringMatching(hint) },
    ]);
  });
});

test("describeUnit names the unit", () => {
  expect(describeUnit("r", "em")).toMatchObject({
    rule: "svg/unit",
    reason: expect.stringContaining(" em,"),
  });
});
