import { expect, test } from "vitest";
import { drawHairline, drawPaper, fitFlag, shorten } from "../../../src/publish/pictures/paper.ts";

test("a flag takes the largest size that its room has, and never vanishes", () => {
  expect(fitFlag([2, 3], { width: 300, height: 300 })).toEqual({ width: 300, height: 200 });
  expect(fitFlag([1, 1], { width: 300, height: 120 })).toEqual({ width: 120, height: 120 });
  expect(fitFlag([1, 1000], { width: 300, height: 120 })).toEqual({ width: 300, height: 1 });
});

test("a hairline runs outside its picture, one pixel wide", () => {
  const picture = { width: 30, height: 20, rgba: new Uint8Array(0) };
  expect(drawHairline({ picture, x: 10, y: 5 })).toContain(
    'x="9.5" y="4.5" width="31" height="21" fill="none"',
  );
});

test("the paper has the size of link pictures, and what is drawn lies on it", () => {
  expect(drawPaper("<path/>")).toMatch(
    /^<svg [^>]*width="1200" height="630"[^>]*><rect [^>]*\/><path\/><\/svg>$/,
  );
});

test("a long line ends in an ellipsis, within 52 letters", () => {
  expect(shorten("a".repeat(52))).toBe("a".repeat(52));
  expect(shorten("é".repeat(53))).toBe(`${"é".repeat(51)}…`);
});
