import { expect, test } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { findNoColour } from "../../../src/svg/style/nocolour.ts";

// Source: SVG 2, section 13.2 (paint); CSS Color 4, sections 4 to 10 and appendix A.
test.each([
  "#3b3",
  "#3b3f",
  "#3b3f46",
  "#3B3F4680",
  "white",
  "Grey",
  "none",
  "inherit",
  "currentColor",
  "transparent",
  "context-fill",
  "ButtonText",
  "GrayText",
  "Window",
  "url(#shade)",
  "url(#shade) #fff",
  "rgb(1, 2, 3)",
  "rgb(300",
  "hsl(0 0% 50%)",
  "lab(50% 0 0)",
  "color(display-p3 1 0 0)",
  "var(--wheel)",
  "#fff icc-color(a, 1)",
  "",
])("%j is nothing to speak of", (value) => {
  expect(findNoColour("fill", value)).toBeUndefined();
});

test.each([
  ["fill", "#3b3f4", "A hex colour has six digits, or three: write, for example, #f4c430."],
  ["stroke", "#3b3g46", "A hex colour has six digits, or three: write, for example, #f4c430."],
  ["fill", "graay", "Write “gray”, if that is meant."],
  ["stop-color", "f4c430", "Put # before it: #f4c430"],
  ["fill", "buttercup", "Write a hex colour, for example #f4c430."],
])("%s %j is no colour", (property, value, hint) => {
  const found = findNoColour(property, value);
  expect(found?.reason).toBe(`${property} is "${value}", which is no colour.`);
  expect(found?.hint.split("\n")[0]).toBe(hint);
});

test("other properties have words of their own", () => {
  expect(findNoColour("display", "inline")).toBeUndefined();
  expect(findNoColour("stroke-linecap", "round")).toBeUndefined();
});

test.each([
  ["an attribute", '<rect width="9" height="9" fill="#3b3f4"/>', 2],
  ["a style", '<rect width="9" height="9" style="fill: #3b3f4"/>', 2],
  ["a sheet", "<style>rect { stroke: graay }</style>", 2],
])("the warning stands at the place of %s", (_, line, at) => {
  const text = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">\n${line}\n</svg>`;
  const { value, problems } = readDrawing("a.svg", new TextEncoder().encode(text));
  expect(value).toBeDefined();
  expect(problems.map(({ rule, severity, place }) => [rule, severity, place?.line])).toEqual([
    ["svg/colour", "warning", at],
  ]);
});
