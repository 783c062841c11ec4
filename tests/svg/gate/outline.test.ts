import { expect, test } from "vitest";
import { findOutline } from "../../../src/svg/gate/outline.ts";
import { idsOf } from "../../../src/svg/gate/reference.ts";
import { draw, read, rulesOf } from "../drawing.ts";

const outlineOf = (body: string) => {
  const x = idsOf(read(draw(body)).root).get("x");
  if (x === undefined) throw new Error("there is none");
  return findOutline(x, 30);
};

test.each([
  ['<path id="x" d="M0 0h9m1 1v4"/>', { part: 4, step: 4, stops: false, isFlat: false }],
  ['<path id="x" d="M0 0h9l0 0v3"/>', { part: 9, step: 3, stops: true }],
  ['<path id="x" d="M0 0h9M4 4"/>', { stops: true }],
  ['<polyline id="x" points="0 0 3 4"/>', { step: 5, stops: false }],
  ['<rect id="x" width="9" height="2"/>', { part: 9, step: 2, stops: false }],
  ['<g id="x"/>', { part: Infinity, step: Infinity }],
])("%s", (body, expected) => {
  expect(outlineOf(body)).toMatchObject(expected);
});

test.each([
  ["an arc of which one radius is thin", '<path d="M0 9A7 .1 0 0 1 14 9"/>', ["svg/unlike"]],
  ["one that is less so", '<path d="M0 9A7 .2 0 0 1 14 9"/>', []],
  ["radii far shorter than the way", '<path d="M0 9A.001 .001 0 0 1 14 9"/>', ["svg/unlike"]],
  ["a radius of 0, which makes a line", '<path d="M0 9A0 7 0 0 1 14 9"/>', []],
  ["a thin ellipse", '<ellipse rx="7" ry=".1"/>', ["svg/unlike"]],
])("%s", (_, body, rules) => {
  expect(rulesOf(draw(body))).toEqual(rules);
});
