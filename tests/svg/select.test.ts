import { describe, expect, test } from "vitest";
import { compileSelector, createNodes } from "../../src/svg/select.ts";
import { draw, read } from "./drawing.ts";

const drawing = read(
  draw(
    '<g id="g" class="a b"><rect id="r" width="3"/><rect id="s" class="b"/></g><linearGradient id="l"/><path id="p"/>',
  ),
);

function select(selector: string): readonly string[] {
  const test = compileSelector(selector);
  if (typeof test === "string") throw new Error(test);
  return createNodes(drawing.root)
    .filter(test)
    .map(({ element }) => element.attributes["id"] ?? element.name);
}

describe("compileSelector", () => {
  // By Selectors 4.
  test.each([
    ["rect", ["r", "s"]],
    ["#s", ["s"]],
    [".b", ["g", "s"]],
    [".a.b", ["g"]],
    ["g rect", ["r", "s"]],
    ["svg > rect", []],
    ["rect + rect", ["s"]],
    ["g ~ path", ["p"]],
    ["[width]", ["r"]],
    ['[width="3"]', ["r"]],
    ["rect:first-child", ["r"]],
    ["rect:nth-child(2)", ["s"]],
    ["rect:not(.b)", ["r"]],
    ["g:has(rect)", ["g"]],
    ["rect, path", ["r", "s", "p"]],
    ["linearGradient", ["l"]],
    ["lineargradient", []],
  ])("%s", (selector, ids) => {
    expect(select(selector)).toEqual(ids);
  });

  test("a sentence for what is no selector", () => {
    expect(compileSelector("rect[")).toEqual(expect.any(String));
    expect(compileSelector("rect::before")).toEqual(expect.any(String));
  });
});

test("createNodes: parents before children, each knowing the other", () => {
  const nodes = createNodes(drawing.root);
  expect(nodes.map(({ element }) => element.name)).toEqual([
    "svg",
    "g",
    "rect",
    "rect",
    "linearGradient",
    "path",
  ]);
  expect(nodes[2]?.parent).toBe(nodes[1]);
  expect(nodes[1]?.children).toEqual([nodes[2], nodes[3]]);
});
