import { describe, expect, test } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { bytesOf, draw, rulesOf, written } from "../drawing.ts";

const nest = (depth: number): string => {
  // Each group uses the one before it ten times: ten to the power of `depth` showings.
  const groups = Array.from(
    { length: depth },
    (_, level) => `<g id="g${level + 1}">${`<use href="#g${level}"/>`.repeat(10)}</g>`,
  );
  return `<defs><rect id="g0" width="1" height="1"/>${groups.join("")}</defs><use href="#g${depth}"/>`;
};

describe("checkReferences", () => {
  test("an id that stands twice and means nothing is left out", () => {
    const text = draw('<g id="a"><rect id="a" width="9" height="9"/></g><path id="b" d="M0 0h9"/>');
    expect(rulesOf(text)).toEqual([]);
    expect(written(text)).toContain('<g><rect width="9" height="9"/></g><path id="b" d="M0 0h9"/>');
  });

  test.each([
    ["href", '<rect id="a"/><rect id="a"/>\n<use href="#a"/>'],
    [
      "xlink:href",
      '<rect id="a"/><rect id="a"/>\n<use xmlns:xlink="http://www.w3.org/1999/xlink" xlink:href="#a"/>',
    ],
    ["fill", '<linearGradient id="a"/><g id="a"/>\n<rect style="fill:url(#a) red"/>'],
    ["stroke", '<style>rect{stroke:url(#a)}</style><linearGradient id="a"/><pattern id="a"/>\n<rect/>'],
    ["clip-path", '<clipPath id="a"/><clipPath id="a"/>\n<g clip-path="url(#a)"/>'],
    ["mask", '<mask id="a"/><mask id="a"/>\n<g mask="url(\'#a\')"/>'],
    ["marker-start", '<marker id="a"/><marker id="a"/>\n<path style="marker:url(#a)" d="M0 0h9"/>'],
    ["fill", '<text id="a">what is removed counts</text><linearGradient id="a"/>\n<rect fill="url(#a)"/>'],
    [
      "fill",
      '<e:view xmlns:e="http://example.org/" id="a"/><linearGradient id="a"/>\n<rect fill="url(#a)"/>',
    ],
  ])("an id that stands twice is refused where %s points at it, with both places", (name, body) => {
    const { value, problems } = readDrawing("a.svg", bytesOf(draw(body)));
    const first = draw(body).indexOf('id="a"') + 1;
    const second = draw(body).indexOf('id="a"', first) + 1;
    expect(value).toBeUndefined();
    expect(problems.filter(({ severity }) => severity === "error")).toMatchObject([
      {
        rule: "svg/duplicate-id",
        place: { line: 1, column: second },
        reason: `The id "a" stands here and in line 1, column ${first}, and ${name} in line ${name === "stroke" ? 1 : 2} points at it.`,
        hint: expect.stringContaining('"a-2"'),
      },
    ]);
  });

  test("what no program follows any more does not point at an id", () => {
    const text = draw(
      '<g id="a" aria-labelledby="a"><rect id="a" data-of="url(#a)"/><animate href="#a" begin="a.click"/></g>',
    );
    expect(rulesOf(text)).toEqual(["(svg/removed)"]);
  });

  test("a rule for an id colours all that have it, as browsers do", () => {
    const text = draw(
      '<style>#a{fill:#00f}</style><rect id="a" width="9" height="9"/><rect id="a" width="5"/>',
    );
    expect(written(text).split('fill="#0000ff"')).toHaveLength(3);
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
