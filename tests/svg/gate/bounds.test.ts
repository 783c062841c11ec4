import { expect, test } from "vitest";
import { boundsOf } from "../../../src/svg/gate/bounds.ts";
import { draw, elementOf, read } from "../drawing.ts";

const boxOf = (shape: string): unknown =>
  boundsOf(elementOf(read(draw(shape.replace(" ", ' id="x" '))), "x"), 100);

// By hand; a percentage is of 100.
test.each([
  ['<rect x="1" y="2" width="3" height="4"/>', [1, 2, 4, 6]],
  ['<rect width="50%" height="4"/>', [0, 0, 50, 4]],
  ['<circle cx="1" cy="2" r="3"/>', [-2, -1, 4, 5]],
  ['<ellipse cx="1" cy="2" rx="3" ry="1"/>', [-2, 1, 4, 3]],
  ['<line x1="5" y1="1" x2="2"/>', [2, 0, 5, 1]],
  ['<polygon points="1,2 3,-4 0,0"/>', [0, -4, 3, 2]],
  ['<polygon points=""/>', undefined],
  ['<path d=""/>', undefined],
  ['<path d="M1 2L3 4"/>', [1, 2, 3, 4]],
  ['<path d="m1 2 3 4h-5v1"/>', [-1, 2, 4, 7]],
  ['<path d="M1 2H9V-3"/>', [1, -3, 9, 2]],
  ['<path d="M1 1h1v1zm1 1h1"/>', [1, 1, 3, 2]],
  ['<path d="M1 1h1v1zl5 5"/>', [1, 1, 6, 6]],
  ['<path d="M5 5c1 1 2 9 3 3"/>', [5, 5, 8, 14]],
  ['<path d="M5 5a10 10 0 0 1 1 0"/>', [5, 5, 6, 5]],
  ['<path d="M5 5a10 10 0 1 1 1 0"/>', [-14, -15, 26, 25]],
  ['<path d="M5 5a10 1 0 0 1 1 0"/>', [-14, -15, 26, 25]],
  ['<linearGradient gradientUnits="userSpaceOnUse" x1="7" x2="9"/>', [0, 0, 9, 0]],
  ['<linearGradient x1="50%" x2=".75"/>', [0, 0, 0.75, 0]],
  ["<g />", undefined],
])("%s", (shape, box) => {
  expect(boxOf(shape)).toEqual(box);
});
