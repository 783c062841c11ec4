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
  ["square ends of a line that has length", '<path d="M0 0h9" stroke-linecap="square"/>', []],
  ["square ends, inherited", '<g stroke-linecap="square" stroke="red"><path d="M0 0z"/></g>', ["svg/unlike"]],
  [
    "square ends, taken back",
    '<g stroke-linecap="square" stroke="red"><path d="M0 0z" stroke-linecap="butt"/></g>',
    [],
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
