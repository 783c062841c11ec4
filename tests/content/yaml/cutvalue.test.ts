import { expect, test } from "vitest";
import { parse } from "yaml";
import { isCutOff, listPieces } from "../../../src/content/yaml/cutvalue.ts";

// Read by YAML itself, so that the pieces are those that an author's line comes to.
test.each([
  ["{ replace: red, with: rgb(238,122,26) }", ["122", "26)"]],
  ["{ with: hsl(40, 90%, 50%), only: a }", ["50%)", "90%"]],
  ["{ with: rgb(238 122 26) }", []],
  ['{ with: "rgb(238, 122, 26)", 122: null }', []],
  ["{ with: red, 122: null }", []],
  ["[rgb(1, 2, 3)]", []],
  ["text", []],
])("%s", (yaml, pieces) => {
  expect([...listPieces(parse(yaml))].sort()).toEqual(pieces);
});

test.each(["rgb(238", "oklch(60%", "RGBA(1"])("%s is cut off", (text) => expect(isCutOff(text)).toBe(true));
test.each(["rgb(1 2 3)", "red", "a wheel (old", 3, null])("%s is not", (text) =>
  expect(isCutOff(text)).toBe(false),
);
