// What may be in a drawing: kept, dropped in silence, dropped with a warning, or refused. One issue a row.
import { describe, expect, test } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { bytesOf, draw, rulesOf, written } from "../drawing.ts";

const kept = (body: string): string => /<svg[^>]*>([\s\S]*)<\/svg>/.exec(written(draw(body)))?.[1] ?? "";

describe("readDrawing", () => {
  test.each([
    "<g><rect/></g>",
    '<path d="M0 0L1 1"/>',
    '<polygon points="0 0 1 1 2 0"/>',
    "<title>A wheel</title><desc>Eight spokes</desc>",
    '<defs><clipPath id="c"><circle r="1"/></clipPath></defs><rect clip-path="url(#c)"/>',
    '<g id="a" data-part="wheel" aria-label="wheel"><ellipse rx="2" ry="1"/></g>',
  ])("keeps %s", (body) => {
    expect(kept(body)).toBe(body);
    expect(rulesOf(draw(body))).toEqual([]);
  });

  test.each([
    [
      "private data of drawing programs",
      '<x:namedview xmlns:x="http://sodipodi.sourceforge.net/DTD/sodipodi-0.dtd"/><rect xmlns:i="http://www.inkscape.org/namespaces/inkscape" i:label="a"/>',
    ],
    ["metadata", "<metadata>anything</metadata><rect/>"],
    ["a comment", "<!-- here --><rect/>"],
    ["the font of text that is not there", '<rect font-size="12"/>'],
    ["a filter that is none", '<rect filter="none"/>'],
  ])("drops %s in silence", (_, body) => {
    expect(kept(body)).toBe("<rect/>");
    expect(rulesOf(draw(body))).toEqual([]);
  });

  test.each([
    ["a script", "<script>alert(1)</script><rect/>", "(svg/removed)"],
    ["an event handler", '<rect onclick="alert(1)"/>', "(svg/removed)"],
    ["text", "<text>a</text><rect/>", "(svg/text)"],
    ["loose text", "loose<rect/>", "(svg/removed)"],
    ["an element that nobody knows", "<wheel/><rect/>", "(svg/removed)"],
    [
      "an element of another namespace",
      '<p xmlns="http://www.w3.org/1999/xhtml">a</p><rect/>',
      "(svg/removed)",
    ],
    ["an animation", '<rect><animate attributeName="fill" to="red"/></rect>', "(svg/removed)"],
    ["a processing instruction", "<?wheel draft?><rect/>", "(svg/instruction)"],
  ])("drops %s with a warning", (_, body, rule) => {
    expect(kept(body)).toBe("<rect/>");
    expect(rulesOf(draw(body))).toEqual([rule]);
  });

  test("the content of a link stays", () => {
    expect(kept('<a href="https://example.org/"><rect/></a>')).toBe("<g><rect/></g>");
    expect(rulesOf(draw('<a href="https://example.org/"><rect/></a>'))).toEqual(["(svg/removed)"]);
  });

  test.each(["image", "feImage", "meshgradient", "foreignObject"])(
    "refuses <%s>, which changes what is seen",
    (name) => {
      expect(rulesOf(draw(`<${name}/><rect/>`))).toContain("svg/unsupported");
    },
  );

  test.each([
    ["<html/>", "svg/not-svg"],
    ["<svg/>", "svg/namespace"],
    ['<svg xmlns="http://www.w3.org/1999/xhtml"/>', "svg/namespace"],
    ['<svg xmlns="http://www.w3.org/2000/svg"/>', "svg/viewbox"],
  ])("refuses %s", (text, rule) => {
    expect(rulesOf(text)).toEqual([rule]);
  });

  test("writing directions in a title are not overridden", () => {
    expect(kept("<title>a\u202Eb</title>")).toBe("<title>ab</title>");
  });

  test("a problem has its place, its line and what to do", () => {
    const { value, problems } = readDrawing(
      "a.svg",
      bytesOf('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2">\n  <image/>\n</svg>'),
    );
    expect(value).toBeUndefined();
    expect(problems).toEqual([
      expect.objectContaining({
        rule: "svg/unsupported",
        severity: "error",
        file: "a.svg",
        place: { line: 2, column: 3 },
        sourceLine: "  <image/>",
        hint: expect.any(String),
      }),
    ]);
  });
});
