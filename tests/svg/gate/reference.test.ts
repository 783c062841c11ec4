import { describe, expect, test } from "vitest";
import { draw, rulesOf, written } from "../drawing.ts";

const nest = (depth: number): string => {
  // Each group uses the one before it ten times: ten to the power of `depth` showings.
  const groups = Array.from(
    { length: depth },
    (_, level) => `<g id="g${level + 1}">${`<use href="#g${level}"/>`.repeat(10)}</g>`,
  );
  return `<defs><rect id="g0" width="1" height="1"/>${groups.join("")}</defs><use href="#g${depth}"/>`;
};

describe("checkReferences", () => {
  test("an id twice is refused", () => {
    expect(rulesOf(draw('<rect id="a"/><rect id="a"/>'))).toEqual(["svg/duplicate-id"]);
  });

  test.each([
    ["a use of itself", '<use id="a" href="#a"/>'],
    ["a use of what it stands in", '<g id="a"><use href="#a"/></g>'],
    ["two uses of each other", '<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>'],
    ["gradients", '<linearGradient id="a" href="#b"/><linearGradient id="b" href="#a"/>'],
    ["a pattern that fills itself", '<pattern id="a" width="1" height="1"><rect fill="url(#a)"/></pattern>'],
    ["a mask of itself", '<mask id="a"><rect mask="url(#a)"/></mask>'],
    [
      "through a sheet",
      '<style>rect{fill:url(#a)}</style><pattern id="a" width="1" height="1"><rect/></pattern>',
    ],
  ])("a circle is refused: %s", (_, body) => {
    expect(rulesOf(draw(body))).toContain("svg/circle");
  });

  test("many uses are counted before they are followed", () => {
    expect(rulesOf(draw(nest(3)))).toEqual([]);
    expect(rulesOf(draw(nest(9)))).toContain("svg/too-many-instances");
  });

  test("what points at nothing goes with a warning; a paint becomes its fallback, or none", () => {
    expect(
      written(draw('<use href="#a"/><rect fill="url(#b) red" stroke="url(#c)" mask="url(#d)"/>')),
    ).toContain('<use/><rect fill="#ff0000" stroke="none"/>');
    expect(
      rulesOf(draw('<use href="#a"/><rect fill="url(#b) red" stroke="url(#c)" mask="url(#d)"/>')),
    ).toEqual(Array(4).fill("(svg/dangling)"));
  });

  test("an odd id is renamed with all that points at it", () => {
    const text = written(
      draw(
        '<linearGradient id="a b"><stop/></linearGradient><rect width="9" height="9" fill="url(#a b)" style="stroke:url(\'#a b\')"/>',
      ),
    );
    const id = /linearGradient id="([^"]*)"/.exec(text)?.[1] ?? "";
    expect(id).toMatch(/^[A-Za-z_][\w.-]*$/);
    expect(text.split(`#${id}`)).toHaveLength(3);
  });

  test("dashes too fine to be drawn are refused", () => {
    expect(rulesOf(draw('<path d="M0,0 H30" stroke="red" stroke-dasharray="0.0001"/>'))).toContain(
      "svg/number",
    );
  });
});
