import { describe, expect, test } from "vitest";
import {
  findReference,
  isDashTooFine,
  isLength,
  isLengthList,
  isPathData,
  isPlainValue,
  isPointList,
  isTransform,
} from "../../src/svg/value.ts";

// Numbers as in SVG 2, section 4.2 and CSS Values 4, section 4.
test.each([
  [
    "isLength",
    isLength,
    ["0", "-1.5", "+.5", "3.", "1e3", "2px", "50%", " 7 "],
    ["", "a", "1e999", "NaN", "Infinity", "1 2", "1furlong", "calc(1px)"],
  ],
  ["isLengthList", isLengthList, ["", "1", "1 2", "1,2 , 3px"], ["a", "1,,2", "NaN"]],
  ["isPointList", isPointList, ["", "0,0 1,1", "0 0-1-1", ".5.5"], ["a", "0,0 NaN", "1e999,0"]],
  [
    "isPathData",
    isPathData,
    ["", "M0,0 L1-1z", "m.5.5a1 1 0 01 2 2", "M1e-5,0"],
    ["M0,0 x", "M0,0 url(#a)", "M1e999,0", "NaN"],
  ],
  [
    "isTransform",
    isTransform,
    ["", "translate(1,2)", "rotate(30 1 1) scale(2)", "matrix(1 0 0 1 0 0)"],
    ["spin(3)", "translate(NaN)", "translate(1", "rotate(url(#a))"],
  ],
  [
    "isPlainValue",
    isPlainValue,
    ["red", "#c00", "rgb(1 2 3 / 50%)", "url(#a) red"],
    ["a{b", "a;b", "<b>", "expression(1)", "a\\b", "javascript:x"],
  ],
] as const)("%s", (_, check, good, bad) => {
  for (const text of good) expect(check(text), text).toBe(true);
  for (const text of bad) expect(check(text), text).toBe(false);
});

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
