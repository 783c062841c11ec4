import { expect, test } from "vitest";
import { findHref, mapElements, walkElements } from "../../src/svg/tree.ts";
import { draw, elementOf, read } from "./drawing.ts";

const drawing = read(
  draw(
    '<g id="g"><rect id="r"/></g><title id="s">a{}</title><use id="u" href="#r" xmlns:l="http://www.w3.org/1999/xlink" l:href="#g"/>',
  ),
);

test("walkElements visits all, in the order of the file", () => {
  expect([...walkElements(drawing.root)].map(({ name }) => name)).toEqual([
    "svg",
    "g",
    "rect",
    "title",
    "use",
  ]);
});

test("findHref: href before xlink:href (SVG 2, 5.6)", () => {
  expect(findHref(elementOf(drawing, "u"))).toBe("#r");
  expect(findHref({ ...elementOf(drawing, "u"), attributes: { "xlink:href": "#g" } })).toBe("#g");
  expect(findHref(elementOf(drawing, "g"))).toBeUndefined();
});

test("mapElements shares what did not change and rebuilds what did, up to the root", () => {
  expect(mapElements(drawing.root, (element) => element)).toBe(drawing.root);
  const next = mapElements(drawing.root, (element) =>
    element.name === "rect" ? { ...element, attributes: { fill: "red" } } : element,
  );
  expect(next).not.toBe(drawing.root);
  expect(next.children[1]).toBe(drawing.root.children[1]);
  expect([...walkElements(next)].find(({ name }) => name === "rect")?.attributes).toEqual({ fill: "red" });
  expect(elementOf(drawing, "r").attributes).toEqual({ id: "r" });
});
