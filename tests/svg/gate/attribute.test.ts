import { describe, expect, test } from "vitest";
import { draw, rulesOf, written } from "../drawing.ts";

const keptOf = (attributes: string): string =>
  /<rect([^>]*)\/>/.exec(written(draw(`<rect ${attributes}/>`)))?.[1]?.trim() ?? "";

describe("cleanAttributes", () => {
  test.each([
    'width="3" height="2"',
    'x="1e1"',
    'width="50%"',
    'transform="translate(1 2) rotate(30)"',
    'fill="#aabbcc" stroke-width="2"',
    'stroke-dasharray="1 2 3"',
    'fill="none"',
    'fill="#ff0000" opacity=".5"',
  ])("keeps %s letter for letter", (attributes) => {
    expect(keptOf(attributes)).toBe(attributes);
    expect(rulesOf(draw(`<rect ${attributes}/>`))).toEqual([]);
  });

  test.each([
    ['style="fill:red;opacity:.5"', 'fill="#ff0000" opacity=".5"'],
    ['fill="#abc" stroke-width="2px"', 'fill="#aabbcc" stroke-width="2"'],
    ['width="1in" x="1mm"', 'width="96" x="3.779527559"'],
    ['stroke-dasharray="1 2,3"', 'stroke-dasharray="1 2 3"'],
    ['opacity="50%" fill-opacity="7"', 'fill-opacity="1" opacity="0.5"'],
    ['class="a" style="font-size:12px"', ""],
    ['fill="inherit" display="block" visibility="collapse"', 'display="inline" visibility="hidden"'],
  ])("writes %s as %s", (attributes, kept) => {
    expect(keptOf(attributes)).toBe(kept);
    expect(rulesOf(draw(`<rect ${attributes}/>`))).toEqual([]);
  });

  test.each([
    ['width="NaN"', "svg/number"],
    ['width="1e999"', "svg/number"],
    ['x="calc(1px)"', "svg/number"],
    ['transform="spin(3)"', "svg/number"],
    ['stroke-width="thick"', "svg/number"],
    ['fill="url(http://example.org/a.svg#b)"', "svg/reference"],
    ['style="fill:url(//example.org/#a)"', "svg/reference"],
    ['style="fill:\\75 rl(#a)"', "svg/css"],
    ['style="mix-blend-mode:inherit"', "svg/unsupported"],
    ['style="transform:rotate(3deg)"', "svg/unsupported"],
    ['filter="url(#f)"', "svg/unsupported"],
    ['systemLanguage="en"', "svg/unsupported"],
    ['pathLength="9"', "svg/unsupported"],
    ['transform-origin="1 1"', "svg/unsupported"],
    ['rx="auto"', "svg/number"],
    ['width="-1"', "svg/number"],
    ['x="1 2"', "svg/number"],
    ['width="2em"', "svg/unit"],
    ['gradientUnits="own"', "svg/value"],
  ])("refuses %s", (attributes, rule) => {
    expect(rulesOf(draw(`<rect ${attributes}/>`))).toContain(rule);
  });

  test.each([
    ['<path d="M0,0 L1,1 x"/>', "svg/number"],
    ['<polygon points="0,0 a,b"/>', "svg/number"],
    ['<use href="other.svg#a"/>', "svg/reference"],
    ['<use href="data:image/svg+xml,x#a"/>', "svg/reference"],
  ])("refuses %s", (body, rule) => {
    expect(rulesOf(draw(body))).toContain(rule);
  });

  test("what is not allowed in a style goes, the rest stays", () => {
    expect(keptOf('style="fill : red; position:fixed ;  stroke:blue"')).toBe(
      'fill="#ff0000" stroke="#0000ff"',
    );
    expect(rulesOf(draw('<rect style="fill : red; position:fixed ;  stroke:blue"/>'))).toEqual([
      "(svg/removed)",
    ]);
  });

  test("viewbox in small letters is told, for no program sees it", () => {
    expect(rulesOf(draw("<rect/>", 'viewbox="0 0 3 2"'))).toContain("svg/viewbox");
  });

  test("__proto__ is an attribute like any other that nobody knows", () => {
    expect(rulesOf(draw('<rect __proto__="a" constructor="b"/>'))).toEqual([
      "(svg/removed)",
      "(svg/removed)",
    ]);
  });
});
