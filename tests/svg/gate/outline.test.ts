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

// Source: SVG 2, section 13.5.4: 1 / sin of half the angle between the two sides; a triangle of equal sides has 60 degrees.
test.each([
  ["a right angle", '<path id="x" d="M0 0H9V9"/>', Math.SQRT2],
  ["a rectangle", '<rect id="x" width="9" height="2"/>', Math.SQRT2],
  ["60 degrees where a polygon closes", `<polygon id="x" points="0 0 8 0 4 ${4 * Math.sqrt(3)}"/>`, 2],
  ["60 degrees between curves", `<path id="x" d="M0 0C2 0 4 0 8 0Q4 ${4 * Math.sqrt(3)} 1 9"/>`, 2],
])("the mitre of %s", (_, body, expected) => {
  expect(Math.min(...outlineOf(body).mitres.map((each) => Math.abs(each - expected)))).toBeLessThan(1e-9);
});

test.each([
  ["that long", 2, ["svg/unlike"]],
  ["longer", 1.99, []],
  ["shorter", 2.01, []],
])("a mitre that may be %s", (_, limit, rules) => {
  const body = `<path d="M6 15H16L11 6.339746" fill="none" stroke="#00c" stroke-width="3" stroke-miterlimit="${limit}"/>`;
  expect(rulesOf(draw(body))).toEqual(rules);
});
