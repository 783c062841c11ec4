import { describe, expect, test } from "vitest";
import { draw, read, rulesOf } from "../drawing.ts";

describe("findViewBox", () => {
  test.each([
    ['viewBox="0 0 30 20"', { x: 0, y: 0, width: 30, height: 20 }],
    ['viewBox=" -1.5, 2 ,3e1 20 "', { x: -1.5, y: 2, width: 30, height: 20 }],
    ['viewBox="0 0 30 20" width="9" height="6"', { x: 0, y: 0, width: 30, height: 20 }],
    ['width="30" height="20px"', { x: 0, y: 0, width: 30, height: 20 }],
  ])("%s", (attributes, viewBox) => {
    expect(read(draw("<rect/>", attributes)).viewBox).toEqual(viewBox);
  });

  test.each([
    "",
    'width="100%" height="100%"',
    'width="30"',
    'width="30mm" height="20mm"',
    'viewBox=""',
    'viewBox="0 0 30"',
    'viewBox="0 0 30 20 10"',
    'viewBox="0 0 a b"',
    'viewBox="0 0 0 20"',
    'viewBox="0 0 -30 20"',
    'viewBox="0 0 NaN 20"',
    'viewBox="0 0 Infinity 20"',
    'viewBox="0 0 1e-9 1e-9"',
    'viewBox="0 0 1e9 1e9"',
    'viewBox="0 0 2001 100"',
    'viewBox="0 0 100 2001"',
  ])("refuses %s", (attributes) => {
    expect(rulesOf(draw("<rect/>", attributes))).toContain("svg/viewbox");
  });

  test("20 to 1 is the longest there may be", () => {
    expect(rulesOf(draw("<rect/>", 'viewBox="0 0 2000 100"'))).toEqual([]);
  });
});
