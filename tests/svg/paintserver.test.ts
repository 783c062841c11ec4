// SVG 2, sections 14.2 (gradients) and 14.3 (patterns): what paints nothing, and what one colour.
import { expect, test } from "vitest";
import { draw, paintsOfX } from "./drawing.ts";

const rect = '<rect id="x" width="9" height="9" fill="url(#g)"/>';
const line = '<path id="x" d="M0 5h9" fill="none" stroke="url(#g)"/>';
const stops = (first: string, second: string): string => `<stop ${first}/><stop offset="1" ${second}/>`;
const gradient = (inside: string, more = ""): string =>
  `<linearGradient id="g" ${more}>${inside}</linearGradient>`;
const two = stops('stop-color="#f00"', 'stop-color="#00f"');
const pattern = (more: string, inside = '<path d="M0 0h9v9z"/>'): string =>
  `<pattern id="g" ${more}>${inside}</pattern>`;

test.each([
  ["a gradient", gradient(two) + rect, ["fill url(#g)"]],
  ["without stops", gradient("") + rect, []],
  ["of one colour", gradient(stops('stop-color="#f00"', 'stop-color="red"')) + rect, ["fill #ff0000"]],
  [
    "of one colour that lets through",
    gradient(stops('stop-color="#f00"', 'stop-color="red" stop-opacity=".9"')) + rect,
    ["fill url(#g)"],
  ],
  ["of stops that are transparent", gradient(stops('stop-opacity="0"', 'stop-color="#f000"')) + rect, []],
  [
    "of stops that show at less than half",
    gradient(stops('stop-opacity=".4"', 'stop-opacity=".3"')) + rect,
    [],
  ],
  [
    "of which one stop shows",
    gradient(stops('stop-opacity="0"', 'stop-opacity=".6"')) + rect,
    ["fill url(#g)"],
  ],
  ["in user space on a line", gradient(two, 'gradientUnits="userSpaceOnUse"') + line, ["stroke url(#g)"]],
  ["a pattern", pattern('width="1" height="1"') + rect, ["fill url(#g)"]],
  ["without content", pattern('width="1" height="1"', "") + rect, []],
  [
    "with content of another",
    `<pattern id="h" height="1"><path d="M0 0h9v9z"/></pattern>${pattern('href="#h" width="1"', "")}${rect}`,
    ["fill url(#g)"],
  ],
])("%s", (_, body, paints) => {
  expect(paintsOfX(draw(body))).toEqual(paints);
});
