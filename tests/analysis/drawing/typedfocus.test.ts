import { expect, test } from "vitest";
import { readTypedFocus } from "../../../src/analysis/drawing/typedfocus.ts";

// A red group called fade; #fade is a colour of CSS too (four digits: red, green, blue, alpha).
const red =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#fff" d="M0 0h3v2H0z"/><g id="fade"><path fill="#c00" d="M0 0h1v1H0z"/></g></svg>';
const read = (text: string, drawing = red) => readTypedFocus(new TextEncoder().encode(drawing), text);

test.each([
  ["#c00", { colour: "#c00" }],
  ["rgb(204, 0, 0)", { colour: "rgb(204, 0, 0)" }],
  ["white", { colour: "white" }],
  ["#fade", { select: "#fade" }],
  ["g path", { select: "g path" }],
  ["path", { select: "path" }],
  // What is not in the drawing is what it looks like, and its absence is reported later.
  ["#123456", { colour: "#123456" }],
  ["dark red", { colour: "dark red" }],
  ["#mast", { select: "#mast" }],
  ["g >> [", { select: "g >> [" }],
])("%s", (text, focus) => {
  expect(read(text)).toEqual(focus);
});

test("where the drawing has the colour and the id, the colour comes first", () => {
  expect(read("#fade", red.replace("#c00", "#ffaadd"))).toEqual({ colour: "#fade" });
});

test("a drawing that cannot be read decides nothing", () => {
  expect(read("#fade", "<svg")).toEqual({ colour: "#fade" });
});
