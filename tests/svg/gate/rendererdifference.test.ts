// That these are drawn in two ways is shown where a browser draws them; here is only what else has to hold.
import { expect, test } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { bytesOf, draw, rulesOf } from "../drawing.ts";

const clip = (more: string): string => `<clipPath id="c" ${more}><path d="M0 0h9v9z"/></clipPath>`;

test.each([
  ["display of what is shown where it stands", '<g display="none"><path d="M0 0h9v9z"/></g>', []],
  ["display that is none, on a clip path", clip('display="none"'), ["svg/unlike"]],
  ["the same from a sheet", `<style>#c{display:none}</style>${clip("")}`, ["svg/unlike"]],
  ["display that is not none", clip('display="block"'), []],
  ["an opacity of 1", '<pattern id="p" opacity="1"/>', []],
  [
    "a dot made of an arc",
    '<path d="M9 9a4 4 0 0 0 0 0" stroke="red" stroke-linecap="round"/>',
    ["svg/unlike"],
  ],
  ["the same without ends", '<path d="M9 9a4 4 0 0 0 0 0" stroke="red"/>', []],
  ["such an arc on a line", '<path d="M9 9h4a4 4 0 0 0 0 0" stroke="red" stroke-linecap="round"/>', []],
  ["square ends of a line that has length", '<path d="M0 0h9" stroke-linecap="square"/>', []],
  ["square ends, inherited", '<g stroke-linecap="square" stroke="red"><path d="M0 0z"/></g>', ["svg/unlike"]],
  [
    "square ends, taken back",
    '<g stroke-linecap="square" stroke="red"><path d="M0 0z" stroke-linecap="butt"/></g>',
    [],
  ],
  [
    "round dots",
    '<path d="M0 0h9" stroke="red" stroke-linecap="round" stroke-dasharray="0 2"/>',
    ["svg/unlike"],
  ],
  ["dashes that are all nothing", '<path d="M0 0h9" stroke="red" stroke-dasharray="0 0"/>', []],
  ["dots without a stroke", '<path d="M0 0h9" stroke-linecap="square" stroke-dasharray="0 2"/>', []],
  [
    "dots that are square",
    '<path d="M0 0h9" stroke="red" stroke-linecap="square" stroke-dasharray="0 2"/>',
    ["svg/unlike"],
  ],
  [
    "round dots that lie over one another",
    '<g stroke-dasharray="0 2"><path d="M0 0h9" stroke="red" stroke-linecap="round" stroke-width="3"/></g>',
    ["svg/unlike"],
  ],
  [
    "dashes round a circle that the stroke covers",
    '<circle r="2" stroke="red" stroke-width="5" stroke-dasharray="2"/>',
    ["svg/unlike"],
  ],
  [
    "a clip path in user space on a line",
    `${clip("")}<path d="M0 0h9" stroke="#000" clip-path="url(#c)"/>`,
    [],
  ],
  [
    "a marker that does not turn, on a closed path",
    '<marker id="m"/><path d="M0 0h9v9z" marker-start="url(#m)"/>',
    [],
  ],
  [
    "one that does, given to a group",
    '<marker id="m" orient="auto"/><g marker-end="url(#m)"><path d="M0 0h9v9z"/></g>',
    ["svg/unlike"],
  ],
  [
    "a gradient that has its length from another",
    '<linearGradient id="a" x1="1" x2="0"/><linearGradient id="b" href="#a" x2="1"/><path d="M0 0h9v9z" fill="url(#b)"/>',
    ["svg/unlike"],
  ],
])("%s", (_, body, rules) => {
  expect(rulesOf(draw(body))).toEqual(rules);
});

test("it is told at the element, with what it is", () => {
  const { problems } = readDrawing("a.svg", bytesOf(draw(`\n${clip('display="none"')}`)));
  expect(problems[0]).toMatchObject({
    rule: "svg/unlike",
    place: { line: 2, column: 1 },
    reason: '<clipPath> has display="none", which not all programs follow there.',
  });
});

test("a blank that does not break parts no values", () => {
  expect(rulesOf(draw('<path d="M0 0h9" stroke-dasharray="6&#160;4"/>'))).toEqual(["svg/value"]);
  expect(rulesOf(draw('<path d="M0 0h9" fill="rgb(0&#160;0 0)"/>'))).toEqual(["svg/value"]);
});
