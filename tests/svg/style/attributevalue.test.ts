import { describe, expect, test } from "vitest";
import {
  findReference,
  findUnit,
  isDashTooFine,
  mendNumber,
  readDashes,
  readLength,
  readShare,
  splitReference,
} from "../../../src/svg/style/attributevalue.ts";

test.each([
  ["red", undefined],
  ["url(#a)", "a"],
  ["URL( '#a b' ) red", "a b"],
  ['url("#a")', "a"],
  ["url(http://example.org/#a)", null],
  ["url()", null],
  ["url(a.svg#b)", null],
])("findReference %j", (text, id) => {
  expect(findReference(text)).toBe(id);
});

describe("isDashTooFine", () => {
  // 5,000 dashes or gaps along the diagonal are the most.
  test.each([
    ["1", 4999, false],
    ["1", 5001, true],
    ["0.5 1.5", 4999, false],
    ["0.5 1.5", 5001, true],
    ["0", 5001, false],
    ["none", 5001, false],
  ])("%j along %f", (dashes, diagonal, isTooFine) => {
    expect(isDashTooFine(dashes, diagonal)).toBe(isTooFine);
  });
});

// CSS Values 4, section 6.2: one inch is 96 px, 2.54 cm, 72 pt and 6 pc; one q a fortieth of a centimetre.
test.each([
  ["0", "0"],
  ["-1.5", "-1.5"],
  [" +.5 ", "+.5"],
  ["1e3", "1e3"],
  ["2px", "2"],
  ["2PX", "2"],
  ["50%", "50%"],
  ["1in", "96"],
  ["2.54cm", "96"],
  ["25.4mm", "96"],
  ["101.6q", "96"],
  ["72pt", "96"],
  ["6pc", "96"],
  ["1pt", "1.333333333"],
  ["", undefined],
  ["a", undefined],
  ["1.5e-016", "1.5e-016"],
  ["1e-0016", undefined],
  ["1e999", undefined],
  ["NaN", undefined],
  ["Infinity", undefined],
  ["1 2", undefined],
  // A point has digits behind it (SVG 2, section 4.2; CSS Values 4, section 4.2).
  ["1.", undefined],
  ["+-1", undefined],
  ["0x10", undefined],
  [".5.5", undefined],
  ["1em", undefined],
  ["1furlong", undefined],
  ["calc(1px)", undefined],
])("readLength %j is %j", (text, length) => {
  expect(readLength(text)).toBe(length);
});

test("readLength keeps to the least", () => {
  expect(readLength("-0.1", 0)).toBeUndefined();
  expect(readLength("0", 0)).toBe("0");
});

test.each([
  [".5", ".5"],
  ["50%", "0.5"],
  ["150%", "1"],
  ["7", "1"],
  ["-1", "0"],
  ["5px", undefined],
  ["half", undefined],
])("readShare %j is %j", (text, share) => {
  expect(readShare(text)).toBe(share);
});

test.each([
  ["none", "none"],
  ["1,2 , 3px", "1 2 3"],
  ["72pt 5%", "96 5%"],
  ["1,,2", undefined],
  ["1 -2", undefined],
  ["a", undefined],
])("readDashes %j is %j", (text, dashes) => {
  expect(readDashes(text)).toBe(dashes);
});

test("findUnit names the unit that nobody can say the length of", () => {
  expect(["1em", "2 3rem", "4VW", "5px", "6%", "7", "a"].map(findUnit)).toEqual([
    "em",
    "rem",
    "vw",
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});

test("mendNumber puts a point where there is a comma", () => {
  expect(mendNumber("4,5")).toBe("4.5");
  expect(mendNumber("4,5,6")).toBeUndefined();
});

test("splitReference gives what stands behind", () => {
  expect(splitReference("url('#a b') red")).toEqual({ id: "a b", url: "url('#a b')", rest: "red" });
  expect(splitReference("url(#a) url(#b)")).toBeNull();
});
